"""What is known of a row before she answers. All rows are invented."""

from __future__ import annotations

from stepper.project.page.unread.left_open import find_left_open
from stepper.project.page.unread.proposals import Kept
from stepper.settling.rows_asked import is_remark, look_at
from tests.settling.test_row_questions import file_with


def test_the_number_before_is_not_known_behind_an_open_row() -> None:
    """That row may change it."""
    text = file_with("Twirl k2 in loops.", "Twirl again.")
    first, second = (look_at(each, text) for each in find_left_open(text))
    assert (first.so_far.stitches, second.so_far.stitches) == (44, None)


def test_a_row_knows_what_it_may_be() -> None:
    """A remark, words that it is read without, sentences of several kinds, words that cannot be kept."""
    text = file_with("It is soft.", "Knit 4 rounds, not like a drum.", "Lay it flat. Graft the sts tog.", "Twirl 12, turn, twirl.")
    soft, drum, graft, turn = find_left_open(text)
    assert [is_remark(each) for each in (soft, drum, graft, turn)] == [True, False, False, False]
    (mend,) = look_at(drum, text).mends
    assert mend.words == "not like a drum"
    assert look_at(graft, text).sentence_kinds == (Kept.NOTE, Kept.BIND_OFF)
    assert "the row is turned before its end" in look_at(turn, text).refused
