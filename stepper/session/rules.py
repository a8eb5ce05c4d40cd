"""What may happen when: one row for each cue, one column for each mode.

Every cell is filled; a cue that makes no sense in a mode has a rule that refuses it with a sentence. The test
over all (mode, cue) pairs, the help and the documentation read this table.
"""

from __future__ import annotations

from enum import Enum
from types import MappingProxyType
from typing import Final

from stepper.plan.model import Plan
from stepper.session import (
    about,
    checks,
    control,
    cues,
    doubts,
    due,
    moves,
    plan_question,
    read_along,
    respacing,
)
from stepper.session.decision import Handler
from stepper.session.fault import rules as faults
from stepper.session.state import State


class Mode(Enum):
    """What the session is doing."""

    KNITTING = "knitting"
    """A round is in hand."""
    FINISHED = "finished"
    """Every round is done; looking and going back is still possible."""
    ASKED = "asked"
    """The pattern has changed, and the session asks where to go on."""
    ASLEEP = "asleep"
    """The ears are closed."""
    CLOSED = "closed"
    """The sitting is over."""


def mode_of(plan: Plan, state: State) -> Mode:
    """Return which mode a state is in."""
    if state.closed:
        return Mode.CLOSED
    if state.asleep:
        return Mode.ASLEEP
    if state.question is not None:
        return Mode.ASKED
    return Mode.KNITTING if state.place.index < len(plan.rounds) else Mode.FINISHED


# cue: (while knitting, when finished, while asleep, when closed)
_ROWS: Final[dict[type[cues.Cue], tuple[Handler, Handler, Handler, Handler]]] = {
    **{
        cue: (control.ask, control.ask, control.sleeping, control.over)
        for cue in cues.CUES
        if issubclass(cue, cues.Asks)
    },
    cues.Next: (read_along.step, control.all_done, control.sleeping, control.over),
    cues.Back: (moves.go_back, moves.go_back, control.sleeping, control.over),
    cues.Spacing: (control.ask, control.all_done, control.sleeping, control.over),
    cues.About: (about.ask_about, about.ask_about, control.sleeping, control.over),
    cues.RoundsDone: (moves.rounds_done, control.all_done, control.sleeping, control.over),
    cues.RoundsBack: (moves.rounds_back, moves.rounds_back, control.sleeping, control.over),
    cues.YarnDone: (moves.yarn_done, control.all_done, control.sleeping, control.over),
    cues.ForgetReminders: (due.forget, due.forget, control.sleeping, control.over),
    cues.Count: (faults.count_or_part, faults.count_or_part, control.sleeping, control.over),
    cues.AtStitch: (moves.set_stitch, control.all_done, control.sleeping, control.over),
    cues.AtMarker: (moves.set_marker, control.all_done, control.sleeping, control.over),
    cues.Stride: (moves.set_stride, moves.set_stride, control.sleeping, control.over),
    cues.Length: (checks.measure, checks.measure, control.sleeping, control.over),
    cues.Weight: (checks.weigh, checks.weigh, control.sleeping, control.over),
    cues.Note: (checks.note, checks.note, control.sleeping, control.over),
    cues.RemindMe: (due.remind, control.all_done, control.sleeping, control.over),
    cues.GoTo: (moves.go_to, moves.go_to, control.sleeping, control.over),
    cues.Undo: (control.undo, control.undo, control.sleeping, control.over),
    cues.Redo: (control.redo, control.redo, control.sleeping, control.over),
    cues.Wait: (control.fall_asleep, control.fall_asleep, control.sleeping, control.over),
    cues.Listen: (control.already_awake, control.already_awake, control.wake_up, control.over),
    cues.Enough: (control.close, control.close, control.close, control.over),
    cues.Help: (control.ask, control.ask, control.ask, control.over),
    cues.Film: (control.look, control.look, control.sleeping, control.over),
    cues.Look: (control.look, control.look, control.sleeping, control.over),
    cues.SectionCount: (faults.section_count, faults.section_count, control.sleeping, control.over),
    cues.MarkerCounts: (faults.marker_counts, faults.marker_counts, control.sleeping, control.over),
    cues.Saw: (faults.saw, faults.saw, control.sleeping, control.over),
    cues.FaultIn: (faults.fault_in, faults.fault_in, control.sleeping, control.over),
    cues.WhatHappened: (faults.ask_about_fault, faults.ask_about_fault, control.sleeping, control.over),
    cues.Remedies: (faults.ask_about_fault, faults.ask_about_fault, control.sleeping, control.over),
    cues.WhatElse: (faults.ask_about_fault, faults.ask_about_fault, control.sleeping, control.over),
    cues.CountAgain: (control.ask, control.ask, control.sleeping, control.over),
    cues.Yes: (doubts.yes, doubts.yes, control.sleeping, control.over),
    cues.No: (doubts.no, doubts.no, control.sleeping, control.over),
    cues.Choose: (faults.choose, faults.choose, control.sleeping, control.over),
    cues.Tink: (faults.tink, faults.tink, control.sleeping, control.over),
    cues.Respace: (respacing.respace_rest, control.all_done, control.sleeping, control.over),
    cues.Lifeline: (faults.lay_lifeline, faults.lay_lifeline, control.sleeping, control.over),
    cues.Ask: (faults.set_asking, faults.set_asking, control.sleeping, control.over),
    cues.CountAloud: (faults.count_aloud, faults.count_aloud, control.sleeping, control.over),
    cues.Ten: (faults.ten, faults.ten, control.sleeping, control.over),
    cues.ThatIsAll: (faults.that_is_all, faults.that_is_all, control.sleeping, control.over),
    cues.ReadAlong: (read_along.begin, control.all_done, control.sleeping, control.over),
    cues.Slower: (read_along.correct_pace, control.all_done, control.sleeping, control.over),
    cues.Faster: (read_along.correct_pace, control.all_done, control.sleeping, control.over),
    cues.PauseReading: (read_along.hold, control.all_done, control.sleeping, control.over),
    cues.GoOn: (read_along.go_on, control.all_done, control.sleeping, control.over),
}

_COLUMNS: Final = (Mode.KNITTING, Mode.FINISHED, Mode.ASLEEP, Mode.CLOSED)

# While the session asks where to go on, all else waits for the answer.
_WHILE_ASKED: Final[dict[type[cues.Cue], Handler]] = {
    cues.Choose: plan_question.answer,
    **dict.fromkeys((cues.Again, cues.Where, cues.Remedies, cues.Help), control.ask),
    **{cue: _ROWS[cue][0] for cue in (cues.Wait, cues.Listen, cues.Enough, cues.Film, cues.Look)},
}

RULES: Final = MappingProxyType(
    {(mode, cue): row[at] for cue, row in _ROWS.items() for at, mode in enumerate(_COLUMNS)}
    | {(Mode.ASKED, cue): _WHILE_ASKED.get(cue, plan_question.not_yet) for cue in _ROWS}
)
"""The rule for each mode and kind of cue."""

_REFUSING: Final = (
    plan_question.not_yet,
    control.sleeping,
    control.over,
    control.all_done,
    control.already_awake,
)


def welcome_in(mode: Mode) -> tuple[type[cues.Cue], ...]:
    """List the cues that make sense in a mode, in the order of the help."""
    return tuple(cue for cue in cues.CUES if RULES[mode, cue] not in _REFUSING)
