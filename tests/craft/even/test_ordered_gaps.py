"""Gaps in a given order as a phrase: the same gaps, in few words."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.even.ordered_gaps import write_gaps
from stepper.craft.even.phrases import MAKE_ONE, Repeat, Stretch, unfold, words_in


@given(st.lists(st.integers(0, 3), max_size=40).map(tuple))
def test_the_gaps_stay_the_same(gaps: tuple[int, ...]) -> None:
    """A phrase that loses or moves a gap is a wrong round."""
    assert unfold(write_gaps(gaps, MAKE_ONE)) == (gaps, 0)


@given(st.lists(st.integers(1, 3), min_size=1, max_size=40).map(tuple))
def test_no_phrase_is_longer_than_the_gaps_one_by_one(gaps: tuple[int, ...]) -> None:
    """ "Then" aside, which is not weighed: at most one for each part."""
    one_by_one = tuple(Stretch(gap) for gap in gaps)
    assert words_in(write_gaps(gaps, MAKE_ONE), MAKE_ONE) <= words_in(one_by_one, MAKE_ONE) + len(gaps)


def test_repeats_are_found_and_nested() -> None:
    """Three times (4, 4, 4, 3) and then 3 over and over."""
    assert write_gaps((4, 4, 4, 3) * 3 + (3, 3, 3), MAKE_ONE) == (
        Repeat((Stretch(4, 3), Stretch(3)), 3),
        Stretch(3, 3),
    )
    assert write_gaps((5,) * 9, MAKE_ONE) == (Stretch(5, 9),)
    nested = write_gaps((2, 1, 2, 1, 2, 1, 3) * 4, MAKE_ONE)
    assert nested == (Repeat((Repeat((Stretch(2), Stretch(1)), 3), Stretch(3)), 4),)
