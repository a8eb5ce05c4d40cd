"""When the garment will be done, from the stitches of the days so far.

Theory of operation. The finish is a question of evenings, not of minutes: evenings differ and some have no
knitting, so the forecast is based on the stitches done each day. The sum of many days is nearly normal, and
the mean of the few days seen is itself uncertain; solving for the number of days gives the range in closed
form, so equal histories give equal answers. Days are not independent: weekends make weeks more alike than
days, spells of knitting and of none make them less so. From two weeks on, the spread is therefore taken from
sums of seven days. No I/O, no clock.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from stepper.records import dataclass

WEEK = 7
"""Length of the sums from which the spread is taken. Unit: days."""

_WEEKS_TOLD = 2 * WEEK
# Number of days from which weekly sums say more than single days.
_DAYS_A_DEGREE = 5
# Overlapping weeks amount to few independent ones; this many days count as one degree of freedom. Chosen with
# the simulated knitters of tests/session/pace/test_outlook.py; 4 and 6 would do nearly as well.

# Student's t, 90th percentile, by degrees of freedom: leaves 80 % between both tails.
# Source: standard tables; checked against scipy in the tests.
_T90 = (3.0777, 1.8856, 1.6377, 1.5332, 1.4759, 1.4398, 1.4149, 1.3968, 1.3830, 1.3722)
_NORMAL90 = 1.2816


@dataclass(frozen=True, slots=True, kw_only=True)
class FinishForecast:
    """When the remaining work will be done, in days from now, including days without knitting."""

    likely_days: int
    """At the mean of the days so far. Range: 0 and up."""
    early_days: int
    """There is one chance in ten of being done by then. Always at most `likely_days`."""
    late_days: int | None
    """There are nine chances in ten of being done by then; None if the days so far are too few or too uneven
    to say. Always at least `likely_days`."""


def forecast_finish(stitches_left: float, days: Sequence[float]) -> FinishForecast | None:
    """Forecast the finish from the stitches of the days so far.

    Args:
        stitches_left: Range: 0 and up.
        days: Stitches of each day since she began, days without knitting as 0. Range: 0 and up each.

    Returns:
        The forecast, an 80 % range; None if nothing has been knitted yet.

    Raises:
        ValueError: A number is below 0.

    Source: the sum of n days predicted from m days seen has variance s2 (n + n2 / m); n solved at the 10th
        and 90th percentile of Student's t. From 14 days on s2 is the variance of overlapping sums of a week,
        a seventh of it (batch means, common practice in simulation). Derived here.
    """
    if not stitches_left >= 0 or not all(day >= 0 for day in days):
        raise ValueError("stitches left and stitches of a day must be 0 or more.")
    if stitches_left == 0:
        return FinishForecast(likely_days=0, early_days=0, late_days=0)
    seen = len(days)
    mean = sum(days) / seen if seen else 0.0
    if mean == 0:
        return None
    likely = _days_up(stitches_left / mean)
    if seen == 1:
        return FinishForecast(likely_days=likely, early_days=1, late_days=None)
    variance, freedom = _spread(days, mean)
    early, late = _days_at(stitches_left, mean, variance * _t90(freedom) ** 2, seen)
    return FinishForecast(
        likely_days=likely,
        early_days=min(likely, _days_up(early)),
        late_days=None if late is None else max(likely, _days_up(late)),
    )


def _spread(days: Sequence[float], mean: float) -> tuple[float, int]:
    """Return the variance that each day adds to a sum of days, and its degrees of freedom."""
    seen = len(days)
    if seen < _WEEKS_TOLD:
        return sum((day - mean) ** 2 for day in days) / (seen - 1), seen - 1
    weeks = [sum(days[end - WEEK : end]) - WEEK * mean for end in range(WEEK, seen + 1)]
    # The mean comes from the same days, which removes a share of the spread from the sums.
    squares = sum(week**2 for week in weeks) / len(weeks)
    return squares / WEEK / (1 - WEEK / seen), round(seen / _DAYS_A_DEGREE)


def _days_at(left: float, mean: float, spread: float, seen: int) -> tuple[float, float | None]:
    """Solve (n mean - left)^2 = spread (n + n^2 / seen) for n; without a later root if the mean may be 0."""
    square = mean**2 - spread / seen
    half = left * mean + spread / 2
    root = math.sqrt(half**2 - square * left**2) if half**2 > square * left**2 else 0.0
    # This form of the smaller root stays accurate when `square` is nearly 0.
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
