"""What falls due when a round is reached: a count, a length, a mend, a rest, a reminder, things to fetch.

All of it is told before the first instruction of the new round. Pure.
"""

from __future__ import annotations

from collections.abc import Iterator

from stepper.plan.model import Plan
from stepper.plan.yarn.worked_twice import goes_on_unread, second_pieces
from stepper.records import dataclass
from stepper.session.due.next_skein import tell_skeins
from stepper.session.due.to_fetch import tell_ready
from stepper.session.effects import AskLength, Effect, RestHands, TellSecond
from stepper.session.events import Advanced, Placed
from stepper.session.fault import respond as inquiry
from stepper.session.pace.learning import count_minutes
from stepper.session.questions.about_series import tell_due_now
from stepper.session.state import Reminder, State

MEASURE_ROUNDS_LEFT = 3
"""Rounds left in a stretch worked to a length when a measurement is asked for: few enough to be near the
target, but enough to adjust."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Remind(Effect):
    """Remind her of what she asked to be reminded of."""

    reminder: Reminder


def tell_second(plan: Plan, done: int, now: int) -> Iterator[Effect]:
    """Tell of the second piece if the first is finished: a sleeve that the pattern prints once.

    Args:
        plan: The plan, which has the piece once.
        done: Index of the round that was in hand.
        now: Index of the round in hand now.
    """
    for piece in second_pieces(plan):
        if done <= piece[-1] < now and not goes_on_unread(plan, piece):
            yield TellSecond(section=plan.rounds[piece[0]].section)


def tell_reminders(before: State, after: State) -> Iterator[Effect]:
    """Tell the reminders of the rounds reached or passed, and again if a sitting begins at such a round."""
    place = after.place
    first = place.index if before.place == place and not place.stitch else before.place.index + 1
    for reminder in after.knitting.reminders:
        if first <= reminder.index <= place.index:
            yield Remind(reminder=reminder)


def tell_due(plan: Plan, before: State, event: Advanced | Placed, after: State) -> Iterator[Effect]:
    """Tell what falls due when a round is finished and the next one begins.

    Args:
        plan: The plan as knitted.
        before: The state in the round that was finished.
        event: What finished it.
        after: The state at the beginning of the next one.
    """
    place = event.place
    yield from inquiry.ask_checks(plan, after, place.index - 1, event.origin.index)
    stretch = plan.stretch_at(place.index)
    if stretch is not None and place.index == stretch.last + 1 - MEASURE_ROUNDS_LEFT > stretch.origin:
        yield AskLength(target_mm=stretch.target_mm, section=plan.rounds[place.index].section)
    yield from inquiry.tell_mends(after)
    yield from tell_reminders(before, after)
    yield from tell_due_now(plan, place.index)
    yield from tell_ready(plan, event.origin, place)
    yield from tell_skeins(plan, after.knitting, event.origin, place)
    if after.rest_told and not before.rest_told:
        yield RestHands(minutes=count_minutes(after, event.at))
