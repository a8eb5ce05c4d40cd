"""An even increase or decrease, worked once and worked again."""

from __future__ import annotations

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

START = "Cast on 20 sts.\nJoin in the round.\n"


def after(work: str) -> list[int]:
    """Give the stitches after each round behind the cast-on."""
    return [round_.after for round_ in plan_of(project(START + work)).rounds[1:]]


def test_an_even_change_is_repeated_with_the_rounds_around_it() -> None:
    """"Rep last 3 rounds" behind a decrease and two plain rounds decreases again; it was dropped in silence."""
    assert after("Decrease 4 sts evenly.\nKnit 2 rounds.\nRep last 3 rounds once more.") == [16, 16, 16, 12, 12, 12]


def test_an_even_change_is_repeated_alone() -> None:
    """"Rep last round" takes the decrease, not the plain round before it."""
    assert after("Knit 1 round.\nDecrease 4 sts evenly.\nRep last round once more.") == [20, 16, 12]


def test_a_change_to_a_count_is_not_repeated() -> None:
    """What goes to 16 stitches cannot go there again; she is asked to write it out."""
    told = faults(project(START + "Decrease evenly to 16 sts.\nKnit 2 rounds.\nRep last 3 rounds once more.\nBind off."))
    assert "cannot be worked again" in told


def test_the_fabric_goes_on_behind_a_repeated_change() -> None:
    """Stockinette stays stockinette however often it was decreased."""
    plan = plan_of(project(START + "Knit 2 rounds.\nDecrease 4 sts evenly.\nKnit 1 round.\nRep last 2 rounds once more.\nWork 2 rounds even."))
    assert [round_.instruction for round_ in plan.rounds[-2:]] == ["knit", "knit"]
    assert plan.rounds[-1].after == 12
