"""Pace: how fast she knits, and when the garment will be done.

Theory of operation. Pace is measured while the needles move. Between two marks a film may have been watched,
so the usual time for a stitch is the weighted middle of all stretches, which no number of breaks below half
can shift; stretches far slower than that are breaks and are left out. The finish is a question of evenings,
not of minutes: evenings differ, some have no knitting, so the forecast counts days with the stitches done on
each. The sum of many days is nearly normal and the mean of the few days seen is itself uncertain; solving
for the number of days gives the range in closed form, so equal history gives equal answers. Days are not
independent: weekends make weeks more alike than days are, spells of knitting and of none make them less so.
From two weeks on the spread is therefore taken from sums of seven days. No I/O, no clock.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import accumulate

DEFAULT_STITCHES_PER_MINUTE = 30.0
"""Before anything is measured. Common practice; timed hobby knitters lie between 20 and 45."""

FASTEST_PER_MINUTE = 120.0
"""Nobody knits faster: the quickest timed hand knitting is 118 a minute. Unit: stitches per minute."""

WEEK = 7
"""Days whose sums tell the spread. Unit: days."""

_WEEKS_TOLD = 2 * WEEK
# Days from which sums of weeks say more than single days.
_DAYS_A_DEGREE = 5
# Overlapping weeks are few independent ones; this many days count as one degree of freedom. Chosen by the
# simulated knitters of tests/session/test_outlook.py; 4 and 6 would do nearly as well.

BREAK_FACTOR = 3.0
"""A stretch this many times slower than usual is a break. This project's choice."""

# Student's t, 90th percentile, by degrees of freedom: leaves 80 % between both tails.
# Source: standard tables; checked against scipy in the tests.
_T90 = (3.0777, 1.8856, 1.6377, 1.5332, 1.4759, 1.4398, 1.4149, 1.3968, 1.3830, 1.3722)
_NORMAL90 = 1.2816


@dataclass(frozen=True, slots=True, kw_only=True)
class Stretch:
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
    """How fast she knits while she knits."""

    stitches_per_minute: float
    """Range: above 0."""
    break_seconds: float
    """Time in breaks: what slow stretches took beyond this pace. Unit: s."""
    measured: bool = True
    """False when nothing was measured and the default stands in."""

    def seconds_for(self, stitches: float) -> float:
        """Give the knitting time of a count of stitches. Unit: s.

        Raises:
            ValueError: The count is below 0.

        Source: proportion.
        """
        if not stitches >= 0:
            raise ValueError(f"stitches must be 0 or more (got {stitches}).")
        return stitches * 60 / self.stitches_per_minute


def measure_pace(stretches: Sequence[Stretch]) -> Pace:
    """Measure the pace from stretches, some of which hold breaks.

    Args:
        stretches: In any order. None: the default pace, not measured.

    Returns:
        Stitches over time in the stretches without a break. Always: breaks in fewer than half of the stitches
        cannot pull it below a third of the pace of the others.

    Source: weighted median as a first estimate, then trimming at `BREAK_FACTOR`; derived here.
    """
    if not stretches:
        return Pace(stitches_per_minute=DEFAULT_STITCHES_PER_MINUTE, break_seconds=0.0, measured=False)
    usual = _weighted_median([(s.seconds / s.stitches, s.stitches) for s in stretches])
    steady = [s for s in stretches if s.seconds / s.stitches <= BREAK_FACTOR * usual]
    each = sum(s.seconds for s in steady) / sum(s.stitches for s in steady)
    idle = sum(
        s.seconds - s.stitches * each for s in stretches if s.seconds / s.stitches > BREAK_FACTOR * usual
    )
    return Pace(stitches_per_minute=60 / each, break_seconds=max(0.0, idle))


@dataclass(frozen=True, slots=True, kw_only=True)
class Forecast:
    """When the work left will be done, in days from now, days without knitting counted."""

    likely_days: int
    """At the mean of the days so far. Range: 0 and up."""
    early_days: int
    """One chance in ten to be done by then. Always at most `likely_days`."""
    late_days: int | None
    """Nine chances in ten to be done by then; None when the days so far are too few or too unlike to say.
    Always at least `likely_days`."""


