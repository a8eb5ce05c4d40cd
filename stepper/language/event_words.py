"""The words of events, one row for each kind: its name, and what the journal's page and the notes say.

The page says everything in half a line; the notes leave out what a knitter would not write down. If nothing
else tells an event aloud (`stepper.session.effects.TellEvent`), the row says how. No I/O.
"""

from __future__ import annotations

from collections.abc import Callable
from types import MappingProxyType
from typing import Any, Final

from stepper.language.measures import length, plural, weight
from stepper.language.open_words import say_parts
from stepper.language.places import place_name, round_word
from stepper.language.remedy_words import note_remedy
from stepper.plan.model import OpenKind, Plan
from stepper.records import dataclass
from stepper.session import events
from stepper.session.events import Event
from stepper.session.state import OpenAnswer, OpenWork, Position

_Words = Callable[[Any, Plan], str]


def _nothing(event: Event, plan: Plan) -> str:
    return ""


@dataclass(frozen=True, slots=True, kw_only=True)
class EventWords:
    """What is said about one kind of event."""

    journal: _Words
    """On the journal's page: half a line. Never empty."""
    name: str = "that"
    """What it is called when taken back or done again: "Taken back: the step"."""
    notes: _Words = _nothing
    """In the notes she shares; empty if nobody would write it down."""
    told: _Words = _nothing
    """Aloud, just after it happened; empty if other effects tell of it."""


def journal_words(event: Event, plan: Plan) -> str:
    """Return what the journal's page says about an event: half a line, never empty."""
    return EVENT_WORDS[type(event)].journal(event, plan)


def notes_words(event: Event, plan: Plan) -> str:
    """Return what the notes say about an event; empty if they leave it out."""
    return EVENT_WORDS[type(event)].notes(event, plan)


def _up_to(place: Position, plan: Plan) -> str:
    """Return a place as the journal's page says it."""
    if place.index >= len(plan.rounds):
        return "the end"
    name = place_name(plan.rounds[place.index])
    return f"{name}, stitch {place.stitch}" if place.stitch else name


def _in_round(place: Position, plan: Plan) -> str:
    """Return a place as the notes say it."""
    if place.index >= len(plan.rounds):
        return "at the end"
    round_ = plan.rounds[place.index]
    label = f" ({round_.label})" if round_.label else ""
    return f"{round_.section} {round_word(round_)} {round_.number}{label}"


def _advanced(event: events.Advanced, plan: Plan) -> str:
    if event.place.index > event.origin.index and event.origin.index < len(plan.rounds):
        return f"done: {place_name(plan.rounds[event.origin.index])}"
    if event.place == event.origin:
        return f"heard what comes first, {_in_round(event.place, plan)}"
    return f"worked {plural(event.stitches, 'stitch', 'stitches')}, to {_up_to(event.place, plan)}"


def _counted(event: events.Counted, plan: Plan) -> str:
    verdict = "as it should be" if event.agrees else f"{event.expected} expected"
    return f"counted {event.stitches}: {verdict}"


def _counted_off(event: events.Counted, plan: Plan) -> str:
    if event.agrees:
        return ""
    return f"counted {event.stitches} where {event.expected} were expected, {_in_round(event.place, plan)}"


def _measured(event: events.Measured, plan: Plan) -> str:
    measured = f"{event.section} measured {length(event.length_mm, plan.units)}"
    if event.correction is None or event.correction.rounds == event.rounds_before:
        return measured
    return f"{measured}; worked for {event.correction.rounds} rounds instead of {event.rounds_before}"


def _weighed(event: events.Weighed, plan: Plan) -> str:
    return f"{plan.yarns.get(event.yarn, event.yarn)} weighed {weight(event.grams)}"


def _weighed_rest(event: events.Weighed, plan: Plan) -> str:
    return f"{weight(event.grams)} of {plan.yarns.get(event.yarn, event.yarn)} left"


def _remedied(event: events.Remedied, plan: Plan) -> str:
    """Return how a count that was off was mended."""
    off = f"{abs(event.difference)} {'too many' if event.difference > 0 else 'too few'}"
    mend = event.mend
    if mend is not None and (mend.index >= len(plan.rounds) or not plan.rounds[mend.index].before):
        return f"{off} accepted and worked to the end, from {_in_round(event.place, plan)} on"
    where = event.mend.index if event.mend is not None else event.place.index
    return f"{off}{note_remedy(event)}, {_in_round(Position(index=where), plan)}"


def _respaced(event: events.Respaced, plan: Plan) -> str:
    return f"respaced from {_up_to(event.place, plan)}, {event.made} made, {event.planned} planned"


def _respaced_in(event: events.Respaced, plan: Plan) -> str:
    made = f"{event.made} made where {event.planned} were planned"
    return f"increases or decreases respaced, {made}, {_in_round(event.place, plan)}"


def _reminder(event: events.ReminderSet, plan: Plan) -> str:
    where = _up_to(Position(index=event.reminder.index), plan)
    return f"{where}: {event.reminder.text.rstrip('.')}" if event.reminder.text else where


def _reading(event: events.ReadingSet, plan: Plan) -> str:
    if event.reading is None:
        return "reading along ended"
    return "reading along paused" if event.reading.held else "reading along"


