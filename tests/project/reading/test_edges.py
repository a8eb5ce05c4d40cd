"""Changes at the edges of rows, from the words to records. Source: common practice."""

from __future__ import annotations

import pytest

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
