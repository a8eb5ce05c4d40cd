"""Rounds that a page explains before it casts on. Worked out by hand; how they are worked: common practice."""

from __future__ import annotations

from tests.plan.fabric.test_established import knit, told
from tests.plan.test_compile import faults
from tests.project.samples import project

TIP = "Decrease tip round: *K to 3 sts before marker, k2tog, k1, sm, k1, skp; rep from * at each marker, k to end.\n"
RAGLAN = "Raglan round: *K to 1 st before marker, yo, k1, sm, k1, yo; rep from * at each marker, k to end.\n"
ROUND = "Cast on 24 sts.\nJoin in the round.\nKnit 1 round.\n"


def test_what_is_explained_first_is_worked_where_it_is_called() -> None:
    """There is nothing on the needles that the explanation could be worked on."""
    plan = knit(f"{RAGLAN}{ROUND}Place markers in turn after 6, 12 sts.\nWork raglan round.")
    assert told(plan, 1) == ["k5, yo, k1, sm, k1, yo, k10, yo, k1, sm, k1, yo, k5"]


def test_a_tip_is_worked_nowhere_by_itself() -> None:
    """Its name says that it only explains, even where stitches are on the needles."""
    assert len(knit(f"{ROUND}{TIP}Knit 2 rounds.").rounds) == 4


def test_without_a_marker_the_beginning_of_the_round_is_the_marker() -> None:
    """What stands behind the marker begins the round, what stands before it ends it."""
    assert told(knit(f"{TIP}{ROUND}Work decrease tip round. 22 sts."), 1) == ["k1, skp, k18, k2tog, k1"]


def test_a_total_counts_the_once_just_worked() -> None:
    """Three in all are the first and two more; behind a series of them a total is of another."""
    plan = knit(f"{TIP}{ROUND}Work decrease tip round.\nRep same dec round every 2nd round 3 times in total. 18 sts.")
    assert [round_.after for round_ in plan.rounds][2:] == [22, 22, 20, 20, 18]
    more = "Rep same dec round every round 2 times in total. 14 sts."
    plan = knit(f"{TIP}{ROUND}Work decrease tip round.\nRep same dec round every round 3 times in total.\n{more}")
    assert plan.rounds[-1].after == 14


def test_a_round_before_the_cast_on_that_nobody_calls_is_no_explanation() -> None:
    """The cast-on may have been forgotten."""
    found = faults(project("Dec round: K1, k2tog, k to end.\nCast on 24 sts.\nKnit 2 rounds."))
    assert "no stitches on the needles" in found


def test_each_side_of_the_marker_is_around_the_beginning_of_the_round_or_at_the_one_of_a_row() -> None:
    """The one marker of a round is where it begins; a stitch of each side lies between it and the change."""
    shaped = "Inc 1 st at each side of marker on the 2nd and every foll 2nd {0} until there are 26 sts."
    assert told(knit(f"{ROUND}{shaped.format('round')}"), 2) == ["knit", "k1, inc, k20, inc, k1"]
    flat = "Cast on 24 sts. Work flat.\nK12, pm, k12.\nPurl 1 row.\n"
    assert told(knit(f"{flat}{shaped.format('row')}"), 1) == ["p10, inc, p1, sm, p1, inc, p10"]


def test_nobody_can_tell_which_marker_is_meant_where_another_lies_in_the_round() -> None:
    """That of the beginning and another: the page means one of them."""
    shaped = "Inc 1 st at each side of marker on the 2nd and every foll 2nd round until there are 26 sts."
    assert "which marker is meant" in faults(project(f"{ROUND}K12, pm, k12.\n{shaped}"))
    assert "no marker is in the row" in faults(project(f"Cast on 24 sts. Work flat.\nKnit 2 rows.\n{shaped.replace('round', 'row')}"))
