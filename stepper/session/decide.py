"""Decide what comes of a cue. Pure: plan and state in, events or a refusal out."""

from __future__ import annotations

from stepper.plan.model import Plan
from stepper.session import read_along
from stepper.session.clock_cues import Beat, Silence
from stepper.session.counting.doubts import hold
from stepper.session.cues import Cue
from stepper.session.decision import Decision
from stepper.session.rules import RULES, mode_of
from stepper.session.state import State


def decide(plan: Plan, state: State, cue: Cue) -> Decision:
    """Return the events that follow from a cue, or the refusal.

    Args:
        plan: The plan as knitted, with its lengths corrected.
        state: Where the session stands.
        cue: What is asked.

    Returns:
        No events if the cue only asks. Always: at most one event that undo can take back, so that one cue is
        one undo.
    """
    if isinstance(cue, Beat):  # sent by a clock, so the table of rules does not cover it
        return read_along.work_beat(plan, state, cue)
    if isinstance(cue, Silence):
        return ()
    decision = RULES[mode_of(plan, state), type(cue)](plan, state, cue)
    return hold(plan, state, cue, decision)
