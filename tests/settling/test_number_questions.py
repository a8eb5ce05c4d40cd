"""Questions about the numbers of a row: what is proposed, what is taken, what is refused."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.project.page.proposals import Kept, Proposal
from stepper.settling.file_in_hand import take_in_hand
from stepper.settling.number_questions import CountAnswer, NumberQuestions
from tests.project.samples import project
from tests.settling.typed import type_answers


def questions(proposal: Proposal | None = None, before: int | None = 44) -> NumberQuestions:
    """Make the questions of a row in a file of three sizes, knitted in the second."""
    file = take_in_hand(project("Cast on 40 (44, 48) sts.", size="M"), Path())
    return NumberQuestions(proposal=proposal or Proposal(kept=Kept.ROWS, rows="1"), before=before, file=file)


def test_what_is_printed_is_taken_by_enter_and_asks_for_no_size(monkeypatch: pytest.MonkeyPatch) -> None:
    """It is the page's own, for all its sizes."""
    asked = questions(Proposal(kept=Kept.HOLD, rows="4 (5, 6)", count="50 (54, 58)", moved="8 (9, 10) for thumb"))
    type_answers(monkeypatch, "", "", "", "")
    assert asked.ask_rows() == "4 (5, 6)"
    assert asked.ask_count("4 (5, 6)") == CountAnswer(text="50 (54, 58)")
    assert asked.ask_held() == "8 (9, 10) for thumb"
    assert asked.typed == []


@pytest.mark.parametrize(
    ("answer", "count", "typed"),
    [
        ("", "", 0),
        ("same", "", 0),
        ("54", "54", 1),
        ("50 54 58", "50 (54, 58)", 1),
        ("+4", "4 sts inc'd", 1),
        ("-4", "4 sts dec'd", 1),
    ],
)
def test_the_same_is_said_as_such_and_a_number_is_hers(
    answer: str, count: str, typed: int, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """The number on the needles stands beside it, so that she can compare."""
    asked = questions()
    type_answers(monkeypatch, answer)
    assert asked.ask_count("1") == CountAnswer(text=count)
    assert "How many stitches after it? [the same, 44]" in capsys.readouterr().out
    assert len(asked.typed) == typed


@pytest.mark.parametrize("answer", ["many", "0", "-0", "+x", "12 13", "99999", "+"])
def test_what_is_no_count_is_asked_again(
    answer: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """And not kept."""
    asked = questions(before=None)
    type_answers(monkeypatch, answer, "")
    assert asked.ask_count("1") == CountAnswer()
    assert capsys.readouterr().out.count("[the same]") == 2
    assert asked.typed == []


def test_printed_lists_of_another_length_are_not_proposed(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """They are of something else, or torn."""
    asked = questions(Proposal(kept=Kept.CAST_ON, count="50 (54)", moved="50 (54)", rows="2 (3)"))
    type_answers(monkeypatch, "", "7", "8", "3")
    assert asked.ask_moved("cast on") == "7"
    assert asked.ask_rows() == "8"
    assert asked.ask_count("1").text == "3"
    assert "50" not in capsys.readouterr().out


def test_rows_that_change_the_number_are_counted_one_by_one(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """As many as there are rows, and the last is what was said."""
    asked = questions()
    assert asked.changes("40")
    assert asked.changes("4 sts dec'd")
    assert not asked.changes("40 (44, 48)")
    assert not asked.changes("")
    type_answers(monkeypatch, "43 42", "43 42 39", "43 42 40")
    assert asked.ask_each("3", "40") == CountAnswer(each=(43, 42, 40))
    shown = capsys.readouterr().out
    assert "Write 3 numbers" in shown
    assert "The last of them is 40, as was said." in shown
    type_answers(monkeypatch, "43 42 41")
    assert asked.ask_count("3") == CountAnswer(each=(43, 42, 41))


def test_a_length_has_no_number_of_rows_to_count(capsys: pytest.CaptureFixture[str]) -> None:
    """She is asked how many rows they are instead."""
    assert questions().ask_each("until piece measures 12 cm", "40") == CountAnswer()
    assert "say how many rows they are, not how long" in capsys.readouterr().out


def test_rows_of_which_the_last_changes_the_number_need_no_list(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """ "Inc 2 sts in the last row": Enter takes it; elsewhere the word is enough."""
    asked = questions(before=42)
    type_answers(monkeypatch, "")
    assert asked.ask_each("4", "44", "Rib 4 rows and inc 2 sts in the last row.") == CountAnswer(each=(42, 42, 42, 44))
    assert "[it changes in the last]" in capsys.readouterr().out
    type_answers(monkeypatch, "last")
    assert asked.ask_each("4", "45") == CountAnswer(each=(42, 42, 42, 45))


def test_rows_that_lose_as_many_each_are_proposed_so(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    """Five rows from 90 to 80 lose two each; where that does not come out nothing is proposed."""
    asked = questions(before=90)
    type_answers(monkeypatch, "")
    assert asked.ask_each("5", "80") == CountAnswer(each=(88, 86, 84, 82, 80))
    assert "[88 86 84 82 80]" in capsys.readouterr().out
    type_answers(monkeypatch, "", "89 87 83")
    assert asked.ask_each("3", "83") == CountAnswer(each=(89, 87, 83))
