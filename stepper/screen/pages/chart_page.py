"""The whole chart: every round of the garment as squares, what is worked dimmed, the stitch in hand marked.

A line parts the sections, and the signs that are in sight are explained below. No I/O.
"""

from __future__ import annotations

from collections.abc import Iterator

from stepper.language.places import sentence_case
from stepper.screen.cells import CAUGHT, LEGEND, MARKER, chart_row, is_turned
from stepper.screen.chart_lines import ChartWindow, draw_window
from stepper.screen.course import SummedPlan
from stepper.screen.drawing.layout import Block, stack_blocks
from stepper.screen.drawing.rows import Row, Styled, clean, cut, flow_facts, put_apart, row
from stepper.screen.drawing.style import BOLD, Terminal
from stepper.screen.pages.bottom_row import draw_bottom_row
from stepper.screen.pages.strip import label_round, part_in_hand, underline
from stepper.screen.scene import Scene

_LABEL = 6
_SIDES = 3
# Columns for the number of a round, and for the side that faces beside it.


def draw_chart_page(scene: Scene, terminal: Terminal) -> list[Row]:
    """Draw the page, the first round at the bottom. Always: as many rows as the terminal has."""
    course = scene.course
    bottom = Block(rank=2, rows=[draw_bottom_row(scene, terminal)])
    if not course.rounds:
        nothing = Block(rank=0, rows=[row(" Nothing to knit", BOLD)])
        return stack_blocks([nothing, bottom], terminal.columns, terminal.rows)
    room, most = _measure(terminal)
    shown = _visible(course, middle_of(course, scene.state.place.index, scene.ui.down), room)
    sides = any(course.rounds[index].flat for index in shown)
    width = _width(terminal, sides=sides)
    window = _window(scene, width)
    lines = _lines(scene, terminal, shown, window, width, sides=sides)
    blocks = [
        Block(rank=1, rows=[_head(scene, terminal, window)]),
        Block(rank=0, rows=lines[:room], least=1),
        Block(rank=9, grown=lambda rows: [()] * rows, floor=0),
        Block(rank=3, rows=_key(scene, terminal, shown, window)[:most], least=1),
        bottom,
    ]
    return stack_blocks(blocks, terminal.columns, terminal.rows)


def prepare_chart(scene: Scene, terminal: Terminal) -> Iterator[None]:
    """Draw the rounds of the page ahead, one with each step, so that the first turn to it is as quick as any
    other."""
    course, place = scene.course, scene.state.place
    if not course.rounds:
        return
    width = _width(terminal, sides=False)
    window = ChartWindow(first=0, end=width)
    for index in _visible(course, middle_of(course, place.index, 0), _measure(terminal)[0]):
        draw_window(course, index, window, width, place, scene.yarns, terminal, _square(terminal))
        yield


def _measure(terminal: Terminal) -> tuple[int, int]:
    """Return the rows there are for the rounds, and those at most for the key to the signs."""
    most = 2 if terminal.rows >= 20 else 1
    return max(1, terminal.rows - 2 - (most if terminal.rows >= 8 else 0)), most


