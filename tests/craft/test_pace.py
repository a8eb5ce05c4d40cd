"""Pace against published timings."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.pace import Pace, Stretch, measure_pace


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


def test_bad_arguments_are_refused() -> None:
    """Every range in a docstring is kept."""
    with pytest.raises(ValueError, match="stretch"):
        Stretch(stitches=0, seconds=1)
    with pytest.raises(ValueError, match="stretch"):
        Stretch(stitches=1, seconds=0)
    with pytest.raises(ValueError, match="stitches"):
        _pace(30).seconds_for(-1)
