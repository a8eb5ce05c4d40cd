"""What may happen when: one row for each cue, or for a family of like cues; one column for each mode.

Every cell is filled; a cue that makes no sense in a mode has a rule that refuses it with a sentence. The test
over all (mode, cue) pairs, the help and the documentation read this table.
"""

from __future__ import annotations

from enum import Enum
from types import MappingProxyType
from typing import Final

from stepper.plan.model import Plan
from stepper.session import control, cues, moves, read_along
from stepper.session.changed_plan import plan_question, respacing
from stepper.session.counting import bare_number, checks, doubts
from stepper.session.decision import Handler
from stepper.session.fault import rules as faults
from stepper.session.keeping import KEPT
from stepper.session.open_row import rules as open_row
from stepper.session.questions import about
from stepper.session.state import State


class Mode(Enum):
    """What the session is doing."""

    KNITTING = "knitting"
    """A round is in hand."""
    OPEN = "open"
    """All that is read is done, and the pattern goes on with a row that is not."""
    FINISHED = "finished"
    """Every round is done; looking and going back is still possible."""
    ASKED = "asked"
    """The pattern has changed, and the session asks where to go on."""
    CLOSED = "closed"
    """The sitting is over."""


def mode_of(plan: Plan, state: State) -> Mode:
    """Return which mode a state is in."""
    if state.closed:
        return Mode.CLOSED
    if state.question is not None:
        return Mode.ASKED
    if state.place.index < len(plan.rounds):
        return Mode.KNITTING
    return Mode.FINISHED if plan.open is None else Mode.OPEN


def _below(family: type[cues.Cue]) -> tuple[type[cues.Cue], ...]:
    """Return the cues of a family."""
    return tuple(cue for cue in cues.CUES if issubclass(cue, family))


# cue: (while knitting, when finished, when closed)
_ROWS: Final[dict[type[cues.Cue], tuple[Handler, Handler, Handler]]] = {
    **dict.fromkeys(_below(cues.Asks), (control.ask, control.ask, control.refuse)),
    **{cue: (KEPT[cue], KEPT[cue], control.refuse) for cue in _below(cues.Keeps)},
    **{cue: (KEPT[cue], control.refuse_done, control.refuse) for cue in _below(cues.KeepsAhead)},
    cues.Next: (read_along.finish_run, control.refuse_done, control.refuse),
    cues.Back: (moves.go_back, moves.go_back, control.refuse),
    cues.Spacing: (control.ask, control.refuse_done, control.refuse),
    cues.HowFarIn: (control.ask, control.refuse_done, control.refuse),
    cues.StitchesBack: (moves.stitches_back, moves.stitches_back, control.refuse),
    cues.About: (about.ask_about, about.ask_about, control.refuse),
    cues.RoundsDone: (moves.rounds_done, control.refuse_done, control.refuse),
    cues.RoundsBack: (moves.rounds_back, moves.rounds_back, control.refuse),
    cues.YarnDone: (moves.yarn_done, control.refuse_done, control.refuse),
    cues.Count: (bare_number.take_count, bare_number.take_count, control.refuse),
    cues.OffBy: (checks.off_by, checks.off_by, control.refuse),
    cues.AtStitch: (moves.set_stitch, control.refuse_done, control.refuse),
    cues.AtMarker: (moves.set_marker, control.refuse_done, control.refuse),
    cues.Length: (checks.measure, checks.measure, control.refuse),
    cues.GoTo: (moves.go_to, moves.go_to, control.refuse),
    cues.Undo: (control.undo, control.undo, control.refuse),
    cues.Redo: (control.redo, control.redo, control.refuse),
    cues.Wait: (control.fall_asleep, control.fall_asleep, control.refuse),
    cues.Listen: (control.wake_up, control.wake_up, control.refuse),
    cues.Enough: (control.close, control.close, control.refuse),
    cues.Film: (control.switch_view, control.switch_view, control.refuse),
    cues.Look: (control.switch_view, control.switch_view, control.refuse),
    cues.SectionCount: (faults.section_count, faults.section_count, control.refuse),
    cues.MarkerCounts: (faults.marker_counts, faults.marker_counts, control.refuse),
    cues.Saw: (faults.saw, faults.saw, control.refuse),
    cues.FaultIn: (faults.fault_in, faults.fault_in, control.refuse),
    cues.WhatHappened: (faults.ask_about_fault, faults.ask_about_fault, control.refuse),
    cues.Remedies: (faults.ask_about_fault, faults.ask_about_fault, control.refuse),
    cues.WhatElse: (faults.ask_about_fault, faults.ask_about_fault, control.refuse),
    cues.CountAgain: (control.ask, control.ask, control.refuse),
    cues.Yes: (doubts.yes, doubts.yes, control.refuse),
    cues.No: (doubts.no, doubts.no, control.refuse),
    cues.Choose: (faults.choose, faults.choose, control.refuse),
    cues.Tink: (faults.tink, faults.tink, control.refuse),
    cues.Respace: (respacing.respace_rest, control.refuse_done, control.refuse),
    cues.CountAloud: (faults.count_aloud, faults.count_aloud, control.refuse),
    cues.Ten: (faults.ten, faults.ten, control.refuse),
    cues.ThatIsAll: (faults.that_is_all, faults.that_is_all, control.refuse),
    cues.ReadAlong: (read_along.begin_reading, control.refuse_done, control.refuse),
    cues.Slower: (read_along.correct_pace, control.refuse_done, control.refuse),
    cues.Faster: (read_along.correct_pace, control.refuse_done, control.refuse),
    cues.PauseReading: (read_along.pause_reading, control.refuse_done, control.refuse),
    cues.GoOn: (read_along.go_on_reading, control.refuse_done, control.refuse),
}

_COLUMNS: Final = (Mode.KNITTING, Mode.FINISHED, Mode.CLOSED)

# While the session asks where to go on, all else waits for the answer.
_WHILE_ASKED: Final[dict[type[cues.Cue], Handler]] = {
    cues.Choose: plan_question.answer,
    cues.Count: plan_question.take_number,
    **dict.fromkeys((cues.Again, cues.Where, cues.Remedies, cues.Help, cues.Why), control.ask),
    **{cue: _ROWS[cue][0] for cue in (cues.Wait, cues.Listen, cues.Enough, cues.Film, cues.Look)},
}

# Where the pattern goes on with a row that is not read, these are about it; all else is as when finished.
_AT_OPEN_ROW: Final[dict[type[cues.Cue], Handler]] = {
    cues.Next: open_row.next_row,
    cues.GoOn: open_row.next_row,
    cues.RoundsDone: open_row.rows_done,
    cues.Back: open_row.back,
    cues.Count: open_row.count,
    cues.Yes: open_row.yes,
    cues.No: open_row.no,
}


def _at_open_row(cue: type[cues.Cue]) -> Handler:
    done = _ROWS[cue][_COLUMNS.index(Mode.FINISHED)]
    return _AT_OPEN_ROW.get(cue, open_row.not_before if done is control.refuse_done else done)


RULES: Final = MappingProxyType(
    {(mode, cue): row[at] for cue, row in _ROWS.items() for at, mode in enumerate(_COLUMNS)}
    | {(Mode.OPEN, cue): _at_open_row(cue) for cue in _ROWS}
    | {(Mode.ASKED, cue): _WHILE_ASKED.get(cue, plan_question.not_yet) for cue in _ROWS}
)
"""The rule for each mode and kind of cue."""
