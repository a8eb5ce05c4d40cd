"""What she has to fetch before it is needed: another needle, markers, a holder, a yarn. Pure.

Said once, two rounds ahead, while both hands are still in a round that needs none of it.
"""

from __future__ import annotations

from collections.abc import Iterator

from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.session.effects import Effect
from stepper.session.questions.about_ahead import yarns_taken_up
from stepper.session.state import Position

READY_ROUNDS = 2
"""Rounds before it is needed that a thing is named. Chosen here: time to fetch it at the end of a round."""


@dataclass(frozen=True, slots=True, kw_only=True)
class GetReady(Effect):
    """Say what has to be at hand when a round that lies ahead begins."""

    index: int
    """The round that needs it."""
    here: int
    """The round that begins now."""
    needle_mm: float | None = None
    """The needle to change to; None if it stays. Unit: mm."""
    yarns: tuple[str, ...] = ()
    """Keys of the yarns to be fetched."""
    markers: int = 0
    """Markers to be placed where none are."""
    holder: bool = False
    """Whether stitches are put on hold."""


def tell_ready(plan: Plan, origin: Position, place: Position) -> Iterator[GetReady]:
    """Tell what is needed in the rounds that came into sight when the knitting moved on.

    Args:
        plan: The plan as knitted.
        origin: Where the knitting stood.
        place: Where it stands now, in a later round.
    """
    first = max(place.index + 1, origin.index + READY_ROUNDS + 1)
    for index in range(first, min(place.index + READY_ROUNDS + 1, len(plan.rounds))):
        needed = find_needed(plan, index, here=place.index)
        if needed is not None:
            yield needed


def find_needed(plan: Plan, index: int, *, here: int) -> GetReady | None:
    """Return what has to be fetched for a round; None if all of it is in her hands.

    Args:
        plan: The plan as knitted.
        index: The round, not the first.
        here: The round from which it is told.
    """
    before, round_ = plan.rounds[index - 1], plan.rounds[index]
    changes = before.needle_mm is not None and round_.needle_mm not in (None, before.needle_mm)
    found = GetReady(
        index=index,
        here=here,
        needle_mm=round_.needle_mm if changes else None,
        yarns=yarns_taken_up(plan, index),
        markers=0 if before.markers else sum(run.times for run in round_.runs if run.stitch == "pm"),
        holder=round_.holds,
    )
    return found if found != GetReady(index=index, here=here) else None
