"""The smallest change with which a row is read: what is shown, asked, written, remembered. All rows are invented."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.plan.mended import Worked
from stepper.project.page.unread.left_open import LeftKind, find_left_open
from stepper.settling.file_in_hand import take_in_hand
from stepper.settling.mend_questions import ask_mended, find_fitting, say_worked
from stepper.settling.prompting import BackAsked, LaterAsked
from stepper.settling.row_questions import ask_row
from stepper.settling.rows_asked import look_at
from stepper.settling.walk import Settling
from tests.project.samples import project
from tests.settling.typed import type_answers


def file_with(*rows: str, behind: str = "Bind off.") -> str:
    """Put unread rows into a hat of 40 (44, 48) stitches in the round."""
    marked = "\n".join(f"# LOOK (row {at} of the text).\nNote: {row}" for at, row in enumerate(rows, start=9))
    return project(f"Cast on 40 (44, 48) sts.\nJoin in the round.\n{marked}\n{behind}", size="M")


def offer(text: str) -> list[str]:
    """Offer a change of the first open row; return the rows of the file that are new."""
    left = next(each for each in find_left_open(text) if each.kind is LeftKind.ROW)
    asked, file = look_at(left, text), take_in_hand(text, Path())
    new, _ = ask_mended(asked, file, find_fitting(asked, file))
    rows = text.split("\n")
    others = {*rows[: left.first - 1], *rows[left.last :]}
    return [row.strip() for row in new.split("\n") if row not in others] if new else []


@pytest.mark.parametrize(
    ("words", "answer", "rows"),
    [
        ("Knit 4 rounds (as on my drawing).", "no", ["Note: … as on my drawing", "Knit 4 rounds."]),
        ("Knit 4 rounds (as on my drawing).", "yes", []),
        ("Knlt 4 rounds.", "y", ['# "knit" is printed "Knlt" in the row below.', "Knit 4 rounds."]),
        ("Knlt 4 rounds.", "n", []),
        (
            "Knit 4 rounds and begin the wall. Twirl it.",
            "y",
            ["Knit 4 rounds.", "# LOOK (row 9 of the text).", "Note: Begin the wall. Twirl it."],
        ),
        ("Knit 4 rounds and begin the wall. Twirl it.", "n", []),
    ],
)
def test_the_row_is_written_as_she_answers(
    words: str, answer: str, rows: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """The words struck stay in the file as a note, which is said; what is not taken is still open."""
    type_answers(monkeypatch, answer)
    assert offer(file_with(words)) == rows


def test_the_words_in_question_are_marked_and_the_rest_is_told_in_rounds(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """They are seen on a screen without colour, too."""
    type_answers(monkeypatch, "no")
    offer(file_with("*K2tog, k2; rep from * to end (as on my drawing)."))
    shown = capsys.readouterr().out
    assert "*K2tog, k2; rep from * to end (>>as on my drawing<<)." in shown
    assert "Read so: *K2tog, k2; rep from * to end." in shown
    assert "1 round, 33 sts after; it was 44 before." in shown
    assert 'Do the words "as on my drawing" change anything you knit? yes or no' in shown


def test_the_row_is_shown_once(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """With its words marked if there is an offer, else with why it is not read."""
    path = tmp_path / "hat.yaml"
    path.write_text(file_with("Knit 4 rounds (as on my drawing).", "Knot 4 sts."), encoding="utf-8")
    type_answers(monkeypatch, "note", "note")
    Settling(path=path).run()
    shown = capsys.readouterr().out
    assert "(as on my drawing)" not in shown.replace("Written: Note: Knit 4 rounds (as on my drawing)", "")
    assert shown.count("(>>as on my drawing<<)") == 1
    assert shown.count("  Knot 4 sts.\n") == 1


def test_any_other_answer_says_what_the_row_is(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    """Nobody has to refuse first."""
    text = file_with("Knit 4 rounds (as on my drawing).")
    (left,) = find_left_open(text)
    type_answers(monkeypatch, "?", "note")
    new = ask_row(look_at(left, text), take_in_hand(text, Path()))
    assert "Note: Knit 4 rounds (as on my drawing)." in new
    shown = capsys.readouterr().out
    assert "no: the row is read without these words" in shown
    assert "What is it?" not in shown


def test_of_what_works_no_row_nothing_is_told(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    """A change of needles has no stitches."""
    type_answers(monkeypatch, "y")
    assert offer(file_with("Change to 5 mm needles and patt the walls."))
    assert "sts after" not in capsys.readouterr().out


def test_below_an_order_that_stays_open_no_figures_are_shown(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """It may change them, and is asked about next."""
    type_answers(monkeypatch, "no")
    assert offer(file_with("Twirl k2 in loops. Knit 4 rounds (as on my drawing).")) == [
        "# LOOK (row 9 of the text).",
        "Note: Twirl k2 in loops.",
        "Note: … as on my drawing",
        "Knit 4 rounds.",
    ]
    shown = capsys.readouterr().out
    assert "What stands open above it may change what it comes to." in shown
    assert "44 sts" not in shown


def test_only_what_is_told_beside_the_work_is_struck_by_enter(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Of a slip and of a second order she has to say it."""
    type_answers(monkeypatch, "")
    assert offer(file_with("Knit 4 rounds (as on my drawing)."))
    for words in ("Knlt 4 rounds.", "Knit 4 rounds and begin the wall."):
        type_answers(monkeypatch, "", "later")
        capsys.readouterr()
        with pytest.raises(LaterAsked):
            offer(file_with(words))
        assert "[" not in capsys.readouterr().out.split("?")[-2].rsplit("\n", 1)[-1]


