"""Fold one event into the state. It never fails: replay goes on whatever the journal holds. No I/O, no plan.

What an event makes of the knitting stands with it (`stepper.session.events.Event.applied`). Here stands what
holds for all of them and in which order: the numbering, undo and redo, silence, what is learned from times
and counts, reading along, a changed plan.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from functools import reduce

from stepper.session.events import (
    Advanced,
    Closed,
    Counted,
    Event,
    FellAsleep,
    Jumped,
    Moved,
    Opened,
    PlaceAsked,
    Placed,
    PlanChanged,
    ReadingSet,
    Returned,
    StrideSet,
    Undone,
    WokeUp,
)
from stepper.session.fault.findings import is_slip
from stepper.session.pace.learning import count_gain, day_of, find_undone, learn_times, seconds_between
from stepper.session.state import (
    UNDO_DEPTH,
    Ball,
    Day,
    Fault,
    Knitting,
    Memento,
    ReadingAlong,
    State,
)


def evolve(state: State, event: Event) -> State:
    """Return the state after an event.

    Always: `seq` grows by one. An `Undone` that names nothing that can be taken back changes nothing else.
    """
    if not isinstance(event, Opened | PlaceAsked) and is_long_silence(state.last_cue_at, event.at):
        state = _interrupted(state)
    day = day_of(state.days, event.at)
    before = state
    state = replace(learn_times(state, event), seq=state.seq + 1, reading=_read_on(state, event))
    after = _folded(state, event, day)
    return replace(after, told_from=_told_from(before, event, after))


def _told_from(before: State, event: Event, after: State) -> int:
    """Return from where on in the round each step was told behind the one before.

    After a leap, or when she comes back, that is where she stands.
    """
    place = after.place
    if place.index != before.place.index or isinstance(event, Opened | PlanChanged | StrideSet):
        return place.stitch
    goes_on = isinstance(event, Advanced) or place == before.place
    return before.told_from if goes_on else place.stitch


def _folded(state: State, event: Event, day: Day | None) -> State:
    """Fold what an event is about."""
    match event:  # what the program does by itself at the beginning is no sign of hers
        case Opened():
            opened = replace(state, asleep=False, closed=False, fingerprint=event.fingerprint)
            return replace(opened, question=None)  # asked again if it is still open
        case PlaceAsked():
            return replace(state, question=event.question)
        case PlanChanged():
            return _carried(replace(state, question=None), event)
    state = replace(state, last_cue_at=event.at)
    match event:
        case ReadingSet():
            return replace(state, reading=event.reading)
        case Closed():
            return _interrupted(replace(state, closed=True))
        case FellAsleep():
            return _interrupted(replace(state, asleep=True))
        case WokeUp():
            return replace(state, asleep=False)
        case Undone():
            undone = _undone(state, event, day)
            reading = undone.reading
            left = reading is not None and reading.index != undone.place.index
            return replace(undone, reading=None) if left else undone
        case _:
            return _done(state, event, day)


def _read_on(state: State, event: Event) -> ReadingAlong | None:
    """Return reading along as it goes on within its round, pauses after a step back, or ends with the
    round."""
    reading = state.reading
    if reading is None or isinstance(event, Opened | Closed | PlanChanged | PlaceAsked | FellAsleep):
        return None
    if isinstance(event, Moved):
        if event.place.index != reading.index:
            return None
        return reading if isinstance(event, Advanced | Placed) else replace(reading, held=True)
    if isinstance(event, Counted) and event.agrees and event.worked:
        return None  # the round is finished with it
    return replace(reading, held=True) if isinstance(event, Undone) else reading


def evolve_all(state: State, events: Iterable[Event]) -> State:
    """Return the state after several events."""
    return reduce(evolve, events, state)


BREAKS_KEPT = 20
"""Number of interruptions remembered. Bounded so that a snapshot stays small."""


SILENCE_S = 600.0
"""Time without a cue that counts as an interruption. Longer than a round of a sweater takes at the usual
pace. Source: chosen here. Unit: s."""


def is_long_silence(last: str, now: str) -> bool:
    """Return whether there is a long silence between two times; False if either is not a time."""
    seconds = seconds_between(last, now)
    return seconds is not None and seconds >= SILENCE_S


def _interrupted(state: State) -> State:
    """Remember where she was interrupted: that is where a fault is likelier."""
    return replace(state, breaks=(*state.breaks, state.place)[-BREAKS_KEPT:])


def _done(state: State, event: Event, day: Day | None) -> State:
    """Fold an event that can be taken back; what was taken back before is then out of reach."""
    stitches, work = count_gain(state, event)
    memento = Memento(
        seq=state.seq,
        kind=type(event).__name__,
        knitting=state.knitting,
        stitches=stitches,
        work=work,
        day=day,
    )
    undo = (*state.undo, memento)[-UNDO_DEPTH:]
    asked = replace(state.knitting, doubt=None)  # whatever happens settles what was asked back
    knitting = _covered(state.knitting, _heard(asked, event.applied(asked), event), event, stitches)
    return replace(state, knitting=knitting, undo=undo, redo=())


def _heard(before: Knitting, after: Knitting, event: Event) -> Knitting:
    """Count what is heard before a step: a step on that stays where it is has heard one stop more."""
    if isinstance(event, Advanced) and event.place == event.origin == before.place:
        return replace(after, heard=before.heard + 1)
    stays = after.place == before.place and not isinstance(event, Returned | Jumped)
    return after if stays else replace(after, heard=0)


def _covered(before: Knitting, after: Knitting, event: Event, stitches: int) -> Knitting:
    """Learn from counts how often faults occur; what is taken back no longer counts."""
    if not isinstance(event, Counted):
        return replace(after, uncounted=max(0, before.uncounted + stitches))
    # Counting again while a fault is looked for finds no other; where it comes out, the first was a slip.
    fault = 0 if event.agrees or before.fault is not None else 1
    if event.agrees and before.fault is not None and is_slip(before.fault, event.place):
        fault = -1 if before.faults else 0
    covered = before.covered + before.uncounted
    return replace(after, uncounted=0, covered=covered, faults=before.faults + fault)


def _undone(state: State, event: Undone, day: Day | None) -> State:
    """Take the last thing back, or do again what was taken back last."""
    found = find_undone(state, event.seq)
    if found is None:
        return state
    sign, last = found
    left = replace(last, seq=state.seq, knitting=state.knitting, day=day)
    if sign < 0:
        redo = (*state.redo, left)[-UNDO_DEPTH:]
        return replace(state, knitting=last.knitting, undo=state.undo[:-1], redo=redo)
    undo = (*state.undo, left)[-UNDO_DEPTH:]
    return replace(state, knitting=last.knitting, undo=undo, redo=state.redo[:-1])


def _carried(state: State, event: PlanChanged) -> State:
    """Move to the new plan. What happened before belongs to the old one and can no longer be taken back."""
    was = state.knitting
    # "In ten rounds" keeps its distance from here.
    moved = event.place.index - event.origin.index
    knitting = replace(
        was,
        place=event.place,
        heard=0,
        corrections=event.corrections,
        mends=event.mends,
        reminders=tuple(replace(each, index=each.index + moved) for each in was.reminders),
        notes=tuple(replace(each, index=max(0, each.index + moved)) for each in was.notes),
        balls=tuple(_ball_moved(each, moved) for each in was.balls),
        verified=None,
        doubt=None,
        open=None,
    )
    if event.lifelines is not None:  # an old journal does not say where these went
        lifelines = tuple(each for each in event.lifelines if each <= event.place)
        respacings = event.respacings if event.respacings is not None else was.respacings
        fault = _fault_carried(was.fault, event)
        knitting = replace(knitting, lifelines=lifelines, respacings=respacings, fault=fault)
    return replace(state, knitting=knitting, undo=(), redo=(), fingerprint=event.new_fingerprint)


def _ball_moved(ball: Ball, rounds: int) -> Ball:
    """Keep a weighing's distance from here; what was knitted since has not changed."""
    weighing = ball.weighing
    return replace(ball, weighing=replace(weighing, index=max(0, weighing.index + rounds)))


def _fault_carried(fault: Fault | None, event: PlanChanged) -> Fault | None:
    """Keep a fault counted at the current place, but not what the search counted and saw in the old plan.

    What is off is off the new plan's count: who knitted size S by a file of size M has none once it says S.
    """
    if fault is None or fault.place != event.origin:
        return None
    more = event.have - event.want if fault.difference else 0
    if not more and event.place == event.origin:
        return fault
    off = fault.difference + more
    return Fault(place=event.place, difference=off) if off or not more else None
