"""Lengths and needle sizes as printed."""

from __future__ import annotations

import pytest

from stepper.project.lengths import read_length, read_needle, read_number, us_number


@pytest.mark.parametrize(
    ("text", "mm"),
    [
        ("32 cm", 320.0),
        ("85 mm", 85.0),
        ("10 in", 254.0),
        ("10½ in", 266.7),
        ("10 1/2 inches", 266.7),
        ('10 1/2"', 266.7),
        ("¾ in", 19.05),
        ("3.75 cm", 37.5),
    ],
)
def test_a_length_is_read_in_its_own_unit(text: str, mm: float) -> None:
    """Source: 1 in = 25.4 mm exactly (international inch, 1959)."""
    values, trouble = read_length(text)
    assert trouble == ""
    assert values == pytest.approx((mm,))


def test_a_length_without_a_unit_is_in_the_unit_of_the_file() -> None:
    """`units: in` holds for every length that names none."""
    assert read_length("10")[0] == (100.0,)
    assert read_length("10", inches=True)[0] == (254.0,)


def test_a_list_of_lengths_shares_one_unit() -> None:
    """`30 (31, 32) cm` is three lengths."""
    assert read_length("30 (31, 32) cm")[0] == (300.0, 310.0, 320.0)


@pytest.mark.parametrize("text", ["", "cm", "about 3 cm", "-3 cm", "0 cm", "1/0 in", "99999 cm"])
def test_what_is_no_length_is_told_so(text: str) -> None:
    """A length is above nothing and below ten metres."""
    values, trouble = read_length(text)
    assert values == ()
    assert trouble


@pytest.mark.parametrize(
    ("text", "mm"),
    [
        ("3.75 mm", 3.75),
        ("US 5 (3.75 mm) needles", 3.75),
        ("US 5 needles", 3.75),
        ("US 10.5", 6.5),
        ("4½ mm", 4.5),
        ("3 1/2 mm needles", 3.5),
        ("4,5 mm", 4.5),
    ],
)
def test_a_needle_is_known_by_its_diameter(text: str, mm: float) -> None:
    """Source: needle tables that agree (check-values 1.3, published)."""
    assert read_needle(text) == mm


@pytest.mark.parametrize("text", ["US 17", "US 99", "thick", "0.1 mm", "400 mm"])
def test_a_needle_with_two_diameters_in_print_is_not_guessed(text: str) -> None:
    """Source: check-values 1.3.5, US 17 is 12.75 or 12 mm."""
    assert read_needle(text) is None


def test_numbers_with_fractions() -> None:
    """Halves come as a sign, as two numbers, or as a decimal."""
    assert read_number("10½") == read_number("10 1/2") == read_number("10.5") == 10.5
    assert read_number("½") == 0.5
    assert read_number("ten") is None
    assert read_number("11/2") is None, "one and a half that lost its space in copying"


def test_a_us_number_is_found_in_its_table() -> None:
    """A page that prints two sizes is checked against it. Source: `stepper.craft.needles.NEEDLE_SIZES`."""
    row = us_number("US size 8 (3.5 mm) needles")
    assert row is not None
    assert row.mm == 5.0
    assert us_number("US #8") == row
    assert us_number("3.5 mm") is None
    assert us_number("US 99") is None
