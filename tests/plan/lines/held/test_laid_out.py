"""Stitches laid out between two rounds. Source: common practice; counts by hand."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import plan_of
from tests.project.samples import project


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("Divide over 2 needles, 12 sts on each needle.", "on 2 needles: 12, 12 stitches"),
        ("Divide over 2 needles, 12 sts on each needle. Slip 2 sts from needle 2 to needle 1.", "slip 2 stitches from needle 2 to needle 1"),
        ("Work back and forth over the first 14 sts.", "work in rows"),
        ("K5, pm for new beginning of round.", "knit 5 more stitches: from here on the round begins there"),
    ],
)
def test_what_is_laid_out_is_said_and_no_stitch_is_lost(line: str, told: str) -> None:
    """It changes where things are, and the next row says so."""
    plan = plan_of(project(f"Cast on 24 sts.\nJoin in the round.\nKnit 2 rounds.\n{line}\nKnit 1 row.\n" if "back" in line else f"Cast on 24 sts.\nJoin in the round.\nKnit 2 rounds.\n{line}\nKnit 1 round.\n"))
    last = plan.rounds[-1]
    assert last.after + sum(last.held.values()) == 24
    assert told in [remark for round_ in plan.rounds for remark in round_.remarks]
