"""Cables that go on in pattern. Source: common practice, a cable crosses in every so many rows of its repeat."""

from __future__ import annotations

from stepper.plan.model import Run
from stepper.plan.stitches.cable_cells import cross_again, crossings, look_of
from tests.plan.test_compile import plan_of
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


def test_a_cable_that_decreases_eat_into_crosses_no_more_and_that_is_told() -> None:
    """Decreases eat columns; what is left of the cable is knitted."""
    plan = plan_of(project(f"{CABLE}P7, k2tog, k6, p6. 20 sts.\nWork 4 rounds even in pattern.\nBind off."))
    assert all("rc" not in run.stitch for round_ in plan.rounds[7:] for run in round_.runs)
    assert any("4/4 rc does not cross here" in warning.text for warning in plan.warnings)


def test_the_columns_of_a_cable_are_its_stitches() -> None:
    """Each column knows its place in the cable, and looks as that stitch does."""
    cells = crossings((Run("k", 2, "MC"), Run("2/2 rc", 1, "MC")))
    assert cells == {2: ("2/2 rc#0", ""), 3: ("2/2 rc#1", ""), 4: ("2/2 rc#2", ""), 5: ("2/2 rc#3", "")}
    assert [look_of(code) for code, _ in cells.values()] == ["k"] * 4
    assert cross_again([("p", ""), *cells.values()]) == ([("p", ""), ("2/2 rc", "")], ())
    assert cross_again([("2/2 rc#1", ""), ("2/2 rc#2", "")]) == ([("k", ""), ("k", "")], ("2/2 rc",))
