"""A weighing while knitting, answered at once."""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.model import Plan
from stepper.session.effects import TellLasting
from stepper.session.events import Weighed
from stepper.session.questions.yarn_left import forecast_ball
from stepper.session.state import Position
from tests.plan.test_compile import SWITCHBACK, plan_of


def answered(plan: Plan, yarn: str, grams: float, index: int) -> list[TellLasting]:
    """Weigh a yarn at a place."""
    event = Weighed(at="2027-01-05T20:00:00+01:00", place=Position(index=index), yarn=yarn, grams=grams)
    return [each for each in forecast_ball(plan, event.yarn, event.weighing) if isinstance(each, TellLasting)]


def garment(bought: int) -> Plan:
    """Compile the pullover with some skeins of chalk."""
    text = SWITCHBACK.read_text(encoding="utf-8").replace("bought: 6", f"bought: {bought}")
    return plan_of(text)


def test_enough_is_said_with_what_will_be_over() -> None:
    """Six skeins are more than the garment takes."""
    (told,) = answered(garment(6), "MC", 45, 100)
    assert (told.out, told.out_soonest, told.buy) == (None, None, 0)
    assert told.over_g > 25  # half a skein


def test_a_shortage_is_foretold_while_a_skein_can_still_be_bought() -> None:
    """Three skeins end in a sleeve; the round is one that is still to come."""
    plan = garment(3)
    (told,) = answered(plan, "MC", 12, 120)
    assert told.out is not None
    assert told.out > 120
    assert plan.rounds[told.out].section.endswith("sleeve")
    assert told.buy >= 1


def test_without_skeins_in_the_file_nothing_is_foretold() -> None:
    """The weighing is kept all the same."""
    plan = garment(6)
    bare = replace(plan, materials=replace(plan.materials, stocks={}))
    assert answered(bare, "MC", 45, 100) == []
