from __future__ import annotations

from stepper.session.cues import Next
from stepper.session.due import MEASURE_ROUNDS_LEFT
from stepper.session.effects import AskLength, TellStep
from stepper.session.machine import Session
from stepper.session.state import Knitting, Position, State
from tests.plans import final_increase, with_stretch
from tests.playbook import AT


def test_a_length_is_asked_for_while_the_course_can_still_be_changed() -> None:
    """Before the instruction, and some rounds before the end of the stretch rather than behind it."""
    plan = with_stretch(final_increase())
    stretch = plan.stretches[0]
    index = stretch.last + 1 - MEASURE_ROUNDS_LEFT
    session = Session(plan, State(seq=5, knitting=Knitting(place=Position(index=index - 1)), last_cue_at=AT))

    told = session.consider(Next(at=AT)).effects

    assert [type(each) for each in told if isinstance(each, AskLength | TellStep)] == [AskLength, TellStep]
