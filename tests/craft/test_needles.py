"""Needle sizes against published conversion tables."""

from __future__ import annotations

import re
from itertools import pairwise

import pytest

from stepper.craft.needles import NEEDLE_SIZES, NEEDLES, SIZE, is_same_needle, needle_from_uk, needle_from_us
from tests.tables import each_row

# Rows on which the published tables agree (fineleaffibres.com "US to mm", sizechartly.com).
AGREED = {
    "0": 2.0, "3": 3.25, "4": 3.5, "5": 3.75, "6": 4.0, "7": 4.5, "8": 5.0, "9": 5.5,
    "10": 6.0, "10.5": 6.5, "11": 8.0, "13": 9.0, "15": 10.0, "50": 25.0,
}  # fmt: skip

# Both diameters met in print.
DISPUTED = {"000": (1.5, 1.25), "00": (1.75, 1.5), "2": (2.75, 3.0), "17": (12.75, 12.0), "19": (15.0, 16.0)}


@each_row(("us", "mm"), AGREED.items())
def test_agreed_rows_have_one_diameter_and_one_number(us: str, mm: float) -> None:
    """A needle a size off changes every measurement of the garment."""
    size = needle_from_us(us)
    assert (size.mm, size.also_mm) == (mm, ())
    assert [row.us for row in NEEDLE_SIZES if row.mm == mm] == [us]


@pytest.mark.parametrize(("us", "both"), DISPUTED.items())
def test_disputed_rows_carry_both_diameters(us: str, both: tuple[float, float]) -> None:
    """Where tables disagree the row gives both, so that nobody has to believe one."""
    size = needle_from_us(us)
    assert (size.mm, *size.also_mm) == both


def test_category_limits_of_the_yarn_standard_are_in_the_table() -> None:
    """Craft Yarn Council weight chart: 1.5 mm is US 000, 2.25 US 1, 8 mm US 11, 12.75 mm US 17."""
    pairs = {"000": 1.5, "1": 2.25, "3": 3.25, "5": 3.75, "7": 4.5, "9": 5.5, "11": 8.0, "17": 12.75}
    assert {us: needle_from_us(us).mm for us in pairs} == pairs


def test_seven_millimetres_has_no_us_number() -> None:
    """Most tables leave 7 and 7.5 mm out."""
    assert not {7.0, 7.5} & {mm for row in NEEDLE_SIZES for mm in (row.mm, *row.also_mm)}


def test_sizes_rise_and_steps_are_uneven() -> None:
    """One size down is not a constant: 0.25 mm between 3 and 4, 0.5 between 6 and 7, 1.5 to 11."""
    assert all(thin.mm < thick.mm for thin, thick in pairwise(NEEDLE_SIZES))
    assert needle_from_us("4").mm - needle_from_us("3").mm == 0.25
    assert needle_from_us("7").mm - needle_from_us("6").mm == 0.5
    assert needle_from_us("11").mm - needle_from_us("10.5").mm == 1.5


@pytest.mark.parametrize("written", ["10.5", "US 10.5", "us10.5", "10½", "10 1/2", " 10.5 "])
def test_numbers_are_read_as_patterns_write_them(written: str) -> None:
    """The same size in every usual writing."""
    assert needle_from_us(written).mm == 6.5


def test_unknown_sizes_are_refused() -> None:
    """The sentence names the sizes there are."""
    with pytest.raises(ValueError, match='no US needle size "12"; the sizes are 000, 00, 0'):
        needle_from_us("12")


@each_row(
    "written",
    [
        "3.75 mm",
        "3.75mm",
        "size 3.75 mm",
        "US 5",
        "US size 5",
        "US #5",
        "US 10½",
        "US 10 1/2 (6.5 mm)",
        "US 5 (3.75 mm)",
        "US 5 / 3.75mm",
        "(3.75 mm)",
        "3.75 mm (US 5)",
    ],
)
def test_a_size_is_recognised_in_every_usual_writing(written: str) -> None:
    """Writings met in printed patterns (common practice); alone, and in front of the word for the needle."""
    assert re.fullmatch(SIZE, written, re.I)
    assert re.fullmatch(NEEDLES, f"{written} circular needle", re.I)
    assert re.fullmatch(NEEDLES, f"{written} needles", re.I)


def test_smaller_and_larger_name_needles_and_a_bare_number_does_not() -> None:
    """ "Knit 5 needles" is no size: 5 mm and US 5 are different needles."""
    assert re.fullmatch(NEEDLES, "larger double-pointed needles", re.I)
    assert not re.fullmatch(NEEDLES, "5 needles", re.I)
    assert not re.fullmatch(SIZE, "size 5", re.I)


@pytest.mark.parametrize(
    ("written", "millimetres"), [("UK 8", 4.0), ("old UK size 10", 3.25), ("4 mm", None)]
)
def test_an_old_british_number_is_its_diameter(written: str, millimetres: float | None) -> None:
    """The higher the number the thinner the needle. Source: conversion tables, common practice, from memory."""
    assert needle_from_uk(written) == millimetres


def test_a_needle_printed_in_two_ways_is_one_needle() -> None:
    """A gauge "on 3.25 mm" and a line "change to US 3" mean one needle; the neighbours in the table are others, a
    quarter of a millimetre away at least (Craft Yarn Council, needle sizes; from memory)."""
    assert is_same_needle(needle_from_us("3").mm, 3.25)
    assert is_same_needle(3.25, 3.2500001)
    assert not is_same_needle(3.25, 3.262), "a gauge or a table says a hundredth of a millimetre at the most"
    assert not is_same_needle(3.25, 3.0)
    assert not is_same_needle(3.25, 3.5)


def test_old_british_numbers_fall_as_needles_grow() -> None:
    """Fifteen of them, 14 the thinnest and 0 the thickest; each is read, and no other. Common practice, from memory."""
    sizes = [needle_from_uk(f"UK {number}") for number in range(14, -1, -1)]
    assert sizes == [2.0, 2.25, 2.75, 3.0, 3.25, 3.75, 4.0, 4.5, 5.0, 5.5, 6.0, 6.5, 7.0, 7.5, 8.0]
    assert needle_from_uk("UK 15") is None
