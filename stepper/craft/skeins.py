"""Skeins: metres, grams and yarn numbers, what to buy, and what a weighing says.

No I/O.
"""

from __future__ import annotations

import math

from stepper.craft.bounds import require_not_negative, require_positive
from stepper.records import dataclass

YARD_M = 0.9144
"""Unit: m. Source: international yard, 1959, exact."""

OUNCE_G = 28.349523125
"""Unit: g. Source: avoirdupois ounce by the international pound, 1959, exact."""

ALLOWANCE = 0.15
"""Allowance on top of the likely length, for a swatch and to spare. Source: the trade's usual 10 to 15 %
(elizabethsmithknits, 24 May 2024); the upper end, to be on the safe side."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Skein:
    """The contents of one skein according to its label."""

    grams: float
    """Unit: g. Range: above 0."""
    metres: float
    """Unit: m. Range: above 0."""

    def __post_init__(self) -> None:
        """Refuse an empty skein.

        Raises:
            ValueError: A number is not above 0 or not finite.
        """
        for name, value in (("grams", self.grams), ("metres", self.metres)):
            require_positive(value, f"a skein's {name}")

    @property
    def tex(self) -> float:
        """Yarn number. Unit: g per km. Source: definition of tex."""
        return self.grams / self.metres * 1000

    @property
    def metric_count(self) -> float:
        """Yarn number Nm. Unit: m per g. Source: Nm = 1000 / tex."""
        return self.metres / self.grams

    def metres_in(self, grams: float) -> float:
        """Return the length of a weighed amount.

        Args:
            grams: Range: 0 and up. Unit: g.

        Returns:
            Unit: m.

        Raises:
            ValueError: The weight is below 0.

        Source: proportion to the label.
        """
        return require_not_negative(grams, "grams") * self.metric_count

    def grams_of(self, metres: float) -> float:
        """Return the weight of a length.

        Args:
            metres: Range: 0 and up. Unit: m.

        Returns:
            Unit: g.

        Raises:
            ValueError: The length is below 0.

        Source: proportion to the label.
        """
        return require_not_negative(metres, "metres") / self.metric_count


def skeins_to_buy(metres: float, skein_metres: float) -> int:
    """Return how many whole skeins it takes for a length.

    Args:
        metres: Length needed. Range: 0 and up. Unit: m (or any unit, the same as the skein's).
        skein_metres: Length in one skein. Range: above 0.

    Returns:
        Always: that many skeins are enough and one fewer is not.

    Raises:
        ValueError: An argument is out of range.

    Source: exact ceiling.
    """
    needed = require_not_negative(metres, "metres")
    # Exactly ten skeins must not become eleven through rounding in the last bit.
    return math.ceil(round(needed / require_positive(skein_metres, "a skein"), 9))


def metres_to_be_sure(likely: float, high: float) -> float:
    """Return the length to have in the house before the first stitch.

    Args:
        likely: Likely length. Range: 0 and up. Unit: m.
        high: The most the knitting may take. Range: `likely` and up. Unit: m.

    Returns:
        The most it may take, but no less than the likely length with the trade's allowance. Unit: m.

    Raises:
        ValueError: The likely length is below 0.

    Source: `ALLOWANCE`.
    """
    return max(high, require_not_negative(likely, "likely length") * (1 + ALLOWANCE))


def loop_mm_from_weight(grams_used: float, skein: Skein, *, loops: int) -> float:
    """Return the length of one loop from the weight that a known number of loops took.

    Args:
        grams_used: Weight knitted. Range: above 0. Unit: g.
        skein: Label of that yarn.
        loops: Loops knitted with it. Range: 1 and up.

    Returns:
        Unit: mm. Better than any estimate from gauge, since it is her own knitting.

    Raises:
        ValueError: An argument is out of range.

    Source: proportion.
    """
    return (
        skein.metres_in(require_positive(grams_used, "grams used")) * 1000 / require_positive(loops, "loops")
    )
