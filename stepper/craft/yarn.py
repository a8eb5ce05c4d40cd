"""Yarn: how much a stitch, a float, an edge and a garment take, and how many skeins to buy.

Theory of operation. The length of yarn in one loop fixes the size of relaxed plain knitting: rounds per cm
are Kc / l, stitches per cm Kw / l (Munden 1959). Read backwards, a swatch tells the loop length: from its
width, from its height, and best from both together. Hand knitting is not the machine-knitted wool those
constants were measured on, so the answer is a range, and a weighing of the real work is better than either.
No I/O.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from stepper.craft.gauge import Gauge, to_mm


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
WET = Relaxation(name="soaked", rounds=5.3, stitches=4.1)
"""Soaked and dried flat. Source: Munden (1959), as reproduced in teaching slides."""
FULL = Relaxation(name="tumbled", rounds=5.5, stitches=4.2)
"""Fully relaxed by washing and tumbling. Source: GATE Textile Engineering 2015, question 54."""

HAND_TOLERANCE = 0.10
"""How far hand knitting may lie from machine constants. Common practice: at least a tenth."""

FLOAT_LIMIT_MM = 25.4
"""A longer float is caught. Source: J. Richards, "Stranding and catching in the back": over one inch."""


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
    """Give the length of yarn in one plain stitch.

    Args:
        gauge: Stitches and rounds over 10 cm, in that state.
        state: `DRY` for a gauge taken as knitted, `WET` for one taken after blocking.

    Returns:
        Unit: mm.

    Source: Munden (1959), l = sqrt(Ks * width * height).
    """
    return math.sqrt(state.area * gauge.stitch_mm * gauge.round_mm)


def loop_estimate(gauge: Gauge, state: Relaxation = DRY) -> Estimate:
    """Give the length of yarn in one plain stitch as a range.

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


def relaxed_gauge(loop_length_mm: float, state: Relaxation) -> Gauge:
    """Give the gauge a loop length settles to.

    Raises:
        ValueError: The loop length is not above 0.

    Source: Munden (1959), rounds per cm = Kc / l, stitches per cm = Kw / l.
    """
    loop_cm = _positive(loop_length_mm, "loop length") / 10
    return Gauge(stitches=10 * state.stitches / loop_cm, rounds=10 * state.rounds / loop_cm)


def fabric_mm(
    gauge: Gauge, *, loops: float, carried: float = 0, slack: float = 0.0, loop: Estimate | None = None
) -> Estimate:
    """Give the yarn one colour takes in a piece of knitting.

    Every stitch that a stitch leaves on the needle, save a slipped one, is one loop of yarn: k, p, k2tog and
    m1 are one loop, kfb two, a bobble the sum of its parts. A yarn over is counted as one. A stitch bound
    off takes one more loop, two when a yarn over is worked before each. Where a yarn passes behind a stitch,
    floated or slipped, it lies straight over that stitch's width.

    Args:
        gauge: Gauge of that fabric.
        loops: Loops drawn with this yarn. Range: 0 and up.
        carried: Stitches this yarn passes behind. Range: 0 and up.
        slack: Extra length left in floats, as a share. Range: 0 and up.
        loop: Length of one loop when it was measured; else it is taken from the gauge.

    Raises:
        ValueError: A number is below 0.

    Source: Munden (1959) for loops; a float is straight between neighbouring loops (textilethelp.com).
        What yarn overs and shaping take differs a little and is an assumption.
    """
    if loops < 0 or carried < 0 or slack < 0:
        raise ValueError(
            f"loops, stitches carried and slack must be 0 or more (got {loops}, {carried}, {slack})."
        )
    each = loop or loop_estimate(gauge)
    floats = gauge.width_mm(carried) * (1 + slack)
    return Estimate(
        low_mm=loops * each.low_mm + floats,
        likely_mm=loops * each.likely_mm + floats,
        high_mm=loops * each.high_mm + floats,
    )


def stranding_share(state: Relaxation) -> float:
    """Give what carrying a second colour behind every stitch adds, as a share of the yarn knitted.

    Source: derived from Munden (1959): a float of one stitch's width against its loop, 1 / Kw.
    """
    return 1 / state.stitches


def longest_free_float(gauge: Gauge, *, limit_mm: float = FLOAT_LIMIT_MM) -> int:
    """Give the longest float, in stitches, that need not be caught.

    Args:
        gauge: Gauge of the stranded fabric.
        limit_mm: Longest float left free. Range: above 0. Unit: mm.

    Raises:
        ValueError: The limit is not above 0.

    Source: limit by length, as `FLOAT_LIMIT_MM`. By stitches 3 to 7 are in print, which disagree.
    """
    # A hair is allowed for binary fractions: 25.4 mm over stitches of 2.54 mm are ten, not nine.
    return math.floor(_positive(limit_mm, "limit") / gauge.stitch_mm + 1e-9)


def cast_on_tail_mm(stitches: int, gauge: Gauge) -> float:
    """Give the tail to leave for a long-tail cast-on.

    Args:
        stitches: Range: 0 and up.
        gauge: Gauge of the first fabric.

    Returns:
        Three times the width plus 10 in. Unit: mm.

    Raises:
        ValueError: The count is below 0.

    Source: M. Righetti, Knitting in Plain English, as cited at ehow.com 7701638.
    """
    return 3 * gauge.width_mm(stitches) + to_mm(10, "in")


def wrapped_tail_mm(stitches: int, needle_mm: float) -> float:
    """Give the tail for a cast-on by wrapping the needle once for each stitch.

    Args:
        stitches: Range: 0 and up.
        needle_mm: Diameter. Range: above 0. Unit: mm.

    Returns:
        Without an end to hold. Unit: mm.

    Raises:
        ValueError: An argument is out of range.

    Source: the wrap rule, common in print; circumference of a circle.
    """
    if stitches < 0:
        raise ValueError(f"stitches must be 0 or more (got {stitches}).")
    return stitches * math.pi * _positive(needle_mm, "needle")


def sewn_bind_off_tail_mm(edge_mm: float) -> tuple[float, float]:
    """Give the least and the most tail for a sewn bind-off.

    Args:
        edge_mm: Length of the edge, stretched as it will be worn. Range: 0 and up. Unit: mm.

    Returns:
        Three times the edge (Zimmermann's, tutorial by A. Rangel) and five times (the stretchy sewn kind).

    Raises:
        ValueError: The edge is below 0.

    Source: as named; L. Bestor, Cast On, Bind Off gives 4 to 5 for the stretchy kind.
    """
    if not edge_mm >= 0:
        raise ValueError(f"edge must be 0 or more (got {edge_mm}).")
    return 3 * edge_mm, 5 * edge_mm


def grams_per_square_metre(gauge: Gauge, tex: float, state: Relaxation = DRY) -> float:
    """Give the weight of plain fabric.

    Args:
        gauge: Gauge in that state.
        tex: Yarn number. Range: above 0. Unit: g per km.
        state: As for `loop_mm`.

    Returns:
        Unit: g/m2.

    Raises:
        ValueError: The yarn number is not above 0.

    Source: Munden (1959), Ks * tex / l with l in mm; Texcoms Textile Technical Handbook (2023) p. 147.
    """
    return state.area * _positive(tex, "tex") / loop_mm(gauge, state)


def _positive(value: float, what: str) -> float:
    if not (math.isfinite(value) and value > 0):
        raise ValueError(f"{what} must be above 0 (got {value}).")
    return value
