"""Cables that go on in pattern. Source: common practice, a cable crosses in every so many rows of its repeat."""

from __future__ import annotations

import pytest

from stepper.plan.cable_cells import crossings, recrossed, uncrossed
from stepper.plan.model import Run
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

CABLE = (
    "Cast on 20 sts.\nJoin in the round.\nRnds 1-3: P6, k8, p6.\nRnd 4: P6, 4/4 RC, p6.\n"
    "Inc rnd: P1, m1p, p5, k8, p6. 21 sts.\n"
)


def test_a_cable_crosses_again_in_its_row_after_shaping_beside_it() -> None:
    """By hand: crossed in round 4; the increase is the first round of the next repeat, so round 8 crosses."""
    rounds = plan_of(project(f"{CABLE}Work 4 rounds even in pattern.\nBind off.")).rounds[6:-1]
    assert ["4/4 rc" in {run.stitch for run in round_.runs} for round_ in rounds] == [False, False, True, False]
    assert all(round_.after == 21 for round_ in rounds)


def test_a_cable_that_was_cut_into_is_not_guessed() -> None:
    """A decrease takes one of its stitches; how it goes on is the pattern's to say."""
    work = f"{CABLE}P7, k2tog, k6, p6. 20 sts.\nWork 4 rounds even in pattern.\nBind off."
    assert "not all of its stitches stand together" in faults(project(work))


def test_the_columns_of_a_cable_are_its_stitches() -> None:
    """Each column knows its place in the cable, and looks as that stitch does."""
    cells = crossings((Run("k", 2, "MC"), Run("2/2 rc", 1, "MC")))
    assert cells == {2: ("2/2 rc#0", ""), 3: ("2/2 rc#1", ""), 4: ("2/2 rc#2", ""), 5: ("2/2 rc#3", "")}
    assert [uncrossed(code) for code, _ in cells.values()] == ["k"] * 4
    assert recrossed([("p", ""), *cells.values()]) == [("p", ""), ("2/2 rc", "")]
    with pytest.raises(ValueError, match="would cross here"):
        recrossed([("2/2 rc#1", ""), ("2/2 rc#2", "")])
