"""Whether a yarn lasts: weighings against amounts that are known beforehand."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.plan.model import Plan
from stepper.plan.yarn.yarn_left import Forecast, Weighing, forecast
from stepper.plan.yarn.yarn_use import total, yarn_use
from tests.plan.test_compile import plan_of
from tests.project.samples import HEAD, project


def tube(*, bought: float | None = 3, rounds: int = 400) -> Plan:
    """Knit a plain tube in a yarn of 120 m to 50 g."""
    head = HEAD if bought is None else HEAD.replace("bought: 3", f"bought: {bought:g}")
    head = head.replace(", bought: 3", "") if bought is None else head
    return plan_of(project(f"Cast on 60 sts.\nKnit {rounds} rounds.\nBind off.", head=head))


def asked(plan: Plan, weighing: Weighing | None = None) -> Forecast:
    """Ask how the main yarn lasts."""
    found = forecast(plan, "MC", weighing)
    assert found is not None
    return found


def taken_g(plan: Plan, index: int, factor: float) -> float:
    """Return the grams a knitter uses to a round who takes `factor` of the estimate."""
    used = total(use["MC"] for use in yarn_use(plan)[:index] if "MC" in use)
    return used.likely_mm / 1000 / 120 * 50 * factor


def test_before_the_first_stitch_all_that_was_bought_is_left() -> None:
    """Three skeins of 120 m against what the tube takes."""
    found = asked(tube())
    assert found.left_m == 360
    assert found.rest_low_m < found.rest_m < found.rest_high_m


def test_a_shortage_is_foretold_with_its_round_and_what_to_buy() -> None:
    """It runs out in the round in which the sum of all rounds passes what was bought."""
    plan = tube(rounds=600)
    found = asked(plan)
    assert found.out is not None
    assert found.out_soonest is not None
    sums = [
        total(use["MC"] for use in yarn_use(plan)[: index + 1]).likely_mm / 1000
        for index in (found.out - 1, found.out)
    ]
    assert sums[0] <= 360 < sums[1]
    assert found.out_soonest < found.out
    assert 360 + (found.buy - 1) * 120 < found.rest_high_m <= 360 + found.buy * 120


def test_what_lasts_has_no_round() -> None:
    """A short tube needs no more."""
    found = asked(tube(rounds=100))
    assert (found.out, found.out_soonest, found.buy) == (None, None, 0)


@pytest.mark.parametrize("factor", [0.85, 1.0, 1.2])
def test_a_weighing_half_way_corrects_what_is_to_come(factor: float) -> None:
    """A knitter who takes a fifth more than the gauge says is told so within 3 %."""
    plan = tube(bought=5)
    used = taken_g(plan, 200, factor)
    found = asked(plan, Weighing(index=200, stitch=0, grams=250 - used))
    assert found.factor == pytest.approx(factor, rel=0.03)
    later = total(use["MC"] for use in yarn_use(plan)[200:]).likely_mm / 1000 * factor
    assert found.rest_m == pytest.approx(later, rel=0.03)
    assert found.rest_low_m < later < found.rest_high_m


@pytest.mark.parametrize("index", [10, 20, 30])
def test_skeins_a_little_light_are_not_taken_for_her_hand_early_on(index: int) -> None:
    """Eleven skeins may weigh a twentieth less than they should (common practice), 27 g, when a few grams are
    knitted: she is not sent to buy half of it again."""
    plan = tube(bought=11, rounds=1000)
    used = taken_g(plan, index, 1.0)
    assert used < 27
    found = asked(plan, Weighing(index=index, stitch=0, grams=550 * 0.95 - used))
    assert found.beside == 0
    assert found.factor < 1.15


@settings(max_examples=60, deadline=None)
@given(st.integers(40, 350), st.floats(0.9, 1.1))
def test_the_ball_in_hand_alone_may_be_weighed(index: int, factor: float) -> None:
    """Whole skeins beside it are found by the estimate: what is left in all is right to the gram."""
    plan = _TUBE
    left = 250 - taken_g(plan, index, factor)
    in_hand = left % 50
    found = asked(plan, Weighing(index=index, stitch=0, grams=in_hand))
    assert found.left_m is not None
    if not found.doubtful:
        assert found.left_m == pytest.approx(left / 50 * 120)
    assert found.beside <= 4


_TUBE = tube(bought=5)


def test_more_than_a_skein_on_the_scale_is_all_there_is() -> None:
    """Nobody weighs two balls and leaves a third beside the scale."""
    assert asked(_TUBE, Weighing(index=10, stitch=0, grams=140)).beside == 0


@pytest.mark.parametrize(
    ("bought", "grams", "beside"), [(3, 49, 2), (3, 50, 2), (3, 30, 2), (2, 49, 1), (1, 49, 0), (2.5, 25, 2), (2.5, 26, 1)]
)
def test_no_more_skeins_lie_beside_the_ball_than_were_bought(bought: float, grams: float, beside: int) -> None:
    """Three skeins of fifty grams with the cast-on made of one of them: two lie there, and never a third. By hand."""
    assert asked(tube(bought=bought), Weighing(index=1, stitch=0, grams=grams)).beside == beside


def test_a_weighing_that_cannot_be_is_doubted() -> None:
    """Nearly nothing left after ten rounds, whichever way it is read."""
    assert asked(tube(bought=1), Weighing(index=10, stitch=0, grams=5)).doubtful
    assert asked(tube(bought=1), Weighing(index=10, stitch=0, grams=80)).doubtful


def test_without_what_was_bought_a_weighing_says_what_is_left_alone() -> None:
    """Then the estimate stays the gauge's."""
    plan = tube(bought=None)
    assert asked(plan).left_m is None
    found = asked(plan, Weighing(index=100, stitch=30, grams=100))
    assert (found.left_m, found.factor) == (240, 1.0)


def test_the_round_in_hand_is_parted_by_its_stitches() -> None:
    """Half a round knitted is half its yarn."""
    plan = tube(bought=None)
    whole = asked(plan, Weighing(index=100, stitch=0, grams=100)).rest_m
    half = asked(plan, Weighing(index=100, stitch=30, grams=100)).rest_m
    after = asked(plan, Weighing(index=101, stitch=0, grams=100)).rest_m
    assert whole - half == pytest.approx(half - after)


def test_when_all_is_done_nothing_more_is_needed() -> None:
    """What is in the balls then is left over."""
    plan = tube()
    found = asked(plan, Weighing(index=len(plan.rounds), stitch=0, grams=20))
    assert found.rest_m == 0
    assert found.over_m == pytest.approx(found.left_m)


def test_a_yarn_that_is_not_used_or_not_described_has_no_forecast() -> None:
    """Nothing is made up."""
    assert forecast(tube(), "A") is None


def test_what_is_left_to_knit_begins_with_the_round_in_hand() -> None:
    """Each round once: what is behind a weighing takes no more, and what is ahead is counted whole."""
    plan = tube(bought=None)
    ahead = total(use["MC"] for use in yarn_use(plan)[100:] if "MC" in use)

    assert asked(plan, Weighing(index=100, stitch=0, grams=40)).rest_m == pytest.approx(ahead.likely_mm / 1000)
