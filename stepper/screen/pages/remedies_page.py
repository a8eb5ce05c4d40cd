"""The ways to mend a fault, one below the other and none cut, with a marked one to take.

One that is longer than the window is turned part by part. No I/O.
"""

from __future__ import annotations

from stepper.language.places import place_name
from stepper.screen.drawing.layout import Block, stack_blocks
from stepper.screen.drawing.rows import Row, Styled, clean, row, text_width, wrap
from stepper.screen.drawing.style import BOLD, PLAIN, Badge, Terminal, paint_badge
from stepper.screen.pages.bottom_row import draw_bottom_row
from stepper.screen.pages.count_badge import judge_count
from stepper.screen.scene import Scene


def draw_remedies_page(scene: Scene, terminal: Terminal) -> list[Row]:
    """Draw the page, scrolled to the marked remedy. Always: as many rows as the terminal has."""
    chosen = find_marked_remedy(scene)
    lines, marked = _lines(scene, terminal, chosen)
    room = max(1, terminal.rows - 2)
    parts = -(-len(marked) // room)
    part = scene.ui.part % parts
    first = min(marked.start + part * room, marked.stop - room) if parts > 1 else max(0, marked.stop - room)
    blocks = [
        Block(rank=1, rows=[_head(scene, terminal)]),
        Block(rank=0, rows=lines[first : first + room], least=1),
        Block(rank=9, grown=lambda rows: [()] * rows, floor=0),
        Block(rank=2, rows=[draw_bottom_row(scene, terminal, page=(part + 1, parts))]),
    ]
    return stack_blocks(blocks, terminal.columns, terminal.rows)


def find_marked_remedy(scene: Scene) -> int:
    """Return the index of the marked remedy, from 0."""
    return max(0, min(scene.ui.down, len(scene.asked.remedies) - 1))


def _head(scene: Scene, terminal: Terminal) -> Row:
    """Write what is off and where she is."""
    plan, place = scene.plan, scene.state.place
    where = f", {place_name(plan.rounds[place.index])}" if place.index < len(plan.rounds) else ""
    off = judge_count(plan, scene.state).detail
    title = " How to mend it"
    room = terminal.columns - len(title) - 3
    said = next((each for each in (f"{off}{where}", off) if text_width(each) <= room), "")
    return (Styled(title, BOLD), Styled(f"   {said}"))


def _lines(scene: Scene, terminal: Terminal, chosen: int) -> tuple[list[Row], range]:
    """Write all remedies; return the rows, and which of them are the marked one's."""
    if not scene.asked.remedies:
        return [row(" No fault is being looked for.")], range(0, 1)
    rows: list[Row] = []
    marked = range(0, 1)
    mark = "▸" if terminal.blocks else ">"
    for number, remedy in enumerate(scene.asked.remedies):
        lead = f"{mark if number == chosen else ' '}{number + 1:>2}  "
        start = len(rows)
        paint = paint_badge(Badge.CALM, terminal.depth) if number == chosen else PLAIN
        for at, line in enumerate(wrap(clean(remedy), max(1, terminal.columns - len(lead) - 1))):
            rows.append((Styled((" " * len(lead) if at else lead) + line, paint),))
        if number == chosen:
            marked = range(start, len(rows))
        rows.append(())
    return rows[:-1], marked
