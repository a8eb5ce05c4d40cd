"""Body sizes: what was seen in print, the holes between sizes, and the honesty of the rest."""

from __future__ import annotations

from itertools import pairwise

import pytest

from stepper.craft.body_sizes import BODY_SIZES, sizes_for_bust
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
    assert sizes_for_bust(to_mm(20, "in")) == sizes_for_bust(1) == ()
    assert sizes_for_bust(to_mm(70, "in")) == ()


def test_a_bust_of_nothing_is_refused() -> None:
    """A measurement is above nought."""
    with pytest.raises(ValueError, match="bust"):
        sizes_for_bust(0)


@pytest.mark.parametrize(
    ("measure", "row"),
    [
        ("bust", "28-30 32-34 36-38 40-42 44-46 48-50 52-54 56-58 60-62"),
        ("back_waist", "16.5 17 17.25 17.5 17.75 18 18 18.5 18.5"),
        ("arm", "16.5 17 17 17.5 17.5 18 18 18.5 18.5"),
        ("upper_arm", "9.75 10.25 11 12 13.5 15.5 17 18.5 19.5"),
        ("armhole", "6-6.5 6.5-7 7-7.5 7.5-8 8-8.5 8.5-9 9-9.5 9.5-10 10-10.5"),
        ("waist", "23-24 25-26.5 28-30 32-34 36-38 40-42 44-45 46-47 49-50"),
        ("hip", "33-34 35-36 38-40 42-44 46-48 52-53 54-55 56-57 61-62"),
    ],
)
def test_each_row_is_as_it_was_written_down(measure: str, row: str) -> None:
    """The table is turned on its side in the code, a size a row; a figure that slips there is a garment too small.
    Status: from memory, except the upper bounds of the bust (seen second-hand)."""
    printed = [tuple(float(each) for each in cell.split("-")) for cell in row.split()]
    assert [getattr(size, measure) for size in BODY_SIZES] == [(cell[0], cell[-1]) for cell in printed]
    assert [size.name for size in BODY_SIZES] == ["XS", "S", "M", "L", "1X", "2X", "3X", "4X", "5X"]
