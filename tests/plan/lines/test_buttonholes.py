"""Buttonholes over two rows. Source: common practice; counts by hand."""

from __future__ import annotations

import pytest

from stepper.plan.model import flatten
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

BAND = "Cast on 20 sts.\nWork flat.\nKnit 2 rows.\n"
TWO = "Row 1 (RS): K3, bind off 2 sts, k to last 6 sts, bind off 2 sts, k to end.\n"


@pytest.mark.parametrize(
    "line",
    [
        "Row 2: Knit, casting on 2 sts over each buttonhole.",
        "Row 2: K to bound-off sts, cast on 2 sts, k to next bound-off sts, cast on 2 sts, k to end.",
        "Row 2: K to gap, cast on 2 sts, k to gap, cast on 2 sts, k to end.",
    ],
)
def test_the_row_back_meets_the_openings_from_the_other_end(line: str) -> None:
    """By hand: k3, off 2, k9, off 2, k4 leaves 16; from the other end 4, then 9, then 3, with 2 cast on between."""
    last = plan_of(project(BAND + TWO + line)).rounds[-1]
    assert [(run.stitch, run.times) for run in flatten(last.phrase)] == [
        ("k", 4), ("co", 2), ("k", 9), ("co", 2), ("k", 3),
    ]  # fmt: skip
    assert last.after == 20


@pytest.mark.parametrize("line", ["K to bound-off sts, cast on 2 sts, k to end.", "Knit, casting on 2 sts over each buttonhole."])
def test_without_an_opening_nothing_is_cast_on(line: str) -> None:
    """Somewhere in the row would be a guess."""
    assert "no stitches bound off within the row before" in faults(project(BAND + line))
    shoulder = "Row 1 (RS): Bind off 2 sts, k to end.\n"
    assert "no stitches bound off within the row before" in faults(project(BAND + shoulder + line))
