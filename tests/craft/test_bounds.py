"""Bounds: what is refused, and in which words."""

from __future__ import annotations

import math

import pytest

from stepper.craft.bounds import require_finite, require_not_negative, require_positive

NO_NUMBERS = [math.nan, math.inf, -math.inf]


def test_what_is_within_comes_back_as_it_is() -> None:
    """So that a check stands where the number is used."""
    assert (require_finite(-2.5, "x"), require_not_negative(0, "x"), require_positive(1e-9, "x")) == (
        -2.5,
        0,
        1e-9,
    )


@pytest.mark.parametrize("value", NO_NUMBERS)
def test_what_is_no_number_is_refused_everywhere(value: float) -> None:
    """A length that is no number would spread through every sum it is in."""
    with pytest.raises(ValueError, match="the length must be a finite number"):
        require_finite(value, "the length")
    with pytest.raises(ValueError, match="the length must be above 0"):
        require_positive(value, "the length")
    with pytest.raises(ValueError, match="the length must be 0 or more"):
        require_not_negative(value, "the length")


def test_the_bounds_themselves() -> None:
    """Nothing knitted is a length; a gauge of nothing would divide by 0."""
    with pytest.raises(ValueError, match=r"the gauge must be above 0 \(got 0\)\."):
        require_positive(0, "the gauge")
    with pytest.raises(ValueError, match=r"the width must be 0 or more \(got -0\.5\)\."):
        require_not_negative(-0.5, "the width")
