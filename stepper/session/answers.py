"""Cues that only ask: the records of their answers, and the functions that work them out. Pure.

`stepper.session.respond` tells what happened; here nothing did.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from types import MappingProxyType
from typing import Any, Final

from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.session import cues
from stepper.session.changed_plan import respacing
from stepper.session.counting import doubts
from stepper.session.counting.checks import expected_at_end
from stepper.session.counting.tally import between_markers, count_at, is_counted_at
from stepper.session.effects import Effect, Lead, TellFinished, TellHelp, TellStep
from stepper.session.fault import respond as inquiry
from stepper.session.open_row.telling import tell_open_row
from stepper.session.pace.learning import evening_of
from stepper.session.pace.outlook import Outlook, look_ahead, paces_of, stitches_by_kind
from stepper.session.questions import about_round
from stepper.session.questions.about import tell_about, tell_how_far_in, tell_how_far_to, tell_meaning
from stepper.session.questions.about_series import tell_series
from stepper.session.questions.topics import HelpWith
from stepper.session.questions.why import tell_why
from stepper.session.rules import Mode, mode_of
from stepper.session.state import Position, State
from stepper.session.step_in_hand import is_told, step_in_hand
from stepper.session.steps import RoundSort, rest_of, sort_of
from stepper.session.stops import stops_at

Answer = Callable[[Plan, State, Any], Iterator[Effect]]
"""Plan as knitted, state, cue. `Any` because each answer takes the cue its row in the table names."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellPlace(Effect):
    """Say where the knitting stands."""

    place: Position
    count: int | None
    """Stitches on the needles; None where nobody knows. Unit: stitches."""
    is_off: bool = False
    """Whether she counted others and that is open, so that the number is only the pattern's."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellSpacing(Effect):
    """Say how the shaping of the current round is spaced."""

    place: Position
    next_index: int | None
    """The next round with shaping, if this one has none; None if none follows."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellExpected(Effect):
    """Say how many stitches there should be."""

    now: int | None
    """None where nobody knows, here and at the end."""
    end: int | None
    between: tuple[int, ...]
    """Between the markers at the end of the round; empty without markers. Unit: stitches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellFar(Effect):
    """Say what is left, including the current round."""

    section: str
    section_rounds: int
    rounds: int
    stitches: int


@dataclass(frozen=True, slots=True, kw_only=True)
class TellTimeLeft(Effect):
    """Say how much knitting is left and when it will be done."""

    outlook: Outlook


@dataclass(frozen=True, slots=True, kw_only=True)
class TellDue(Effect):
    """Say how much to knit each evening to be done by the date in the file."""

    outlook: Outlook


@dataclass(frozen=True, slots=True, kw_only=True)
class TellTimeKnitted(Effect):
    """Say how long she has knitted: her stitches at her pace, without breaks and ripped-out work."""

    evening_s: float
    """This evening, from the day's first stitch. Unit: s."""
    all_s: float
    """On all days remembered. Unit: s."""
    her_pace: bool
    """Whether her own pace is known; otherwise the usual one is assumed."""


def tell_place(plan: Plan, place: Position) -> TellPlace:
    """Tell a place with the stitches on the needles, where they are known."""
    return TellPlace(place=place, count=count_at(plan, place) if is_counted_at(plan, place) else None)


def step_at(plan: Plan, state: State, lead: Lead, *, slower: bool = False, taught: bool = False) -> Effect:
    """Tell the current step from the place in it, or that no round is left.

    Args:
        plan: The plan as knitted.
        state: Where the session stands.
        lead: How much of the place is said in front.
        slower: Whether she asked for it again.
        taught: Whether she has just heard the step before, so that one like it need not be read out.
    """
    place = state.place
    if place.index >= len(plan.rounds):
        return TellFinished() if plan.open is None else tell_open_row(plan.open, state)
    round_ = plan.rounds[place.index]
    part = step_in_hand(round_, state)
    heard, stop = stops_at(plan, state)
    left = rest_of(part, place.stitch)
    if not taught or not is_told(left, place.stitch, state.told_from):
        left = replace(left, again=False)
    return TellStep(index=place.index, part=left, lead=lead, slower=slower, stop=stop, heard=heard)


def _again(plan: Plan, state: State, cue: cues.Cue) -> Iterator[Effect]:
    yield from doubts.ask_back(plan, state)
    if state.knitting.doubt is None:
        yield from inquiry.ask_next(plan, state)
    yield step_at(plan, state, Lead.PART if state.place.stitch else Lead.ROUND, slower=True)


