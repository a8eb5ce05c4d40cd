from __future__ import annotations

import pytest

from stepper.language.measures import gauge, length, many_stitches, plural, weight


@pytest.mark.parametrize(
    ("length_mm", "units", "said"),
    [
        (320.0, "cm", "32 cm"),
        (325.0, "cm", "32.5 cm"),
        (325.04, "cm", "32.5 cm"),
        (100.0, "cm", "10 cm"),
        (317.5, "in", "12.5 in"),
        (323.85, "in", "12.75 in"),
        (254.0, "in", "10 in"),
    ],
)
def test_lengths_are_said_in_the_units_of_the_pattern(length_mm: float, units: str, said: str) -> None:
    """To the millimetre or the hundredth of an inch, without noughts at the end. Source: 1 in = 25.4 mm."""
    assert length(length_mm, units) == said


def test_gauges_are_said_over_what_a_gauge_is_given_over() -> None:
    """Ten centimetres, or four inches, which are 10.16 cm: 30 rounds to one are 30.5 to the other."""
    assert gauge(30.0, "cm") == "30 rounds to 10 cm"
    assert gauge(30.0, "in") == "30.5 rounds to 4 in"
    assert (gauge(1.0, "cm"), gauge(0.98425, "in")) == ("1 round to 10 cm", "1 round to 4 in")
    assert (gauge(1.04, "cm"), gauge(1.1, "cm")) == ("1 round to 10 cm", "1.1 rounds to 10 cm")


def test_weights_and_counted_things() -> None:
    """One is one and two are many."""
    assert (weight(42.0), weight(42.55)) == ("42 g", "42.5 g")
    assert (plural(1, "round"), plural(0, "round"), plural(2, "stitch", "stitches")) == (
        "1 round",
        "0 rounds",
        "2 stitches",
    )


def test_many_stitches_are_told_in_thousands() -> None:
    """"Thirteen thousand six hundred eighty four" says nothing more than "about fourteen thousand"."""
    assert many_stitches(1) == "1 stitch"
    assert many_stitches(9999) == "9999 stitches"
    assert many_stitches(13684) == "about 14 thousand stitches"
