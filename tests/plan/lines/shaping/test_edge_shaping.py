"""Shaping at an edge that is named. Source: common practice; a piece is divided at its neck, and the armhole is across."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

HEAD = "Cast on 40 sts. Work flat.\nWork 4 rows in stockinette.\n"
NECK = HEAD + "Neck row (RS): K to last 3 sts, k2tog, k1.\nPurl 1 row.\n"
ARMHOLE = HEAD + "Bind off 5 sts for armhole at beg of next row.\nPurl 1 row.\n"
HALF = HEAD + "Next row (RS): K20, turn and leave rem 20 sts on a holder.\nPurl 1 row.\n"


def rows(work: str, since: int) -> list[tuple[str, str]]:
    """Return side and stitches of every row behind so many, up to the bind-off."""
    found = plan_of(project(f"{work}\nBind off.")).rounds[since:-1]
    return [(round_.side, " ".join(f"{run.stitch}{run.times}" for run in round_.runs)) for round_ in found]


def test_a_row_that_names_the_edge_settles_where_it_is() -> None:
    """The neck row shapes the end of right-side rows, so wrong-side rows begin at the neck."""
    assert rows(NECK + "Bind off 3 sts at neck edge twice.", 7) == [
        ("RS", "k39"), ("WS", "bo3 p36"), ("RS", "k36"), ("WS", "bo3 p33"),
    ]  # fmt: skip
    assert rows(NECK + "Dec 1 st at neck edge of next 2 rows.", 7) == [
        ("RS", "k36 dec1 k1"), ("WS", "p1 dec1 p35"),
    ]  # fmt: skip


def test_the_right_side_is_no_side_of_the_piece() -> None:
    """A row "(right side)" that shapes one end says nothing of the armhole."""
    work = HEAD + "Next row (right side): K to last 3 sts, k2tog, k1.\nPurl 1 row.\nBind off 2 sts at neck edge once."
    assert rows(work, 7) == [("RS", "k39"), ("WS", "bo2 p37")]


def test_the_edge_across_from_it_is_the_other_end() -> None:
    """The armhole was bound off where right-side rows begin, so the neck is where they end; told."""
    work = ARMHOLE + "Dec 1 st at neck edge on next row."
    assert rows(work, 7) == [("RS", "k32 dec1 k1")]
    told = [warning.text for warning in plan_of(project(f"{work}\nBind off.")).warnings]
    assert any("neck edge is taken as" in text for text in told)


def test_where_a_piece_was_divided_is_its_inner_edge() -> None:
    """Armholes at both sides before do not matter: the half on the needles ends at the neck."""
    both = HEAD + "Bind off 2 sts at beg of next 2 rows.\nNext row (RS): K18, turn and leave rem 18 sts on a holder.\nPurl 1 row.\n"
    assert rows(both + "Bind off 2 sts at neck edge once.", 9) == [("RS", "k18"), ("WS", "bo2 p16")]
    assert rows(HALF + "Dec 1 st at armhole edge every RS row once.", 7) == [("RS", "k1 dec1 k17")]


@pytest.mark.parametrize(
    "work",
    [
        HEAD + "Dec 1 st at neck edge of next row.",
        HEAD + "Bind off 5 sts for armhole at beg of next 2 rows.\nDec 1 st at armhole edge of next row.",
        HEAD + "Bind off 5 sts for armhole at beg of next 2 rows.\nDec 1 st at neck edge of next row.",
        HEAD + "Bind off 5 sts at neck edge once.",
    ],
)
def test_an_edge_that_may_be_either_is_refused(work: str) -> None:
    """A piece with two armholes has no one armhole edge; the program does not guess."""
    assert "does not say at which end" in faults(project(f"{work}\nBind off."))


@pytest.mark.parametrize(("count", "after"), [("", 34), (" 34 sts.", 34), (" 35 sts.", 35)])
def test_at_one_edge_too_the_next_row_is_one_of_the_times_or_one_more(count: str, after: int) -> None:
    """The printed count tells which; without one, both are told. It was one more, and nobody was told. Common practice."""
    work = f"Cast on 40 sts.\nWork flat.\nBind off 3 sts at neck edge at beg of next RS row.\nPurl 1 row.\nDec 1 st at neck edge on next and every foll alt row 2 times.{count}\nKnit 1 row."
    plan = plan_of(project(work))
    assert plan.rounds[-1].after == after
    assert any("can mean 3 times in all" in caution.text for caution in plan.warnings)
