"""The file while it is settled: its sizes, and how it is written."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.errors import SurroundingsError
from stepper.project.page.unread.answers import AnsweredNumber
from stepper.settling.file_in_hand import take_in_hand, write_whole
from tests.project.samples import project
from tests.settling.typed import type_answers

TEXT = project("Cast on 40 (44, 48) sts.\nKnit 2 rounds.", size="M")


def test_a_single_number_is_never_taken_for_sizes_it_was_not_said_for(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Where it is for hers alone, the file is kept for that, and she is told; it is asked once."""
    file = take_in_hand(TEXT, tmp_path)
    assert (file.sizes, file.size, file.several) == (("S", "M", "L"), "M", True)
    type_answers(monkeypatch, "perhaps", "")
    file.settle_sizes([AnsweredNumber(values=(9,)), AnsweredNumber(values=(12,))])
    assert "Are 9 and 12 for size M alone, or for every size? [alone]" in capsys.readouterr().out
    assert "only: M" in file.text
    assert not file.several
    file.settle_sizes([AnsweredNumber(values=(9,))])  # nothing to answer: nothing is asked


def test_a_list_and_a_number_for_every_size_leave_the_file_as_it_is(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """She may read the same number for all of them."""
    file = take_in_hand(TEXT, tmp_path)
    type_answers(monkeypatch, "every")
    file.settle_sizes([AnsweredNumber(values=(1, 2, 3))])
    file.settle_sizes([AnsweredNumber(values=(9,))])
    assert file.text == TEXT
    assert file.several


def test_a_file_of_one_size_is_not_asked_about(tmp_path: Path) -> None:
    """There is nothing to choose; nor in one that cannot be read at all."""
    assert not take_in_hand(project("Cast on 40 sts.", sizes="one", size="one"), tmp_path).several
    assert take_in_hand("title: [", tmp_path).sizes == ("1",)


def test_what_is_not_read_in_some_rows_is_told_of_these_alone(tmp_path: Path) -> None:
    """Problems elsewhere have their own turn."""
    text = project("Twirl.\nLoop.", size="M")
    at = text.split("\n").index("      Loop.") + 1
    (told,) = take_in_hand(text, tmp_path).problems_with(text, at, 1)
    assert told.line == at


def test_the_file_is_written_whole_with_its_permissions_and_line_ends(tmp_path: Path) -> None:
    """A link stays a link, and nothing is left beside it."""
    real, link = tmp_path / "real.yaml", tmp_path / "link.yaml"
    real.write_text("old")
    real.chmod(0o640)
    link.symlink_to(real)
    write_whole(link, "one\ntwo\n", crlf=True)
    assert real.read_bytes() == b"one\r\ntwo\r\n"
    assert real.stat().st_mode & 0o777 == 0o640
    assert link.is_symlink()
    assert sorted(each.name for each in tmp_path.iterdir()) == ["link.yaml", "real.yaml"]


def test_a_file_that_is_read_only_is_not_touched(tmp_path: Path) -> None:
    """Even where its folder would let it be replaced."""
    path = tmp_path / "a.yaml"
    path.write_text("mine")
    path.chmod(0o444)
    with pytest.raises(SurroundingsError, match="is read-only"):
        write_whole(path, "other")
    assert path.read_text() == "mine"
    assert [each.name for each in tmp_path.iterdir()] == ["a.yaml"]


def test_a_file_that_is_gone_is_told(tmp_path: Path) -> None:
    """As any other that cannot be written."""
    with pytest.raises(SurroundingsError, match="cannot be written"):
        write_whole(tmp_path / "none.yaml", "text")
