"""A round that stops before its end. Source: common practice, for underarms on both sides of the beginning."""

from __future__ import annotations

import pytest

from tests.invariants import broken_invariants
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project
from tests.tables import each_row

HEAD = "Cast on 40 sts.\nJoin in the round.\n"


def runs(plan_rounds: tuple, at: int) -> str:  # type: ignore[type-arg]
    """Write the stitches of a round."""
    return " ".join(f"{run.stitch}{run.times}" for run in plan_rounds[at].runs if run.uses or run.leaves)


def test_the_next_round_begins_where_the_last_one_stopped() -> None:
    """Four stitches wait, are worked first, and the plan keeps every invariant."""
    plan = plan_of(project(f"{HEAD}Knit 3 rounds, ending last rnd 4 sts before BOR.\nBind off 8 sts, k to end. 32 sts.\nBind off."))
    assert [runs(plan.rounds, at) for at in (1, 2, 3, 4)] == ["k40", "k40", "k36 rest4", "bo8 k32"]
    assert broken_invariants(plan) == ()


def test_markers_keep_their_stitches() -> None:
    """A marker after 10 stitches stands after 14 of the new round; the one at the new beginning is it."""
    work = f"{HEAD}K10, pm, k26, pm, k4.\nKnit 2 rounds, ending last rnd 4 sts before BOR.\nK to m, sm, p to end.\nBind off."
    assert runs(plan_of(project(work)).rounds, 4) == "k14 p26"


def test_the_pattern_goes_on_over_its_own_stitches() -> None:
    """A rib stands where it stood: two stitches to the left, and the new round begins with its purl stitches."""
    work = f"{HEAD}*K2, p2; rep from * to end. Work for 4 rounds.\nWork 1 round in pattern, ending last rnd 2 sts before BOR.\nWork 1 round in pattern.\nBind off."
    rounds = plan_of(project(work)).rounds
    assert runs(rounds, len(rounds) - 2).startswith("p2 k2 p2")


def test_a_length_ends_with_that_round() -> None:
    """3 cm at 28 rounds to 10 cm are 8 rounds, the last of them stopped."""
    plan = plan_of(project(f"{HEAD}Knit until piece measures 3 cm, ending 4 sts before end of last rnd.\nKnit 1 round.\nBind off."))
    assert [runs(plan.rounds, at) for at in (7, 8, 9)] == ["k40", "k36 rest4", "k40"]


@pytest.mark.parametrize(
    "work",
    [
        HEAD + "Knit 3 rounds, ending last rnd 50 sts before BOR.",
        HEAD + "K to last 2 sts, k2tog. Stop short 4 sts.",
        "Cast on 40 sts. Work flat.\nKnit 2 rows. Stop short 4 sts.",
    ],
)
def test_a_round_that_cannot_stop_there_is_refused(work: str) -> None:
    """More stitches than it has, a shaping among them, or a row: nobody knits that."""
    assert faults(project(f"{work}\nBind off."))


def test_the_stitches_to_a_new_beginning_are_told_behind_the_round_and_not_before_it() -> None:
    """Said with the round before, she would have knitted them first, and that round would have run out of stitches."""
    rounds = plan_of(project(f"{HEAD}Knit 1 round.\nK9, pm for new beg of rnd.\nKnit 3 rounds.\nBind off.")).rounds
    said = [any("knit 9 more stitches" in remark for remark in each.remarks) for each in rounds]
    assert said == [False, False, True, False, False, False]


def test_a_new_beginning_before_the_last_stitches_is_knitted_to() -> None:
    """ "K to last 3 sts, pm for new BOR" leaves the three to the next round; by hand, 37 of forty."""
    rounds = plan_of(project(f"{HEAD}Knit 1 round.\nK to last 3 sts, pm for new BOR.\nKnit 3 rounds.\nBind off.")).rounds
    said = [any("knit 37 more stitches" in remark for remark in each.remarks) for each in rounds]
    assert said == [False, False, True, False, False, False]


def test_behind_a_cast_on_there_is_no_round_whose_beginning_could_move() -> None:
    """The nine stitches would be the only ones of their round, and the plan would count on a whole one."""
    assert "no round was worked before this" in faults(project(f"{HEAD}K9, pm for new beg of rnd.\nKnit 3 rounds.\nBind off."))


@each_row(
    ("row", "found"),
    [
        ("K38, hold 2 sts, CO 3 sts, pm for BOR, CO 3 sts.", "marked to begin here"),
        ("K38, hold 2 sts, CO 3 sts, place marker for beginning of round, CO 3 sts.", "marked to begin here"),
        ("K8, pm for beginning of round, k to end.", "at the marker within this row, after 8 more"),
        ("K8, CO 2 sts, place marker for BOR, CO 2 sts, k32.", "at the marker within this row, after 10 more"),
        ("Pm for BOR, k20, pm, k20.", ""),
        ("K20, pm, k20, pm for BOR.", ""),
        ("K38, hold 2 sts, CO 3 sts, pm, CO 3 sts.", ""),
    ],
)
def test_a_beginning_marked_within_a_row_is_not_passed_over(row: str, found: str) -> None:
    """Half the stitches cast on at an underarm lie behind the marker: rounds that begin behind them begin too late."""
    work = project(f"{HEAD}Knit 3 rounds.\n{row}\nKnit 2 rounds.")
    if "begin here" in found:
        assert found in faults(work)
    else:
        said = [one.text for one in plan_of(work).warnings if "marker within" in one.text]
        assert [found in each for each in said] == [True] * bool(found)
