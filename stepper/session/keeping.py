"""Rules for the cues that only keep something: a weighing, a note, a reminder, a lifeline, a setting. Pure.

None of them moves the place or changes the plan. The families `Keeps` and `KeepsAhead` of
`stepper.session.cues` have one row each in `stepper.session.rules`, where the rule of each cue comes from the
table at the end.
"""

from __future__ import annotations

import math
from types import MappingProxyType
from typing import Final

from stepper.plan.model import Plan
from stepper.session.counting.checks import yarn_called
from stepper.session.cues import Ask, Cue, ForgetReminders, Lifeline, Note, RemindMe, Stride, Weight
from stepper.session.decision import Decision, Handler, Refusal
from stepper.session.events import (
    AskingSet,
    LifelineLaid,
    Noted,
    ReminderSet,
    RemindersForgotten,
    StrideSet,
    Weighed,
)
from stepper.session.moves import round_called
from stepper.session.state import Position, Reminder, State
from stepper.session.steps import By, cut_into_steps, sort_of

HAIR = 1e-9
"""For binary fractions."""


def weigh(plan: Plan, state: State, cue: Weight) -> Decision:
    """Record what is left of a yarn."""
    key = yarn_called(plan, cue.yarn)
    if key is None:
        names = " or ".join(plan.yarns.values())
        return Refusal(sentence=f"No yarn here is called {cue.yarn}{f'; say {names}' if names else ''}.")
    if cue.grams < 0:
        return Refusal(sentence="A weight is nothing or more.")
    return (Weighed(at=cue.at, place=state.place, yarn=key, grams=cue.grams),)


def note(plan: Plan, state: State, cue: Note) -> Decision:
    """Record a note."""
    if not cue.text.strip():
        return Refusal(sentence="A note needs some words.")
    return (Noted(at=cue.at, place=state.place, text=cue.text.strip()),)


def remind(plan: Plan, state: State, cue: RemindMe) -> Decision:
    """Keep what she asks to be reminded of, at the round it is to be said at."""
    here = state.place.index
    if cue.place:
        index = round_called(plan, cue.place, here)
        if index is None or index <= here:
            return Refusal(sentence=f"{cue.place[:1].upper()}{cue.place[1:]} does not lie ahead.")
    elif cue.length_mm is not None:
        stretch = plan.stretch_at(here) or plan.stretch_ahead(here)
        if stretch is None:
            return Refusal(sentence="Nothing here is worked to a length.")
        # The first round before which the piece is that long.
        index = stretch.origin + math.ceil(cue.length_mm * stretch.rounds_per_10cm / 100 - HAIR)
        if index <= here:
            return Refusal(sentence="By the rounds it is that long already.")
        if index > stretch.last + 1 or index >= len(plan.rounds):
            return Refusal(sentence="It does not get that long.")
    else:
        index = here + (cue.rounds or 0)
        left = len(plan.rounds) - 1 - here
        if index <= here:
            return Refusal(sentence="That is now.")
        if index > here + left:
            return Refusal(sentence=f"After this round {left} {'is' if left == 1 else 'are'} left.")
    reminder = Reminder(index=index, text=" ".join(cue.text.split()))
    return (ReminderSet(at=cue.at, place=state.place, reminder=reminder),)


def forget(plan: Plan, state: State, cue: ForgetReminders) -> Decision:
    """Forget what she asked to be reminded of."""
    if not any(each.index > state.place.index for each in state.knitting.reminders):
        return Refusal(sentence="There are no reminders.")
    return (RemindersForgotten(at=cue.at),)


def lay_lifeline(plan: Plan, state: State, cue: Lifeline) -> Decision:
    """Record a lifeline here; it runs through a whole round."""
    if state.place == Position():
        return Refusal(sentence="Nothing has been knitted yet.")
    if state.place.stitch:
        return Refusal(sentence="A lifeline goes in between rounds; finish this one first.")
    return (LifelineLaid(at=cue.at, place=state.place),)


def set_asking(plan: Plan, state: State, cue: Ask) -> Decision:
    """Change how often a count is asked for."""
    if cue.asking is state.knitting.asking:
        return Refusal(sentence="That is how it is already.")
    return (AskingSet(at=cue.at, asking=cue.asking),)


def set_stride(plan: Plan, state: State, cue: Stride) -> Decision:
    """Change how much one step reads out, of rounds like the one in hand."""
    round_ = plan.rounds[state.place.index] if state.place.index < len(plan.rounds) else None
    now = state.knitting.by if round_ is None else state.knitting.by_of(round_)
    turn = tuple(By)
    by = cue.by or turn[(turn.index(now) + 1) % len(turn)]
    if by is now:
        in_parts = by is By.ROUND and round_ is not None and len(cut_into_steps(round_, by)) > 1
        parts = " This round is too long to be said at once." if in_parts else ""
        return Refusal(sentence=f"It is by {by.value} already.{parts}")
    return (StrideSet(at=cue.at, by=by, sort=None if round_ is None else sort_of(round_)),)


KEPT: Final[MappingProxyType[type[Cue], Handler]] = MappingProxyType(
    {
        Stride: set_stride,
        Weight: weigh,
        Note: note,
        RemindMe: remind,
        ForgetReminders: forget,
        Lifeline: lay_lifeline,
        Ask: set_asking,
    }
)
"""The rule of each cue that only keeps something."""
