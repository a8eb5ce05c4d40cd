"""No stitches are forgotten on a holder. Counts by hand; common practice."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import HEAD, project

NECK = """Cast on 60 sts. Work flat.
Knit 2 rows.
Bind off 20 sts at the beginning of the next 2 rows.
Leave remaining 20 sts on a holder for back neck.
"""


def test_new_stitches_are_not_picked_up_where_some_wait() -> None:
    """Those on the holder would run, and the neckband would have none of them."""
    told = faults(project(f"{NECK}With RS facing, pick up and knit 20 sts from back neck, 12 sts down left neck.\nKnit 2 rows."))
    assert "20 stitches are on hold for back neck, and the line picks up new ones there" in told


@pytest.mark.parametrize(
    "line",
    [
        "With RS facing, k 20 sts from back neck holder, pick up and knit 12 sts down left neck.",
        "With RS facing, pick up and knit 12 sts down left neck, 20 sts from back neck holder.",
    ],
)
def test_those_that_wait_are_knitted(line: str) -> None:
    """32 stitches, 20 of which came from the holder."""
    plan = plan_of(project(f"{NECK}{line}\nKnit 2 rows.\nBind off."))
    assert max(round_.after for round_ in plan.rounds[-4:]) == 32
    assert not any("on hold" in warning.text for warning in plan.warnings)


def test_what_is_left_on_hold_at_the_end_is_told() -> None:
    """Live stitches of a finished garment run unless something closes them."""
    plan = plan_of(project(NECK))
    assert "20 stitches are still on hold for back neck when the last line is done." in [
        warning.text for warning in plan.warnings
    ]


def test_stitches_without_a_name_are_those_of_the_part_that_left_them() -> None:
    """A neckband picked up beside them would leave them to run."""
    work = "Cast on 60 sts. Work flat.\nK20, hold 20, k to end.\nBind off."
    head = HEAD.replace("name: body", "name: front")
    text = project(work, head=head) + "  - name: neckband\n    work: |\n      Pick up and knit 24 sts down left side, 20 sts from front neck, and 24 sts up right side.\n"
    assert "20 stitches are on hold for front, and the line picks up new ones there" in faults(text)
