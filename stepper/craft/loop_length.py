"""The length of yarn in one plain stitch, from the gauge.

Theory of operation. The length of yarn in one loop fixes the size of relaxed plain knitting: rounds per cm
are Kc / l, stitches per cm Kw / l (Munden 1959). Read backwards, a swatch tells the loop length: from its
width, from its height, and best from both together. Hand knitting is not the machine-knitted wool those
constants were measured on, so the answer is a range, and a weighing of the real work is better than either.
No I/O.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from stepper.craft.gauge import Gauge


@dataclass(frozen=True, slots=True, kw_only=True)
class Relaxation:
    """How far a plain fabric has relaxed, with Munden's constants for that state."""

    name: str
    """What was done to the fabric."""
    rounds: float
    """Kc: rounds per cm times loop length in cm. No unit."""
    stitches: float
    """Kw: stitches per cm times loop length in cm. No unit."""

    @property
    def area(self) -> float:
        """Ks, stitches per cm2 times loop length squared: the product of the other two. No unit.

        For the wet state 21.6 is in print, 0.6 % below the product 21.73; the product is used, so that the
        three constants never contradict each other.
        """
        return self.rounds * self.stitches


DRY = Relaxation(name="as knitted", rounds=5.0, stitches=3.8)
"""Off the needles and left to lie. Source: Munden (1959), as reproduced in teaching slides."""

HAND_TOLERANCE = 0.10
"""How far hand knitting may lie from machine constants. Common practice: at least a tenth."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Estimate:
    """A length that is known only roughly."""

    low_mm: float
    """Unit: mm."""
    likely_mm: float
    """Unit: mm. Always between the other two."""
    high_mm: float
    """Unit: mm."""


def loop_mm(gauge: Gauge, state: Relaxation = DRY) -> float:
    """Return the length of yarn in one plain stitch.

    Args:
        gauge: Stitches and rounds over 10 cm, in that state.
        state: How far the fabric has relaxed; `DRY` for a gauge taken as knitted.

    Returns:
        Unit: mm.

    Source: Munden (1959), l = sqrt(Ks * width * height).
    """
    return math.sqrt(state.area * gauge.stitch_mm * gauge.round_mm)


def loop_estimate(gauge: Gauge, state: Relaxation = DRY) -> Estimate:
    """Return the length of yarn in one plain stitch as a range.

    Args:
        gauge: As for `loop_mm`.
        state: As for `loop_mm`.

    Returns:
        Likely: from width and height together. Low and high: from width alone and height alone, whichever is
        further out, and a tenth beyond.

    Source: Munden (1959); the margin for hand knitting is common practice.
    """
    by_width, by_height = state.stitches * gauge.stitch_mm, state.rounds * gauge.round_mm
    return Estimate(
        low_mm=min(by_width, by_height) * (1 - HAND_TOLERANCE),
        likely_mm=loop_mm(gauge, state),
        high_mm=max(by_width, by_height) * (1 + HAND_TOLERANCE),
    )
