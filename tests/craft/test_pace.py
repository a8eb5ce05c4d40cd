"""Pace and forecast against published timings, Student's t of scipy, and simulated evenings."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import optimize, stats

from stepper.craft.pace import Forecast, Pace, Stretch, forecast_finish, measure_pace, share_per_evening


def _pace(per_minute: float) -> Pace:
    return Pace(stitches_per_minute=per_minute, break_seconds=0)


@pytest.mark.parametrize(("per_minute", "minutes", "seconds"), [(30, 6, 56), (118, 1, 46)])
def test_a_round_of_208(per_minute: float, minutes: int, seconds: int) -> None:
    """208 stitches take 6 min 56 s at 30 a minute and 1 min 46 s at 118 (arithmetic)."""
    assert round(_pace(per_minute).seconds_for(208)) == 60 * minutes + seconds


def test_a_timed_round() -> None:
    """morehoursperday, 23 Oct 2014: 329 stitches in 578 s are 34.2 a minute."""
    assert measure_pace([Stretch(stitches=329, seconds=578)]).stitches_per_minute == pytest.approx(
        34.2, abs=0.05
    )


def test_nothing_measured_is_said_to_be_so() -> None:
    """Common practice: about 30, within 20 to 45."""
    pace = measure_pace([])
    assert (pace.stitches_per_minute, pace.measured) == (30, False)


def test_a_break_does_not_slow_her_down() -> None:
    """Twenty rounds at 2 s a stitch, one of them with a quarter of an hour at the door (arithmetic)."""
    rounds = [Stretch(stitches=200, seconds=400)] * 19 + [Stretch(stitches=200, seconds=1300)]
    pace = measure_pace(rounds)
    assert pace.stitches_per_minute == pytest.approx(30)
    assert pace.break_seconds == pytest.approx(900)


@given(
    st.floats(0.8, 6), st.lists(st.integers(1, 400), min_size=3, max_size=40), st.floats(4, 1000), st.data()
)
def test_breaks_in_fewer_than_half_of_the_stitches_leave_the_pace_alone(
    each: float, counts: list[int], slower: float, data: st.DataObject
) -> None:
    """Whichever stretches hold the breaks, the steady ones decide."""
    order = data.draw(st.permutations(range(len(counts))))
    slow: set[int] = set()
    for i in order:
        if 2 * (sum(counts[j] for j in slow) + counts[i]) < sum(counts):
            slow.add(i)
    stretches = [
        Stretch(stitches=n, seconds=n * each * (slower if i in slow else 1)) for i, n in enumerate(counts)
    ]
    assert measure_pace(stretches).stitches_per_minute == pytest.approx(60 / each)


@pytest.mark.parametrize("seen", [*range(2, 14)])
def test_range_solves_the_prediction_interval(seen: int) -> None:
    """In the first fortnight both ends are where scipy's t interval for the sum of n further days meets the
    work left."""
    days = np.random.default_rng(seen).normal(2000, 300, seen)
    left = 40_000.0
    t90 = stats.t.ppf(0.9, seen - 1)

    def short(n: float, sign: int) -> float:
        wide = days.std(ddof=1) * np.sqrt(n + n * n / seen)
        return float(n * days.mean() + sign * t90 * wide - left)

    forecast = forecast_finish(left, days.tolist())
    assert forecast is not None
    early = optimize.brentq(short, 1e-9, 1e4, args=(1,))
    assert abs(forecast.early_days - np.ceil(early)) <= 0 or abs(early - round(early)) < 0.02
    if short(1e7, -1) > 0:
        late = optimize.brentq(short, 1e-9, 1e7, args=(-1,))
        assert forecast.late_days == np.ceil(late) or abs(late - round(late)) < 0.02
    else:
        assert forecast.late_days is None
    assert forecast.likely_days == np.ceil(left / days.mean())


@pytest.mark.parametrize("seen", [14, 15, 30, 60, 120, 365])
def test_range_solves_the_interval_of_weeks(seen: int) -> None:
    """From two weeks on the spread is that of numpy's sums of seven days, with a fifth of the days as degrees
    of freedom."""
    days = np.random.default_rng(seen).normal(2000, 300, seen)
    left = 40_000.0
    t90 = stats.t.ppf(0.9, max(1, round(seen / 5)))
    weeks = np.convolve(days, np.ones(7), "valid") - 7 * days.mean()
    spread = np.sqrt((weeks**2).mean() / 7 / (1 - 7 / seen))

    def short(n: float, sign: int) -> float:
        return float(n * days.mean() + sign * t90 * spread * np.sqrt(n + n * n / seen) - left)

    forecast = forecast_finish(left, days.tolist())
    assert forecast is not None
    early, late = (optimize.brentq(short, 1e-9, 1e5, args=(sign,)) for sign in (1, -1))
    assert forecast.early_days == np.ceil(early)
    assert forecast.late_days == np.ceil(late)


def test_weekends_alone_are_a_steady_knitter() -> None:
    """Who knits every Saturday the same is done to the week, however unlike her days are (arithmetic)."""
    weekly = [0.0] * 6 + [3000.0]
    forecast = forecast_finish(30_000, weekly * 6)
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
    assert forecast_finish(20_000, [2000] * 10) == Forecast(likely_days=10, early_days=10, late_days=10)


def test_too_little_history_is_admitted() -> None:
    """One evening has no spread; two unlike ones do not bound the finish."""
    assert forecast_finish(20_000, [2000]) == Forecast(likely_days=10, early_days=1, late_days=None)
    uncertain = forecast_finish(20_000, [200, 3800])
    assert uncertain is not None
    assert uncertain.late_days is None
    assert forecast_finish(100, []) is None
    assert forecast_finish(100, [0, 0]) is None
    assert forecast_finish(0, []) == Forecast(likely_days=0, early_days=0, late_days=0)


@given(st.integers(0, 10_000), st.integers(1, 1000))
def test_the_share_of_an_evening_is_enough_and_not_too_much(left: int, evenings: int) -> None:
    """So many each evening finish in time, one fewer would not."""
    share = share_per_evening(left, evenings)
    assert share * evenings >= left
    assert share == 0 or (share - 1) * evenings < left


def test_bad_arguments_are_refused() -> None:
    """Every range in a docstring is kept."""
    with pytest.raises(ValueError, match="stretch"):
        Stretch(stitches=0, seconds=1)
    with pytest.raises(ValueError, match="stretch"):
        Stretch(stitches=1, seconds=0)
    with pytest.raises(ValueError, match="stitches"):
        _pace(30).seconds_for(-1)
    with pytest.raises(ValueError, match="0 or more"):
        forecast_finish(-1, [1])
    with pytest.raises(ValueError, match="0 or more"):
        forecast_finish(1, [1, -1])
    with pytest.raises(ValueError, match="evenings"):
        share_per_evening(1, 0)
