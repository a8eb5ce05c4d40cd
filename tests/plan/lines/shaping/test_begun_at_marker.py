"""What stands at both markers is worked where the round begins, too. Source: common practice; counts by hand."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

AT_SIDE = "Cast on 40 sts. Join in the round.\nPm, k20, pm, k20.\nKnit 2 rounds.\n"
AT_BACK = "Cast on 40 sts. Join in the round.\nK10, pm, k20, pm, k10.\nKnit 2 rounds.\n"
BIND_OFF = "Cast off 6 stitches in each side for armholes (= 3 stitches on each side of both markers).\n"
TIP = (
    "DECREASE TIP: Decrease 1 stitch on each side of {which} as follows: Work until 3 stitches remain before the marker "
    "thread, knit 2 together, knit 2 (marker thread is in the middle of these 2 stitches), slip 1 stitch as if to knit, knit 1, "
    "pass the slipped stitch over{told}.\n"
)
DECREASE = "Decrease 1 stitch on each side of both marker threads - read DECREASE TIP.\n"


@pytest.mark.parametrize("begun", [AT_SIDE, AT_BACK])
def test_both_armholes_are_bound_off_wherever_the_round_begins(begun: str) -> None:
    """By hand: 40 - 2 x 6 = 28. At one marker alone the body would be six stitches wider under one arm."""
    assert plan_of(project(begun + BIND_OFF)).rounds[-1].after == 28


@pytest.mark.parametrize(
    ("which", "told"),
    [("both marker threads", ""), ("each marker thread", " (= 4 stitches decreased)"), ("both markers", " (= 4 stitches decreased)")],
)
def test_both_sides_are_decreased_where_the_page_says_so_by_a_word_or_a_number(which: str, told: str) -> None:
    """By hand: 40 - 4 = 36; decreased at the one marker within the round, only one side would be shaped."""
    last = plan_of(project(TIP.format(which=which, told=told) + AT_SIDE + DECREASE)).rounds[-1]
    assert (last.after, last.instruction) == (36, "k1, skp, k14, k2tog, k1, sm, k1, skp, k14, k2tog, k1")


def test_where_nothing_says_whether_the_beginning_is_a_marker_it_is_told_that_it_is_taken_for_none() -> None:
    """A raglan with its round at the back has markers within the round alone; a body may have one at its beginning."""
    plan = plan_of(project(TIP.format(which="each marker thread", told="") + AT_SIDE + DECREASE))
    assert plan.rounds[-1].after == 38
    assert any("not where the round begins" in caution.text for caution in plan.warnings)


def test_both_of_three_markers_are_refused() -> None:
    """Which two are meant nobody can tell."""
    work = "Cast on 40 sts. Join in the round.\nK10, pm, k10, pm, k10, pm, k10.\nKnit 2 rounds.\n"
    assert "two markers are meant" in faults(project(work + BIND_OFF))
