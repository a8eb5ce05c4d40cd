"""What falls due when a round is reached: a count, a measurement, a mend, a rest. Pure.

All of it is told before the instruction of the round that begins.
"""

from __future__ import annotations

from collections.abc import Iterator

from stepper.plan.model import Plan
from stepper.session.effects import AskLength, Effect, RestHands
from stepper.session.events import Advanced, Placed
from stepper.session.fault import respond as inquiry
from stepper.session.pace.learning import minutes_knitted
from stepper.session.state import State

MEASURE_ROUNDS_LEFT = 3
"""Rounds left in a stretch worked to a length when a measurement is asked for: few enough to be near the
target, enough to change course."""


def tell_due(plan: Plan, before: State, event: Advanced | Placed, after: State) -> Iterator[Effect]:
    """Tell what falls due where a round was finished and the next one begins.

    Args:
        plan: The plan as knitted.
        before: The state in the round that was finished.
        event: What finished it.
        after: The state at the beginning of the next one.
    """
    place = event.place
    yield from inquiry.checks_due(plan, after, event.origin.index)
    stretch = plan.stretch_at(place.index)
    if stretch is not None and place.index == stretch.last + 1 - MEASURE_ROUNDS_LEFT > stretch.origin:
        yield AskLength(target_mm=stretch.target_mm, section=plan.rounds[place.index].section)
    yield from inquiry.mend_here(after)
    if after.rest_told and not before.rest_told:
        yield RestHands(minutes=minutes_knitted(after, event.at))
