"""Pace: how fast she knits, measured while the needles move.

Theory of operation. The time between two marks may include half a film. So the usual time for a stitch is the
weighted median of all stretches, which breaks cannot shift if they affect fewer than half of the stitches;
stretches far slower than that are breaks and are left out. No I/O, no clock.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from stepper.records import dataclass

DEFAULT_STITCHES_PER_MINUTE = 30.0
"""Pace before anything is measured. Common practice; timed hobby knitters are between 20 and 45."""

FASTEST_PER_MINUTE = 120.0
"""Nobody knits faster: the fastest timed hand knitting is 118 a minute. Unit: stitches per minute."""

BREAK_FACTOR = 3.0
"""A stretch this many times slower than usual contains a break. This project's choice."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TimedStretch:
    """Knitting between two marks."""

    stitches: int
    """Range: 1 and up."""
    seconds: float
    """From mark to mark, breaks included. Range: above 0. Unit: s."""

    def __post_init__(self) -> None:
        """Refuse a stretch without stitches or time.

        Raises:
            ValueError: A number is not above 0 or not finite.
        """
        if self.stitches < 1 or not (math.isfinite(self.seconds) and self.seconds > 0):
            raise ValueError(f"a stretch needs stitches and time (got {self.stitches} in {self.seconds} s).")


@dataclass(frozen=True, slots=True, kw_only=True)
class Pace:
    """How fast she knits, breaks left out."""

    stitches_per_minute: float
    """Range: above 0."""
    break_seconds: float
    """Time in breaks: what slow stretches took over and above this pace. Unit: s."""
    measured: bool = True
    """False if nothing was measured, so that this is the default."""

    def seconds_for(self, stitches: float) -> float:
        """Return the knitting time of a count of stitches. Unit: s.

        Raises:
            ValueError: The count is below 0.

        Source: proportion.
        """
        if not stitches >= 0:
            raise ValueError(f"stitches must be 0 or more (got {stitches}).")
        return stitches * 60 / self.stitches_per_minute


def measure_pace(stretches: Sequence[TimedStretch]) -> Pace:
    """Measure the pace from stretches, some of which contain breaks.

    Args:
        stretches: In any order. If there are none, the result is the default pace, not measured.

    Returns:
        Stitches divided by time in the stretches without a break. Always: breaks in fewer than half of the
        stitches cannot pull it below a third of the pace of the others.

    Source: weighted median as a first estimate, then trimming at `BREAK_FACTOR`; derived here.
    """
    if not stretches:
        return Pace(stitches_per_minute=DEFAULT_STITCHES_PER_MINUTE, break_seconds=0.0, measured=False)
    usual = weighted_median([(s.seconds / s.stitches, s.stitches) for s in stretches])
    steady = [s for s in stretches if s.seconds / s.stitches <= BREAK_FACTOR * usual]
    each = sum(s.seconds for s in steady) / sum(s.stitches for s in steady)
    idle = sum(
        s.seconds - s.stitches * each for s in stretches if s.seconds / s.stitches > BREAK_FACTOR * usual
    )
    return Pace(stitches_per_minute=60 / each, break_seconds=max(0.0, idle))


def weighted_median(pairs: list[tuple[float, int]]) -> float:
    """Return the least value that at least half of the weight does not exceed.

    Args:
        pairs: Values with their weights. Range: at least one pair, weights above 0.
    """
    half, passed = sum(weight for _, weight in pairs) / 2, 0
    for value, weight in sorted(pairs):
        passed += weight
        if passed >= half:
            return value
    raise AssertionError("weights sum to more than half of themselves")
