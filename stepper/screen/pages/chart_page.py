"""The whole chart: every round of the garment as squares, the finished ones in full colour. No I/O."""

from __future__ import annotations

from stepper.language.places import sentence_case
from stepper.screen.cells import draw_square, draw_squares, is_turned
from stepper.screen.course import Course
from stepper.screen.layout import Block, stack_blocks
from stepper.screen.pages.bottom_row import draw_bottom_row
from stepper.screen.rows import Row, Span, join_spans, put_apart, row
from stepper.screen.scene import Scene
from stepper.screen.style import BOLD, PLAIN, Terminal

_LABEL = 6


def draw_chart_page(scene: Scene, terminal: Terminal) -> list[Row]:
    """Draw the page, the first round at the bottom. Always: as many rows as the terminal has."""
    room = max(1, terminal.rows - 2)
    blocks = [
        Block(rank=1, rows=[_head(scene, terminal)]),
        Block(rank=0, rows=_rounds(scene, terminal, room), least=1),
        Block(rank=9, grown=lambda rows: [()] * rows),
        Block(rank=2, rows=[draw_bottom_row(scene, terminal)]),
    ]
    return stack_blocks(blocks, terminal.columns, terminal.rows)


def middle_of(course: Course, index: int, down: int) -> int:
    """Return the round in the middle of the page: the current one, moved, but within the garment."""
    last = len(course.rounds) - 1
    return max(0, min(last, min(index, last) - down))


def _square(terminal: Terminal) -> int:
    return 2 if terminal.columns >= 110 else 1


def _first_stitch(scene: Scene, terminal: Terminal) -> int:
    """Return the stitch at the right edge: a little before the place, moved, but never off the chart."""
    course, place = scene.course, scene.state.place
    width = max(1, (terminal.columns - _LABEL) // _square(terminal))
    index = middle_of(course, place.index, scene.ui.down)
    widest = max(1, course.stitches_in(index))
    start = place.stitch - width // 6 if place.index == index else 0
    return max(0, min(start + scene.ui.along, widest - width))


def _head(scene: Scene, terminal: Terminal) -> Row:
    course = scene.course
    if not course.rounds:
        return row(" Nothing to knit", BOLD)
    index = middle_of(course, scene.state.place.index, scene.ui.down)
    here = course.rounds[index]
    name = sentence_case(here.section) + (f", chart {here.chart}" if here.chart else "")
    first = _first_stitch(scene, terminal)
    width = max(1, (terminal.columns - _LABEL) // _square(terminal))
    total = course.stitches_in(index)
    last = min(total, first + width)
    return put_apart(
        (Span(f" {name}", BOLD),),
        row(f"{last} to {first + 1} of {total} sts "),
        terminal.columns,
    )


def _rounds(scene: Scene, terminal: Terminal, room: int) -> list[Row]:
    course = scene.course
    if not course.rounds:
        return []
    index = middle_of(course, scene.state.place.index, scene.ui.down)
    top = max(0, min(len(course.rounds) - 1, index + room // 2))
    bottom = max(0, top - room + 1)
    first = _first_stitch(scene, terminal)
    return [_round(scene, terminal, each, first) for each in range(top, bottom - 1, -1)]


def _round(scene: Scene, terminal: Terminal, index: int, first: int) -> Row:
    """Draw one round; stitches not worked yet are dimmed."""
    course, place = scene.course, scene.state.place
    round_, square = course.rounds[index], _square(terminal)
    width = max(1, (terminal.columns - _LABEL) // square)
    shown = draw_squares(round_)[first : first + width]
    total, here = course.stitches_in(index), index == place.index
    looks = {
        (each, done): draw_square(each, scene.yarns, terminal.depth, square, here=here, dim=not done)
        for each in set(shown)
        for done in (True, False)
    }
    cells = []
    for number, each in enumerate(shown, start=first):
        worked = total - number <= place.stitch if is_turned(round_) else number < place.stitch
        cells.append(looks[each, index < place.index or (here and worked)])
    pointer = ("◂" if terminal.blocks else "<") if here else " "
    done_mark = ("✓" if terminal.blocks else "=") if index < place.index else pointer
    label = Span(f"{round_.number:>4}{done_mark}", BOLD if here else PLAIN)
    missing = (width - len(shown)) * square
    return (Span(" " * missing), *join_spans(reversed(cells)), Span(" "), label)
