"""Pace against published timings."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.pace import FASTEST_PER_MINUTE, Pace, TimedStretch, measure_pace


def _pace(per_minute: float) -> Pace:
    return Pace(stitches_per_minute=per_minute, break_seconds=0)


@pytest.mark.parametrize(("per_minute", "minutes", "seconds"), [(30, 6, 56), (118, 1, 46)])
def test_a_round_of_208(per_minute: float, minutes: int, seconds: int) -> None:
    """208 stitches take 6 min 56 s at 30 a minute and 1 min 46 s at 118 (arithmetic)."""
    assert round(_pace(per_minute).seconds_for(208)) == 60 * minutes + seconds


def test_a_timed_round() -> None:
    """morehoursperday, 23 Oct 2014: 329 stitches in 578 s are 34.2 a minute."""
    assert measure_pace([TimedStretch(stitches=329, seconds=578)]).stitches_per_minute == pytest.approx(
        34.2, abs=0.05
    )


def test_nothing_measured_is_said_to_be_so() -> None:
    """Common practice: about 30, within 20 to 45."""
    pace = measure_pace([])
    assert (pace.stitches_per_minute, pace.break_seconds, pace.measured) == (30, 0, False)


def test_a_break_does_not_slow_her_down() -> None:
    """Twenty rounds at 2 s a stitch, one of them with a quarter of an hour at the door (arithmetic)."""
    rounds = [TimedStretch(stitches=200, seconds=400)] * 19 + [TimedStretch(stitches=200, seconds=1300)]
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
        TimedStretch(stitches=n, seconds=n * each * (slower if i in slow else 1)) for i, n in enumerate(counts)
    ]
    assert measure_pace(stretches).stitches_per_minute == pytest.approx(60 / each)


def test_a_stretch_three_times_as_slow_is_still_knitting_and_one_slower_is_a_break() -> None:
    """A row of bobbles is no break; the film is. 100 stitches in 120 s are 50 a minute; without the last ten, 60 a
    minute and 20.1 s of break beyond the ten that those stitches take (arithmetic)."""
    steady = [TimedStretch(stitches=10, seconds=10)] * 9
    bobbles = measure_pace([*steady, TimedStretch(stitches=10, seconds=30)])
    assert (bobbles.stitches_per_minute, bobbles.break_seconds) == (pytest.approx(50), 0)
    film = measure_pace([*steady, TimedStretch(stitches=10, seconds=30.1)])
    assert (film.stitches_per_minute, film.break_seconds) == (pytest.approx(60), pytest.approx(20.1))


def test_only_what_a_break_took_beyond_her_pace_is_break() -> None:
    """A slow start and a short stretch belong to the knitting: 3811 stitches in 4592.5 s are her pace, and what the
    200 stitches with the door bell took beyond it is the break (arithmetic)."""
    knitted = [TimedStretch(stitches=200, seconds=240)] * 19
    slow, short = TimedStretch(stitches=10, seconds=30), TimedStretch(stitches=1, seconds=2.5)
    pace = measure_pace([*knitted, slow, short, TimedStretch(stitches=200, seconds=1300)])
    each = 4592.5 / 3811
    assert pace.stitches_per_minute == pytest.approx(60 / each)
    assert pace.break_seconds == pytest.approx(1300 - 200 * each)


def test_a_few_quick_stretches_do_not_make_the_others_breaks() -> None:
    """The usual stretch is the middle one by stitches: two in five at half a second, three at two seconds; all of it
    is knitting (arithmetic: 500 stitches in 700 s)."""
    pace = measure_pace([TimedStretch(stitches=100, seconds=50)] * 2 + [TimedStretch(stitches=100, seconds=200)] * 3)
    assert pace.stitches_per_minute == pytest.approx(60 * 500 / 700)
    assert pace.break_seconds == 0


def test_no_stitch_takes_no_time_and_half_a_stitch_half_of_it() -> None:
    """Proportion; counts of stitches by kind are shares and need not be whole."""
    assert _pace(30).seconds_for(0) == 0
    assert _pace(30).seconds_for(0.5) == 1


def test_the_fastest_hands_are_believed_and_nobody_much_faster() -> None:
    """The quickest timed hand knitting is 118 stitches a minute; a tenth more is a slip of the key."""
    assert 118 <= FASTEST_PER_MINUTE < 1.1 * 118


def test_bad_arguments_are_refused() -> None:
    """Every range in a docstring is kept."""
    with pytest.raises(ValueError, match="stretch"):
        TimedStretch(stitches=0, seconds=1)
    with pytest.raises(ValueError, match="stretch"):
        TimedStretch(stitches=1, seconds=0)
    with pytest.raises(ValueError, match="stretch"):
        TimedStretch(stitches=1, seconds=float("inf"))
    with pytest.raises(ValueError, match="stitches"):
        _pace(30).seconds_for(-1)
