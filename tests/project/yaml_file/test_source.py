"""Project files are read as text alone, and nothing in them can make the reader fall over."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.errors import ProjectError, SurroundingsError
from stepper.project.yaml_file.source import MAX_BYTES, Mapping, Scalar, block_lines, read_nodes, read_text


def test_no_value_is_guessed_to_be_anything_but_text() -> None:
    """YAML would read `on` as true, `1:30` as ninety and `010` as eight."""
    root, problems = read_nodes("a: on\nb: 1:30\nc: 010\nd: 1.10\n")
    assert problems == []
    assert isinstance(root, Mapping)
    assert [value.text for _, value in root.entries if isinstance(value, Scalar)] == ["on", "1:30", "010", "1.10"]


def test_every_value_keeps_its_place() -> None:
    """Lines and columns count from one."""
    root, _ = read_nodes("a: 1\nlong: value\n")
    assert isinstance(root, Mapping)
    key, value = root.entries[1]
    assert (key.place.line, key.place.column, value.place.column) == (2, 1, 7)


def test_a_block_line_keeps_its_place_in_the_file() -> None:
    """The caret must point at the word, however deep the block is indented."""
    text = "work: |\n\n    Knit.\n      Purl.\n"
    root, _ = read_nodes(text)
    assert isinstance(root, Mapping)
    block = root.entries[0][1]
    assert isinstance(block, Scalar)
    rows = [(row, where.line, where.column) for row, where in block_lines(block, text.splitlines()) if row.strip()]
    assert rows == [("Knit.", 3, 5), ("  Purl.", 4, 5)]


@pytest.mark.parametrize(
    ("text", "line", "words"),
    [
        ("a: 1\n\tb: 2\n", 2, "tab"),
        ("work: *K2, p2; rep from * to end\n", 1, '"*" outside a block'),
        ("lines:\n  - *k2, p2\n", 2, '"*" outside a block'),
        ("a: &x 1\nb: 2\n", 1, "anchors"),
        ("a: !!python/object:os.system x\n", 1, "tags"),
        ("a: [1, 2\nb: 3\n", 2, "bracket"),
        ("a: 'open\n", 1, "quotation mark"),
        ("a: b: c\n", 1, 'second ":"'),
        ("a: 1\n---\nb: 2\n", 2, "second document"),
        ("? [a]\n: b\n", 1, "key"),
    ],
)
def test_what_yaml_cannot_read_is_told_in_plain_words(text: str, line: int, words: str) -> None:
    """Never a parser's own message alone, never a traceback."""
    _, problems = read_nodes(text)
    assert problems
    assert words in problems[0].message
    assert problems[0].line == line


def test_a_small_file_cannot_grow_into_a_large_one() -> None:
    """The billion-laughs file: nine anchors, each nine times the one before."""
    rows = ["a0: &a0 [x,x,x,x,x,x,x,x,x]"]
    rows += [f"a{n}: &a{n} [{','.join([f'*a{n - 1}'] * 9)}]" for n in range(1, 10)]
    root, problems = read_nodes("\n".join(rows))
    assert len(problems) == 1
    assert "anchors" in problems[0].message
    assert root is None or isinstance(root, Mapping)


def test_nesting_has_a_bottom() -> None:
    """Ten thousand brackets are a problem, not a crash."""
    _, problems = read_nodes("a: " + "[" * 10_000)
    assert problems


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (b"", "empty"),
        (b"   \n\n", "empty"),
        (b"\x7fELF\x02\x01\x01\x00\x00", "not text"),
        (b"\xff\xfe\x00\x01", "not text"),
        (b"title: x\n" * (MAX_BYTES // 8), "too large"),
    ],
)
def test_a_file_that_is_no_project_is_refused(tmp_path: Path, content: bytes, words: str) -> None:
    """Empty, binary and far too large files are told apart."""
    path = tmp_path / "a.yaml"
    path.write_bytes(content)
    with pytest.raises(ProjectError, match=words):
        read_text(path)


def test_a_missing_file_and_a_folder_are_the_surroundings_fault(tmp_path: Path) -> None:
    """Exit code 4, and a sentence."""
    with pytest.raises(SurroundingsError, match="There is no file"):
        read_text(tmp_path / "none.yaml")
    with pytest.raises(SurroundingsError, match="folder"):
        read_text(tmp_path)


@given(st.text(max_size=200))
def test_any_text_is_read_or_refused(text: str) -> None:
    """Whatever stands in the file, the outcome is nodes or problems."""
    read_nodes(text)
