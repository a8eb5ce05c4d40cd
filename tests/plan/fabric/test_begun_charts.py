"""Charts beside other stitches that a page begins and then goes on with "as set"."""

from __future__ import annotations

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

BEGUN = "Cast on 12 sts. Join in the round.\nSet-up rnd: K2, work rnd 1 of chart peak over next 4 sts, k to end.\n"


def test_in_pattern_goes_on_with_the_next_round_of_the_chart() -> None:
    """Its first round again and again would be another fabric."""
    plan = plan_of(project(f"{BEGUN}Cont in patt as set for 4 rnds.\nBind off."))
    first, second, *rest = [round_.instruction for round_ in plan.rounds[1:6]]
    assert first != second
    assert rest == [first, second, first]


def test_a_chart_that_was_worked_once_through_begins_again() -> None:
    """All of its rounds beside other stitches are the pattern, in their order."""
    whole = BEGUN + "Next rnd: K2, work rnd 2 of chart peak over next 4 sts, k to end.\nRep last 2 rnds once more.\n"
    plan = plan_of(project(f"{whole}Work in pattern for 2 rnds.\nBind off."))
    written = [round_.instruction for round_ in plan.rounds[1:7]]
    assert written[:2] * 3 == written


def test_a_chart_begun_and_then_shaped_beside_cannot_be_told() -> None:
    """Where its next round stands on the stitches that are left is not known."""
    work = f"{BEGUN}Dec rnd: K1, k2tog, k to end.\nWork in pattern for 2 rnds.\nBind off."
    assert "not worked once through" in faults(project(work))
