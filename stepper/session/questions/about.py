"""Answer questions about the knitting in hand: which function answers which topic. Pure."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from types import MappingProxyType
from typing import Final

from stepper.craft.stitches import Kind
from stepper.plan.model import OpenRow, Plan, flatten
from stepper.records import dataclass
from stepper.session.control import refuse_done
from stepper.session.cues import About, Explain, HowFarIn, HowFarTo
from stepper.session.decision import Decision
from stepper.session.effects import Effect
from stepper.session.moves import round_called
from stepper.session.open_row.rules import not_before
from stepper.session.pace.outlook import Outlook, look_ahead
from stepper.session.questions import about_ahead, about_named, about_piece, about_round
from stepper.session.questions.slips import tell_markers_lost, tell_way_out, tell_worked_twice
from stepper.session.questions.topics import PartTopic, Topic
from stepper.session.state import State
from stepper.session.step_in_hand import step_in_hand
from stepper.session.stops import stops_at


@dataclass(frozen=True, slots=True, kw_only=True)
class TellMeaning(Effect):
    """Say what an abbreviation means."""

    code: str
    """As it stands in the table of stitches, or the word that was asked about."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellMeaningHere(Effect):
    """Say what the words of the step in hand mean."""

    stitches: tuple[str, ...]
    """Codes of the stitches of the step, each once."""
    words: tuple[str, ...]
    """What is told with it in other words: a needle change, a join, the words of a row that is not read."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellUnread(Effect):
    """Say all the words of the row that is not read, on demand."""

    row: OpenRow | None
    """None if every row of the pattern is read."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellFinishDate(Effect):
    """Say when the garment will be finished, and what each evening must bring."""

    outlook: Outlook


_ANYWHERE: Final = frozenset(
    (
        Topic.REMINDERS,
        Topic.NOTES,
        Topic.HELD,
        Topic.LAST_STEP,
        Topic.LAST_ROUND,
        Topic.ALTERATIONS,
        Topic.WORKED_TWICE,
        Topic.WRONG_YARN,
        Topic.LONG_FLOAT,
        Topic.YARN_OUT,
        Topic.UNREAD,
    )
)
# Topics that have an answer when every round is done.


def ask_about(plan: Plan, state: State, cue: About) -> Decision:
    """Let a question be answered; after the last round, only one about what lies behind."""
    if state.place.index < len(plan.rounds) or (cue.topic in _ANYWHERE and plan.rounds):
        return ()
    return refuse_done(plan, state, cue) if plan.open is None else not_before(plan, state, cue)


def tell_about(plan: Plan, state: State, cue: About) -> Iterator[Effect]:
    """Answer a question about the knitting in hand."""
    yield from _TOLD[cue.topic](plan, state, cue.at)


def tell_how_far_to(plan: Plan, state: State, cue: HowFarTo) -> Iterator[Effect]:
    """Tell how many rounds there are before a section or a labelled line."""
    here = state.place.index
    yield about_ahead.TellRoundsTo(place=cue.place, index=round_called(plan, cue.place, here), here=here)


def tell_how_far_in(plan: Plan, state: State, cue: HowFarIn) -> Iterator[Effect]:
    """Tell how far a section is done, and how long its rest takes; or what else is asked about it."""
    if cue.asks is PartTopic.LENGTH:
        yield from about_piece.tell_part_length(plan, state, cue.at, cue.place)
    elif cue.asks is PartTopic.PROGRESS:
        yield from about_piece.tell_section(plan, state, cue.place)
    else:
        yield from _NAMED[cue.asks](plan, state, cue.place)


def tell_meaning(plan: Plan, state: State, cue: Explain) -> Iterator[Effect]:
    """Tell what an abbreviation or a word of the trade means, or the words of the step in hand."""
    yield TellMeaning(code=cue.text) if cue.text else _meaning_here(plan, state)


def _meaning_here(plan: Plan, state: State) -> TellMeaningHere:
    place = state.place
    if place.index >= len(plan.rounds):
        return TellMeaningHere(stitches=(), words=() if plan.open is None else (plan.open.words,))
    round_ = plan.rounds[place.index]
    heard, stop = stops_at(plan, state)
    if stop:
        return TellMeaningHere(stitches=(), words=stop)
    part = step_in_hand(round_, state)
    told = () if place.stitch else tuple(each for each in round_.remarks if each not in heard)
    stitches = dict.fromkeys(run.stitch for run in flatten(part.items))
    return TellMeaningHere(stitches=tuple(stitches), words=(*told, round_.words))


