"""What there is to tell of a garment once it is finished: days, hours, what was altered. No I/O."""

from __future__ import annotations

from collections.abc import Iterable

from stepper.language.event_words import notes_words
from stepper.language.places import sentence_case
from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.session.events import Advanced, Event, Measured, Noted, Placed, PlanChanged, Remedied, Respaced
from stepper.session.pace.learning import evening_of
from stepper.session.pace.time_spent import time_spent
from stepper.session.replay import list_standing


@dataclass(frozen=True, slots=True, kw_only=True)
class GarmentRecord:
    """The making of a garment."""

    begun: str = ""
    """The evening of the first stitch, ISO 8601; empty if not known."""
    ended: str = ""
    """The evening of the last stitch, ISO 8601; empty if not known."""
    evenings: int = 0
    """Evenings with knitting."""
    seconds: float = 0.0
    """Time at the needles, breaks left out. Unit: s."""
    altered: tuple[str, ...] = ()
    """How it differs from the pattern and from the first plan, each in half a sentence."""
    notes: tuple[str, ...] = ()
    """What she noted, in her words."""


NO_RECORD = GarmentRecord()


def record_garment(events: Iterable[tuple[int, Event]], plan: Plan) -> GarmentRecord:
    """Tell the making of a garment.

    Args:
        events: All events with their numbers, in order.
        plan: The plan as knitted.
    """
    kept = list(events)
    standing = [event for _, event in list_standing(kept)]
    evenings = sorted(
        {evening_of(event.at) for event in standing if isinstance(event, Advanced | Placed)} - {""}
    )
    return GarmentRecord(
        begun=evenings[0] if evenings else "",
        ended=evenings[-1] if evenings else "",
        evenings=len(evenings),
        seconds=time_spent([event for _, event in kept]),
        altered=(*_altered_rounds(plan), *(_altered_since(standing, plan))),
        notes=tuple(event.text for event in standing if isinstance(event, Noted)),
    )


def _altered_rounds(plan: Plan) -> tuple[str, ...]:
    """Say how the rounds of each section differ from the printed pattern, each difference once."""
    found = (
        f"{sentence_case(round_.section)}: {words.rstrip('.')}"
        for round_ in plan.rounds
        for words in round_.altered
    )
    return tuple(dict.fromkeys(found))


def _altered_since(events: Iterable[Event], plan: Plan) -> tuple[str, ...]:
    """Say what was altered on the needles."""
    kinds = PlanChanged | Remedied | Respaced
    found = (
        sentence_case(notes_words(event, plan).rstrip("."))
        for event in events
        if isinstance(event, kinds) or (isinstance(event, Measured) and event.correction is not None)
    )
    return tuple(dict.fromkeys(words for words in found if words))
