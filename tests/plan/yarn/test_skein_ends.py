"""Where a skein ends, against plain sums of what the rounds take and against the label."""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.materials import Stock
from stepper.plan.model import Plan
from stepper.plan.yarn.skein_ends import find_skein_ends
from stepper.plan.yarn.yarn_left import Weighing, forecast
from stepper.plan.yarn.yarn_use import yarn_use
from tests.fixtures import plan_named


def metres_before(plan: Plan, yarn: str, index: int) -> float:
    """Give what the rounds before one take, added up one by one."""
    return sum(use[yarn].likely_mm for use in yarn_use(plan)[:index] if yarn in use) / 1000


def with_skeins(plan: Plan, yarn: str, bought: float | None) -> Plan:
    """Give the plan with another number of skeins in the house."""
    stock = plan.materials.stocks[yarn]
    stocks = {**plan.materials.stocks, yarn: Stock(skein=stock.skein, bought=bought)}
    return replace(plan, materials=replace(plan.materials, stocks=stocks))


def test_each_skein_ends_in_the_round_that_takes_its_last_metre() -> None:
    """The label of chalk says 175 m: the first, second and third end are at 175, 350 and 525."""
    plan = plan_named("switchback")
    ends = find_skein_ends(plan, "MC")
    assert len(ends) == 3
    for number, end in enumerate(ends, start=1):
        assert metres_before(plan, "MC", end.likely) <= 175 * number < metres_before(plan, "MC", end.likely + 1)
        assert metres_before(plan, "MC", end.soonest) <= 175 * number - 8.75  # a twentieth of 175 m
        assert end.more  # six were bought


def test_a_yarn_that_one_skein_lasts_for_and_one_without_a_label_have_no_end() -> None:
    """Nothing is claimed where nothing is known, and nobody fetches what is not needed."""
    plan = plan_named("switchback")
    assert find_skein_ends(plan, "A") == ()
    stocks = {key: stock for key, stock in plan.materials.stocks.items() if key != "MC"}
    assert find_skein_ends(replace(plan, materials=replace(plan.materials, stocks=stocks)), "MC") == ()
    assert find_skein_ends(replace(plan, materials=replace(plan.materials, loops={})), "MC") == ()


def test_the_last_skein_there_is_is_called_the_last() -> None:
    """With two skeins the second end is the end of the yarn, and nothing is said of a third."""
    plan = plan_named("switchback")
    assert [end.more for end in find_skein_ends(with_skeins(plan, "MC", 2), "MC")] == [True, False]
    assert [end.more for end in find_skein_ends(with_skeins(plan, "MC", None), "MC")] == [True, True, True]
    # One and a half: the second is a half one.
    half = find_skein_ends(with_skeins(plan, "MC", 1.5), "MC")
    assert [end.more for end in half] == [True, False]
    assert half[1].likely < find_skein_ends(plan, "MC")[1].likely


def test_a_weighed_ball_counts_from_where_it_was_weighed() -> None:
    """Ten grams of chalk are 35 m by the label (175 m in 50 g); her hand may take a little more or less."""
    plan = with_skeins(plan_named("switchback"), "MC", None)
    first = find_skein_ends(plan, "MC", Weighing(index=45, stitch=0, grams=10.0))[0]
    taken = metres_before(plan, "MC", first.likely) - metres_before(plan, "MC", 45)
    assert 30 <= taken <= 35


def test_more_than_a_skein_on_the_scale_is_all_there_is() -> None:
    """120 g are two whole skeins and 20 g in hand, so that two ends have more behind them."""
    plan = plan_named("switchback")
    ends = find_skein_ends(plan, "MC", Weighing(index=150, stitch=20, grams=120.0))
    assert ends
    assert all(end.more for end in ends[:2])
    assert find_skein_ends(plan, "MC", Weighing(index=len(plan.rounds), stitch=0, grams=120.0)) == ()


def test_a_ball_weighed_in_the_middle_of_a_round_has_only_the_rest_of_it_before_it() -> None:
    """Weighed behind the last stitch of a round it is the ball before the next one; and the later in the round ten grams are weighed,
    the longer they last. Round 60 of the yoke's body is plain in chalk, 164 stitches."""
    plan = with_skeins(plan_named("switchback"), "MC", None)
    index = next(each.index for each in plan.rounds if each.section == "body" and each.number == 60)
    assert plan.rounds[index].progress == 164
    ends = {at: find_skein_ends(plan, "MC", Weighing(index=index, stitch=at, grams=1.1))[0].likely for at in (0, 82, 164)}
    assert ends[164] == find_skein_ends(plan, "MC", Weighing(index=index + 1, stitch=0, grams=1.1))[0].likely
    assert ends[0] <= ends[82] <= ends[164]
    # By hand: half a round less is half a round more of yarn, which shows in some weight between 1 and 3 g.
    rounds = metres_before(plan, "MC", index + 1) - metres_before(plan, "MC", index)
    factor = forecast(plan, "MC", Weighing(index=index, stitch=0, grams=1.1), yarn_use(plan)).factor  # type: ignore[union-attr]
    for grams in (1.0, 1.3, 1.7, 2.3, 2.9):
        for stitch, begun in ((0, 0.0), (82, 0.5), (123, 0.75)):
            found = find_skein_ends(plan, "MC", Weighing(index=index, stitch=stitch, grams=grams))[0].likely
            assert found == index + int(grams * 175 / 50 / (rounds * factor) + begun), (grams, stitch)