def _finish(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    yield TellFinishDate(outlook=look_ahead(plan, state, at))


def _unread(plan: Plan, state: State, at: str) -> Iterator[Effect]:
    """Tell the row that is not read, wherever she stands."""
    yield TellUnread(row=plan.open)


_Telling = Callable[[Plan, State, str], Iterator[Effect]]

_TOLD: Final[MappingProxyType[Topic, _Telling]] = MappingProxyType(
    {
        Topic.NEXT_STEP: partial(about_round.tell_step, ahead=1),
        Topic.STEP_AFTER: partial(about_round.tell_step, ahead=2),
        Topic.LAST_STEP: partial(about_round.tell_step, ahead=-1),
        Topic.NEXT_ROUND: partial(about_round.tell_round, ahead=1),
        Topic.ROUND_AFTER: partial(about_round.tell_round, ahead=2),
        Topic.STITCHES_LEFT: about_round.tell_stitches_left,
        Topic.THIS_ROUND: partial(about_round.tell_round, ahead=0),
        Topic.ALIKE: about_round.tell_alike,
        Topic.LAST_ROUND: partial(about_round.tell_round, ahead=-1),
        Topic.YARN: about_round.tell_yarns,
        Topic.COLOUR_CHANGE: about_round.tell_colour_change,
        Topic.FLOAT: about_round.tell_floats,
        Topic.SIDE: about_round.tell_side,
        Topic.REPEAT: about_round.tell_repeat,
        Topic.CHART: about_round.tell_chart,
        Topic.MARKER: about_round.tell_marker,
        Topic.TURN: about_round.tell_turn,
        Topic.NEXT_INCREASE: partial(about_ahead.tell_next_shaping, kind=Kind.INCREASE),
        Topic.NEXT_DECREASE: partial(about_ahead.tell_next_shaping, kind=Kind.DECREASE),
        Topic.INCREASES_LEFT: partial(about_ahead.tell_shaping_left, kind=Kind.INCREASE),
        Topic.DECREASES_LEFT: partial(about_ahead.tell_shaping_left, kind=Kind.DECREASE),
        Topic.DIVISION: about_ahead.tell_division,
        Topic.NEEDLE: about_ahead.tell_needle,
        Topic.SIZE: about_ahead.tell_size,
        Topic.GAUGE: about_ahead.tell_gauge,
        Topic.LENGTH: about_ahead.tell_length,
        Topic.YARN_LEFT: about_ahead.tell_yarn_needed,
        Topic.YARN_USED: about_ahead.tell_yarn_used,
        Topic.PACE: about_ahead.tell_pace,
        Topic.DONE_WHEN: _finish,
        Topic.TONIGHT: about_ahead.tell_tonight,
        Topic.KNITTED_TODAY: about_ahead.tell_knitted_today,
        Topic.REMINDERS: about_ahead.tell_reminders_kept,
        Topic.LAST_COUNT: about_ahead.tell_last_count,
        Topic.ALTERATIONS: about_ahead.tell_alterations,
        Topic.LAST_INCREASE: partial(about_piece.tell_last_shaping, kind=Kind.INCREASE),
        Topic.LAST_DECREASE: partial(about_piece.tell_last_shaping, kind=Kind.DECREASE),
        Topic.NEXT_COUNT: about_piece.tell_next_count,
        Topic.NEXT_SECTION: about_piece.tell_next_section,
        Topic.HELD: about_piece.tell_held,
        Topic.CAST_ON: about_piece.tell_cast_on,
        Topic.WIDTH: about_piece.tell_width,
        Topic.SHARE_DONE: about_piece.tell_share_done,
        Topic.NOTES: about_piece.tell_notes,
        Topic.UNDERARM: about_named.tell_underarm,
        Topic.INCREASE_RHYTHM: partial(about_named.tell_rhythm, kind=Kind.INCREASE),
        Topic.DECREASE_RHYTHM: partial(about_named.tell_rhythm, kind=Kind.DECREASE),
        Topic.CABLE_RHYTHM: partial(about_named.tell_rhythm, kind=Kind.CABLE),
        Topic.WORKED_TWICE: tell_worked_twice,
        Topic.WRONG_YARN: partial(tell_way_out, topic=Topic.WRONG_YARN),
        Topic.LONG_FLOAT: partial(tell_way_out, topic=Topic.LONG_FLOAT),
        Topic.YARN_OUT: partial(tell_way_out, topic=Topic.YARN_OUT),
        Topic.MARKER_LOST: tell_markers_lost,
        Topic.CARRIED: about_round.tell_carried,
        Topic.UNREAD: _unread,
    }
)

_NAMED: Final[MappingProxyType[PartTopic, Callable[[Plan, State, str], Iterator[Effect]]]] = MappingProxyType(
    {
        PartTopic.STITCHES: about_named.tell_part_counts,
        PartTopic.NOTES: about_named.tell_part_notes,
        PartTopic.LINES: about_named.tell_lines_left,
    }
)
