"""Rows over a part of the stitches. Source: the heel of a sock, common practice; counts by hand."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

LEG = "Cast on 24 sts.\nJoin in the round.\nKnit 2 rounds.\n"
APART = "Work back and forth over the first 14 sts for heel; leave others on hold."


def test_the_stitches_that_come_next_are_worked_on_and_the_others_wait() -> None:
    """By hand: 24 - 14 = 10 for the instep; the first row of the heel is on the right side."""
    rounds = plan_of(project(f"{LEG}{APART}\nRow 1 (RS): Knit.\nRow 2: Purl.\n")).rounds
    assert [(one.after, dict(one.held), one.flat, one.side) for one in rounds[3:]] == [
        (14, {"instep": 10}, False, "RS"),
        (14, {"instep": 10}, True, "RS"),
        (14, {"instep": 10}, True, "WS"),
    ]


@pytest.mark.parametrize(
    "line",
    [
        "Work back and forth over the first 25 sts.",
        "Work back and forth over the first 14 sts; place the remaining 12 sts on hold.",
    ],
)
def test_numbers_that_do_not_come_to_those_in_hand_are_refused(line: str) -> None:
    """A heel of the wrong width would only show at the foot."""
    assert "do not come to the 24 on the needles" in faults(project(LEG + line))


def test_remaining_stitches_named_behind_it_are_those_that_wait_already() -> None:
    """Held a second time they would be the heel itself."""
    work = f"{LEG}Work back and forth over the first 14 sts.\nPlace remaining 10 sts on hold for instep.\nRow 1 (RS): Knit.\n"
    assert dict(plan_of(project(work)).rounds[-1].held) == {"instep": 10}
    other = work.replace("remaining 10", "remaining 14")
    assert "wait on hold already" in faults(project(other))


def test_rows_that_cannot_be_the_first_are_refused() -> None:
    """From the beginning of the round a wrong-side row would go over the other stitches; a round over all of them."""
    assert "begin on the right side" in faults(project(f"{LEG}{APART}\nRow 1 (WS): Purl.\n"))
    assert "calls itself a round" in faults(project(f"{LEG}{APART}\nRow 1: Knit.\nRow 2: Purl.\nRnd 1: Knit.\n"))
