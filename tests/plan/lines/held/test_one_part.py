"""One part of a divided piece is gone on with. Source: common practice; counts by hand."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

BODY = """Cast on 60 sts.
Join in the round.
Knit 2 rounds.
Next rnd: Bind off 4 sts, k26, bind off 4 sts, k to end. 52 sts.
"""
FRONTS = """Cast on 60 sts. Work flat.
Knit 1 row. Purl 1 row.
Next row (RS): K10, bind off 5 sts, k30, bind off 5 sts, k to end. 50 sts.
"""


@pytest.mark.parametrize("line", ["Place front sts on a holder.", "Working back and forth on back sts only, purl 1 row."])
def test_of_two_halves_alike_the_one_without_the_yarn_waits_and_it_is_told(line: str) -> None:
    """By hand: 60 - 8 = 52, 26 for each half. Which is called the front is free, that one waits is not."""
    plan = plan_of(project(f"{BODY}{line}\nNext row (RS): Knit.\n"))
    last = plan.rounds[-1]
    assert (last.after, dict(last.held), last.flat) == (26, {"front": 26}, True)
    assert any("yarn" in caution.text for caution in plan.warnings)


@pytest.mark.parametrize(
    ("work", "line"),
    [
        (BODY.replace("k26", "k25").replace("52 sts", "52 sts"), "Place front sts on a holder."),
        (BODY.replace("k26", "k25"), "Continue on back sts only."),
        ("Cast on 60 sts. Work flat.\nKnit 2 rows.\n", "Work on the back sts only."),
        (FRONTS, "Continue on right front sts only."),
    ],
)
def test_a_part_that_nobody_can_tell_is_refused(work: str, line: str) -> None:
    """A number taken for another's would shape the wrong part."""
    assert faults(project(f"{work}{line}\nKnit 1 row.\n"))


def test_behind_a_right_side_row_the_yarn_hangs_at_the_left_front() -> None:
    """As worn: a right-side row begins at the right front. By hand: 10, 30 and 10 stitches."""
    last = plan_of(project(f"{FRONTS}Continue on left front sts only.\nPurl 1 row.\n")).rounds[-1]
    assert (last.after, dict(last.held), last.side) == (10, {"back": 30, "right front": 10}, "WS")


def test_where_the_others_wait_already_the_words_only_tell_which_is_left() -> None:
    """Held a second time they would be the part itself."""
    work = f"{BODY}Place front sts on a holder.\nContinue on back sts only.\nPurl 1 row.\n"
    assert dict(plan_of(project(work)).rounds[-1].held) == {"front": 26}
