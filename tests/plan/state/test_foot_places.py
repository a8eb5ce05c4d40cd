"""Where a foot begins. Source: arithmetic at 28 rounds to 10 cm; that it is measured along the sole: common practice."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

WEDGE = "".join(f"{word}, w&t.\n" for word in ("K18", "P16", "K14", "P12", "K13", "P14"))
FLAP = (
    "Cast on 24 sts.\nJoin in the round.\nKnit 4 rounds.\nNext row: K12, hold 12 for instep.\nWork flat.\n"
    "Row 1 (WS): Sl 1, p to end.\nRow 2 (RS): Sl 1, k to end.\nRep rows 1 and 2 3 times more.\n"
    "Next row (WS): Sl 1, p6, p2tog, p1, turn.\nNext row (RS): Sl 1, k3, ssk, k1, turn.\n"
    "Next row (WS): Sl 1, p4, p2tog, p1.\nNext row (RS): Sl 1, k5, ssk, k1.\n"
    "Next rnd: K8, pick up and knit 4 sts along the flap, k across held instep sts, pick up and knit 4 sts along the flap.\n"
    "Join in the round.\n"
)


def rounds_of(work: str) -> int:
    """Count the rounds that the last line of a work comes to."""
    whole, *_ = work.rstrip("\n").rpartition("\n")
    return len(plan_of(project(f"{work}\nBind off.")).rounds) - len(plan_of(project(f"{whole}\nBind off.")).rounds)


@pytest.mark.parametrize("words", ["foot measures 5 cm", "foot measures 5 cm from back of heel", "sock measures 5 cm from the heel"])
def test_behind_a_flap_all_rows_of_the_turn_lie_under_the_foot(words: str) -> None:
    """Four rows turn the heel and one round picks up: of 14 rounds 9 are left."""
    assert rounds_of(f"{FLAP}Knit until {words}.") == 9


def test_a_heel_of_short_rows_is_folded_in_its_middle() -> None:
    """Three of six rows lie under the foot, and the round that ends them: of 14 rounds 10 are left."""
    work = f"Cast on 40 sts.\nJoin in the round.\nKnit 12 rounds.\n{WEDGE}Next row: K to end.\nKnit until foot measures 5 cm."
    assert rounds_of(work) == 10


def test_a_toe_of_short_rows_begins_the_foot() -> None:
    """The tip is its middle, whether or not the foot has a section of its own."""
    work = f"Cast on 40 sts.\nJoin in the round.\nKnit 1 round.\n{WEDGE}Next row: K to end.\nKnit until foot measures 5 cm."
    assert rounds_of(work) == 10


@pytest.mark.parametrize(
    "work",
    [
        "Cast on 40 sts.\nJoin in the round.\nKnit 12 rounds.\nKnit until foot measures 5 cm from back of heel.",
        FLAP + "Knit until foot measures 0.5 cm.",
    ],
)
def test_a_foot_without_a_heel_or_shorter_than_it_is_refused(work: str) -> None:
    """A length from a place that nobody knows would be any length."""
    assert faults(project(f"{work}\nBind off."))
