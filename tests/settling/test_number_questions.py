"""Questions about the numbers of a row: what is proposed, what is taken, what is refused."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.project.page.unread.answers import AnsweredNumber
from stepper.project.page.unread.proposals import Kept, Proposal
from stepper.settling.file_in_hand import take_in_hand
from stepper.settling.number_questions import CountAnswer, NumberQuestions, RowNumbers
from tests.project.samples import project
from tests.settling.typed import type_answers
from tests.tables import each_row


def questions(proposal: Proposal | None = None, before: int | None = 44, words: str = "Twirl.") -> NumberQuestions:
    """Make the questions of a row in a file of three sizes, knitted in the second."""
    file = take_in_hand(project("Cast on 40 (44, 48) sts.", size="M"), Path())
    proposed = proposal or Proposal(kept=Kept.ROWS, rows="1")
    return NumberQuestions(proposal=proposed, before=before, file=file, words=words, flat=True)


def read(asked: NumberQuestions, answer: str) -> RowNumbers:
    """Read an answer that will do."""
    found = asked.read(answer)
    assert isinstance(found, RowNumbers)
    return found


def test_what_is_printed_is_taken_by_enter_and_asks_for_no_size(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """It is the page's own, for all its sizes."""
    asked = questions(Proposal(kept=Kept.HOLD, rows="4 (5, 6)", count="50 (54, 58)", moved="8 (9, 10) for thumb"), 54)
    type_answers(monkeypatch, "", "")
    assert asked.ask_numbers() == RowNumbers(rows="4 (5, 6)", count=CountAnswer(text="50 (54, 58)"))
    assert "[4 (5, 6) rows, then 50 (54, 58) sts as printed]" in capsys.readouterr().out
    assert asked.ask_rest() == "50 (54, 58)"
    assert asked.ask_held() == "8 (9, 10) for thumb"
    assert asked.typed == []


@each_row(
    ("answer", "rows", "count", "typed"),
    [
        ("same", "1", "", 0),
        ("the same", "1", "", 0),
        ("54 sts", "1", "54", 1),
        ("50 54 58 sts", "1", "50 (54, 58)", 1),
        ("50 (54, 58) stitches", "1", "50 (54, 58)", 1),
        ("+4", "1", "4 sts inc'd", 1),
        ("-4 sts", "1", "4 sts dec'd", 1),
        ("12 rows", "12", "", 1),
        ("12 rows, same", "12", "", 1),
        ("12 (13, 14) rows then 44", "12 (13, 14)", "44", 2),
        ("1 row, 50", "1", "50", 1),
        ("12, 44", "12", "44", 2),
        ("until 12 cm, same", "until piece measures 12 cm", "", 0),
        ("until 12 (13, 14) cm; 44 sts", "until piece measures 12 (13, 14) cm", "44", 1),
        ("for 7 cm", "for 7 cm", "", 0),
    ],
)
def test_one_answer_says_rows_and_stitches(answer: str, rows: str, count: str, typed: int) -> None:
    """What it leaves out is as it stands in brackets; what she typed is hers."""
    found = read(questions(), answer)
    assert (found.rows, found.count, len(found.typed)) == (rows, CountAnswer(text=count), typed)


def test_the_same_is_said_as_such() -> None:
    """The number on the needles stands beside it, so that she can compare; where it is not known that is said."""
    asked = questions()
    assert asked.say(asked.propose()) == "1 row, then 44 sts as before"
    asked = questions(before=None)
    assert asked.say(asked.propose()) == "1 row, then as many sts as before"


