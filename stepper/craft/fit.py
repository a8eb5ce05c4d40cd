"""Fit: how much wider a garment is than its wearer, and the word for it.

No I/O.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

from stepper.craft.gauge import from_mm

FitWord = Literal["very close", "close", "standard", "loose", "oversized"]

# Upper bounds in inches of ease at the chest. Print gives 0; 1 to 2; 2 to 4; 4 to 6; 6 and more.
_BOUNDS_IN: tuple[tuple[float, FitWord], ...] = (
    (0.5, "very close"),
    (2, "close"),
    (4, "standard"),
    (6, "loose"),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Ease:
    """How a garment's measurement stands to the body's."""

    body_mm: float
    """The wearer's measurement. Range: above 0. Unit: mm."""
    garment_mm: float
    """The garment's at the same place. Range: above 0. Unit: mm."""

    def __post_init__(self) -> None:
        """Refuse measurements that cannot be.

        Raises:
            ValueError: One is not above 0 or not finite.
        """
        for name, value in (("body", self.body_mm), ("garment", self.garment_mm)):
            if not (math.isfinite(value) and value > 0):
                raise ValueError(f"the {name} measurement must be above 0 (got {value}).")

    @property
    def mm(self) -> float:
        """Garment less body; below 0 the fabric stretches. Unit: mm."""
        return self.garment_mm - self.body_mm

    @property
    def share(self) -> float:
        """Ease as a share of the body's measurement."""
        return self.mm / self.body_mm


def fit_word(ease_mm: float) -> FitWord:
    """Give the Craft Yarn Council's word for an ease at the chest.

    Printed classes share their bounds and leave a hole between 0 and 1 in. The rule here: a bound belongs to
    the closer fit (exactly 2 in is close), and within the hole the nearer class wins, half an inch being very
    close. So the inch bounds and the whole centimetres in print (5, 10, 15) give the same word.

    Args:
        ease_mm: Garment less body at the chest. Unit: mm.

    Raises:
        ValueError: The ease is not finite.

    Source: Craft Yarn Council, "Ease and Fit", as cited by gratefullyinhisgrace, 4 Aug 2011; ties: this
        project's rule.
    """
    ease_in = round(from_mm(ease_mm, "in"), 9)
    for bound_in, word in _BOUNDS_IN:
        if ease_in <= bound_in:
            return word
    return "oversized"
