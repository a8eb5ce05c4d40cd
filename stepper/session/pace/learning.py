"""Learn from the times of events: pace by kind of knitting, days, when she last rested.

Pure: the times come with the events. Steps reported in one go ("next", "next", "next") were knitted before
the first of them, so a step too fast for any hands is added to the one before. Nothing here moves the
knitting, and undo only takes the stitches back from the day. Source of the figures for rest: 5 to 10 minutes
after 50 to 60 are better than longer, rarer breaks (nibusinessinfo.co.uk and HSE on work at screens; no
controlled study of knitters was found, so nothing is promised).
"""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from typing import Final

from stepper.craft.pace import FASTEST_PER_MINUTE
from stepper.craft.pace_by_kind import USUAL_PER_MINUTE, KnittingKind
from stepper.session.events import (
    Advanced,
    Counted,
    Event,
    Jumped,
    Opened,
    PlaceAsked,
    Placed,
    PlanChanged,
    Remedied,
    Returned,
    Tinked,
    Undone,
)
from stepper.session.state import Day, Done, Memento, State, TimedStep

STEPS_KEPT: Final = 40
"""Number of steps of each kind from which her pace is measured. Bounded so that a snapshot stays small."""
DAYS_KEPT: Final = 120
"""Number of days with knitting that are remembered."""
EVENING_ENDS_H: Final = 4
"""Knitting after midnight belongs to the evening before, until this hour. Unit: h."""
MERGED_PER_MINUTE: Final = 60.0
"""Steps faster than this, beyond any timed hobby knitter (45), were reported in one go and count as one.
Unit: stitches per minute."""

KNIT_S: Final = 50 * 60.0
"""Time of knitting after which hands should rest. Unit: s."""
REST_S: Final = 5 * 60.0
"""Shortest pause that counts as a rest. Unit: s."""
QUIET_S: Final = 15 * 60.0
"""Silence before a cue without stitches that counts as a rest: longer than a round takes. This project's
choice. Unit: s."""
_SLOWEST: Final = 60 / min(USUAL_PER_MINUTE.values())
# Longest a step may take without containing a rest. Unit: s for a stitch.


def learn_times(state: State, event: Event) -> State:
    """Return the state with what an event's time teaches; an event without a time teaches nothing.

    Args:
        state: Before the event is folded.
        event: What happened.
    """
    date = evening_of(event.at)
    if not date:
        return state
    gain, work = count_gain(state, event)
    since, told = _rested(state, event, gain)
    knitted = isinstance(event, Advanced | Placed) and gain > 0
    return replace(
        state,
        worked=_stepped(state, event.at, gain, work) if knitted else state.worked,
        days=_days(state, event, date, work, gain) if gain else state.days,
        begun_at=event.at if _begins_anew(state, event) else state.begun_at,
        sat_since=since,
        rest_told=told,
    )


def count_gain(state: State, event: Event) -> tuple[int, KnittingKind]:
    """Return the stitches an event adds to the garment and their kind; below 0 if it takes them back."""
    match event:
        case Advanced() | Placed():
            return event.stitches, event.work
        case Counted() | PlanChanged():
            return event.worked, KnittingKind.UNKNOWN
        case Returned() | Jumped() | Tinked():
            return -event.stitches, KnittingKind.UNKNOWN
        case Remedied() if event.place < event.origin:
            return -(event.undone or event.stitches), KnittingKind.UNKNOWN
        case Undone():
            found = find_undone(state, event.seq)
            return (found[0] * found[1].stitches, found[1].work) if found else (0, KnittingKind.UNKNOWN)
    return 0, KnittingKind.UNKNOWN


def find_undone(state: State, seq: int) -> tuple[int, Memento] | None:
    """Return what an undo of an event undoes, with -1, or does again, with 1; None if nothing."""
    for stack, sign in ((state.undo, -1), (state.redo, 1)):
        if stack and stack[-1].seq == seq:
            return sign, stack[-1]
    return None


def day_of(days: tuple[Day, ...], at: str) -> Day | None:
    """Return what is done on the day of a time so far; None if it is not a time."""
    date = evening_of(at)
    known = days[-1] if days and days[-1].date == date else Day(date=date)
    return known if date else None


