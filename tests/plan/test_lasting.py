"""How long a pattern is worked."""

from __future__ import annotations

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project


def test_stockinette_is_knit_on_the_right_side_and_purled_on_the_wrong() -> None:
    """Common practice: in rows the sides alternate; in the round there is only the right one."""
    flat = plan_of(project("Cast on 8 sts.\nWork flat.\nWork in St st for 2 cm.\nBind off."))
    assert [(r.side, r.instruction) for r in flat.rounds[1:5]] == [
        ("RS", "knit"),
        ("WS", "purl"),
        ("RS", "knit"),
        ("WS", "purl"),
    ] or [(r.side, r.instruction) for r in flat.rounds[1:3]] == [("WS", "purl"), ("RS", "knit")]
    around = plan_of(project("Cast on 8 sts.\nJoin in the round.\nWork in St st for 2 cm.\nBind off."))
    assert {(r.side, r.instruction) for r in around.rounds[1:-1]} == {("RS", "knit")}


def test_garter_in_the_round_alternates_knit_and_purl() -> None:
    """Common practice: in rows every row is knit, in the round every other one is purled."""
    plan = plan_of(project("Cast on 8 sts.\nJoin in the round.\nWork 4 rounds in garter st.\nBind off."))
    assert [r.instruction for r in plan.rounds[1:-1]] == ["knit", "purl", "knit", "purl"]


def test_more_rounds_come_on_top() -> None:
    """"2 more rounds" are two more, "work 4 rounds" in the same line four in all."""
    head = "Cast on 8 sts.\nJoin in the round.\n*K2, p2; rep from * to end."
    assert len(plan_of(project(f"{head} Work 4 rounds.\nBind off.")).rounds) == 1 + 4 + 1
    assert len(plan_of(project(f"{head} Work 4 more rounds.\nBind off.")).rounds) == 1 + 5 + 1


def test_a_repeat_can_end_with_a_round_of_its_own() -> None:
    """"ending with rnd 1": the nearest end that is one."""
    work = (
        "Cast on 8 sts.\nRnd 1: Knit.\nRnd 2: Purl.\nRnd 3: Purl.\n"
        "Rep rnds 1-3 until piece measures 8 cm, ending with rnd 1.\nBind off."
    )
    plan = plan_of(project(work))
    assert [r.instruction for r in plan.rounds[-3:-1]] == ["purl", "knit"]
    assert abs(len(plan.rounds) - 2 - 0.8 * 28) <= 2


def test_a_length_that_is_passed_is_told() -> None:
    """A piece does not grow shorter."""
    assert "already measures" in faults(
        project("Cast on 8 sts.\nKnit for 9 cm.\nKnit until piece measures 3 cm.")
    )