def _width(terminal: Terminal, *, sides: bool) -> int:
    """Return how many stitches there is room for beside the numbers, and the sides that face if need be."""
    return max(1, (terminal.columns - _LABEL - (_SIDES if sides else 0)) // _square(terminal))


def middle_of(course: SummedPlan, index: int, down: int) -> int:
    """Return the round in the middle of the page: the current one, moved, but within the garment."""
    last = len(course.rounds) - 1
    return max(0, min(last, min(index, last) - down))


def _square(terminal: Terminal) -> int:
    return 2 if terminal.columns >= 110 else 1


def _visible(course: SummedPlan, middle: int, room: int) -> list[int]:
    """Choose the rounds in sight, from the top, with the middle one in the middle if that can be.

    The first round of a section takes a row more, for the line below it; so does the one in hand.
    """
    above, below = middle, middle
    taken = 1 + _border(course, middle) + 1
    while True:
        grown = False
        if above + 1 < len(course.rounds) and taken + 1 + _border(course, above + 1) <= room:
            above, taken, grown = above + 1, taken + 1 + _border(course, above + 1), True
        if below > 0 and taken + 1 + _border(course, below - 1) <= room:
            below, taken, grown = below - 1, taken + 1 + _border(course, below - 1), True
        if not grown:
            return list(range(above, below - 1, -1))


def _border(course: SummedPlan, index: int) -> int:
    """Return the rows that the line below a round takes: 1 if a section begins with it, else 0."""
    return int(course.section_begins[index] == index)


def _window(scene: Scene, width: int) -> ChartWindow:
    """Choose the stitches in sight: from a little before the place, moved, but never off the chart."""
    course, place = scene.course, scene.state.place
    index = middle_of(course, place.index, scene.ui.down)
    total = max(1, course.stitches_in(index))
    start = 0
    if place.index == index:
        start = place.stitch - width // 6
        if is_turned(course.rounds[index]):
            start = total - place.stitch - width + width // 6
    first = max(0, min(start + scene.ui.along, total - width))
    return ChartWindow(first=first, end=first + width)


def _head(scene: Scene, terminal: Terminal, window: ChartWindow) -> Row:
    course = scene.course
    index = middle_of(course, scene.state.place.index, scene.ui.down)
    here = course.rounds[index]
    name = sentence_case(here.section) + (f", chart {here.chart}" if here.chart else "")
    total = course.stitches_in(index)
    last = min(total, window.end)
    return put_apart(
        (Styled(f" {name}", BOLD),), row(f"{last} to {window.first + 1} of {total} sts "), terminal.columns
    )


def _lines(
    scene: Scene, terminal: Terminal, shown: list[int], window: ChartWindow, width: int, *, sides: bool
) -> list[Row]:
    """Draw the rounds in sight, with the line under the step and those between the sections."""
    course, square = scene.course, _square(terminal)
    part = part_in_hand(course, scene.state)
    place = scene.state.place
    lines: list[Row] = []
    for index in shown:
        round_ = course.rounds[index]
        cells = draw_window(course, index, window, width, place, scene.yarns, terminal, square)
        label = label_round(round_, place, blocks=terminal.blocks, sides=sides)
        lines.append((*cells, Styled(" "), label))
        if index == place.index and part is not None:
            lines.append((underline(round_, part, window, terminal, square),))
        if _border(course, index):
            lines.append(_named_border(round_.section, terminal))
    return lines


def _named_border(section: str, terminal: Terminal) -> Row:
    """Draw the line from which a section is worked upwards."""
    line = "─" if terminal.blocks else "-"
    name = f"{line * 2} {clean(section)} "
    return cut((Styled(name), Styled(line * terminal.columns)), terminal.columns)


def _key(scene: Scene, terminal: Terminal, shown: list[int], window: ChartWindow) -> list[Row]:
    """Explain the signs in sight: the yarns, then the stitches."""
    rounds = [chart_row(scene.course, index) for index in shown]
    seen = {square for round_ in rounds for square in round_.squares[window.first : window.end]}
    yarns = {square.yarn for square in seen if not square.sign}
    signs = {square.sign for square in seen}
    if any(round_.caught for round_ in rounds):
        signs.add(CAUGHT)
    if _square(terminal) > 1 and any(round_.marked for round_ in rounds):
        signs.add(MARKER)
    facts: list[Row] = [(scene.yarns.swatch(key, terminal.depth),) for key in _in_order(scene, yarns)]
    facts += [(Styled(sign, BOLD), Styled(f" {says}")) for sign, says in LEGEND if sign in signs]
    return [(Styled(" "), *each) for each in flow_facts(facts, terminal.columns - 2, gap=2)]


def _in_order(scene: Scene, keys: set[str]) -> Iterator[str]:
    """Yield yarns in the order of the file, then those it does not mention."""
    yield from (key for key in scene.plan.yarns if key in keys)
    yield from sorted(keys - set(scene.plan.yarns))
