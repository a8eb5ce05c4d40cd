"""How far a row is worked, and where its places are. Worked out by hand."""

from __future__ import annotations

import pytest

from stepper.plan.model import Run
from stepper.plan.place_in_row import PlaceInRow, begins_round
from stepper.plan.round_sources import Supplies
from stepper.plan.row_elements import MisfitError
from stepper.plan.row_facing import Facing
from stepper.project.problems import Span
from stepper.project.stitchwork import Numbers, Until
from tests.plan.test_compile import faults
from tests.plan.test_established import knit, told
from tests.project.samples import project

HERE = Span(line=1, column=1)


def place(count: int, *markers: int) -> PlaceInRow:
    """Stand at the beginning of a row."""
    facing = Facing(count=count, end=count, markers=markers)
    return PlaceInRow(facing=facing, size=0, yarn="MC", method="german", supplies=Supplies())


def test_a_marker_passed_is_carried_to_the_new_row() -> None:
    """Two decreases before it leave it two stitches nearer."""
    row = place(20, 10)
    row.advance(Run("k2tog", 2, "MC"), [])
    row.advance(Run("k", 16, "MC"), [])
    assert (row.used, row.made, row.placed) == (20, 18, [8])


def test_places_are_counted_from_the_beginning_of_the_row() -> None:
    """The last 3 of 20 begin behind 17, 2 before a marker at 10 is 8."""
    row = place(20, 10)
    assert row.goal_of(Until("k", "last", Numbers((3,), HERE), None, HERE)) == 17
    assert row.goal_of(Until("k", "marker", Numbers((2,), HERE), None, HERE)) == 8


def test_a_place_behind_is_an_error() -> None:
    """Nobody can knit back."""
    row = place(20)
    row.advance(Run("k", 18, "MC"), [])
    with pytest.raises(MisfitError):
        row.goal_of(Until("k", "last", Numbers((3,), HERE), None, HERE))


@pytest.mark.parametrize(("name", "begins"), [("new bor", True), ("beg of rnd", True), ("raglan", False), ("beginning", True)])
def test_a_marker_for_the_beginning_of_the_round_is_told_by_its_name(name: str, begins: bool) -> None:
    """The round begins there from then on."""
    assert begins_round(name) == begins


def test_rounds_begin_at_a_new_marker() -> None:
    """Markers are counted from it, and the stitches up to it are worked with that round."""
    work = "Cast on 20 sts.\nJoin in the round.\nK6, pm for new BOR, k4, pm, k10.\nK to marker, p to end."
    plan = knit(work)
    assert told(plan, 1) == ["k4, p16"]
    assert "work 6 more stitches, to the new beginning of the round" in plan.rounds[1].remarks


def test_a_new_beginning_in_a_pattern_is_refused() -> None:
    """The pattern would have to move with it."""
    work = "Cast on 20 sts.\nJoin in the round.\n*K2, p2; rep from * to end. Work 3 rounds.\nWork 6 sts in rib, pm for new BOR, work in pattern to end.\nKnit 1 round."
    plan = project(work, sizes="S", size="S")
    assert "the pattern with it" in faults(plan)
