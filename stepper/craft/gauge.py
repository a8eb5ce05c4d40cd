"""Gauge: how counts of stitches and rounds turn into lengths, and back.

A gauge is kept as stitches and rounds over 10 cm. Four inches are 10.16 cm, not 10: over a body of a metre
the difference is three and a half stitches, so the two are kept apart here. Lengths inside the program are
millimetres; `to_mm` and `from_mm` convert at the edges. No I/O.
"""

from __future__ import annotations

import math
from typing import Literal

from stepper.craft.bounds import require_finite, require_not_negative, require_positive
from stepper.records import dataclass

Unit = Literal["mm", "cm", "in"]

SPAN_MM = 100.0
"""The length over which a gauge is counted. Unit: mm."""

_MM_PER: dict[str, float] = {"mm": 1.0, "cm": 10.0, "in": 25.4}
# The inch is 25.4 mm exactly: International Yard and Pound agreement of 1959.


def to_mm(length: float, unit: Unit) -> float:
    """Turn a length into millimetres.

    Args:
        length: Any finite number.
        unit: `mm`, `cm` or `in`.

    Raises:
        ValueError: The unit is none of these or the length is not finite.

    Source: 1 in = 25.4 mm exactly (international inch, 1959).
    """
    return require_finite(length, "a length") * _mm_per(unit)


def from_mm(length_mm: float, unit: Unit) -> float:
    """Turn millimetres into another unit.

    Args:
        length_mm: Any finite number. Unit: mm.
        unit: `mm`, `cm` or `in`.

    Raises:
        ValueError: The unit is none of these or the length is not finite.

    Source: 1 in = 25.4 mm exactly (international inch, 1959).
    """
    return require_finite(length_mm, "a length") / _mm_per(unit)


@dataclass(frozen=True, slots=True, kw_only=True)
class Gauge:
    """Stitches and rounds over 10 cm of one fabric."""

    stitches: float
    """Unit: stitches per 10 cm. Range: above 0."""
    rounds: float
    """Unit: rounds (or rows) per 10 cm. Range: above 0."""

    def __post_init__(self) -> None:
        """Refuse an impossible gauge.

        Raises:
            ValueError: A number is not above 0 or not finite.
        """
        for name, value in (("stitches", self.stitches), ("rounds", self.rounds)):
            require_positive(value, f"gauge {name}")

    @classmethod
    def over_four_inches(cls, *, stitches: float, rounds: float) -> Gauge:
        """Make a gauge from counts over 4 in, as printed in inch patterns.

        Args:
            stitches: Unit: stitches per 4 in. Range: above 0.
            rounds: Unit: rounds per 4 in. Range: above 0.

        Raises:
            ValueError: A number is not above 0.

        Source: 4 in = 101.6 mm; 22 over 4 in is 21.654 over 10 cm.
        """
        factor = SPAN_MM / to_mm(4, "in")
        return cls(stitches=stitches * factor, rounds=rounds * factor)

    @property
    def stitch_mm(self) -> float:
        """Width of one stitch. Unit: mm."""
        return SPAN_MM / self.stitches

    @property
    def round_mm(self) -> float:
        """Height of one round. Unit: mm."""
        return SPAN_MM / self.rounds

    def width_mm(self, stitches: float) -> float:
        """Return the width of a count of stitches. Unit: mm. Source: count times width."""
        return require_not_negative(stitches, "stitches") * self.stitch_mm

    def height_mm(self, rounds: float) -> float:
        """Return the height of a count of rounds. Unit: mm. Source: count times height."""
        return require_not_negative(rounds, "rounds") * self.round_mm


def half_up(value: float) -> int:
    """Round to the nearest whole number, with halves rounded up.

    Python's own `round` takes a half to the even neighbour, so 2.5 and 3.5 rounds would go different ways. A
    tiny shortfall from a half, due to binary fractions, counts as the half.

    Raises:
        ValueError: The value is not finite.

    Source: common practice.
    """
    return math.floor(round(require_finite(value, "a length or count"), 9) + 0.5)


def correct_gauge(*, worked: int, measured_mm: float) -> float:
    """Return the gauge actually knitted, from a measurement. Unit: rounds per 10 cm.

    Args:
        worked: Rounds worked in the measured piece. Range: 1 and up.
        measured_mm: Its length. Range: above 0. Unit: mm.

    Raises:
        ValueError: An argument is out of range.

    Source: proportion.
    """
    if worked < 1:
        raise ValueError(f"worked rounds must be a whole number from 1 up (got {worked}).")
    return worked / require_positive(measured_mm, "measured length") * SPAN_MM


def _mm_per(unit: str) -> float:
    if unit not in _MM_PER:
        raise ValueError(f'a length is in mm, cm or in (got "{unit}").')
    return _MM_PER[unit]
