"""What happened, as lines of a journal, and how to go back to any of them with nothing lost.

Going back uses ordinary cues: undo a number of times, or redo for what was undone last. An entry that undo
cannot reach, or that was undone and superseded, is reached by going to its place. No I/O.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import datetime
from typing import Final

from stepper.language.event_words import journal_words
from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.session import events
from stepper.session.cues import AtStitch, Cue, GoTo, Redo, Undo
from stepper.session.events import Event
from stepper.session.replay import list_standing
from stepper.session.state import Position, State


@dataclass(frozen=True, slots=True, kw_only=True)
class LogEntry:
    """One entry of the journal."""

    seq: int
    kind: str
    """Name of the class of the event."""
    at: str
    """ISO 8601."""
    what: str
    """What was done, in words."""
    stands: bool
    """Whether it stands; otherwise it was taken back."""
    key: int
    """The number by which undo and redo know it now: that of the undo or redo that touched it last, or its
    own."""
    place: Position | None
    """Where the knitting stood after it; None if the entry does not say."""

    @property
    def clock(self) -> str:
        """The time of day in hours and minutes; empty if `at` is not a time."""
        return self._formatted("%H:%M")

    @property
    def day(self) -> str:
        """The date, as in "12.03."; empty if `at` is not a time."""
        return self._formatted("%d.%m.")

    def _formatted(self, how: str) -> str:
        try:
            return format(datetime.fromisoformat(self.at), how)
        except ValueError:
            return ""


def list_entries(entries: Iterable[tuple[int, Event]], plan: Plan) -> tuple[LogEntry, ...]:
    """Return events as entries of the log, latest first; an undo shows only in what no longer stands.

    Args:
        entries: Number and event, in order.
        plan: The plan as knitted.
    """
    kept = list(entries)
    upright = {seq for seq, _ in list_standing(kept)}
    origin: dict[int, int] = {}
    key: dict[int, int] = {}
    for seq, event in kept:
        if isinstance(event, events.Undone):
            origin[seq] = origin.get(event.seq, event.seq)
            key[origin[seq]] = seq
    return tuple(
        LogEntry(
            seq=seq,
            kind=type(event).__name__,
            at=event.at,
            what=journal_words(event, plan),
            stands=seq in upright,
            key=key.get(seq, seq),
            place=getattr(event, "place", None),
        )
        for seq, event in reversed(kept)
        if not isinstance(event, events.Undone)
    )


_NOT_UNDONE: Final = frozenset(("Opened", "Closed", "FellAsleep", "WokeUp"))
# These cannot be undone; undo passes over them.


def find_way_back(entry: LogEntry, history: Sequence[LogEntry], plan: Plan, state: State) -> Sequence[Cue]:
    """Return the cues that lead back to just after an entry, or forward again to it.

    Args:
        entry: Where to go.
        history: The entries from the latest to at least this one.
        plan: The plan as knitted.
        state: Where the session stands.
    """
    if entry.stands:
        within_reach = {memento.seq for memento in state.undo}
        later = [
            other
            for other in history
            if other.stands and other.seq > entry.seq and other.kind not in _NOT_UNDONE
        ]
        if all(other.key in within_reach for other in later):
            return [Undo()] * len(later)
    for number, memento in enumerate(reversed(state.redo), start=1):
        if memento.seq == entry.key:
            return [Redo()] * number
    return _gone_to(entry.place, plan, state)


def _gone_to(place: Position | None, plan: Plan, state: State) -> Sequence[Cue]:
    if place is None or place == state.place or not plan.rounds:
        return []
    round_ = plan.rounds[min(place.index, len(plan.rounds) - 1)]
    jump: list[Cue] = [GoTo(round_number=round_.number, place=round_.section)]
    stitch = round_.progress if place.index >= len(plan.rounds) else place.stitch
    return [*jump, AtStitch(stitch=stitch)] if stitch else jump
