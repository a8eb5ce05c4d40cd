"""Work out what to tell after a cue, from the cue, the events and the state they lead to. Pure.

Anything that moves the place tells where it now is and what to do there. `stepper.language.effect_words`
finds the words.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from types import MappingProxyType
from typing import Any, Final

from stepper.plan.model import Plan
from stepper.session import cues, read_along
from stepper.session.answers import ANSWERS, step_at, tell_place
from stepper.session.changed_plan import respacing
from stepper.session.clock_cues import Beat, Silence
from stepper.session.counting import doubts
from stepper.session.counting.tally import count_between
from stepper.session.due.round_reached import tell_due, tell_reminders, tell_second
from stepper.session.effects import (
    AskCount,
    AskPlace,
    AskSections,
    Close,
    Effect,
    Lead,
    TellAsleep,
    TellAwake,
    TellChanges,
    TellChosen,
    TellCounted,
    TellEvent,
    TellFinished,
    TellKept,
    TellMeasured,
    TellRecap,
    TellStart,
    TellStep,
    TellStop,
    TellStride,
    TellTaken,
    TellTinked,
    TellUndone,
    TurnFilm,
    TurnTo,
)
from stepper.session.events import (
    EVENTS,
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
    Respaced,
    Returned,
    RowAnswered,
    RowSaid,
    Searched,
    StrideSet,
    Tallied,
    Tinked,
    Undone,
    Weighed,
    WokeUp,
)
from stepper.session.fault import respond as inquiry
from stepper.session.fault.tinking import reverse
from stepper.session.open_row.so_far import as_far_as_read
from stepper.session.open_row.telling import TellSettled, settle_row, tell_ahead, tell_row_said
from stepper.session.pace.learning import find_undone
from stepper.session.pace.silence import was_silent
from stepper.session.questions.yarn_left import forecast_ball
from stepper.session.state import Position, State
from stepper.session.stops import stop_in_hand


def respond(
    plan: Plan, before: State, cue: cues.Cue | None, events: tuple[Event, ...], after: State
) -> tuple[Effect, ...]:
    """Return the effects of what happened.

    Args:
        plan: The plan as knitted after the events.
        before: The state before them.
        cue: What was asked; None if the sitting itself begins.
        events: What happened; empty if the cue only asked.
        after: The state after them.
    """
    if isinstance(cue, Silence):
        if before.asleep or before.closed:
            return ()
        return tuple(inquiry.tell_spot(plan, before) if before.question is None else ask_place(before))
    if before.question is not None:  # the place itself is open
        return _answer(plan, before, cue, events, after)
    if cue is None or isinstance(cue, Beat) or before.asleep or not was_silent(plan, before, cue.at):
        return _answer(plan, before, cue, events, after)
    # Back from a silence: first the place, and at the end what comes next.
    first = tuple(inquiry.tell_spot(plan, before)) if before.place.stitch else ()
    told = tuple(_in_full(each) for each in _answer(plan, before, cue, events, after))
    breaks_off = (
        after.closed or after.asleep or isinstance(cue, cues.Look | cues.Film | cues.Undo | cues.Redo)
    )
    if breaks_off or any(isinstance(each, TellStep | TellFinished) for each in told):
        return (*first, *told)
    return (*first, *told, step_at(plan, after, Lead.FULL))


def _in_full(told: Effect) -> Effect:
    """Return a step as it is read out in full: after a silence she may not know what "the same" was."""
    return replace(told, part=replace(told.part, again=False)) if isinstance(told, TellStep) else told


def _answer(
    plan: Plan, before: State, cue: cues.Cue | None, events: tuple[Event, ...], after: State
) -> tuple[Effect, ...]:
    if isinstance(cue, cues.Look):
        return (TurnTo(view=cue.view),)
    if isinstance(cue, cues.Film):
        return (TurnFilm(on=cue.on),)
    if not events and isinstance(cue, Beat):
        return ()
    if not events and after.question is not None and not isinstance(cue, cues.Help):
        return tuple(ask_place(after))
    if not events and cue is not None:
        return as_far_as_read(plan, ANSWERS[type(cue)](plan, after, cue))
    effects: list[Effect] = []
    for event in events:
        effects += TOLD.get(type(event), _confirmed)(plan, before, event, after)
    return (*as_far_as_read(plan, effects), *read_along.next_beat(plan, after))


def ask_place(state: State, *, later: bool = False) -> Iterator[Effect]:
    """Ask where to go on, if that is still open."""
    if state.question is not None:
        yield AskPlace(choices=state.question.choices, later=later)


# Events

_Telling = Callable[[Plan, State, Any, State], Iterator[Effect]]


def _confirmed(plan: Plan, before: State, event: Event, after: State) -> Iterator[Effect]:
    """Tell of an event that leads to nothing else, in its own words."""
    yield TellEvent(event=event)


def _opened(plan: Plan, before: State, event: Opened, after: State) -> Iterator[Effect]:
    if after.question is not None:
        return  # the question for the place follows
    if before.seq == 0:
        yield TellStart()
    else:
        yield from inquiry.tell_spot(plan, after, marked=True)
        done = before.place if before.place != Position() else None
        yield TellRecap(done=done, at=before.last_cue_at)
        yield from tell_reminders(before, after)
    yield from ask_open(plan, after)
    yield from tell_ahead(plan, after.place.index)
    yield step_at(plan, after, _lead_behind_recap(plan, before, after))


def _lead_behind_recap(plan: Plan, before: State, after: State) -> Lead:
    """Return how much of the place the first step still needs; the recap has just said the place."""
    place = after.place
    if before.seq == 0 or place == Position() or place.index >= len(plan.rounds) or place != before.place:
        return Lead.FULL
    first = plan.rounds[place.index]
    if place.stitch:  # the side that faces her, or the round of the chart, is needed with the first stitch
        return Lead.ROUND if first.flat or first.chart is not None else Lead.PART
    last = plan.rounds[place.index - 1]
    return Lead.ROUND if last.section == first.section else Lead.FULL


def ask_open(plan: Plan, state: State) -> Iterator[Effect]:
    """Ask once more what is open: what was asked back, or else what a search asks."""
    if state.knitting.doubt is not None:
        yield from doubts.ask_back(plan, state)
    else:
        yield from inquiry.ask_next(plan, state)


def _place_asked(plan: Plan, before: State, event: PlaceAsked, after: State) -> Iterator[Effect]:
    yield TellChanges(changes=event.changes, have=0, want=0, found=True, comparable=True)
    yield from ask_place(after)


def _plan_changed(plan: Plan, before: State, event: PlanChanged, after: State) -> Iterator[Effect]:
    if before.question is not None and event.answer:
        yield TellChosen(choice=before.question.choices[event.answer - 1])
        yield step_at(plan, after, Lead.FULL)
        return
    if event.settled:
        yield TellSettled()
        yield step_at(plan, after, Lead.FULL)
        return
    yield TellChanges(
        changes=event.changes,
        have=event.have,
        want=event.want,
        found=event.found,
        comparable=event.comparable,
        unplaced=event.unplaced,
    )


def _moved_on(plan: Plan, before: State, event: Advanced | Placed, after: State) -> Iterator[Effect]:
    """Tell the next step, after what is worth checking if a round was finished."""
    origin, place = event.origin, event.place
    yield from inquiry.tell_left_behind(plan, before, after)
    if place.index == origin.index:
        if not place.stitch:  # a stop before the round is heard
            yield step_at(plan, after, Lead.FULL if plan.rounds[place.index].number == 1 else Lead.ROUND)
            return
        running = after.reading is not None and not after.reading.held
        worked_on = isinstance(event, Advanced)
        step = step_at(plan, after, Lead.PART, taught=worked_on)
        yield read_along.tell_run(plan, after) if running else step
        return
    done = plan.rounds[origin.index]
    if place.index > origin.index + 1:
        untold = _changed_between(plan, origin.index + 1, place.index)
        yield TellTaken(stitches=event.stitches, place=place, changed=untold)
    yield from tell_second(plan, origin.index, place.index)
    yield from tell_due(plan, before, event, after)
    yield from tell_ahead(plan, place.index)
    same_section = place.index < len(plan.rounds) and plan.rounds[place.index].section == done.section
    yield step_at(plan, after, Lead.ROUND if same_section else Lead.FULL)


def _changed_between(plan: Plan, first: int, end: int) -> tuple[int, ...]:
    """Return the rounds from one up to another, by index, that leave another number of stitches."""
    return tuple(round_.index for round_ in plan.rounds[first:end] if round_.before != round_.after)


def _moved(plan: Plan, before: State, event: Returned | Jumped, after: State) -> Iterator[Effect]:
    ahead = event.place > event.origin
    if ahead:
        stitches = count_between(plan, event.origin, event.place)
        untold = _changed_between(plan, event.origin.index + 1, event.place.index)
        yield TellTaken(stitches=stitches, place=event.place, changed=untold)
    yield from tell_reminders(before, after)
    yield from _step_there(plan, after, named=ahead or event.place.index == event.origin.index)


def _step_there(plan: Plan, after: State, *, named: bool) -> Iterator[Effect]:
    """Tell the step at a place that was gone to; before a stop, which has no place in it, the place too.

    Args:
        plan: The plan as knitted.
        after: The state there.
        named: Whether what was said before lets her know the place.
    """
    if stop_in_hand(plan, after) and not named:
        yield tell_place(plan, after.place)
    yield step_at(plan, after, Lead.FULL)


def _stride_set(plan: Plan, before: State, event: StrideSet, after: State) -> Iterator[Effect]:
    flat = after.place.index < len(plan.rounds) and plan.rounds[after.place.index].flat
    yield TellStride(by=event.by, sort=event.sort, flat=flat)
    if after.place.index < len(plan.rounds):
        yield step_at(plan, after, Lead.PART)


def _counted(plan: Plan, before: State, event: Counted, after: State) -> Iterator[Effect]:
    fault = before.knitting.fault
    if event.agrees and fault is not None and fault.answers:
        yield inquiry.TellSound(stitches=event.stitches)
        return
    asked = () if event.agrees else tuple(inquiry.ask_next(plan, after))
    brief = fault is not None and any(isinstance(each, AskSections) for each in asked)
    yield TellCounted(counted=event.stitches, now=event.expected, end=event.expected_end, brief=brief)
    if event.worked:  # with this count the round is finished
        done = Placed(at=event.at, origin=event.place, place=after.place)
        told = _moved_on(plan, before, done, after)
        yield from (each for each in told if not isinstance(each, AskCount))  # she has just counted it
    yield from asked


def _measured(plan: Plan, before: State, event: Measured, after: State) -> Iterator[Effect]:
    if event.correction is None:
        index = event.place.index
        early = (plan.stretch_at(index) or plan.stretch_ahead(index)) is not None
        yield TellKept(length_mm=event.length_mm, early=early)
        return
    yield TellMeasured(
        length_mm=event.length_mm,
        target_mm=event.target_mm,
        rounds_per_10cm=event.correction.rounds_per_10cm,
        planned_per_10cm=event.planned_per_10cm,
        rounds_left=event.rounds_left,
        longer_by=event.correction.rounds - event.rounds_before,
    )
    had_ended = event.correction.rounds - event.rounds_left == event.rounds_before
    if event.rounds_left == 0 or had_ended:
        yield step_at(plan, after, Lead.FULL)  # the current round has changed


def _weighed(plan: Plan, before: State, event: Weighed, after: State) -> Iterator[Effect]:
    yield TellKept(yarn=event.yarn, grams=event.grams)
    yield from forecast_ball(plan, event.yarn, event.weighing)


def _noted(plan: Plan, before: State, event: Noted, after: State) -> Iterator[Effect]:
    yield TellKept(note=event.text)


_KINDS: Final = {each.__name__: each for each in EVENTS}


def _undone(plan: Plan, before: State, event: Undone, after: State) -> Iterator[Effect]:
    sign, undone = find_undone(before, event.seq) or (-1, None)
    yield TellUndone(event=_KINDS.get(undone.kind) if undone is not None else None, again=sign > 0)
    was, now = before.knitting, after.knitting
    moved = (was.place, was.heard, was.by, was.strides, was.corrections, was.respacings, was.mends)
    if moved != (now.place, now.heard, now.by, now.strides, now.corrections, now.respacings, now.mends):
        yield from _step_there(plan, after, named=was.place == now.place)
    yield from doubts.ask_back(plan, after)


def _fell_asleep(plan: Plan, before: State, event: FellAsleep, after: State) -> Iterator[Effect]:
    if after.question is None:
        yield from inquiry.tell_spot(plan, after)
    yield TellAsleep()


def _woke_up(plan: Plan, before: State, event: WokeUp, after: State) -> Iterator[Effect]:
    yield TellAwake()
    if after.question is not None:
        yield from ask_place(after)
        return
    if after.place.stitch:
        yield from inquiry.tell_spot(plan, after)
    yield from doubts.ask_back(plan, after)
    yield step_at(plan, after, Lead.PART if after.place.stitch else Lead.FULL)


def _closed(plan: Plan, before: State, event: Closed, after: State) -> Iterator[Effect]:
    if after.question is not None:
        yield from ask_place(after, later=True)
        yield Close()
        return
    yield from inquiry.tell_spot(plan, after, marked=True)
    yield TellStop(place=event.place, first=step_at(plan, after, Lead.FULL))
    yield Close()


def _remedied(plan: Plan, before: State, event: Remedied, after: State) -> Iterator[Effect]:
    here = event.mend is not None and event.mend.index == after.place.index and not event.mend.spread
    if not here:  # else the reminder that follows says it
        yield from inquiry.tell_remedied(plan, before, event, after)
    if not event.remedy.settles:
        return  # she looks or counts first; nothing is to be knitted yet
    yield from inquiry.tell_mends(after)
    yield step_at(plan, after, Lead.FULL)


def _tinked(plan: Plan, before: State, event: Tinked, after: State) -> Iterator[Effect]:
    back = reverse(plan, event.origin, event.stitches)
    yield TellTinked(runs=back.runs if back is not None else (), place=event.place)
    yield step_at(plan, after, Lead.PART)


TOLD: Final[MappingProxyType[type[Event], _Telling]] = MappingProxyType(
    {
        Opened: _opened,
        PlanChanged: _plan_changed,
        PlaceAsked: _place_asked,
        Advanced: _moved_on,
        Returned: _moved,
        Placed: _moved_on,
        Jumped: _moved,
        StrideSet: _stride_set,
        Counted: _counted,
        Doubted: doubts.tell_doubted,
        Measured: _measured,
        Weighed: _weighed,
        Noted: _noted,
        Undone: _undone,
        FellAsleep: _fell_asleep,
        WokeUp: _woke_up,
        Closed: _closed,
        Searched: inquiry.tell_search,
        Observed: inquiry.tell_search,
        Remedied: _remedied,
        Tinked: _tinked,
        Respaced: respacing.tell_respaced,
        LifelineLaid: inquiry.tell_lifeline,
        AskingSet: inquiry.tell_asking,
        Tallied: inquiry.tell_tally,
        ReadingSet: read_along.tell_setting,
        RowSaid: tell_row_said,
        RowAnswered: settle_row,
    }
)
