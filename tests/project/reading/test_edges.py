"""Changes at the edges of rows, from the words to records. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.plan.model import flatten
from stepper.project.reader import read_project
from stepper.project.reading.edges import edge_of
from tests.plan.test_compile import plan_of
from tests.project.samples import project


@pytest.mark.parametrize(
    ("where", "edge"),
    [
        ("at neck edge", "neck"),
        ("at the armhole edge", "armhole"),
        ("at each neck edge", "neck"),
        ("at each end", ""),
        ("both edges", ""),
        ("at beg", ""),
    ],
)
def test_a_named_edge_is_no_end_of_the_row(where: str, edge: str) -> None:
    """Which end of the row it lies at is found from the rows before."""
    assert edge_of(where) == edge


@pytest.mark.parametrize(
    ("line", "row"),
    [
        ("Dec 1 st at each end of next row.", "k1 dec1 k34 dec1 k1"),
        ("Dec 1 st at each end of next row, working decs 3 sts in from the edge.", "k3 dec1 k30 dec1 k3"),
        ("Inc 1 st at each end of next row.", "k1 inc1 k36 inc1 k1"),
        ("Dec 1 st at end of next row.", "k37 dec1 k1"),
        ("Dec 2 sts at each end of next row.", "k1 dec2 k30 dec2 k1"),
        ("Cast on 6 sts at end of next row.", "k40 co6"),
    ],
)
def test_a_change_stands_one_stitch_in_from_the_edge_or_where_the_line_says(line: str, row: str) -> None:
    """Source: common practice, a selvedge stitch is left for the seam."""
    plan = plan_of(project(f"Cast on 40 sts. Work flat.\nWork 2 rows in stockinette.\n{line}\nBind off."))
    assert " ".join(f"{run.stitch}{run.times}" for run in plan.rounds[3].runs) == row


@pytest.mark.parametrize("number", ["0", "3", "9"])
def test_more_than_a_decrease_takes_at_an_end_is_not_read_as_one_stitch(number: str) -> None:
    """Three were decreased as one, and nothing was said: as many as that are bound off."""
    found = read_project(project(f"Cast on 40 sts. Work flat.\nKnit 2 rows.\nDec {number} sts at each end of next row."))
    assert [problem.message.partition(" at one")[0] for problem in found.problems] == [f"{number} stitches changed"]


@pytest.mark.parametrize(
    ("line", "counts"),
    [
        ("Cast on 4 sts at each end of next row.", [28]),
        ("Cast on 4 sts at both ends of next row.", [28]),
        ("Cast on 4 sts at each end of every row 2 times.", [28, 36]),
        ("Cast on 4 sts at end of next row.", [24]),
    ],
)
def test_what_is_cast_on_at_each_end_is_not_cast_on_at_one_alone(line: str, counts: list[int]) -> None:
    """Four stitches were missing in silence. By hand: 20 and 4 at either end."""
    plan = plan_of(project(f"Cast on 20 sts. Work flat.\nKnit 2 rows.\n{line}", sizes="one", size="one"))
    assert [round_.after for round_ in plan.rounds[3:]] == counts
    assert [run.stitch for run in flatten(plan.rounds[3].phrase)].count("co") == (2 if counts[0] == 28 else 1)
