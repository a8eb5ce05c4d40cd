"""The current round as a strip of a chart, with the rounds around it, right to left as knitted. No I/O.

The stitches of the current step are underlined; finished rounds lie below, those to come above, both dimmed.
If a round is wider than the screen, a window of it is shown that holds the step and what comes next. The
rounds around it are aligned so that the stitches at the window's right edge stand on each other.
"""

from __future__ import annotations

from dataclasses import dataclass

from stepper.plan.model import Round
from stepper.screen.cells import draw_square, draw_squares, is_turned, repetition_at
from stepper.screen.course import Course
from stepper.screen.rows import Row, Span, join_spans
from stepper.screen.style import BOLD, PLAIN, Terminal
from stepper.screen.yarns import Yarns
from stepper.session.counting.tally import markers_in, tally_stitches
from stepper.session.state import State
from stepper.session.steps import StepPart, cut_into_steps, part_at, rest_of

_LABEL = 5
"""Columns for the number of a round and the mark of the current one."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Window:
    """Which stitches of the current round are shown, counted from the chart's right edge."""

    first: int
    end: int
    """One past the last."""


def part_in_hand(course: Course, state: State) -> StepPart | None:
    """Return what is left of the current step; None if no round is in hand."""
    if state.place.index >= len(course.rounds):
        return None
    round_ = course.rounds[state.place.index]
    by = state.knitting.by_of(round_)
    part = cut_into_steps(round_, by)[part_at(round_, by, state.place.stitch)]
    return rest_of(part, state.place.stitch)


def window_of(round_: Round, part: StepPart, room: int) -> Window:
    """Choose the window: a few finished stitches, the step, what comes next; all of it if there is room.

    Always: within the round, and no wider than `room`.
    """
    total = round_.progress
    if total <= room:
        return Window(first=0, end=total)
    worked = part.start - min(part.start, room // 6)
    first = max(0, min(worked, total - room))
    if is_turned(round_):
        return Window(first=total - first - room, end=total - first)
    return Window(first=first, end=first + room)


def draw_strip(
    course: Course, state: State, yarns: Yarns, terminal: Terminal, *, rows: int, square: int
) -> list[Row]:
    """Draw the strip.

    Args:
        course: What is knitted.
        state: Where it stands, with a round in hand.
        yarns: Their colours and signs.
        terminal: The terminal to draw on.
        rows: Rows of the screen for it. Range: 2 and up, for the round and the line under its step.
        square: How wide a stitch is. Range: 1 and up. Unit: columns.

    Returns:
        At most `rows` rows.
    """
    part = part_in_hand(course, state)
    if part is None:
        return []
    here = course.rounds[state.place.index]
    window = window_of(here, part, max(1, (terminal.columns - _LABEL - 2) // square))
    around = rows - 2
    above = rounds_above(course, here.index, window, around // 2)
    below = rounds_below(course, here.index, window, around - len(above))
    lines = [
        _round(round_, first, window, yarns, terminal, square, here=False)
        for round_, first in reversed(above)
    ]
    lines.append(_round(here, window.first, window, yarns, terminal, square, here=True))
    lines.append(_underline(here, part, window, terminal, square))
    lines += [_round(round_, first, window, yarns, terminal, square, here=False) for round_, first in below]
    return lines


def rounds_above(course: Course, index: int, window: Window, most: int) -> list[tuple[Round, int]]:
    """Return the rounds to come, nearest first, each with its stitch above the window's right edge."""
    found = []
    edge = window.first
    for round_ in course.rounds[index + 1 : index + 1 + most]:
        edge = _stitches_after(round_, edge)
        found.append((round_, edge))
    return found


def rounds_below(course: Course, index: int, window: Window, most: int) -> list[tuple[Round, int]]:
    """Return the finished rounds, nearest first, each with its stitch below the window's right edge."""
    found = []
    edge, over = window.first, course.rounds[index]
    for round_ in course.rounds[max(0, index - most) : index][::-1]:
        edge = tally_stitches(over, edge).used if not over.flat else min(edge, round_.progress)
        found.append((round_, edge))
        over = round_
    return found


def _stitches_after(round_: Round, used: int) -> int:
    """Return the stitches on the right needle once `used` stitches of the old round are worked."""
    if round_.flat or not round_.shaping:
        return used
    place = 0
    for run in round_.runs:
        if used <= 0:
            break
        if run.uses <= used:
            used -= run.uses
            place += run.progress
            continue
        each = run.uses // run.times
        place += (used // max(1, each)) * (run.progress // run.times)
        break
    return place


def _round(
    round_: Round, first: int, window: Window, yarns: Yarns, terminal: Terminal, square: int, *, here: bool
) -> Row:
    """Draw one round through the window."""
    shown = draw_squares(round_)[max(0, first) : max(0, first) + window.end - window.first]
    depth = terminal.depth
    looks = {each: draw_square(each, yarns, depth, square, here=here, dim=not here) for each in set(shown)}
    cells = [looks[each] for each in reversed(shown)]
    missing = (window.end - window.first - len(shown)) * square
    pointer = ("◂" if terminal.blocks else "<") if here else " "
    label = Span(f"{round_.number:>4}{pointer}", BOLD if here else PLAIN)
    return (Span(" " * (missing + 1)), *join_spans(cells), Span(" "), label)


def _underline(round_: Round, part: StepPart, window: Window, terminal: Terminal, square: int) -> Row:
    """Mark the stitches of the step, and the markers of the round."""
    first, end = part.start, part.end
    total = round_.progress
    marks = set(markers_in(round_))
    if is_turned(round_):
        first, end = total - end, total - first
        marks = {total - mark for mark in marks}
    line, marker = ("▔", "╵") if terminal.blocks else ("^", "|")
    columns = []
    for stitch in range(window.end - 1, window.first - 1, -1):
        sign = line if first <= stitch < end else " "
        columns.append(sign * (square - 1) + (marker if stitch in marks and stitch else sign))
    return (Span(" "), Span("".join(columns), BOLD))


def place_within(course: Course, state: State) -> str:
    """Say the place in the round by repeats and markers: "repeat 8 of 41, marker 2 in 14"."""
    place = state.place
    if place.index >= len(course.rounds):
        return ""
    round_ = course.rounds[place.index]
    said = []
    repeat = repetition_at(round_, place.stitch)
    if repeat is not None:
        said.append(f"repeat {repeat.number} of {repeat.of}")
    marks = markers_in(round_)
    ahead = [mark for mark in marks if mark > place.stitch]
    if ahead:
        said.append(f"marker {marks.index(ahead[0]) + 1} in {ahead[0] - place.stitch}")
    return ", ".join(said)
