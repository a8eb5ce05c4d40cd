"""How far from the edge all changes of a kind are worked, said once for the rows below. Invented; common practice."""

from __future__ import annotations

import pytest

from stepper.plan.model import flatten
from stepper.project.rewording.remarks.edge_rules import insets_in
from tests.plan.lines.again.test_another_part import knit


@pytest.mark.parametrize(
    ("sentence", "found"),
    [
        ("Work all increases 2 sts in from the edge.", {"inc": 2}),
        ("Work all decs one st in from edge.", {"dec": 1}),
        ("All incs are worked three sts in from each end of rows", {"inc": 3}),
        ("Work all shapings 2 sts in from the edge throughout.", {"inc": 2, "dec": 2}),
        ("Raglan decreases are worked 2 sts in from the edge.", {}),
        ("When fewer than 8 sts remain, work the decs 1 st in from the edge.", {}),
        ("Work the next increases 2 sts in from the edge.", {}),
        ("From here work all decreases 2 sts in from the edge until 10 sts remain.", {}),
    ],
)
def test_only_a_rule_for_all_changes_of_a_kind_is_one(sentence: str, found: dict[str, int]) -> None:
    """What changes halfway, or is for one edge of two, leaves the others open."""
    assert insets_in([sentence]) == found


def widths(*lines: str) -> list[int]:
    """Return how many stitches stand outside the change at the beginning of each row that changes."""
    rounds = knit("== back", "CO 40 sts. Work flat.", "Work 2 rows in st st.", *lines).rounds
    runs = [list(flatten(each.phrase)) for each in rounds]
    return [row[0].times for row in runs if any(run.stitch in ("inc", "dec") for run in row)]


def test_the_rows_below_are_worked_by_it_and_no_other() -> None:
    """A row above it, another kind of change and another section keep what is usual."""
    rule, shaped = "Work all increases 3 sts in from the edge.", "Inc 1 st at each end of next row."
    assert widths(shaped, "Purl 1 row.", rule, shaped, "Purl 1 row.", "Dec 1 st at each end of next row.") == [1, 3, 1]
    assert widths("Inc 1 st at each end of next row, working incs 2 sts in from the edge.", "Purl 1 row.", rule, shaped) == [2, 3]
    assert widths(rule, shaped, "Bind off.", "== sleeve", "CO 20 sts. Work flat.", "Purl 1 row.", shaped) == [3, 1]
