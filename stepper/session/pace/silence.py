"""A long silence: when it is one, and what is said in it and after it. Pure, no clock.

A cue just before a break shortens coming back (Altmann and Trafton 2004), and nobody says when the telephone
rings. So the place is said when nothing has been asked for longer than the current step takes at her pace
plus some minutes, while she may still hear it; and again, with what comes next, when she is back.
"""

from __future__ import annotations

from stepper.plan.model import Plan
from stepper.session.counting.count_timing import stitches_per_minute
from stepper.session.pace.learning import seconds_between
from stepper.session.state import State
from stepper.session.step_in_hand import step_in_hand

SILENCE_S = 300.0
"""Time without a cue, beyond what the current step takes. Five minutes; chosen here. Unit: s."""


def silence_limit_s(plan: Plan, state: State, silence_s: float = SILENCE_S) -> float:
    """Return how long without a cue makes a silence: the current step has to be worked first.

    Args:
        plan: The plan as knitted.
        state: Where the session stands.
        silence_s: Time beyond that. Range: above 0. Unit: s.

    Returns:
        Unit: s.
    """
    place = state.place
    if place.index >= len(plan.rounds):
        return silence_s
    round_ = plan.rounds[place.index]
    left = step_in_hand(round_, state).end - place.stitch
    return silence_s + 60 * max(0, left) / stitches_per_minute(state)


def was_silent(plan: Plan, state: State, now: str) -> bool:
    """Return whether she is back from a silence."""
    seconds = seconds_between(state.last_cue_at, now)
    return seconds is not None and seconds >= silence_limit_s(plan, state)