@pytest.mark.parametrize("words", ["Dec 1 loop at the edge.", "Casting off 2 loops, twirl.", "Increase by twirling."])
def test_words_that_change_the_number_do_not_propose_the_same(
    words: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Enter must not make a plain row of a decrease whose count is not printed."""
    asked = questions(words=words)
    assert asked.propose().count is None
    type_answers(monkeypatch, "", "2 rows", "1 row, 43")
    found = asked.ask_numbers()
    assert found is not None
    assert found.count == CountAnswer(text="43")
    shown = capsys.readouterr().out
    assert "(known: 1 row)" in shown
    assert shown.count("Say how many stitches after them, too") == 1
    assert questions(words="Twirl without shaping.").propose().count == CountAnswer()


@pytest.mark.parametrize("answer", ["many", "43", "+x", "12 13", "+", "rows", ""])
def test_what_does_not_say_of_which_a_number_is_is_no_answer(answer: str) -> None:
    """ "43" may be rows or stitches; where rows are asked for, it is rows."""
    assert questions().read(answer) is None
    assert isinstance(questions().read("43", bare=True), RowNumbers)


@pytest.mark.parametrize("answer", ["0 sts", "99999 sts", "0 rows", "2001 rows", "12 rows, 0", "12 rows, 40 44", "-0"])
def test_a_number_that_cannot_be_is_told(answer: str) -> None:
    """And not kept."""
    assert isinstance(questions().read(answer), str)


def test_printed_lists_of_another_length_are_not_proposed(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """They are of something else, or torn."""
    asked = questions(Proposal(kept=Kept.CAST_ON, count="50 (54)", moved="50 (54)", rows="2 (3)"))
    type_answers(monkeypatch, "", "7", "", "8, same")
    assert asked.ask_moved("cast on") == "7"
    assert asked.ask_moved("cast on", "9") == "9"
    assert asked.moved_proposed() == ""
    found = asked.ask_numbers()
    assert found is not None
    assert (found.rows, found.count) == ("8", CountAnswer())
    shown = capsys.readouterr().out
    assert "50" not in shown
    assert "(known: 44 sts as before)" in shown


def test_rows_that_change_the_number_are_counted_one_by_one(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """As many as there are rows, and the last is what was said."""
    asked = questions()
    type_answers(monkeypatch, "3 rows, 39", "43 42", "43 42 40", "43 42 39")
    found = asked.ask_numbers()
    assert found is not None
    assert found.count == CountAnswer(each=(43, 42, 39))
    shown = capsys.readouterr().out
    assert "Write 3 numbers" in shown
    assert "The last of them is 39, as was said." in shown
    asked = questions(before=50)
    type_answers(monkeypatch, "2 rows, 48 46")
    assert asked.ask_numbers() == RowNumbers(
        rows="2", count=CountAnswer(each=(48, 46)), typed=(AnsweredNumber(values=(2,)), AnsweredNumber(values=(48,)))
    )


def test_a_length_has_no_number_of_rows_to_count(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    """She is asked how many rows they are instead."""
    type_answers(monkeypatch, "until 12 cm, 40")
    assert questions().ask_numbers() is None
    assert "say how many rows they are, not how long" in capsys.readouterr().out
    asked = questions()
    assert asked.row_by_row(RowNumbers(rows="for 7 cm", count=CountAnswer())) == ()
    assert asked.row_by_row(RowNumbers(rows="3", count=CountAnswer())) == ("", "", "")
    assert asked.row_by_row(RowNumbers(rows="2", count=CountAnswer(each=(43, 42)))) == ("43", "42")


def test_rows_of_which_the_last_changes_the_number_need_no_list(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """ "Inc 2 sts in the last row": Enter takes it; elsewhere the word is enough."""
    rib = Proposal(kept=Kept.ROWS, rows="4", count="44")
    asked = questions(rib, before=42, words="Rib 4 rows and inc 2 sts in the last row. 44 sts.")
    assert asked.propose().count == CountAnswer(text="44", each=(42, 42, 42, 44))
    assert asked.say(asked.propose()) == "4 rows, then 44 sts, and 42 until the last"
    assert read(questions(before=42, words="Inc 2 in the last row."), "4 rows, 44").count == CountAnswer(
        text="44", each=(42, 42, 42, 44)
    )
    asked = questions(before=42)
    type_answers(monkeypatch, "4 rows, 45", "last")
    found = asked.ask_numbers()
    assert found is not None
    assert found.count == CountAnswer(each=(42, 42, 42, 45))


def test_rows_that_lose_as_many_each_are_proposed_so(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    """Five rows from 90 to 80 lose two each; where that does not come out, or only some of them may, nothing is proposed."""
    asked = questions(Proposal(kept=Kept.ROWS, rows="5", count="80"), before=90, words="Take 2 off in each of these.")
    assert asked.propose().count == CountAnswer(text="80", each=(88, 86, 84, 82, 80))
    assert asked.say(asked.propose()) == "5 rows, with 88 86 84 82 80 sts after each"
    assert [each.values for each in asked.propose().typed] == [(88,)]  # a count of each row is for her size alone
    for words in ("Rep these 2 rows until 80 sts are left.", "Take 2 off in every other one of these.", ""):
        some = questions(Proposal(kept=Kept.ROWS, rows="5", count="80"), before=90, words=words)
        assert not some.is_whole(some.propose()), words
    # 76 stands nowhere: the first round may lose all eight, or none.
    assert questions(Proposal(kept=Kept.ROWS, rows="2", count="72"), before=80, words="Lose 8 loops, twirl 1 rnd.").propose().count == CountAnswer(text="72")
    asked = questions(Proposal(kept=Kept.ROWS, rows="3", count="83"), before=90)
    type_answers(monkeypatch, "", "", "89 87 83")
    found = asked.ask_numbers()
    assert found is not None
    assert found.count == CountAnswer(each=(89, 87, 83))


def test_what_stays_beside_stitches_on_hold_is_asked_where_the_row_does_more(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Else it is the rest of them, as the number on hold says."""
    assert questions(words="Twirl 8, the others wait.").ask_rest() == ""
    type_answers(monkeypatch, "many", "", "35")
    assert questions(words="K2 tog, the others wait.").ask_rest() == "35"
    assert "How many stitches stay on the needles after it? Write a number" in capsys.readouterr().out


@pytest.mark.parametrize(("words", "same"), [("K2 tog, twirl.", False), ("Twirl, m1, twirl.", False), ("K2tog, yo, twirl.", True)])
def test_stitches_worked_together_change_the_number_where_none_make_them_good(words: str, *, same: bool) -> None:
    """Lace keeps its number; a lone decrease does not, and Enter must not say so."""
    assert (questions(words=words).propose().count is not None) == same
