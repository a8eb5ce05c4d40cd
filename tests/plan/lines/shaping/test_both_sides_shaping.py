"""Shaping of two sides of a neck that are worked at once. Source: common practice."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

START = "Cast on 40 sts.\nWork flat.\nWork 4 rows in stockinette.\n"
SIDES = f"{START}Row 5 (RS): K15, join 2nd ball, bind off 10, k to end.\nPurl 1 row.\n"


def rows(lines: str) -> list[str]:
    """Return the rows behind the one that joins the second ball and the next, as they are written."""
    return [each.instruction for each in plan_of(project(SIDES + lines)).rounds[7:]]


def test_stitches_are_bound_off_at_both_neck_edges_in_two_rows() -> None:
    """A row binds off at the beginning of a side alone: that of the side it comes to second."""
    assert rows("Bind off 3 sts at each neck edge twice.") == [
        "k15, other ball, bind off 3, k12",
        "p12, other ball, bind off 3, p12",
        "k12, other ball, bind off 3, k9",
        "p9, other ball, bind off 3, p9",
    ]


def test_decreases_fall_on_both_sides_of_the_neck() -> None:
    """Both edges are shaped in one row; between right-side rows one is worked back."""
    assert rows("Dec 1 st at each neck edge every RS row twice.") == [
        "k12, dec, k1, other ball, k1, dec, k12",
        "p14, other ball, p14",
        "k11, dec, k1, other ball, k1, dec, k11",
    ]
    assert rows("Dec 1 st at neck edge every 4th row once.")[-1] == "p12, dec, p1, other ball, p1, dec, p12"


def test_all_stitches_come_off_each_side_by_its_ball() -> None:
    """The sum is bound off, and the neck stays open."""
    last = plan_of(project(f"{SIDES}Bind off.")).rounds[-1]
    assert [(run.stitch, run.times) for run in last.runs] == [("bo", 15), ("other ball", 1), ("bo", 15)]


def test_a_gap_becomes_two_sides_where_the_page_says_so() -> None:
    """Many pages bind off the centre and only then speak of both sides."""
    lines = f"{START}Row 5 (RS): K15, bind off 10, k15.\nWorking both sides at once, dec 1 st at each neck edge every RS row once.\n"
    made = [each.instruction for each in plan_of(project(lines)).rounds[6:]]
    assert made == ["p15, other ball, p15", "k12, dec, k1, other ball, k1, dec, k12"]
    uneven = "Row 5 (RS): K10, bind off 10, k20.\nWork both sides at once.\nPurl 1 row.\nKnit 1 row."
    made = [each.instruction for each in plan_of(project(START + uneven)).rounds[6:]]
    assert made == ["p20, other ball, p10", "k10, other ball, k20"]


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("Dec 1 st at each armhole edge every RS row once.", "not read of both armhole edges"),
        ("Cast on 2 sts at each neck edge once.", "not read of both neck edges"),
        ("Dec 1 st at neck edge every RS row until 26 sts rem.", "say how often"),
        ("Bind off 2 sts at neck edge every RS row twice.", "say how often"),
    ],
)
def test_what_is_not_said_of_both_sides_is_refused(line: str, told: str) -> None:
    """A number of stitches left may be of one side or of both."""
    assert told in faults(project(SIDES + line))


@pytest.mark.parametrize("before", ["", "Row 5: K10, pm, k30.\n", "Row 5 (RS): K10, bind off 5, k10, bind off 5, k10.\n"])
def test_both_sides_ask_for_two_sides(before: str) -> None:
    """Two sleeves at once, or nothing parted: no second side is there to work."""
    assert "parts the stitches in two" in faults(project(f"{START}{before}Work both sides at once.\nWork 2 rows even."))
