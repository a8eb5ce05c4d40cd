"""The same questions at the keyboard: one after the other, and back to the one before."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.project.page.unread.left_open import LeftKind, find_left_open
from stepper.settling.file_in_hand import take_in_hand
from stepper.settling.part_questions import ask_stitches, row_by_parts
from stepper.settling.prompting import BackAsked, StopAsked
from stepper.settling.rows_asked import look_at
from tests.project.samples import project
from tests.settling.typed import type_answers
from tests.tables import each_row

MARK = "# LOOK (row 9 of the text)."


def ask(words: str, *, above: str = "Cast on 40 sts. Work flat.\nKnit 2 rows.") -> list[tuple[str, ...]]:
    """Ask of the stitches of a row; return the forms in which it may be written."""
    text = project(f"{above}\n{MARK}\nNote: {words}\nKnit 2 rows.", sizes="one", size="one")
    left = next(each for each in find_left_open(text) if each.kind is LeftKind.ROW)
    asked = look_at(left, text)
    row = row_by_parts(asked)
    assert row is not None
    return list(ask_stitches(asked, row, take_in_hand(text, Path())))


TURNED = "Own words, work 12 sts, turn, hold 28 sts: Twirl to the gap and turn."
HELD = "Cast on 40 sts.\nJoin in the round.\nK30, hold 10 for thumb.\nBind off."


@each_row(
    ("words", "above", "typed", "written"),
    [
        ("Twirl to the gap and turn.", "", ("no", "12", "yes", "yes", "yes"), TURNED),
        ("Twirl to the gap and turn.", "", ("no", "13", "back", "12", "yes", "yes", "yes"), TURNED),
        ("Twirl to the gap and turn.", "", ("no", "130", "many", "yes", "12", "yes", "yes", "no", "yes", "yes"), TURNED),
        ("Twirl to the gap and turn.", "", ("yes", "yes", "yes"), "Own words: by the words above. 40 sts."),
        ("Twirl 5, turn, twirl 2, turn.", "", ("yes", "yes", "yes"), "Own words: by the words above, row 2 of 2."),
        ("Go back to the held twirls.", HELD, ("yes", "yes", "yes", "yes"), "Join in the round."),
        ("Go back to the held twirls.", HELD, ("no", "24", "yes", "yes"), "Own words, pick up 24 sts: Go back to the held twirls."),
        ("Go back to the held twirls.", HELD, ("no", "24", "no", "yes", "yes"), "Own words, cast on 24 sts: Go back to the held twirls."),
        ("Go back to the held twirls.", HELD, ("no", "no", "yes"), "Note: Go back to the held twirls."),
    ],
)
def test_the_row_is_written_as_it_was_answered(words: str, above: str, typed: tuple[str, ...], written: str) -> None:
    """In the words that every line of the file has."""
    with pytest.MonkeyPatch.context() as patch:
        type_answers(patch, *typed)
        forms = ask(words, above=above) if above else ask(words)
    assert any(written in form for form in forms)


def test_back_before_the_first_leads_to_what_it_is_and_the_end_of_the_input_ends_it(monkeypatch: pytest.MonkeyPatch) -> None:
    """As everywhere in these questions."""
    type_answers(monkeypatch, "back")
    with pytest.raises(BackAsked):
        ask("Twirl to the gap and turn.")
    type_answers(monkeypatch, "no", "12")
    with pytest.raises(StopAsked):
        ask("Twirl to the gap and turn.")


def test_what_she_counts_on_her_needles_is_kept_for_her_size_and_not_asked_of_every(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """The numbers of size M were written for all of them, and `check` refused the others."""
    type_answers(monkeypatch, "no", "12", "yes", "yes", "yes")
    text = project(f"Cast on 40 (50) sts. Work flat.\nKnit 2 rows.\n{MARK}\nNote: Twirl, turn.\nKnit 2 rows.", sizes="S (M)", size="S")
    asked = look_at(next(each for each in find_left_open(text) if each.kind is LeftKind.ROW), text)
    row, file = row_by_parts(asked), take_in_hand(text, Path())
    assert row is not None
    assert ask_stitches(asked, row, file)
    assert file.alone
    assert "only: S" in file.text
    assert "for every size" not in (told := capsys.readouterr().out)
    assert "kept for size S alone" in " ".join(told.split())


def test_a_row_whose_count_is_enough_is_not_asked_so() -> None:
    """Nor one of which nothing is known."""
    text = project(f"Cast on 40 sts.\nJoin in the round.\n{MARK}\nNote: Twirl k2 in loops.\nBind off.", sizes="one", size="one")
    left = next(each for each in find_left_open(text) if each.kind is LeftKind.ROW)
    assert row_by_parts(look_at(left, text)) is None


def test_a_number_that_the_page_does_not_take_is_asked_for_again(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """A moss stitch that begins and ends alike needs an odd number; what is written is hers."""
    words = "Pick up and knit an odd number of sts (approx 95-107) around neck."
    type_answers(monkeypatch, "100", "101", "no", "no", "yes")
    first, *_ = ask(words, above="Cast on 40 sts. Work flat.\nBind off.")
    assert first[0].startswith("Own words, pick up 101 sts: ")
    assert "100 cannot be: it is to be an odd number." in " ".join(capsys.readouterr().out.split())
