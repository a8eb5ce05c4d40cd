"""Body sizes: what was seen in print, the holes between sizes, and the honesty of the rest."""

from __future__ import annotations

from itertools import pairwise

import pytest

from stepper.craft.body_sizes import BODY_SIZES, sizes_for_bust, status_of
from stepper.craft.gauge import to_mm


def test_upper_bust_bounds_are_those_seen_in_print() -> None:
    """A page that follows the Craft Yarn Council prints 30, 34, ... 62 in."""
    assert [size.bust[1] for size in BODY_SIZES] == [30, 34, 38, 42, 46, 50, 54, 58, 62]


def test_bust_rises_by_four_inches_a_size() -> None:
    """Sizes are 2 in wide with holes of 2 in between (arithmetic on the row)."""
    assert all(big.bust[0] - small.bust[0] == 4 for small, big in pairwise(BODY_SIZES))
    assert all(big.bust[0] - small.bust[1] == 2 for small, big in pairwise(BODY_SIZES))


def test_no_measure_shrinks_as_sizes_grow() -> None:
    """A slip of the pen in a row would show as a step down (common sense, no source)."""
    for measure in ("bust", "back_waist", "arm", "upper_arm", "armhole", "waist", "hip"):
        ranges = [getattr(size, measure) for size in BODY_SIZES]
        assert all(least <= most for least, most in ranges)
        assert ranges == sorted(ranges)


def test_a_bust_of_31_inches_is_in_no_size() -> None:
    """It falls between the two smallest; 33 in is inside one; beyond the table there is nothing."""
    assert [size.name for size in sizes_for_bust(to_mm(31, "in"))] == ["XS", "S"]
    assert [size.name for size in sizes_for_bust(to_mm(47, "in"))] == ["1X", "2X"]
    assert [size.name for size in sizes_for_bust(to_mm(33, "in"))] == ["S"]
    assert [size.name for size in sizes_for_bust(to_mm(34, "in"))] == ["S"]
    assert sizes_for_bust(to_mm(20, "in")) == ()
    assert sizes_for_bust(to_mm(70, "in")) == ()


def test_only_the_bust_claims_to_have_been_seen() -> None:
    """Figures from memory say so."""
    assert status_of("bust") == "seen second-hand"
    assert {status_of(m) for m in ("waist", "hip", "upper_arm", "arm", "armhole")} == {"from memory"}


def test_a_bust_of_nothing_is_refused() -> None:
    """A measurement is above nought."""
    with pytest.raises(ValueError, match="bust"):
        sizes_for_bust(0)
