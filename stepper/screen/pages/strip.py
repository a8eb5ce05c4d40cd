"""The current round as a strip of a chart, with the rounds around it, right to left as knitted. No I/O.

What is worked is dimmed, what is still to come is bright, as on every page. The stitches of the current step
are underlined and the one in hand is marked; finished rounds lie below, those to come above. If a round is
wider than the screen, a window of it is shown that holds the step and what comes next. The rounds around it
are aligned so that the stitches at the window's right edge stand on each other.
"""

from __future__ import annotations

from stepper.plan.model import Round
from stepper.screen.cells import is_turned
from stepper.screen.chart_lines import ChartWindow, draw_window
from stepper.screen.course import SummedPlan
from stepper.screen.drawing.rows import Row, Styled
from stepper.screen.drawing.style import BOLD, PLAIN, Terminal
from stepper.screen.yarns import Yarns
from stepper.session.counting.tally import markers_in, tally_stitches
from stepper.session.state import Position, State
from stepper.session.step_in_hand import step_in_hand
from stepper.session.steps import StepPart, rest_of

_LABEL = 5
"""Columns for the number of a round and the mark of the current one."""


def part_in_hand(course: SummedPlan, state: State) -> StepPart | None:
    """Return what is left of the current step; None if no round is in hand."""
    if state.place.index >= len(course.rounds):
        return None
    round_ = course.rounds[state.place.index]
    return rest_of(step_in_hand(round_, state), state.place.stitch)


def window_of(round_: Round, part: StepPart, room: int) -> ChartWindow:
    """Choose the window: a few finished stitches, the step, what comes next; all of it if there is room.

    Always: within the round, and no wider than `room`.
    """
    total = round_.progress
    if total <= room:
        return ChartWindow(first=0, end=total)
    worked = part.start - min(part.start, room // 6)
    first = max(0, min(worked, total - room))
    if is_turned(round_):
        return ChartWindow(first=total - first - room, end=total - first)
    return ChartWindow(first=first, end=first + room)


def draw_strip(
    course: SummedPlan, state: State, yarns: Yarns, terminal: Terminal, *, rows: int, square: int
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
    here, place = course.rounds[state.place.index], state.place
    window = window_of(here, part, max(1, (terminal.columns - _LABEL - 2) // square))
    wide = window.end - window.first
    around = rows - 2
    above = rounds_above(course, here.index, window, around // 2)
    below = rounds_below(course, here.index, window, around - len(above))

    def drawn(round_: Round, first: int) -> Row:
        shown = ChartWindow(first=max(0, first), end=max(0, first) + wide)
        label = label_round(round_, place, blocks=terminal.blocks)
        return (
            Styled(" "),
            *draw_window(course, round_.index, shown, wide, place, yarns, terminal, square),
            Styled(" "),
            label,
        )

    lines = [drawn(round_, first) for round_, first in reversed(above)]
    lines += [drawn(here, window.first), (Styled(" "), underline(here, part, window, terminal, square))]
    return lines + [drawn(round_, first) for round_, first in below]


def label_round(round_: Round, place: Position, *, blocks: bool, sides: bool = False) -> Styled:
    """Write the number of a round and whether it is done or in hand.

    Args:
        round_: The round.
        place: Where the knitting stands.
        blocks: Whether the terminal has signs beyond ASCII.
        sides: Whether the side that faces is written too, if it is a row.
    """
    here = round_.index == place.index
    mark = ("◂" if blocks else "<") if here else " "
    if round_.index < place.index:
        mark = "✓" if blocks else "="
    side = f" {round_.side if round_.flat else '':2}" if sides else ""
    return Styled(f"{round_.number:>4}{side}{mark}", BOLD if here else PLAIN)


def rounds_above(course: SummedPlan, index: int, window: ChartWindow, most: int) -> list[tuple[Round, int]]:
    """Return the rounds to come, nearest first, each with its stitch above the window's right edge."""
    found = []
    edge = window.first
    for round_ in course.rounds[index + 1 : index + 1 + most]:
        edge = _stitches_after(round_, edge)
        found.append((round_, edge))
    return found


def rounds_below(course: SummedPlan, index: int, window: ChartWindow, most: int) -> list[tuple[Round, int]]:
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


def underline(round_: Round, part: StepPart, window: ChartWindow, terminal: Terminal, square: int) -> Styled:
    """Mark the stitches of the step, the one in hand, and the markers of the round.

    Args:
        round_: The round in hand.
        part: What is left of the step.
        window: The stitches shown.
        terminal: The terminal to draw on.
        square: How wide a stitch is. Unit: columns.
    """
    total, turned = round_.progress, is_turned(round_)
    line, hand, marker = ("▔", "▴", "╵") if terminal.blocks else ("-", "^", "|")
    marks = set(markers_in(round_))
    columns = []
    for stitch in range(window.end - 1, window.first - 1, -1):
        at = total - 1 - stitch if turned else stitch
        sign = line if part.start <= at < part.end else " "
        edge = marker if (total - stitch - 1 if turned else stitch + 1) in marks else sign
        sign = hand if at == part.start and part.end > part.start else sign
        columns.append(f"{edge}{sign * (square - 1)}" if square > 1 else sign)
    return Styled("".join(columns), BOLD)
