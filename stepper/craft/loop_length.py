"""The length of yarn in one plain stitch, from the gauge.

Theory of operation. The length of yarn in one loop fixes the size of relaxed plain knitting: rounds per cm
are Kc / l, stitches per cm Kw / l (Munden 1959). Conversely, a swatch gives the loop length: from its width,
from its height, and best from both together. The constants depend on how far the fabric has relaxed, so a
gauge is used with those of the state it was counted in: dry off the needles, wet after blocking. Both are the
same yarn, and if they disagree neither is better known. Hand knitting is not the machine-knitted wool those
constants were measured on, so the answer is a range, which also covers the handbooks' rule of area; weighing
the real work is better than any of them. No I/O.
"""

from __future__ import annotations

import math

from stepper.craft.gauge import Gauge
from stepper.records import dataclass


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
        """Ks: stitches per cm2 times loop length squared, the product of the other two. No unit.

        For the wet state 21.6 is in print, 0.6 % below the product 21.73; the product is used, so that the
        three constants never contradict each other.
        """
        return self.rounds * self.stitches


DRY = Relaxation(name="as knitted", rounds=5.0, stitches=3.8)
"""Off the needles and left to lie. Source: Munden (1959), as reproduced in teaching slides."""

WET = Relaxation(name="washed", rounds=5.3, stitches=4.1)
"""Soaked and dried lying flat. Source: Munden (1959), as reproduced in teaching slides."""

RULE_HEIGHTS = 6.0
"""Yarn of one stitch by the handbooks' rule for plain knitting. Unit: heights of a round.

Yards are length times width in inches times stitches per inch, divided by six: a sixth of a yard, which is
six inches, for each inch of a stitch's height. The rule includes a margin of 5 to 15 %. Source: a rule of
thumb in print; the margin is how far it lies above Munden's relation."""

HAND_TOLERANCE = 0.10
"""How far hand knitting may be from machine constants. Common practice: at least a tenth."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Estimate:
    """A length known only roughly."""

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


def loop_by_state(gauge: Gauge, blocked: Gauge | None = None) -> tuple[float, float]:
    """Return the length of one loop by the dry and by the wet relation, each from the gauge of its state.

    Args:
        gauge: Stitches and rounds over 10 cm as knitted.
        blocked: The same after blocking; None if not given, so that `gauge` may have been counted in either
            state.

    Returns:
        As knitted, and washed. Unit: mm.

    Source: Munden (1959).
    """
    return loop_mm(gauge, DRY), loop_mm(blocked or gauge, WET)


def loop_by_rule_mm(gauge: Gauge, blocked: Gauge | None = None) -> float:
    """Return the yarn in a stitch by the handbooks' rule of area, in whichever state gives more.

    Returns:
        Unit: mm.

    Source: `RULE_HEIGHTS`.
    """
    return RULE_HEIGHTS * max(gauge.round_mm, (blocked or gauge).round_mm)


def loop_estimate(gauge: Gauge, blocked: Gauge | None = None) -> Estimate:
    """Return the length of yarn in one plain stitch as a range.

    Args:
        gauge: As for `loop_by_state`.
        blocked: As for `loop_by_state`.

    Returns:
        Likely: the geometric mean of the dry and the wet relation. Low and high: from width alone or height
        alone in either state, whichever is further out, plus a tenth; high is no less than the rule of area.

    Source: Munden (1959); the margin for hand knitting is common practice. With one gauge for both states,
    likely is within 1 % of the mill rule for plain fabric (K = 12068.59), whose Ks of 20.44 lies between.
    """
    sides = [
        side
        for state, counted in ((DRY, gauge), (WET, blocked or gauge))
        for side in (state.stitches * counted.stitch_mm, state.rounds * counted.round_mm)
    ]
    high = max(sides) * (1 + HAND_TOLERANCE)
    return Estimate(
        low_mm=min(sides) * (1 - HAND_TOLERANCE),
        likely_mm=math.sqrt(math.prod(loop_by_state(gauge, blocked))),
        high_mm=max(high, loop_by_rule_mm(gauge, blocked)),
    )
