"""Fold one event into the state. Total: whatever the journal holds, replay goes on. No I/O, no plan."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from stepper.plan.lengthen import Correction
from stepper.session.events import (
    Advanced,
    Closed,
    Counted,
    Event,
    FellAsleep,
    Jumped,
    Measured,
    Noted,
    Opened,
    Placed,
    PlanChanged,
    Returned,
    StrideSet,
    Undone,
    Weighed,
    WokeUp,
)
from stepper.session.state import UNDO_DEPTH, Knitting, Memento, State, Verified


def evolve(state: State, event: Event) -> State:
    """Give the state after an event.

    Always: `seq` grows by one. An `Undone` that names nothing that can be taken back changes nothing else.
    """
    seq = state.seq + 1
    match event:
        case Opened():
            return replace(state, seq=seq, asleep=False, closed=False, fingerprint=event.fingerprint)
        case PlanChanged():
            return _carried(replace(state, seq=seq), event)
        case Closed():
            return replace(state, seq=seq, closed=True, last_cue_at=event.at)
        case FellAsleep():
            return replace(state, seq=seq, asleep=True, last_cue_at=event.at)
        case WokeUp():
            return replace(state, seq=seq, asleep=False, last_cue_at=event.at)
        case Undone():
            return _undone(replace(state, seq=seq, last_cue_at=event.at), event)
        case _:
            return _done(replace(state, seq=seq, last_cue_at=event.at), event)


def evolve_all(state: State, events: Iterable[Event]) -> State:
    """Give the state after several events."""
    for event in events:
        state = evolve(state, event)
    return state


def _done(state: State, event: Event) -> State:
    """Fold what can be taken back again; what was taken back before is then out of reach."""
    memento = Memento(seq=state.seq, kind=type(event).__name__, knitting=state.knitting)
    undo = (*state.undo, memento)[-UNDO_DEPTH:]
    return replace(state, knitting=_knitted(state.knitting, event), undo=undo, redo=())


def _knitted(knitting: Knitting, event: Event) -> Knitting:
    """Give what the event makes of the knitting."""
    match event:
        case Advanced() | Returned() | Placed() | Jumped():
            return replace(knitting, place=event.place)
        case StrideSet():
            return replace(knitting, by=event.by)
        case Counted() if event.agrees:
            return replace(knitting, verified=Verified(place=event.place, stitches=event.stitches))
        case Measured() if event.correction is not None:
            return replace(knitting, corrections=_with(knitting.corrections, event.correction))
        case Counted() | Measured() | Weighed() | Noted():
            return knitting  # kept in the journal; nothing of the knitting moves
    return knitting


def _with(corrections: tuple[Correction, ...], new: Correction) -> tuple[Correction, ...]:
    """Put a correction in the place of the one that stretch had."""
    others = [each for each in corrections if each.stretch != new.stretch]
    return tuple(sorted([*others, new], key=lambda each: each.stretch))


def _undone(state: State, event: Undone) -> State:
    """Take the last thing back, or do again what was taken back last."""
    if state.undo and state.undo[-1].seq == event.seq:
        last = state.undo[-1]
        again = Memento(seq=state.seq, kind=last.kind, knitting=state.knitting)
        redo = (*state.redo, again)[-UNDO_DEPTH:]
        return replace(state, knitting=last.knitting, undo=state.undo[:-1], redo=redo)
    if state.redo and state.redo[-1].seq == event.seq:
        last = state.redo[-1]
        back = Memento(seq=state.seq, kind=last.kind, knitting=state.knitting)
        undo = (*state.undo, back)[-UNDO_DEPTH:]
        return replace(state, knitting=last.knitting, undo=undo, redo=state.redo[:-1])
    return state


def _carried(state: State, event: PlanChanged) -> State:
    """Move to the new plan. What happened before belongs to the old one and cannot be taken back any more."""
    knitting = replace(state.knitting, place=event.place, corrections=event.corrections, verified=None)
    return replace(state, knitting=knitting, undo=(), redo=(), fingerprint=event.new_fingerprint)
