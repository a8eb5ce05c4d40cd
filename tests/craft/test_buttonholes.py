"""Buttonholes lie where the trade puts them: the outer ones so far from the ends, the gaps alike."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.buttonholes import space_buttonholes


@given(st.integers(2, 12), st.integers(1, 4), st.integers(0, 8), st.integers(0, 200))
def test_the_gaps_between_buttonholes_differ_by_at_most_one(number: int, width: int, ends: int, free: int) -> None:
    """A band buttons flat only where the buttons pull alike."""
    stitches = 2 * ends + number * width + (number - 1) + free
    places = space_buttonholes(stitches, number, width, ends)
    between = [later - one - width for one, later in pairwise(places)]
    assert (places[0], stitches - places[-1] - width, len(places)) == (ends, ends, number)
    assert max(between) - min(between) <= 1
    assert min(between) >= 1


@pytest.mark.parametrize(
    ("stitches", "number", "width", "ends", "gaps"),
    [
        (113, 7, 2, 4, [16, 15, 15, 15, 15, 15]),  # "rib 4, (yrn, work 2 tog, rib 15) …": 91 over six gaps
        (81, 5, 3, 4, [15, 15, 14, 14]),
        (30, 3, 2, 5, [7, 7]),
    ],
)
def test_buttonholes_lie_as_a_band_worked_out_by_hand(
    stitches: int, number: int, width: int, ends: int, gaps: list[int]
) -> None:
    """Worked out by hand; common practice. Which of the gaps is the longer one does not matter."""
    places = space_buttonholes(stitches, number, width, ends)
    between = [later - one - width for one, later in pairwise(places)]
    assert sorted(between, reverse=True) == gaps


@pytest.mark.parametrize(("stitches", "number"), [(10, 4), (60, 1), (0, 2)])
def test_buttonholes_without_room_are_refused(stitches: int, number: int) -> None:
    """Two buttonholes without a stitch between them are one hole."""
    with pytest.raises(ValueError, match="do not fit"):
        space_buttonholes(stitches, number, 2, 2)
