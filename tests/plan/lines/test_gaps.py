"""Rows that would close what the row before bound off in its middle."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

NECK = "Cast on 40 sts.\nWork flat.\nKnit 2 rows.\n"


@pytest.mark.parametrize("row", ["Purl 1 row.", "Work 3 rows even.", "Row 4: P to end.", "Dec row: K1, k2tog, k to end."])
def test_no_row_works_across_a_gap(row: str) -> None:
    """Over a neck bound off in the middle there are two pieces: a row over both would sew it up. Source: common practice."""
    told = faults(project(f"{NECK}Next row: K15, bind off 10 sts, k to end.\n{row}\nBind off."))
    assert "across the gap" in told


@pytest.mark.parametrize(
    "rows",
    [
        "K3, bind off 3 sts, k to end.\nK to last 3 sts, cast on 3 sts, k3.",  # a buttonhole
        "K15, bind off 10 sts, k to end.\nP15, turn.",  # one side
        "K15, bind off 10 sts, k to end.\nPlace first 15 sts on hold.\nRejoin yarn to rem sts, k to end.",
        "Bind off 5 sts, k to end.\nPurl 1 row.",  # an edge
        "*K3, cast on 2 sts, bind off 2 sts; rep from * to end.\nPurl 1 row.",  # picots
        "K15, bind off 1 st, k to end.\nPurl 1 row.",  # an eyelet
    ],
)
def test_what_fills_a_gap_or_ends_at_it_is_read(rows: str) -> None:
    """A refusal in front of every buttonhole would teach nobody anything."""
    assert plan_of(project(f"{NECK}{rows}")).rounds


def test_a_hole_in_the_round_is_cast_on_again() -> None:
    """A thumb or a pocket: without the cast-on the next round has nothing to work there."""
    thumb = "Cast on 40 sts.\nJoin in the round.\nKnit 2 rounds.\nK15, bind off 8 sts, k to end.\n"
    assert plan_of(project(f"{thumb}K15, cast on 8 sts, k to end.\nBind off.")).rounds
    assert faults(project(f"{thumb}Knit 1 round.\nBind off."))