def _said(work: OpenWork) -> str:
    if work.idle:
        return "nothing is knitted"
    if work.answers:
        last = work.answers[-1]
        return f"answered {last.number if last.number is not None else 'yes' if last.yes else 'no'}"
    many = f"{plural(work.rows, 'round')} done"
    return many if work.stitches is None else f"{many}, counted {work.stitches}"


def _answer(answer: OpenAnswer) -> str:
    if answer.kind is OpenKind.IDLE:
        return "nothing to knit"
    if answer.parts:
        return say_parts(answer.parts)
    if answer.stitches is None:
        return "as proposed"
    return f"{plural(answer.rows, 'round')}, then {plural(answer.stitches, 'stitch', 'stitches')}"


EVENT_WORDS: Final[MappingProxyType[type[Event], EventWords]] = MappingProxyType(
    {
        events.Opened: EventWords(journal=lambda event, plan: "sat down to knit"),
        events.PlanChanged: EventWords(
            journal=lambda event, plan: f"pattern changed; on from {_up_to(event.place, plan)}",
            notes=lambda event, plan: f"the pattern was changed, {_in_round(event.place, plan)}",
        ),
        events.PlaceAsked: EventWords(journal=lambda event, plan: "pattern changed; asked where to go on"),
        events.Advanced: EventWords(name="the step", journal=_advanced),
        events.Returned: EventWords(
            name="going back", journal=lambda event, plan: f"back to {_up_to(event.place, plan)}"
        ),
        events.Placed: EventWords(
            name="the place", journal=lambda event, plan: f"place set: {_up_to(event.place, plan)}"
        ),
        events.Jumped: EventWords(
            name="the jump", journal=lambda event, plan: f"went to {_up_to(event.place, plan)}"
        ),
        events.StrideSet: EventWords(
            name="how much a step reads", journal=lambda event, plan: f"steps by {event.by.value}"
        ),
        events.Counted: EventWords(name="the count", journal=_counted, notes=_counted_off),
        events.Doubted: EventWords(
            name="what was asked back",
            journal=lambda event, plan: "asked back" if event.doubt is not None else "not so; dropped",
        ),
        events.Measured: EventWords(
            name="the measurement",
            journal=lambda event, plan: f"measured {length(event.length_mm, plan.units)}",
            notes=_measured,
        ),
        events.Weighed: EventWords(name="the weighing", journal=_weighed, notes=_weighed_rest),
        events.Noted: EventWords(
            name="the note",
            journal=lambda event, plan: f"note: {event.text}",
            notes=lambda event, plan: event.text,
        ),
        events.RowSaid: EventWords(
            name="what was said of the row",
            journal=lambda event, plan: f"a row by its words: {_said(event.said)}",
        ),
        events.RowAnswered: EventWords(
            name="the answer",
            journal=lambda event, plan: f"a row by its words answered: {_answer(event.meant)}",
            notes=lambda event, plan: f"knitted by its words ({_answer(event.meant)}): {event.words}",
        ),
        events.Undone: EventWords(journal=lambda event, plan: "taken back"),
        events.FellAsleep: EventWords(journal=lambda event, plan: "ears closed"),
        events.WokeUp: EventWords(journal=lambda event, plan: "ears open"),
        events.Closed: EventWords(journal=lambda event, plan: "stopped for the night"),
        events.Searched: EventWords(
            name="the count between",
            journal=lambda event, plan: (
                f"counted between: {', '.join(str(answer.stitches) for answer in event.answers)}"
            ),
        ),
        events.SearchLeft: EventWords(
            name="leaving the search",
            journal=lambda event, plan: "the fault left for later",
            notes=lambda event, plan: "a fault was looked for and not found",
            told=lambda event, plan: (
                "Then I leave it for now, and go by the pattern. Count again when you can."
            ),
        ),
        events.Observed: EventWords(name="what was seen", journal=lambda event, plan: "looked at the fabric"),
        events.Remedied: EventWords(
            name="the remedy",
            journal=lambda event, plan: f"mended, on from {_up_to(event.place, plan)}",
            notes=_remedied,
        ),
        events.Tinked: EventWords(
            name="the stitches undone",
            journal=lambda event, plan: (
                f"unknit {plural(event.stitches, 'stitch', 'stitches')}, to {_up_to(event.place, plan)}"
            ),
        ),
        events.Respaced: EventWords(name="the new spacing", journal=_respaced, notes=_respaced_in),
        events.LifelineLaid: EventWords(
            name="the lifeline",
            journal=lambda event, plan: f"lifeline at {_up_to(event.place, plan)}",
            notes=lambda event, plan: f"lifeline, {_in_round(event.place, plan)}",
        ),
        events.ReminderSet: EventWords(
            name="the reminder",
            journal=lambda event, plan: f"reminder at {_reminder(event, plan)}",
            told=lambda event, plan: f"I will remind you at {_reminder(event, plan)}.",
        ),
        events.RemindersForgotten: EventWords(
            name="forgetting the reminders",
            journal=lambda event, plan: "reminders forgotten",
            told=lambda event, plan: "No more reminders.",
        ),
        events.AskingSet: EventWords(
            name="how often I ask", journal=lambda event, plan: f"counts asked for: {event.asking.value}"
        ),
        events.Tallied: EventWords(
            name="the last of the tally",
            journal=lambda event, plan: f"count aloud, {sum(event.tens or ())} so far",
        ),
        events.ReadingSet: EventWords(journal=_reading),
    }
)
"""The words of each kind of event."""
