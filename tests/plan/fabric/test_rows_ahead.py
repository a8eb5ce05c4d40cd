"""Panels that are shaped beside before they were worked once through. Worked out by hand, row by row."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

ROPE = "Rope panel (10 sts)\nRnd 1: P2, k6, p2.\nRnd 2: P2, 3/3 LC, p2.\nRnds 3-4: P2, k6, p2.\n"
ROUND = f"Cast on 30 sts. Join in the round.\n{ROPE}Set-up rnd: K10, pm, work rnd 1 of rope panel over next 10 sts, pm, k10.\n"


def crossed(work: str, code: str = "3/3 lc") -> list[int]:
    """Return which rows behind the cast-on cross the cable, from 1."""
    rounds = plan_of(project(work, sizes="S", size="S")).rounds[1:]
    return [number for number, row in enumerate(rounds, 1) if any(run.stitch == code for run in row.runs)]


@pytest.mark.parametrize("before", [0, 1, 2, 3, 4, 5])
def test_a_panel_goes_on_with_its_next_row_behind_a_shaping_beside_it(before: int) -> None:
    """It crosses in rounds 2, 6, 10 and 14 whenever the decreases come: they were refused in its first four."""
    rounds = f"Work {before} rounds in pattern.\n" if before else ""
    dec = "Dec rnd: K1, k2tog, work in pattern to last 3 sts, ssk, k1. 28 sts.\n"
    assert crossed(f"{ROUND}{rounds}{dec}Work {12 - before} rounds in pattern.\nBind off.") == [2, 6, 10, 14]


def test_the_next_row_of_a_panel_counts_those_worked_in_pattern() -> None:
    """"Work next rnd of rope panel" behind rounds in pattern crossed three rounds after the last crossing."""
    work = (
        f"{ROUND}Work 4 rounds in pattern.\nDec rnd: K1, k2tog, work in pattern to last 3 sts, ssk, k1.\n"
        "Work 2 rounds in pattern.\nNext rnd: K9, work next rnd of rope panel over next 10 sts, k9.\n"
        "Work 5 rounds in pattern.\nBind off."
    )
    assert crossed(work) == [2, 6, 10, 14]


def test_panels_of_two_lengths_in_rows_come_together_again() -> None:
    """A panel of four rows and one of six, shaped at the edges in row 5: crossings in rows 3, 7, 11, … and 5, 11."""
    work = (
        "Four panel (6 sts)\nRow 1 (RS): P1, k4, p1.\nRow 2: K1, p4, k1.\nRow 3: P1, 2/2 LC, p1.\nRow 4: K1, p4, k1.\n"
        "Six panel (6 sts)\nRow 1 (RS): P1, k4, p1.\nRows 2, 4 and 6: K1, p4, k1.\nRow 3: P1, k4, p1.\nRow 5: P1, 2/2 RC, p1.\n"
        "Cast on 30 sts. Work flat.\n"
        "Row 1 (RS): K9, work row 1 of four panel over 6 sts, work row 1 of six panel over 6 sts, k9.\n"
        "Row 2: P9, work row 2 of four panel over 6 sts, work row 2 of six panel over 6 sts, p9.\n"
        "Work 2 rows as set.\nBind off 3 sts at beg of next 2 rows. 24 sts.\nWork 12 rows in pattern.\nBind off."
    )
    assert crossed(work, "2/2 lc") == [3, 7, 11, 15]
    assert crossed(work, "2/2 rc") == [5, 11, 17]


def test_a_row_plain_over_the_panel_still_leaves_it_unknown() -> None:
    """Whether the panel stood still in it nobody can tell."""
    work = f"{ROUND}Dec rnd: K1, k2tog, k to last 3 sts, ssk, k1.\nWork 2 rounds in pattern.\nBind off."
    assert "not worked once through" in faults(project(work, sizes="S", size="S"))


SIDE = (
    f"Cast on 30 sts. Join in the round.\n{ROPE}"
    "Set-up rnd: K3, pm, work rnd 1 of rope panel over next 10 sts, pm, k2, pm for side, k15.\n"
)


def test_the_side_marker_is_the_one_that_was_placed_for_the_side() -> None:
    """"Work in pattern to side m" knitted over the panel from its first marker on."""
    plan = plan_of(project(f"{SIDE}Next rnd: Work in pattern to side m, sm, m1l, k to end. 31 sts.\nBind off.", sizes="S", size="S"))
    assert plan.rounds[2].instruction == "k3, p2, 3/3 LC, p2, k2, sm, m1l, k15"


def test_a_side_marker_among_others_than_where_it_was_placed_is_refused() -> None:
    """Two markers more may stand before it or behind it."""
    work = f"{SIDE}Next rnd: K1, pm, k to end.\nNext rnd: K to side m, sm, k to end.\nBind off."
    assert "nobody can tell which it is" in faults(project(work, sizes="S", size="S"))
