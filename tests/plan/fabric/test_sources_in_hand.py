"""What the garment gives a round: picked-up stitches, the look of the fabric."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

FRONT = "Cast on 20 sts.\nWork flat.\nKnit 40 rows.\nBind off.\n"


@pytest.mark.parametrize(
    ("ratio", "picked"),
    [
        ("3 sts for every 4 rows", 30),
        ("1 st for every 1 rows", 40),
        ("1 st for every 2 rows", 20),
        ("2 sts for every 3 rows", 27),
    ],
)
def test_three_for_every_four_rows_are_picked_up(ratio: str, picked: int) -> None:
    """Forty rows give thirty stitches, to the nearest. Source of the ratio: common practice."""
    plan = plan_of(project(f"{FRONT}Pick up and knit {ratio} along the edge of body.\nBind off."))
    assert plan.rounds[-1].before == picked


def test_the_printed_count_wins_over_the_ratio_and_both_are_told() -> None:
    """The ratio is a rule of thumb; the printed count is what the rib needs."""
    plan = plan_of(
        project(FRONT + "Pick up and knit 3 sts for every 4 rows along the edge. 32 sts.\nBind off.")
    )
    assert plan.rounds[-1].before == 32
    assert "comes to 30" in plan.warnings[0].text
    assert "prints 32" in plan.warnings[0].text


def test_a_printed_count_far_from_the_ratio_is_a_fault() -> None:
    """Sixty instead of thirty is no rounding."""
    assert "prints 60 stitches" in faults(
        project(FRONT + "Pick up and knit 3 sts for every 4 rows along the edge. 60 sts.\nBind off.")
    )


def test_a_chart_that_is_not_there_is_told_with_the_nearest() -> None:
    """A misspelt chart in the middle of a row is found as one that stands alone."""
    assert 'Did you mean "peak"?' in faults(
        project("Cast on 12 sts.\nJoin in the round.\nRnd 1: K4, chart paek over 4 sts, k4.\nBind off.")
    )


def test_rows_go_on_as_they_look_from_each_side() -> None:
    """One written row of rib and "work for 2 cm": knit ones are purled from behind."""
    plan = plan_of(
        project(
            "Cast on 10 sts.\nWork flat.\n*K2, p2; rep from * to last 2 sts, k2. Work for 2 cm.\nBind off."
        )
    )
    said = [round_.instruction for round_ in plan.rounds[1:-1]]
    assert said[:3] == [
        "(k2, p2) 2 times, k2",
        "p2, *k2, p2; rep from * to end",
        "k2, *p2, k2; rep from * to end",
    ]


@pytest.mark.parametrize(("edge", "picked"), [("bound-off", 10), ("cast-on", 6)])
def test_an_edge_gives_as_many_as_it_has_stitches(edge: str, picked: int) -> None:
    """A strip of 6 grown to 10: its last edge has 10 stitches, its first 6, whatever was begun since.
    Source: common practice ("pick up 1 st in each bound-off st")."""
    strip = "Cast on 6 sts.\nWork flat.\nKnit 2 rows.\nIncrease evenly to 10 sts.\nKnit 1 row.\nBind off.\n"
    plan = plan_of(project(f"{strip}Pick up and knit 1 st in each {edge} st.\nKnit 2 rows.\nBind off."))
    assert plan.rounds[-1].before == picked


def test_the_edge_of_a_piece_is_found_behind_stitches_cast_on_for_the_next() -> None:
    """Four stitches for the overlap of a band, then one in each stitch of the neck that was bound off."""
    neck = "Cast on 30 sts.\nWork flat.\nKnit 3 rows.\nBind off.\n"
    plan = plan_of(
        project(f"{neck}Cast on 4 sts, pick up and knit 1 st in each bound-off st.\nKnit 2 rows.\nBind off.")
    )
    assert plan.rounds[-1].before == 34
    plan = plan_of(
        project(f"{neck}Cast on 4 sts.\nPick up and knit 1 st in each bound-off st.\nKnit 2 rows.\nBind off.")
    )
    assert plan.rounds[-1].before == 34


@pytest.mark.parametrize(
    "words", ["work 4 sts in seed stitch", "work 4 sts in pattern", "work in pattern to last 2 sts"]
)
def test_a_panel_that_asks_for_what_stands_below_it_is_not_worked_plain(words: str) -> None:
    """Its row does not know where in the round it stands: the stitches were knitted once, and nothing was said."""
    page = f"""
        Cast on 20 sts.
        Work flat.
        Leaf panel (8 sts)
        Row 1 (RS): K2, {words}, k2.
        Row 2: P8.
        Row 1 (RS): K6, work row 1 of leaf panel over next 8 sts, k6.
        Bind off.
    """
    assert "row 1 of leaf panel does not fit the 8 stitches it has here" in faults(project(page))