def forecast_finish(stitches_left: float, days: Sequence[float]) -> Forecast | None:
    """Forecast the finish from the stitches of the days so far.

    Args:
        stitches_left: Range: 0 and up.
        days: Stitches of each day since she began, days without knitting as 0. Range: 0 and up each.

    Returns:
        The forecast, an 80 % range; None when nothing has been knitted yet.

    Raises:
        ValueError: A number is below 0.

    Source: the sum of n days predicted from m days seen has variance s2 (n + n2 / m); n solved at the 10th
        and 90th percentile of Student's t. From 14 days on s2 is the variance of overlapping sums of a week,
        a seventh of it (batch means, common practice in simulation). Derived here.
    """
    if not stitches_left >= 0 or not all(day >= 0 for day in days):
        raise ValueError("stitches left and stitches of a day must be 0 or more.")
    if stitches_left == 0:
        return Forecast(likely_days=0, early_days=0, late_days=0)
    seen = len(days)
    mean = sum(days) / seen if seen else 0.0
    if mean == 0:
        return None
    likely = _days_up(stitches_left / mean)
    if seen == 1:
        return Forecast(likely_days=likely, early_days=1, late_days=None)
    variance, freedom = _spread(days, mean)
    early, late = _days_at(stitches_left, mean, variance * _t90(freedom) ** 2, seen)
    return Forecast(
        likely_days=likely,
        early_days=min(likely, _days_up(early)),
        late_days=None if late is None else max(likely, _days_up(late)),
    )


def share_per_evening(left: int, evenings: int) -> int:
    """Give what each evening must bring to finish in time.

    Args:
        left: Rounds (or stitches) left. Range: 0 and up.
        evenings: Evenings until the date, that day included. Range: 1 and up.

    Returns:
        Rounded up: with so many each evening it is done in time.

    Raises:
        ValueError: A number is out of range.

    Source: exact ceiling.
    """
    if left < 0 or evenings < 1:
        raise ValueError(f"what is left must be 0 or more and evenings 1 or more (got {left}, {evenings}).")
    return -(-left // evenings)


def _weighted_median(pairs: list[tuple[float, int]]) -> float:
    half, passed = sum(weight for _, weight in pairs) / 2, 0
    for value, weight in sorted(pairs):
        passed += weight
        if passed >= half:
            return value
    raise AssertionError("weights sum to more than half of themselves")


def _spread(days: Sequence[float], mean: float) -> tuple[float, int]:
    """Give the variance a day brings to a sum of days, and its degrees of freedom."""
    seen = len(days)
    if seen < _WEEKS_TOLD:
        return sum((day - mean) ** 2 for day in days) / (seen - 1), seen - 1
    passed = (0.0, *accumulate(days))
    weeks = [passed[end] - passed[end - WEEK] - WEEK * mean for end in range(WEEK, seen + 1)]
    # The mean is of the same days, which takes a share of the spread out of the sums.
    squares = sum(week**2 for week in weeks) / len(weeks)
    return squares / WEEK / (1 - WEEK / seen), max(1, round(seen / _DAYS_A_DEGREE))


def _days_at(left: float, mean: float, spread: float, seen: int) -> tuple[float, float | None]:
    """Solve (n mean - left)^2 = spread (n + n^2 / seen) for n; no later root when the mean may be nought."""
    square = mean**2 - spread / seen
    half = left * mean + spread / 2
    root = math.sqrt(half**2 - square * left**2) if half**2 > square * left**2 else 0.0
    # This form of the smaller root stays exact when `square` is nearly nought.
    early = left**2 / (half + root)
    return early, (half + root) / square if square > 0 else None


def _t90(freedom: int) -> float:
    if freedom <= len(_T90):
        return _T90[freedom - 1]
    # First terms of the expansion in 1 / freedom (Abramowitz and Stegun 26.7.5).
    z = _NORMAL90
    first, second = (z**3 + z) / 4, (5 * z**5 + 16 * z**3 + 3 * z) / 96
    return z + first / freedom + second / freedom**2


def _days_up(days: float) -> int:
    return max(1, math.ceil(round(days, 9)))