def _days(state: State, event: Event, date: str, work: KnittingKind, gain: int) -> tuple[Day, ...]:
    """Return the days with what an event adds; what is undone on its day leaves the day as it was."""
    found = find_undone(state, event.seq) if isinstance(event, Undone) else None
    before = found[1].day if found is not None else None
    if before is not None and before.date == date and state.days[-1].date == date:
        return (*state.days[:-1], before)
    return _dayed(state.days, date, work, gain)


def count_minutes(state: State, at: str) -> int:
    """Return how long she has knitted without a rest, rounded down to five minutes. Unit: minutes."""
    return 5 * int((seconds_between(state.sat_since, at) or 0) // 300)


def seconds_between(last: str, now: str) -> float | None:
    """Return the time between two moments; None if either is not a time. Unit: s."""
    try:
        return (datetime.fromisoformat(now) - datetime.fromisoformat(last)).total_seconds()
    except (ValueError, TypeError):
        return None


def _begins_anew(state: State, event: Event) -> bool:
    """Return whether the stitches that follow are begun now rather than earlier."""
    if not state.begun_at:
        return True
    if isinstance(event, Counted):
        return not state.place.stitch
    moved = Advanced | Placed | Returned | Jumped | Tinked | Remedied | Undone
    return isinstance(event, Opened | PlanChanged | PlaceAsked | moved)


def _stepped(state: State, at: str, stitches: int, work: KnittingKind) -> tuple[TimedStep, ...]:
    """Add a step to those from which her pace is measured."""
    seconds = seconds_between(state.begun_at, at)
    if seconds is None or seconds < 0:
        return state.worked
    worked = state.worked
    if stitches * 60 > FASTEST_PER_MINUTE * seconds:
        if not worked or worked[-1].work != work:
            return worked
        stitches, seconds = worked[-1].stitches + stitches, worked[-1].seconds + seconds
        if stitches * 60 > MERGED_PER_MINUTE * seconds:
            return worked
        worked = worked[:-1]
    worked = (*worked, TimedStep(stitches=stitches, seconds=seconds, work=work))
    alike = [number for number, each in enumerate(worked) if each.work == work]
    if len(alike) > STEPS_KEPT:
        worked = (*worked[: alike[0]], *worked[alike[0] + 1 :])
    return worked


def evening_of(at: str) -> str:
    """Return the day whose evening a time belongs to, even after midnight; empty if it is not a time."""
    try:
        return (datetime.fromisoformat(at) - timedelta(hours=EVENING_ENDS_H)).date().isoformat()
    except (ValueError, OverflowError):
        return ""


def _dayed(days: tuple[Day, ...], date: str, work: KnittingKind, gain: int) -> tuple[Day, ...]:
    """Add to the stitches of a day, or take from them; a day never has fewer than none."""
    if not days or days[-1].date != date:
        days = (*days, Day(date=date))[-DAYS_KEPT:]
    counts = {each.work: each.stitches for each in days[-1].done}
    counts[work] = counts.get(work, 0) + gain
    owed = -sum(min(0, count) for count in counts.values())
    for kind in sorted(counts, key=lambda each: -counts[each]):
        # What is taken back may be of another kind; the kind with the most stitches gives first.
        paid = min(owed, max(0, counts[kind]))
        counts[kind], owed = max(0, counts[kind]) - paid, owed - paid
    done = tuple(Done(work=kind, stitches=count) for kind, count in counts.items() if count)
    return (*days[:-1], Day(date=date, done=done))


def _rested(state: State, event: Event, gain: int) -> tuple[str, bool]:
    """Return since when she has knitted without a rest, and whether a reminder has fallen due since then."""
    signs = (seconds_between(last, event.at) for last in (state.last_cue_at, state.begun_at))
    pause = min((each for each in signs if each is not None), default=None)
    if isinstance(event, Opened | PlanChanged | PlaceAsked):
        longest = REST_S
    else:
        longest = gain * _SLOWEST + REST_S if gain > 0 else QUIET_S
    if pause is None or pause >= longest or not state.sat_since:
        return event.at, False
    knitted = seconds_between(state.sat_since, event.at) or 0.0
    ends_round = isinstance(event, Advanced | Placed) and event.place.index > event.origin.index
    return state.sat_since, state.rest_told or (ends_round and knitted >= KNIT_S)