def _where(plan: Plan, state: State, cue: cues.Cue) -> Iterator[Effect]:
    place = state.place
    fault = state.knitting.fault
    yield replace(tell_place(plan, place), is_off=fault is not None and fault.difference != 0)
    yield from inquiry.tell_fault_open(plan, state)
    if place.stitch and sort_of(plan.rounds[place.index]) in (RoundSort.COLOURS, RoundSort.TEXTURE):
        # Nobody has counted so many stitches of a chart; which repeat it is shows on the needles.
        for each in about_round.tell_repeat(plan, state, cue.at):
            if isinstance(each, about_round.TellRepeat) and each.number is not None:
                yield each
    yield from tell_series(plan, state)


def _spacing(plan: Plan, state: State, cue: cues.Cue) -> Iterator[Effect]:
    later = (round_.index for round_ in plan.rounds[state.place.index + 1 :] if round_.shaping)
    yield TellSpacing(place=state.place, next_index=next(later, None))


def _how_many(plan: Plan, state: State, cue: cues.Cue) -> Iterator[Effect]:
    place = state.place
    between = between_markers(plan.rounds[place.index]) if place.index < len(plan.rounds) else ()
    now = count_at(plan, place) if is_counted_at(plan, place) else None
    end = expected_at_end(plan, place) if is_counted_at(plan, Position(index=place.index + 1)) else None
    yield TellExpected(now=now, end=end, between=between)


def _how_far(plan: Plan, state: State, cue: cues.Cue) -> Iterator[Effect]:
    left = plan.rounds[state.place.index :]
    section = left[0].section if left else ""
    yield TellFar(
        section=section,
        section_rounds=sum(round_.section == section for round_ in left),
        rounds=len(left),
        stitches=max(0, sum(round_.progress for round_ in left) - state.place.stitch),
    )
    yield from _ahead(plan, state, cue.at)


def _ahead(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Look ahead in time, if anything is left."""
    if state.place.index >= len(plan.rounds):
        return
    seen = look_ahead(plan, state, at)
    yield TellTimeLeft(outlook=seen)
    if seen.evenings is not None:
        yield TellDue(outlook=seen)


def _how_long(plan: Plan, state: State, cue: cues.HowLong) -> Iterator[Effect]:
    paces, today = paces_of(state), evening_of(cue.at)
    spent = {day.date: paces.seconds_for(stitches_by_kind(day)) for day in state.days}
    yield TellTimeKnitted(evening_s=spent.get(today, 0.0), all_s=sum(spent.values()), her_pace=paces.measured)


def _help(plan: Plan, state: State, cue: cues.Help) -> Iterator[Effect]:
    fitting = _fitting(plan, state) if cue.about is HelpWith.NOW else ()
    yield TellHelp(about=cue.about, cues=fitting)


_FITTING: Final[MappingProxyType[Mode, tuple[type[cues.Cue], ...]]] = MappingProxyType(
    {
        Mode.KNITTING: (cues.Next, cues.Again, cues.Where, cues.Count, cues.Undo),
        Mode.OPEN: (cues.Yes, cues.No, cues.Next, cues.Count, cues.Again),
        Mode.FINISHED: (cues.Back, cues.Where, cues.Note, cues.Undo, cues.Enough),
        Mode.ASKED: (cues.Choose, cues.Again, cues.Where, cues.Enough),
        Mode.CLOSED: (),
    }
)
# A handful for each mode: about as many as are kept in mind.


def _fitting(plan: Plan, state: State) -> tuple[type[cues.Cue], ...]:
    """Return the handful of cues that fit where the session stands."""
    mode = mode_of(plan, state)
    if state.asleep and mode is not Mode.CLOSED:
        return (cues.Listen, *_FITTING[mode][:4])
    if mode is Mode.KNITTING and state.knitting.tens is not None:
        return (cues.Ten, cues.ThatIsAll, cues.CountAloud, cues.Undo)
    if mode is Mode.KNITTING and state.knitting.fault is not None:
        return (cues.SectionCount, cues.Count, cues.WhatHappened, cues.Remedies, cues.Undo)
    if mode is Mode.KNITTING and state.reading is not None:
        return (cues.PauseReading, cues.GoOn, cues.Slower, cues.Faster, cues.Next)
    return _FITTING[mode]


ANSWERS: Final[MappingProxyType[type[cues.Cue], Answer]] = MappingProxyType(
    {
        cues.Again: _again,
        cues.Where: _where,
        cues.Spacing: _spacing,
        cues.HowMany: _how_many,
        cues.HowFar: _how_far,
        cues.HowLong: _how_long,
        cues.Why: tell_why,
        cues.About: tell_about,
        cues.HowFarTo: tell_how_far_to,
        cues.HowFarIn: tell_how_far_in,
        cues.Explain: tell_meaning,
        cues.Help: _help,
        cues.WhatHappened: inquiry.tell_causes,
        cues.Remedies: inquiry.tell_remedies,
        cues.WhatElse: inquiry.tell_other_ways,
        cues.CountAgain: inquiry.ask_again,
        cues.CountAloud: inquiry.tell_tally_so_far,
        cues.Respace: respacing.tell_rest,
    }
)
"""The answer to each cue that only asks."""
