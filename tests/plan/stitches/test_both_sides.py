"""Rows over two sides of a neck that are worked at once. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.plan.model import flatten
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

SIDES = "Cast on 40 sts.\nWork flat.\nWork 4 rows in stockinette.\nRow 5 (RS): K15, join 2nd ball, bind off 10, k to end.\n"


def rows(lines: str) -> list[str]:
    """Return the rows behind the one that joins the second ball, as they are written."""
    return [each.instruction for each in plan_of(project(SIDES + lines)).rounds[6:]]


def test_every_row_takes_the_other_ball_where_the_sides_part() -> None:
    """One ball carried across the neck would sew it up."""
    assert rows("Work 2 rows even.\nRow 8: P12, p2tog, p to end.\nKnit 1 row.") == [
        "p15, other ball, p15",
        "k15, other ball, k15",
        "p12, p2tog, p1, other ball, p15",
        "k15, other ball, k14",
    ]


def test_a_repeat_is_cut_where_the_sides_part() -> None:
    """A rib goes on over both sides; the place is within one of its repeats."""
    (row,) = rows("Row 6: *P2, k1; rep from * to end.")
    assert row == "(p2, k1) 5 times, other ball, *p2, k1; rep from * to end"
    (row,) = rows("Row 6: P1, *k2, p2; rep from * to last st, k1.")
    laid = [(run.stitch, run.times) for run in flatten(plan_of(project(f"{SIDES}Row 6: P1, *k2, p2; rep from * to last st, k1.")).rounds[6].phrase)]
    at = laid.index(("other ball", 1))
    assert sum(times for _, times in laid[:at]) == 15, row


def test_one_side_bound_off_leaves_a_row_of_the_other() -> None:
    """Behind the last step of a shoulder there is one side, and no second ball to take."""
    assert rows("Purl 1 row.\nBind off 15 sts at beg of next row.\nPurl 1 row.\nBind off.") == [
        "p15, other ball, p15",
        "bind off 15, other ball, k15",
        "purl",
        "bind off",
    ]


def test_a_marker_behind_the_neck_is_a_marker() -> None:
    """Once a side is off, markers are placed and met as anywhere."""
    placed = "Purl 1 row.\nBind off 15 sts at beg of next row.\nP5, pm, p10.\nK to 2 sts before marker, k2tog, sm, k to end."
    assert rows(placed)[-1].endswith("k2tog, slip marker, k5") or "k2tog" in rows(placed)[-1]
    assert "other ball" not in rows(placed)[-1]


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("Row 6: P14, p2tog, p to end.", "would join the two sides"),
        ("Row 6: P15, m1, p15.", "made between two sides"),
        ("Row 6: P10, turn.", "does not go to the end of both"),
        ("Row 6: P10, pm, p to end.", "markers beside a neck"),
        ("Row 6: P to marker, p to end.", "no marker is left where two sides"),
        ("Row 6: P10, other ball, p to end.", "do not part at this place"),
        ("Row 6: P10, join 2nd ball, p to end.", "at once already"),
        ("Row 6: Dec 5 sts evenly.", "not read of both"),
        ("Place a marker every 5 sts.", "markers beside a neck"),
        ("Place markers in turn after 5 and 5 sts.", "markers beside a neck"),
        ("Join in the round.\nKnit 1 round.", "not read of both"),
    ],
)
def test_what_would_join_the_sides_or_works_one_of_them_is_refused(line: str, told: str) -> None:
    """A row that goes over the neck as over one piece is knitted wrong from there on."""
    assert told in faults(project(f"{SIDES}{line}\nWork 2 rows even."))


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("Row 5 (RS): K15, other ball, k to end.", "no second ball was joined"),
        ("Row 5 (RS): Join 2nd ball, k to end.", "in the middle of a row"),
        ("Row 5 (RS): K20, pm, k20.\nRow 6: P10, join 2nd ball, p to end.", "other markers are on the needles"),
        ("Row 5 (RS): K to 3 sts before neck edge, k2tog, k1.", "two sides are not worked at once"),
    ],
)
def test_a_second_ball_is_joined_within_a_row_without_markers(line: str, told: str) -> None:
    """What parts the sides is carried as the one marker there is."""
    assert told in faults(project(f"Cast on 40 sts.\nWork flat.\nWork 4 rows in stockinette.\n{line}\nBind off."))
