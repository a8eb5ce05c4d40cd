"""Bounds on the numbers that are passed to formulas. No I/O."""

from __future__ import annotations

import math


def require_finite(value: float, what: str) -> float:
    """Return a number that is finite.

    Raises:
        ValueError: It is infinite or NaN.
    """
    if not math.isfinite(value):
        raise ValueError(f"{what} must be a finite number (got {value}).")
    return value


def require_positive(value: float, what: str) -> float:
    """Return a number that is finite and above 0.

    Raises:
        ValueError: It is not.
    """
    if not (math.isfinite(value) and value > 0):
        raise ValueError(f"{what} must be above 0 (got {value}).")
    return value


def require_not_negative(value: float, what: str) -> float:
    """Return a number that is finite and 0 or more.

    Raises:
        ValueError: It is not.
    """
    if not (math.isfinite(value) and value >= 0):
        raise ValueError(f"{what} must be 0 or more (got {value}).")
    return value
