"""Cables named by their interval. Source: common practice ("crossing cable every 8th round")."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

CABLE = "Cast on 20 sts. Join in the round.\nRnd 1: P6, C8F, p6.\nRnds 2-4: P6, k8, p6.\n"


@pytest.mark.parametrize(
    "line",
    [
        "Work in patt for 8 rounds, crossing cable every 4th rnd.",
        "Work even in patt, crossing cables every 4 rnds, for 8 rounds.",
        "Work 8 rounds in patt, at the same time cross cable every fourth rnd.",
    ],
)
def test_a_cable_named_by_its_interval_is_that_of_the_pattern(line: str) -> None:
    """The pattern crosses it in its first round of four, and nothing is crossed besides."""
    rounds = plan_of(project(f"{CABLE}{line}\nBind off.")).rounds[1:-1]
    assert [each.index for each in rounds if "c8f" in each.instruction.lower()] == [1, 5, 9]
    assert len(rounds) == 12


@pytest.mark.parametrize("every", ["3rd", "6th", "8th"])
def test_another_interval_than_that_of_the_pattern_is_told(every: str) -> None:
    """The rounds say every fourth, the line another: nobody can tell which is meant."""
    line = f"Work in patt for 8 rounds, crossing cable every {every} rnd."
    assert "does not cross its cables every" in faults(project(f"{CABLE}{line}\nBind off."))


def test_a_pattern_without_a_cable_crosses_none() -> None:
    """A line that has one crossed where there is none is told so."""
    rib = "Cast on 20 sts. Join in the round.\n*K2, p2; rep from * to end.\n"
    line = "Work in patt for 8 rounds, crossing cable every 4th rnd."
    assert "does not cross its cables every" in faults(project(f"{rib}{line}\nBind off."))


def test_a_pace_said_beside_a_repeat_is_checked() -> None:
    """"Inc 2 sts every other rnd" over rounds that do otherwise would pass the count and miss the shape."""
    start = "Cast on 20 sts. Join in the round.\nRnd 1: K1, m1, k to last st, m1, k1.\nRnd 2: Knit.\n"
    plan_of(project(f"{start}Continue in this manner, inc 2 sts every other rnd, until there are 26 sts.\nBind off."))
    told = faults(project(f"{start}Continue in this manner, inc 1 st every other rnd, until there are 26 sts.\nBind off."))
    assert "do not change the stitches as the line says" in told


@pytest.mark.parametrize(("every", "told"), [("4th", True), ("8th", False)])
def test_the_first_crossing_follows_the_last_one_below_by_the_interval(every: str, *, told: bool) -> None:
    """Crossed in rounds 1 and 9: that is every eighth, though the line of four rounds shows one crossing only."""
    cable = "Cast on 20 sts. Join in the round.\nRnd 1: P6, C8F, p6.\nRnds 2-8: P6, k8, p6.\n"
    work = project(f"{cable}Work in patt for 4 rounds, crossing cable every {every} rnd.\nBind off.")
    if told:
        assert "does not cross its cables every 4 rounds" in faults(work)
    else:
        crossed = [each.index for each in plan_of(work).rounds if "c8f" in each.instruction.lower()]
        assert crossed == [1, 9]