@pytest.mark.parametrize(
    ("words", "behind"),
    [
        ("*K2tog, k2; rep from * to end (as on my drawing). 40 (44, 48) sts.", "Bind off."),
        ("*K2tog, k2; rep from * to end (as on my drawing).", "Knit 1 round. 40 (44, 48) sts."),
        ("*K2tog, k7; rep from * to end (as on my drawing).", "Bind off."),
        ("Bind off (as on my drawing).", "Knit 1 round."),
        ("Finlsh off the wall in front of you.", "Bind off."),
    ],
)
def test_what_does_not_fit_is_not_offered(words: str, behind: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """A count in the line or below it, stitches left over, nothing on the needles: nothing is asked."""
    type_answers(monkeypatch)
    assert offer(file_with(words, behind=behind)) == []


def test_words_that_mean_nothing_are_asked_about_once_in_a_file(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """That is told; in another file they are asked about again."""
    rows = ("Knit 4 rounds (as on my drawing).", "Purl 2 rounds (as on my drawing).")
    path = tmp_path / "hat.yaml"
    path.write_text(file_with(*rows), encoding="utf-8")
    type_answers(monkeypatch, "no")
    assert Settling(path=path).run()
    shown = capsys.readouterr().out
    assert shown.count("change anything you knit?") == 1
    assert 'Read without "as on my drawing", as before: Purl 2 rounds.' in shown
    assert path.read_text().count("Note: … as on my drawing") == 2
    assert not find_left_open(path.read_text())


@pytest.mark.parametrize(
    ("worked", "said"),
    [
        (Worked(), ""),
        (Worked(known=False), "What it comes to is not known yet."),
        (Worked(rounds=((44, 44, ()),) * 4, flat=True), "4 rows, 44 sts after, as before."),
        (Worked(rounds=((44, 33, ()),)), "1 round, 33 sts after; it was 44 before."),
    ],
)
def test_what_a_row_comes_to_is_said_shortly(worked: Worked, said: str) -> None:
    """Rows or rounds, the stitches after them, and before them if they are others."""
    assert say_worked(worked) == said


def test_back_from_what_a_row_is_goes_to_the_offer(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    """It is what she answered last; the row before was opened again, and its answer lost."""
    text = file_with("Knit 4 rounds (as on my drawing).")
    (left,) = find_left_open(text)
    type_answers(monkeypatch, "yes", "back", "no")
    new = ask_row(look_at(left, text), take_in_hand(text, Path()))
    assert "Note: … as on my drawing\n" in new
    shown = capsys.readouterr().out
    assert shown.count('Do the words "as on my drawing" change anything you knit?') == 2
    type_answers(monkeypatch, "yes", "back", "back")
    with pytest.raises(BackAsked):
        ask_row(look_at(left, text), take_in_hand(text, Path()))
