"""Fold a journal into a state, and list what of it still stands. Pure: the entries are passed in."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Protocol

from stepper.session.codec import decode_event, decode_state
from stepper.session.events import Event, Undone
from stepper.session.evolve import evolve
from stepper.session.state import State

SNAPSHOT_EVERY = 500
"""Number of entries between two snapshots of the state, so at most this many are folded on resuming."""


class KeptEvent(Protocol):
    """An event as the journal keeps it."""

    @property
    def seq(self) -> int:
        """Its number, from 1."""
        ...

    @property
    def kind(self) -> str:
        """Its kind."""
        ...

    @property
    def version(self) -> int:
        """Version of its form."""
        ...

    @property
    def body(self) -> str:
        """Its JSON text."""
        ...


def replay_entries(entries: Iterable[KeptEvent], state: State | None = None) -> State:
    """Fold entries into a state.

    Args:
        entries: In order; those the state already contains are skipped.
        state: Where to begin; None for the empty state.

    Raises:
        CodecError: An entry cannot be read.
    """
    state = state if state is not None else State()
    for entry in entries:
        if entry.seq > state.seq:
            state = evolve(state, decode_event(entry.kind, entry.version, entry.body))
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
