"""The finish against Student's t of scipy, sums of numpy, and simulated evenings."""

from __future__ import annotations

import numpy as np
import pytest
import scipy
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.finish import FinishForecast, forecast_finish
from tests.tables import each_row


@each_row("seen", [*range(2, 14)])
def test_range_solves_the_prediction_interval(seen: int) -> None:
    """In the first fortnight both ends are where scipy's t interval for the sum of n further days meets the
    work left."""
    days = np.random.default_rng(seen).normal(2000, 300, seen)
    left = 40_000.0
    t90 = scipy.stats.t.ppf(0.9, seen - 1)

    def short(n: float, sign: int) -> float:
        wide = days.std(ddof=1) * np.sqrt(n + n * n / seen)
        return float(n * days.mean() + sign * t90 * wide - left)

    forecast = forecast_finish(left, days.tolist())
    assert forecast is not None
    early = scipy.optimize.brentq(short, 1e-9, 1e4, args=(1,))
    assert abs(forecast.early_days - np.ceil(early)) <= 0 or abs(early - round(early)) < 0.02
    if short(1e7, -1) > 0:
        late = scipy.optimize.brentq(short, 1e-9, 1e7, args=(-1,))
        assert forecast.late_days == np.ceil(late) or abs(late - round(late)) < 0.02
    else:
        assert forecast.late_days is None
    assert forecast.likely_days == np.ceil(left / days.mean())


@pytest.mark.parametrize("seen", range(6, 14))
def test_the_range_is_that_of_student_to_a_ten_thousandth(seen: int) -> None:
    """So much work is left that whole days hide nothing: both ends against scipy's t, with evenings as unlike as they
    may be. A t off by a little would tell every knitter a wrong chance."""
    steps = np.linspace(-1, 1, seen)
    days = 2000 + 900 * steps / steps.std(ddof=1)
    left, t90 = 2e9, scipy.stats.t.ppf(0.9, seen - 1)

    def short(n: float, sign: int) -> float:
        return float(n * 2000 + sign * t90 * 900 * np.sqrt(n + n * n / seen) - left)

    forecast = forecast_finish(left, days.tolist())
    assert forecast is not None
    early, late = (scipy.optimize.brentq(short, 1, 1e9, args=(sign,)) for sign in (1, -1))
    assert forecast.early_days == pytest.approx(early, rel=1e-4)
    assert forecast.late_days == pytest.approx(late, rel=1e-4)


def test_what_takes_less_than_an_evening_is_done_tonight() -> None:
    """A day is the least there is: ten stitches at two thousand an evening."""
    assert forecast_finish(10, [2000] * 10) == FinishForecast(likely_days=1, early_days=1, late_days=1)


@pytest.mark.parametrize("seen", [14, 15, 30, 60, 120, 365])
def test_range_solves_the_interval_of_weeks(seen: int) -> None:
    """From two weeks on the spread is that of numpy's sums of seven days, with a fifth of the days as degrees
    of freedom."""
    days = np.random.default_rng(seen).normal(2000, 300, seen)
    left = 40_000.0
    t90 = scipy.stats.t.ppf(0.9, max(1, round(seen / 5)))
    weeks = np.convolve(days, np.ones(7), "valid") - 7 * days.mean()
    spread = np.sqrt((weeks**2).mean() / 7 / (1 - 7 / seen))

    def short(n: float, sign: int) -> float:
        return float(n * days.mean() + sign * t90 * spread * np.sqrt(n + n * n / seen) - left)

    forecast = forecast_finish(left, days.tolist())
    assert forecast is not None
    early, late = (scipy.optimize.brentq(short, 1e-9, 1e5, args=(sign,)) for sign in (1, -1))
    assert forecast.early_days == np.ceil(early)
    assert forecast.late_days == np.ceil(late)


@each_row("weeks", [6, 60])
def test_weekends_alone_are_a_steady_knitter(weeks: int) -> None:
    """Who knits every Saturday the same is done to the week, however unlike her days are and however long she has been at it
    (arithmetic)."""
    weekly = [0.0] * 6 + [3000.0]
    forecast = forecast_finish(30_000, weekly * weeks)
    assert forecast is not None
    assert forecast.late_days is not None
    assert forecast.late_days - forecast.early_days <= 7


def _evenings(kind: str, count: int, random: np.random.Generator) -> np.ndarray:
    if kind == "even":
        return random.normal(2000, 500, count).clip(0)
    if kind == "skewed":
        return random.gamma(2.0, 1000, count)
    return random.gamma(4.0, 700, count) * (random.random(count) < 0.7)  # three evenings in ten are free


@pytest.mark.parametrize("kind", ["even", "skewed", "with free evenings"])
def test_the_range_holds_eight_finishes_in_ten(kind: str) -> None:
    """Simulated knitters of three kinds finish inside their range about as often as it claims."""
    random = np.random.default_rng(1974)
    inside = trials = 0
    for _ in range(1500):
        forecast = forecast_finish(50_000, _evenings(kind, 14, random).tolist())
        assert forecast is not None
        done = int(np.argmax(np.cumsum(_evenings(kind, 2000, random)) >= 50_000)) + 1
        late = forecast.late_days if forecast.late_days is not None else 10**9
        inside += forecast.early_days <= done <= late
        trials += 1
    # Whole days widen a range of a few days a little; skewed evenings cost a little.
    assert 0.74 <= inside / trials <= 0.88


@given(st.floats(0, 1e6), st.lists(st.floats(0, 1e4).map(lambda x: round(x)), max_size=60))
def test_the_order_of_early_likely_late_never_turns(left: float, days: list[int]) -> None:
    """Early is not after likely, late not before it; the same history gives the same answer."""
    forecast = forecast_finish(left, days)
    assert forecast == forecast_finish(left, days)
    if left > 0 and sum(days) == 0:
        assert forecast is None
        return
    assert forecast is not None
    assert 0 <= forecast.early_days <= forecast.likely_days
    assert forecast.late_days is None or forecast.late_days >= forecast.likely_days


def test_equal_evenings_leave_no_doubt() -> None:
    """Ten evenings of 2000 stitches and 20,000 left are ten more, exactly (arithmetic)."""
    assert forecast_finish(20_000, [2000] * 10) == FinishForecast(likely_days=10, early_days=10, late_days=10)
    one_a_day = forecast_finish(10, [1, 1, 1])
    assert one_a_day == FinishForecast(likely_days=10, early_days=10, late_days=10)


def test_too_little_history_is_admitted() -> None:
    """One evening has no spread; two unlike ones do not bound the finish."""
    assert forecast_finish(20_000, [2000]) == FinishForecast(likely_days=10, early_days=1, late_days=None)
    uncertain = forecast_finish(20_000, [200, 3800])
    assert uncertain is not None
    assert uncertain.late_days is None
    assert forecast_finish(100, []) is None
    assert forecast_finish(100, [0, 0]) is None
    assert forecast_finish(0, []) == FinishForecast(likely_days=0, early_days=0, late_days=0)


def test_bad_arguments_are_refused() -> None:
    """Every range in a docstring is kept."""
    with pytest.raises(ValueError, match="0 or more"):
        forecast_finish(-1, [1])
    with pytest.raises(ValueError, match="0 or more"):
        forecast_finish(1, [1, -1])
