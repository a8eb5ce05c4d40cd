"""Fold a journal into a state, and list what of it still stands. Pure: the events are passed in."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from stepper.session.codec import decode_state
from stepper.session.events import Event, Undone
from stepper.session.evolve import evolve
from stepper.session.state import State

SNAPSHOT_EVERY = 500
"""Number of entries between two snapshots of the state, so at most this many are folded on resuming."""


def replay_events(events: Iterable[tuple[int, Event]], state: State | None = None) -> State:
    """Fold events into a state.

    Args:
        events: Number and event, in order; those the state already contains are skipped.
        state: Where to begin; None for the empty state.
    """
    state = state if state is not None else State()
    for seq, event in events:
        if seq > state.seq:
            state = evolve(state, event)
    return state


def state_from_snapshot(seq: int, body: str) -> State | None:
    """Read a snapshot, or return None if it is not what it claims to be."""
    state = decode_state(body)
    return state if state is not None and state.seq == seq else None


def list_standing(events: Iterable[tuple[int, Event]]) -> Iterator[tuple[int, Event]]:
    """Leave out what was taken back, and the undoing itself.

    Args:
        events: Number and event, in order, from the first one on.

    Yields:
        Number and event of what stands, in order.
    """
    kept = list(events)
    taken_back: set[int] = set()
    for seq, event in reversed(kept):
        # An undo that was itself taken back takes nothing back, so later ones are looked at first.
        if isinstance(event, Undone) and seq not in taken_back:
            taken_back.add(event.seq)
    for seq, event in kept:
        if seq not in taken_back and not isinstance(event, Undone):
            yield seq, event
