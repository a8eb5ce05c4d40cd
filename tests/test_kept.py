"""What is kept between starts is whole, or it is worked out again."""

from __future__ import annotations

import sys
import tracemalloc
from collections.abc import Callable
from pathlib import Path
from zlib import crc32

import pytest

from stepper.kept import KeptTable, keep, read_kept

VALUE = {"rows": [1, -2], ("a", 0): b"\0\n\xff", "none": None}


@pytest.fixture(autouse=True)
def beside(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Return a folder in the place of the one beside the compiled modules; the user's is another."""
    monkeypatch.setattr(sys, "pycache_prefix", str(tmp_path / "beside"))
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "hers"))
    return tmp_path / "beside"


def kept_files(folder: Path) -> list[Path]:
    """List what is kept below a folder."""
    return [path for path in folder.rglob("*") if path.is_file()]


def test_what_is_kept_is_found_again(beside: Path) -> None:
    """The last of two, and under its name alone; nothing else is left behind."""
    assert read_kept("a") is None
    keep("a", 1)
    keep("a", VALUE)
    assert read_kept("a") == VALUE
    assert read_kept("b") is None
    assert len(kept_files(beside)) == 1


@pytest.mark.parametrize(
    "spoilt",
    [
        lambda raw: b"",
        lambda raw: raw[:-1],
        lambda raw: raw[: len(raw) // 2],
        lambda raw: raw[:-4] + b"\0\0\0\0",
        lambda raw: raw.replace(b"rows", b"rowz"),
        lambda raw: raw.replace(sys.version.encode()[:5], b"3.0.0"),
        lambda raw: raw.partition(b"\n")[2],
    ],
)
def test_what_is_not_whole_or_of_another_python_was_never_kept(beside: Path, spoilt: Callable[[bytes], bytes]) -> None:
    """A disk that was full, or a power cut: a wrong table would read a line wrongly."""
    keep("a", VALUE)
    (path,) = kept_files(beside)
    path.write_bytes(spoilt(path.read_bytes()))
    assert read_kept("a") is None
    keep("a", VALUE)
    assert read_kept("a") == VALUE


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="names the user's folder as Linux does")
def test_where_the_program_may_not_write_the_users_folder_holds_it(beside: Path, tmp_path: Path) -> None:
    """The program may be installed for all users of a computer."""
    beside.write_text("a file in the folder's place")
    keep("a", VALUE)
    assert read_kept("a") == VALUE
    assert len(kept_files(tmp_path / "hers")) == 1


def test_where_nobody_may_write_nothing_is_kept(beside: Path, tmp_path: Path) -> None:
    """And nothing is said of it: the next start takes as long as this one."""
    beside.write_text("a file in the folder's place")
    (tmp_path / "hers").write_text("another")
    keep("a", VALUE)
    assert read_kept("a") is None


def a_table(name: str = "table", most: int = 10) -> KeptTable:
    """Return a table as the next start of the program has it."""
    return KeptTable(name, most=most, least_new=1_000)


def keep_in_table(values: dict[object, object], most: int = 10) -> None:
    """Add values to the table, and end the program."""
    table = a_table(most=most)
    for key, value in values.items():
        table.add(key, value)
    table.keep(least=1)


def test_a_value_of_a_table_is_found_by_its_key_and_by_no_other(beside: Path) -> None:
    """Before it is written, by whoever added it, and in each start after it."""
    keep_in_table({("k2tog", 2): [1, "a"], "é\ud800": b"\0\n"})
    keep_in_table({"other": 3})
    table = a_table()
    table.add("new", 4)
    assert [table.get(key) for key in (("k2tog", 2), "é\ud800", "other", "new")] == [[1, "a"], b"\0\n", 3, 4]
    assert [table.get(key) for key in (("k2tog", 3), "k2tog", "", None)] == [None] * 4


def test_two_keys_with_one_sum_are_not_taken_for_each_other(beside: Path) -> None:
    """Of four thousand keys two have the same sum once in five hundred tables: one of them is worked out again.

    The two words are known for it (from memory).
    """
    assert crc32(b"plumless") == crc32(b"buckeroo")
    keep_in_table({"plumless": 1})
    assert [a_table().get(key) for key in ("plumless", "buckeroo")] == [1, None]


@pytest.mark.parametrize("at", [0, 5, 40, 120, -1])
def test_a_table_that_is_not_whole_gives_no_wrong_value(beside: Path, at: int) -> None:
    """A value that is whole is given, whatever happened to the others."""
    keep_in_table(dict.fromkeys(range(5), "a value"))
    (path,) = kept_files(beside)
    raw = bytearray(path.read_bytes())
    raw[at] ^= 1
    path.write_bytes(raw)
    assert {a_table().get(key) for key in range(5)} <= {"a value", None}
    assert None in {a_table().get(key) for key in range(5)}
    path.write_bytes(raw[: len(raw) // 2])
    assert {a_table().get(key) for key in range(5)} <= {"a value", None}
    keep_in_table({"again": 1})
    assert a_table().get("again") == 1


def test_a_table_that_is_written_anew_meanwhile_gives_no_wrong_value(beside: Path) -> None:
    """Two programs run beside each other: where a value lay for one, the other has put something else."""
    keep_in_table({"a": "one", "b": "two"})
    table = a_table()
    assert table.get("a") == "one"
    keep_in_table({"c": "three" * 9}, most=2)
    assert table.get("b") in (None, "two")
    assert a_table().get("c") == "three" * 9


def test_a_table_does_not_grow_for_ever(beside: Path) -> None:
    """Each version of the program leaves its own in it: where they fill it, it begins anew."""
    keep_in_table({1: 1, 2: 2}, most=3)
    keep_in_table({3: 3, 4: 4}, most=3)
    assert [a_table().get(key) for key in (1, 2, 3, 4)] == [None, None, 3, 4]


def test_asking_a_large_table_takes_up_no_more_than_what_is_asked(beside: Path) -> None:
    """An evening asks some two thousand of what would be forty megabytes, and holds them as long as she knits."""
    keep_in_table({key: bytes(100_000) for key in range(50)}, most=50)
    tracemalloc.start()
    table = a_table()
    assert table.get(7) == bytes(100_000)
    assert tracemalloc.get_traced_memory()[1] < 500_000
    tracemalloc.stop()
