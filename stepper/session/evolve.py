"""Fold one event into the state. It never fails: replay goes on whatever the journal holds. No I/O, no
plan."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime

from stepper.plan.under_way.absorb import Mend
from stepper.plan.under_way.lengthen import LengthCorrection
from stepper.plan.under_way.respace import Respacing
from stepper.plan.yarn.yarn_left import Weighing
from stepper.session.events import (
    Advanced,
    AskingSet,
    Closed,
    Counted,
    Doubted,
    Event,
    FellAsleep,
    Jumped,
    LifelineLaid,
    Measured,
    Noted,
    Observed,
    Opened,
    PlaceAsked,
    Placed,
    PlanChanged,
    ReadingSet,
    Remedied,
    ReminderSet,
    RemindersForgotten,
    Respaced,
    Returned,
    Searched,
    SearchLeft,
    StrideSet,
    Tallied,
    Tinked,
    Undone,
    Weighed,
    WokeUp,
)
from stepper.session.pace.learning import count_gain, day_of, learn_times
from stepper.session.state import (
    NOTES_KEPT,
    UNDO_DEPTH,
    Ball,
    Day,
    Fault,
    Knitting,
    Memento,
    Narrowing,
    NoteKept,
    Position,
    ReadingAlong,
    Reminder,
    Seen,
    State,
    Stride,
    Verified,
)


def evolve(state: State, event: Event) -> State:
    """Return the state after an event.

    Always: `seq` grows by one. An `Undone` that names nothing that can be taken back changes nothing else.
    """
    seq = state.seq + 1
    if not isinstance(event, Opened | PlaceAsked) and is_long_silence(state.last_cue_at, event.at):
        state = _interrupted(state)
    day = day_of(state.days, event.at)
    state = replace(learn_times(state, event), reading=_read_on(state, event))
    match event:
        case ReadingSet():
            return replace(state, seq=seq, reading=event.reading, last_cue_at=event.at)
        case Opened():
            opened = replace(state, seq=seq, asleep=False, closed=False, fingerprint=event.fingerprint)
            return replace(opened, question=None)  # asked again if it is still open
        case PlaceAsked():
            return replace(state, seq=seq, question=event.question)
        case PlanChanged():
            return _carried(replace(state, seq=seq, question=None), event)
        case Closed():
            return _interrupted(replace(state, seq=seq, closed=True, last_cue_at=event.at))
        case FellAsleep():
            return _interrupted(replace(state, seq=seq, asleep=True, last_cue_at=event.at))
        case WokeUp():
            return replace(state, seq=seq, asleep=False, last_cue_at=event.at)
        case Undone():
            undone = _undone(replace(state, seq=seq, last_cue_at=event.at), event, day)
            reading = undone.reading
            left = reading is not None and reading.index != undone.place.index
            return replace(undone, reading=None) if left else undone
        case _:
            return _done(replace(state, seq=seq, last_cue_at=event.at), event, day)


def _read_on(state: State, event: Event) -> ReadingAlong | None:
    """Return reading along as it goes on within its round, pauses after a step back, or ends with the
    round."""
    reading = state.reading
    if reading is None or isinstance(event, Opened | Closed | PlanChanged | PlaceAsked | FellAsleep):
        return None
    if isinstance(event, Advanced | Placed | Returned | Jumped | Tinked | Remedied | Respaced):
        if event.place.index != reading.index:
            return None
        return reading if isinstance(event, Advanced | Placed) else replace(reading, held=True)
    if isinstance(event, Counted) and event.agrees and event.worked:
        return None  # the round is finished with it
    return replace(reading, held=True) if isinstance(event, Undone) else reading


def evolve_all(state: State, events: Iterable[Event]) -> State:
    """Return the state after several events."""
    for event in events:
        state = evolve(state, event)
    return state


BREAKS_KEPT = 20
"""Number of interruptions remembered. Bounded so that a snapshot stays small."""


SILENCE_S = 600.0
"""Time without a cue that counts as an interruption. Longer than a round of a sweater takes at the usual
pace. Source: chosen here. Unit: s."""


def is_long_silence(last: str, now: str) -> bool:
    """Return whether there is a long silence between two times; False if either is not a time."""
    seconds = seconds_between(last, now)
    return seconds is not None and seconds >= SILENCE_S


def seconds_between(last: str, now: str) -> float | None:
    """Return the time between two moments; None if either is not a time. Unit: s."""
    try:
        return (datetime.fromisoformat(now) - datetime.fromisoformat(last)).total_seconds()
    except (ValueError, TypeError):
        return None


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
    knitting = _covered(state.knitting, _heard(asked, _knitted(asked, event), event), event, stitches)
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
    if event.agrees and before.fault is not None and _was_a_slip(before.fault, event):
        fault = -1 if before.faults else 0
    covered = before.covered + before.uncounted
    return replace(after, uncounted=0, covered=covered, faults=before.faults + fault)


def _knitted(knitting: Knitting, event: Event) -> Knitting:
    """Return what the event makes of the knitting."""
    match event:
        case Jumped() if event.off_path:
            return replace(knitting, place=event.place, verified=None)
        case Advanced() | Returned() | Placed() | Jumped():
            return replace(knitting, place=event.place)
        case StrideSet():
            if event.sort is None:
                return replace(knitting, by=event.by, strides=())
            kept = [each for each in knitting.strides if each.sort is not event.sort]
            return replace(knitting, strides=(*kept, Stride(sort=event.sort, by=event.by)))
        case Counted() if event.agrees:
            place = Position(index=event.place.index + 1) if event.worked else event.place
            verified = Verified(place=place, stitches=event.stitches)
            here = place if event.worked else knitting.place
            return replace(knitting, place=here, verified=verified, fault=None, tens=None)
        case Counted():
            return replace(knitting, fault=_counted_off(knitting.fault, event), tens=None)
        case Doubted():
            return replace(knitting, doubt=event.doubt)
        case Searched() if knitting.fault is not None:
            return replace(knitting, fault=_answered(knitting.fault, event))
        case SearchLeft():
            return replace(knitting, fault=None)
        case Observed():
            return replace(knitting, fault=_seen(knitting.fault, event))
        case Remedied() if not event.remedy.settles:
            return _chosen(knitting, event)
        case Remedied():
            return replace(_back_at(knitting, event.place), fault=None, mends=_mends(knitting, event))
        case Tinked():
            return _back_at(knitting, event.place)
        case Respaced():
            others = _other_rounds(knitting.respacings, event.respacing)
            return replace(
                knitting, place=event.place, respacings=(*others, event.respacing), fault=None, tens=None
            )
        case LifelineLaid():
            return replace(knitting, lifelines=tuple(sorted({*knitting.lifelines, event.place})))
        case ReminderSet():
            return replace(knitting, reminders=_reminders(knitting.reminders, event))
        case RemindersForgotten():
            return replace(knitting, reminders=())
        case AskingSet():
            return replace(knitting, asking=event.asking)
        case Tallied():
            return replace(knitting, tens=event.tens)
        case Measured() if event.correction is not None:
            corrections = _with(knitting.corrections, event.correction)
            mends = _moved(knitting.mends, event, event.correction)
            return replace(knitting, corrections=corrections, mends=mends)
        case Weighed():
            weighing = Weighing(index=event.place.index, stitch=event.place.stitch, grams=event.grams)
            rest = [each for each in knitting.balls if each.yarn != event.yarn]
            return replace(knitting, balls=(*rest, Ball(yarn=event.yarn, weighing=weighing)))
        case Noted() if event.text:
            noted = NoteKept(index=event.place.index, text=event.text)
            return replace(knitting, notes=(*knitting.notes, noted)[-NOTES_KEPT:])
    return knitting  # what else is kept in the journal does not change it


def _reminders(kept: tuple[Reminder, ...], event: ReminderSet) -> tuple[Reminder, ...]:
    """Return the reminders still ahead with the new one, in the order of the rounds."""
    ahead = [each for each in kept if each.index > event.place.index]
    return tuple(sorted([*ahead, event.reminder], key=lambda each: each.index))


def _was_a_slip(fault: Fault, event: Counted) -> bool:
    """Return whether a count that comes out shows that the one before at the same place was wrong, no loop
    having been caught in between."""
    looped = any(each.seen is Seen.LOOP and each.number for each in fault.sights)
    return fault.place == event.place and bool(fault.difference) and not looped


def _counted_off(before: Fault | None, event: Counted) -> Fault:
    """Begin looking for a fault; if a second count agrees, it was not a slip in counting."""
    off = event.stitches - event.expected
    if before is None or before.place != event.place:
        return Fault(place=event.place, difference=off)
    # No loop hangs there now either; one that did has been caught since, or is asked after once more.
    none_hangs = tuple(each for each in before.sights if each.seen is Seen.LOOP and not each.number)
    if before.difference != off:
        return Fault(place=event.place, difference=off, sights=none_hangs)
    others = tuple(each for each in before.sights if each.seen is not Seen.LOOP)
    return replace(before, confirmed=True, chosen=None, sights=(*none_hangs, *others))


def _answered(fault: Fault, event: Searched) -> Fault:
    """Keep what was counted between landmarks; what she chose to do next is done."""
    return replace(fault, answers=(*fault.answers, *event.answers), chosen=None)


def _chosen(knitting: Knitting, event: Remedied) -> Knitting:
    """Remember what she chose to do next to narrow a fault down."""
    if knitting.fault is None:
        return knitting
    chosen = next((each for each in Narrowing if each.value == event.remedy.value), None)
    return replace(knitting, fault=replace(knitting.fault, chosen=chosen))


def _seen(fault: Fault | None, event: Observed) -> Fault | None:
    """Add what was seen; where no fault was looked for yet, looking begins."""
    if fault is not None and event.sight is not None and event.sight.seen is Seen.LOOP:
        hung = any(each.seen is Seen.LOOP and each.number for each in fault.sights)
        if hung and not event.sight.number:
            return None  # caught; what is off then is counted anew
    fault = fault if fault is not None else Fault(place=event.place, difference=0)
    if event.sight is not None:
        new = (event.sight.seen, event.sight.index)
        others = tuple(each for each in fault.sights if (each.seen, each.index) != new)
        fault = replace(fault, sights=(*others, event.sight), chosen=None)
    return fault if event.index is None else replace(fault, index=event.index)


def _back_at(knitting: Knitting, place: Position) -> Knitting:
    """Go to a place, dropping counts and lifelines beyond it, which are no longer in the fabric."""
    verified = knitting.verified
    if verified is not None and verified.place > place:
        verified = None
    lifelines = tuple(each for each in knitting.lifelines if each <= place)
    mends = tuple(each for each in knitting.mends if not _ripped(each, knitting.verified, place))
    return replace(knitting, place=place, verified=verified, lifelines=lifelines, mends=mends)


def _ripped(mend: Mend, verified: Verified | None, place: Position) -> bool:
    """Return whether what made a count wrong is out of the fabric, ripped back to where it was right."""
    sound = verified.place if verified is not None else Position()
    return place.index < mend.origin and place <= sound


def _mends(knitting: Knitting, event: Remedied) -> tuple[Mend, ...]:
    """Return the counts that are off once a remedy is chosen."""
    if event.mend is None:
        return _back_at(knitting, event.place).mends
    # An old journal does not say from where on the count is off: take the place where it was chosen.
    new = event.mend if event.mend.origin >= 0 else replace(event.mend, origin=event.place.index)
    return (*knitting.mends, new)


def _moved(mends: tuple[Mend, ...], event: Measured, to: LengthCorrection) -> tuple[Mend, ...]:
    """Move what comes after a stretch that became longer or shorter."""
    longer_by = to.rounds - event.rounds_before
    end = event.place.index + event.rounds_left - longer_by
    return tuple(replace(each, index=each.index + longer_by * (each.index >= end)) for each in mends)


def _other_rounds(respacings: tuple[Respacing, ...], new: Respacing) -> tuple[Respacing, ...]:
    """Leave out a round's earlier respacing."""
    return tuple(each for each in respacings if (each.index, each.section) != (new.index, new.section))


def _with(corrections: tuple[LengthCorrection, ...], new: LengthCorrection) -> tuple[LengthCorrection, ...]:
    """Replace a stretch's correction by a new one."""
    others = [each for each in corrections if each.stretch != new.stretch]
    return tuple(sorted([*others, new], key=lambda each: each.stretch))


def _undone(state: State, event: Undone, day: Day | None) -> State:
    """Take the last thing back, or do again what was taken back last."""
    if state.undo and state.undo[-1].seq == event.seq:
        last = state.undo[-1]
        again = replace(last, seq=state.seq, knitting=state.knitting, day=day)
        redo = (*state.redo, again)[-UNDO_DEPTH:]
        return replace(state, knitting=last.knitting, undo=state.undo[:-1], redo=redo)
    if state.redo and state.redo[-1].seq == event.seq:
        last = state.redo[-1]
        back = replace(last, seq=state.seq, knitting=state.knitting, day=day)
        undo = (*state.undo, back)[-UNDO_DEPTH:]
        return replace(state, knitting=last.knitting, undo=undo, redo=state.redo[:-1])
    return state


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
