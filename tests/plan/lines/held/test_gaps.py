"""Rows that would close what the row before bound off in its middle."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import HEAD, project

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


ROUND = "Cast on 40 sts.\nJoin in the round.\nKnit 2 rounds.\nBind off 4 sts, k 15, bind off 5 sts, k to end.\n"


@pytest.mark.parametrize("held", ["Place front sts on hold.", "Slip the back sts onto a holder.", "Hold all sts for front."])
def test_two_pieces_never_go_on_hold_for_one_of_them(held: str) -> None:
    """Front and back both on the needle, "front sts on hold" means one of them, and the line does not say which."""
    assert "stitches between two pieces" in faults(project(f"{ROUND}{held}\nCast on 10 sts.\nBind off."))
    head = HEAD.replace("name: body", "name: divide for front and back")
    both = project(f"{ROUND}{held}\nCast on 10 sts.\nBind off.", head=head)
    assert "stitches between two pieces" in faults(both)


def test_two_shoulders_may_lie_on_one_holder() -> None:
    """The section's own stitches are parted by its neck."""
    front = f"{NECK}K15, bind off 10 sts, k to end.\nPlace front sts on hold."
    assert plan_of(project(front, head=HEAD.replace("name: body", "name: front"))).rounds[-1].after == 0


@pytest.mark.parametrize(
    ("work", "first", "held"),
    [
        (f"{ROUND}Place front sts on hold and continue on back sts only.\nPurl 1 row.", 16, 15),
        (f"{ROUND}Slip front sts to a holder, then work back and forth over the rem sts.\nRow 1 (WS): Purl.", 16, 15),
        (f"{NECK}K 12, bind off 10 sts, k to end.\nPlace left front sts on hold and continue on right front sts.\nP 1 row.", 18, 12),
    ],
)
def test_the_piece_at_which_the_yarn_hangs_is_knitted_on(work: str, first: int, held: int) -> None:
    """The yarn hangs where the last row ended: the other piece waits, and the next row is a wrong-side one. Source: common practice."""
    plan = plan_of(project(f"{work}\nBind off."))
    row = plan.rounds[-2]
    assert (row.before, row.after, row.side, row.flat) == (first, first, "WS", True)
    assert list(plan.rounds[-1].held.values()) == [held]


@pytest.mark.parametrize(
    ("rows", "told"),
    [
        ("Knit 1 round.", "no two pieces"),
        ("K15, bind off 5 sts, k to end.", "no two pieces"),  # both ends of the round are one piece
        ("Bind off 4 sts, k 6, bind off 5 sts, k 6, bind off 5 sts, k to end.", "3 pieces"),
    ],
)
def test_which_piece_waits_is_not_guessed(rows: str, told: str) -> None:
    """Where no gap parts the stitches in two, nothing says which are the front's."""
    work = f"Cast on 40 sts.\nJoin in the round.\n{rows}\nPlace front sts on hold and continue on back sts only.\nBind off."
    assert told in faults(project(work))
