"""Stitches held that the row has just worked. Source: a neck divided in one row, common practice; counts by hand."""

from __future__ import annotations

import pytest

from stepper.plan.model import flatten
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

BACK = "Cast on 30 sts. Work flat.\nWork 4 rows in stockinette.\n"


def test_the_next_row_goes_back_over_what_was_worked_last() -> None:
    """By hand: 30 - 9 - 11 = 10 are left beside the 9; those of the other side wait where the row began."""
    text = f"{BACK}K9 and place these sts on a holder for left side, bind off 11 sts, k to end. 10 sts.\nPurl 1 row.\n"
    rounds = plan_of(project(text)).rounds[-2:]
    assert [(one.after, dict(one.held), one.side) for one in rounds] == [
        (10, {"left side": 9}, "WS"),
        (10, {"left side": 9}, "WS"),
    ]


def test_others_may_wait_between_what_was_worked() -> None:
    """By hand: of 30, 9 worked and 11 left wait beside each other; the row goes back over the last 10."""
    text = f"{BACK}K9, hold these 9 sts for left side, hold 11 sts for neck, k to end.\nPurl 1 row.\n"
    rounds = plan_of(project(text)).rounds[-2:]
    assert [(one.after, dict(one.held), one.side) for one in rounds] == [
        (10, {"neck": 11, "left side": 9}, "WS"),
        (10, {"neck": 11, "left side": 9}, "WS"),
    ]


def test_all_three_parts_of_a_row_may_wait() -> None:
    """By hand: 9 and 11 and 10 are the 30; none is left."""
    text = f"{BACK}K9, hold these 9 sts for left side, hold 11 sts for neck, k10, hold these 10 sts for right side.\n"
    last = plan_of(project(text)).rounds[-1]
    assert (last.after, dict(last.held)) == (0, {"neck": 11, "right side": 10, "left side": 9})


def test_markers_of_what_is_left_stay_where_they_hang() -> None:
    """By hand: markers at 10 and 20 of 30; without the first 6 they hang at 4 and 14 of 24, so 10 before the end."""
    text = (
        "Cast on 30 sts. Work flat.\nRow 1 (RS): K10, pm, k10, pm, k10.\nRow 2: Purl.\n"
        "Row 3: K6, place these sts on a holder, k to end.\nRow 4: P10, sm, p10, sm, p4.\n"
    )
    assert plan_of(project(text)).rounds[-1].after == 24


def test_the_fabric_of_what_waits_is_kept() -> None:
    """By hand: the first 10 of k2, p2 rib are k2, p2, k2, p2, k2; from the wrong side that is p2, k2, p2, k2, p2."""
    text = (
        "Cast on 40 sts. Work flat.\nWork 4 rows in k2, p2 rib.\n"
        "K2, p2, k2, p2, k2, place these 10 sts on a holder, bind off 10 sts, work in pattern to end.\nPurl 1 row.\nBind off.\n"
        "With WS facing, rejoin yarn to held sts.\nWork in pattern to end.\n"
    )
    row = plan_of(project(text)).rounds[-1]
    assert [(run.stitch, run.times) for run in flatten(row.phrase)] == [("p", 2), ("k", 2), ("p", 2), ("k", 2), ("p", 2)]


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("K9 and place these 8 sts on a holder, bind off 11 sts, k to end.", "8 stitches go on hold of the 9"),
        ("K4, p5, place these sts on a holder, bind off 11 sts, k to end.", "does not say how many"),
        ("K9, bind off 11 sts, k5, place these 5 sts on a holder, k to end.", "behind the 9 before them"),
        ("K9, bind off 11 sts and place these sts on a holder, k to end.", "does not say how many"),
        ("K9, p21, place these 30 sts on a holder.", "none are worked behind"),
        ("K9, place these 9 sts on a holder, k9, turn.", "only in a whole row"),
        ("K4, hold 3 sts, k9, place these 9 sts on a holder, k to end.", "behind the 4 before them"),
        ("Next row: K9, hold 11 sts, k10. Place all sts on a holder.", "no stitches are left in this row"),
    ],
)
def test_what_is_not_clear_is_refused(line: str, told: str) -> None:
    """A stitch too many on the holder is only found when the shoulders do not meet."""
    assert told in faults(project(BACK + line))


def test_a_round_goes_on_over_what_is_left_of_it() -> None:
    """Underarms of a body that waits for its yoke: 60 = 5 + 25 + 5 + 25, markers at 12 and 40 of 60, at 7 and 30 of 50."""
    text = (
        "Cast on 60 sts. Join in the round.\nNext rnd: K12, pm, k28, pm, k20.\n"
        "Next rnd: K5, slip these 5 sts to waste yarn, k25, k5 and slip these sts to waste yarn, k to end.\n"
    )
    rounds = plan_of(project(text)).rounds
    assert [(one.after, one.held) for one in rounds[-2:]] == [(60, {}), (50, {"holder": 5, "second holder": 5})]
    assert [run.stitch for run in flatten(rounds[-1].phrase)] == ["hold", "rest", "hold", "rest"]
    assert rounds[-1].markers == (7, 30)


def test_a_round_holds_as_many_as_it_has_worked() -> None:
    """Eight said of seven worked: she would look for the eighth."""
    text = "Cast on 60 sts. Join in the round.\nNext rnd: K7, place these 8 sts on a holder, k to end."
    assert "8 stitches go on hold of the 7" in faults(project(text))
