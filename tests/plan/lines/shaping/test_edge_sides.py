"""At which end of the rows an edge is. Source: common practice; rows worked by hand."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import HEAD, project

DIVIDED = (
    "Cast on 40 sts. Work flat.\nKnit 2 rows.\n"
    "Next row (RS): K10, bind off 2 sts, k16, bind off 2 sts, k to end.\n"
    "Work in rows over next 10 sts, hold others sts.\n"
)


@pytest.mark.parametrize(("words", "rows"), [("Knit 4 rows, ending at neck edge.", 4), ("Knit 3 rows, ending at armhole edge.", 3)])
def test_behind_two_gaps_the_armhole_is_where_right_side_rows_begin(words: str, rows: int) -> None:
    """The piece at the end of the row lies beyond its underarm: the neck is at its other edge."""
    assert len(plan_of(project(f"{DIVIDED}{words}\nBind off.")).rounds) == 5 + rows + 1


@pytest.mark.parametrize(
    "work",
    [
        DIVIDED + "Knit 3 rows, ending at neck edge.",
        DIVIDED + "Knit 4 rows, ending at armhole edge.",
        "Cast on 20 sts. Work flat.\nKnit 4 rows, ending at neck edge.",
    ],
)
def test_rows_that_end_at_another_edge_or_at_none_known_are_refused(work: str) -> None:
    """One row more or fewer would shape the wrong edge from there on."""
    assert faults(project(f"{work}\nBind off."))


def test_a_length_ends_with_the_row_that_ends_at_the_edge() -> None:
    """5 cm are 14 rows at 28 to 10 cm; the one that ends at the neck is the right-side row."""
    work = f"{DIVIDED}Knit for 5 cm, ending at armhole edge.\nBind off."
    assert plan_of(project(work)).rounds[-2].side == "WS"


FRONT = "Cast on 20 sts. Work flat.\nWork in k1, p1 rib for 4 rows.\nKnit {rows} rows, ending at {edge} edge.\nBind off."


def front(name: str, rows: int, edge: str) -> str:
    """Put the rows of a front, up to one that ends at an edge, into a file."""
    return project(FRONT.format(rows=rows, edge=edge), head=HEAD.replace("- name: body", f"- name: {name}"))


@pytest.mark.parametrize(("name", "edge", "rows"), [("left front", "side", 4), ("left front", "neck", 5), ("right front", "side", 5), ("right front", "armhole", 5), ("right front", "front", 4)])
def test_a_front_worked_upwards_lies_as_it_is_worn(name: str, edge: str, rows: int) -> None:
    """A left front has its side where right-side rows begin, so that it ends there after a wrong-side row."""
    assert plan_of(front(name, rows, edge)).rounds
    assert faults(front(name, 9 - rows, edge))


def test_only_a_front_that_begins_with_a_rib_is_known_to_be_worked_upwards() -> None:
    """From the shoulder down the edges lie the other way round, and a back has two sides."""
    assert faults(front("back", 4, "side"))
    assert faults(front("left front", 4, "side").replace("in k1, p1 rib", "in garter st"))
