"""Why something was asked or advised."""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.model import Checkpoint, Plan
from stepper.session.cues import Count, Next, Why
from stepper.session.effects import AskCount
from stepper.session.machine import Session
from stepper.session.questions.why import Ground, TellWhy
from stepper.session.state import State
from tests.plans import plan
from tests.playbook import AT
from tests.session.open_row.evening import cowl, evening


def grounds(session: Session) -> list[tuple[Ground, str]]:
    """Return what she hears to "why"; nothing happens by it."""
    considered = session.consider(Why(at=AT))
    assert considered.events == ()
    return [(each.ground, each.reason) for each in considered.effects if isinstance(each, TellWhy)]


def counted() -> Plan:
    """Return a garment with a count behind its cast-on."""
    made = plan(("body", ["co40", "k40", "k40", "k40", "bo40"]))
    first, *others = made.rounds
    return replace(made, rounds=(replace(first, checkpoint=Checkpoint(expect=40, reason="after the cast-on")), *others))


def test_why_is_answered_of_what_was_just_asked() -> None:
    """The count behind the cast-on, asked and not yet given; once it is given nothing is asked any more."""
    session = Session(counted(), State())
    asked = session.consider(Next(at=AT))
    session.adopt(asked)
    assert any(isinstance(each, AskCount) and each.reason == "after the cast-on" for each in asked.effects)
    assert grounds(session) == [(Ground.COUNT, "after the cast-on")]
    session.adopt(session.consider(Count(at=AT, stitches=40)))
    assert grounds(session) == [(Ground.NOTHING, "")]


def test_a_count_that_is_off_is_why_more_are_asked() -> None:
    """And a row that is not read is why she is asked what it comes to."""
    session = Session(counted(), State())
    session.adopt(session.consider(Next(at=AT)))
    session.adopt(session.consider(Count(at=AT, stitches=39)))
    assert [ground for ground, _ in grounds(session)] in ([Ground.SEARCH], [Ground.DOUBT])
    assert grounds(evening(cowl())) == [(Ground.OPEN, "")]
    assert grounds(evening(replace(cowl(), open=None))) == [(Ground.NOTHING, "")]
