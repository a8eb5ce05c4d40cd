"""The place in the round and the stitches there should be, as facts. No I/O."""

from __future__ import annotations

from stepper.language.measures import plural
from stepper.language.numbers import ordinal_words
from stepper.plan.kinds import kind_of
from stepper.screen.cells import repetition_at
from stepper.screen.course import SummedPlan
from stepper.screen.drawing.rows import Row, Styled, row
from stepper.screen.drawing.style import BOLD
from stepper.screen.pages.ahead import find_next_shaping, say_duration
from stepper.screen.pages.count_badge import count_expected
from stepper.screen.scene import Scene
from stepper.session.counting.tally import is_counted_at, markers_in
from stepper.session.pace.outlook import paces_of
from stepper.session.state import Position, State

_NARROW = 36
"""Columns below which words yield to figures."""


def list_counts(scene: Scene, columns: int) -> list[Row]:
    """Return facts: the stitches now and at the end, the needle, and the time for the rest of the round."""
    round_ = scene.course.rounds[scene.state.place.index]
    now, end = count_expected(scene.plan, scene.state)
    narrow = columns < _NARROW
    here, behind = scene.state.place, Position(index=round_.index + 1)
    if not (is_counted_at(scene.plan, here) and is_counted_at(scene.plan, behind)):
        counts: Row = (Styled("? sts", BOLD), Styled("" if narrow else " that nobody knows"))
    elif now == end:
        counts = (Styled(f"{now} sts", BOLD), Styled("" if narrow else " throughout"))
    elif narrow:
        counts = (Styled(f"{now} to {end} sts", BOLD),)
    else:
        counts = (Styled(f"{now} sts", BOLD), Styled(" now, "), Styled(f"{end}", BOLD), Styled(" at the end"))
    facts: list[Row] = [counts]
    if round_.needle_mm is not None:
        facts.append((Styled(f"{round_.needle_mm:g} mm", BOLD), Styled(" needle")))
    pace = paces_of(scene.state).of(kind_of(round_))
    left = scene.course.stitches_in(round_.index) - scene.state.place.stitch
    assumed = "" if pace.measured or narrow else " at a usual pace"
    return [*facts, (Styled(f"{say_duration(pace.seconds_for(left))}{assumed}"),)]


def list_place(scene: Scene) -> list[Row]:
    """Return facts: the stitch, the repeat, the marker ahead, the next change of this round."""
    course, state = scene.course, scene.state
    total = course.stitches_in(state.place.index)
    facts: list[Row] = [(Styled("Stitch "), Styled(f"{state.place.stitch}", BOLD), Styled(f" of {total}"))]
    facts += [row(fact) for fact in _within(course, state)]
    change = find_next_shaping(course, state)
    if change is not None and not change.rounds:
        soon = f"in {plural(change.stitches, 'st')}" if change.stitches else "now"
        facts.append((Styled(f"Next {change.word} "), Styled(soon, BOLD)))
    return facts


def _within(course: SummedPlan, state: State) -> list[str]:
    """Say the place by repeats and markers: "repeat 8 of 41", "14 sts to the second marker"."""
    place = state.place
    round_ = course.rounds[place.index]
    said = []
    repeat = repetition_at(round_, place.stitch)
    if repeat is not None:
        said.append(f"Repeat {repeat[0]} of {repeat[1]}")
    marks = markers_in(round_)
    ahead = next((mark for mark in marks if mark > place.stitch), None)
    if ahead is not None:
        which = "the marker" if len(marks) == 1 else f"the {ordinal_words(marks.index(ahead) + 1)} marker"
        said.append(f"{plural(ahead - place.stitch, 'st')} to {which}")
    return said
