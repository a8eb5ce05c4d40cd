"""What happened, as lines of a journal, and how to go back to any of them with nothing lost.

Going back is done with cues like any other: so many times undo, or redo for what was taken back last. What
lies further back than undo reaches, or was taken back and overtaken, is gone to as a place. No I/O.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from types import MappingProxyType
from typing import Any, Final

from stepper.language.measures import length, plural, weight
from stepper.language.places import place_name
from stepper.plan.model import Plan
from stepper.session import events
from stepper.session.cues import AtStitch, Cue, GoTo, Redo, Undo
from stepper.session.events import Event
from stepper.session.replay import standing
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
    """Whether it stands; if not, it was taken back."""
    key: int
    """The number that undo and redo know it by now: that of the undo or redo which touched it last, or its
    own."""
    place: Position | None
    """Where the knitting stood after it; None if the entry does not say."""

    @property
    def clock(self) -> str:
        """The time of day, hours and minutes; empty if it is no time."""
        try:
            return f"{datetime.fromisoformat(self.at):%H:%M}"
        except ValueError:
            return ""

    @property
    def day(self) -> str:
        """The date, as in "12.03."; empty if it is no time."""
        try:
            return f"{datetime.fromisoformat(self.at):%d.%m.}"
        except ValueError:
            return ""


def list_entries(entries: Iterable[tuple[int, Event]], plan: Plan) -> tuple[LogEntry, ...]:
    """Return events as entries of the log, the latest first; undoing itself shows in what does not stand.

    Args:
        entries: Number and event, in order.
        plan: The plan as knitted.
    """
    kept = list(entries)
    upright = {seq for seq, _ in standing(kept)}
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
            what=_WHAT[type(event)](event, plan),
            stands=seq in upright,
            key=key.get(seq, seq),
            place=getattr(event, "place", None),
        )
        for seq, event in reversed(kept)
        if not isinstance(event, events.Undone)
    )


_NOT_UNDONE: Final = frozenset(("Opened", "Closed", "FellAsleep", "WokeUp"))
# These only go forward; undo passes over them.


def find_way_back(entry: LogEntry, history: Sequence[LogEntry], plan: Plan, state: State) -> Sequence[Cue]:
    """Return the cues that lead back to just after an entry, or forward again to it.

    Args:
        entry: Where to go.
        history: The entries from the latest at least to this one.
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


def _where(place: Position, plan: Plan) -> str:
    if place.index >= len(plan.rounds):
        return "the end"
    name = place_name(plan.rounds[place.index])
    return f"{name}, stitch {place.stitch}" if place.stitch else name


def _advanced(event: events.Advanced, plan: Plan) -> str:
    if event.place.index > event.origin.index and event.origin.index < len(plan.rounds):
        return f"done: {place_name(plan.rounds[event.origin.index])}"
    return f"worked {plural(event.stitches, 'stitch', 'stitches')}, to {_where(event.place, plan)}"


def _counted(event: events.Counted, plan: Plan) -> str:
    verdict = "as it should be" if event.agrees else f"{event.expected} expected"
    return f"counted {event.stitches}: {verdict}"


_WHAT: Final[MappingProxyType[type[Event], Callable[[Any, Plan], str]]] = MappingProxyType(
    {
        events.Opened: lambda event, plan: "sat down to knit",
        events.PlanChanged: lambda event, plan: f"pattern changed; on from {_where(event.place, plan)}",
        events.PlaceAsked: lambda event, plan: "pattern changed; asked where to go on",
        events.Advanced: _advanced,
        events.Returned: lambda event, plan: f"back to {_where(event.place, plan)}",
        events.Placed: lambda event, plan: f"place set: {_where(event.place, plan)}",
        events.Jumped: lambda event, plan: f"went to {_where(event.place, plan)}",
        events.StrideSet: lambda event, plan: f"steps by {event.by.value}",
        events.Counted: _counted,
        events.Measured: lambda event, plan: f"measured {length(event.length_mm, plan.units)}",
        events.Weighed: lambda event, plan: (
            f"{plan.yarns.get(event.yarn, event.yarn)} weighed {weight(event.grams)}"
        ),
        events.Noted: lambda event, plan: f"note: {event.text}",
        events.Undone: lambda event, plan: "taken back",
        events.FellAsleep: lambda event, plan: "ears closed",
        events.WokeUp: lambda event, plan: "ears open",
        events.Closed: lambda event, plan: "stopped for the night",
        events.Searched: lambda event, plan: (
            f"counted between: {', '.join(str(answer.stitches) for answer in event.answers)}"
        ),
        events.Observed: lambda event, plan: "looked at the fabric",
        events.Remedied: lambda event, plan: f"mended, on from {_where(event.place, plan)}",
        events.Tinked: lambda event, plan: (
            f"unknit {plural(event.stitches, 'stitch', 'stitches')}, to {_where(event.place, plan)}"
        ),
        events.Respaced: lambda event, plan: (
            f"spaced anew from {_where(event.place, plan)}, {event.made} made, {event.planned} planned"
        ),
        events.LifelineLaid: lambda event, plan: f"lifeline at {_where(event.place, plan)}",
        events.ReadingSet: lambda event, plan: (
            "reading along ended"
            if event.reading is None
            else "reading along held"
            if event.reading.held
            else "reading along"
        ),
        events.AskingSet: lambda event, plan: f"counts asked for: {event.asking.value}",
        events.Tallied: lambda event, plan: f"count aloud, {sum(event.tens or ())} so far",
    }
)
