"""The finished garment: its yoke, the days and hours it took, what was altered, how to wash and block it.

Source of the care: common practice. Wool felts when heat, soap and rubbing come together, or when hot and
cold follow each other; cool water and still hands are safe for it and for everything else. No I/O.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from typing import Final

from stepper.language.measures import plural
from stepper.screen.drawing.layout import Block, stack_blocks
from stepper.screen.drawing.letters import enlarge
from stepper.screen.drawing.rows import (
    Row,
    Styled,
    indent,
    paragraph,
    put_apart,
    put_beside,
    row_width,
    shorten,
)
from stepper.screen.drawing.style import BOLD, Terminal
from stepper.screen.pages.ahead import say_duration
from stepper.screen.pages.bottom_row import draw_bottom_row
from stepper.screen.pages.device_signs import draw_devices, draw_heard
from stepper.screen.pages.yoke_page import draw_yoke
from stepper.screen.scene import Scene

CARE: Final = (
    "Weave in the ends. Soak it for 20 minutes in cool water with a little wool wash, and leave it still: "
    "wool felts if it is rubbed or wrung, or goes from warm water to cold. Lift it out with both hands and "
    "press the water out in a towel. Lay it flat, pat it to its measurements, and let it dry away from sun "
    "and heaters.",
    "Wash the swatch first if you have not: superwash wool grows when it is wet, and a dark yarn may bleed "
    "into a light one. What the ball band forbids, do not do.",
)
"""How to soak and block."""
_LEAST_PICTURE = (20, 14)
# Columns and rows below which the yoke is left to its own page.


def draw_finished_page(scene: Scene, terminal: Terminal) -> list[Row]:
    """Draw the page; what does not fit is turned page by page. Always: as many rows as the terminal has."""
    signs = _signs(scene, terminal)
    title = draw_large_title("Finished", scene, terminal)
    room = max(1, terminal.rows - 1 - len(title) - len(signs))
    picture = _picture(scene, terminal, room)
    aside = max(map(row_width, picture), default=-2) + 2
    text = indent(_text(scene, terminal.columns - aside - 2))
    return draw_text_page(scene, terminal, title, text, picture)


def draw_text_page(
    scene: Scene, terminal: Terminal, title: list[Row], text: list[Row], picture: list[Row] | None = None
) -> list[Row]:
    """Draw a page of text where no round is in hand, turned page by page where it is too long.

    Args:
        scene: What there is to show.
        terminal: The terminal to draw on.
        title: What stands on top.
        text: What stands below, behind what was just told.
        picture: What stands beside it; none for nothing.
    """
    columns, rows, picture = terminal.columns, terminal.rows, picture or []
    signs = _signs(scene, terminal)
    told = [row for line in scene.told for row in indent(paragraph(line, columns - 2, BOLD))]
    room = max(1, rows - 1 - len(title) - len(signs))
    aside = max(map(row_width, picture), default=-2) + 2
    text = [*told, *text]
    pages = -(-len(text) // room)
    page = scene.ui.down % pages
    shown = put_beside(text[page * room : (page + 1) * room], picture, at=columns - aside)
    blocks = [
        Block(rank=1, rows=title),
        Block(rank=0, rows=shown),
        Block(rank=9, grown=lambda left: [()] * left, floor=0),
        Block(rank=4, rows=draw_heard(scene.devices, columns)),
        Block(rank=3, rows=signs),
        Block(rank=2, rows=[draw_bottom_row(scene, terminal, page=(page + 1, pages))]),
    ]
    return stack_blocks(blocks, columns, rows)


def _signs(scene: Scene, terminal: Terminal) -> list[Row]:
    return indent(draw_devices(scene.devices, terminal.depth, terminal.columns - 1, blocks=terminal.blocks))


def draw_large_title(words: str, scene: Scene, terminal: Terminal) -> list[Row]:
    """Write what a page is about, large if there is room, with the name of the garment."""
    columns = terminal.columns
    name = (Styled(shorten(scene.plan.title, columns // 2) + " "),)
    large = enlarge(words, columns - 2, 4, terminal) if terminal.rows >= 22 else None
    if large is None:
        return [put_apart((Styled(f" {words}", BOLD),), name, columns)]
    return [put_apart((Styled(" "), *large[0]), name, columns), *indent(large[1:3]), ()]


def _picture(scene: Scene, terminal: Terminal, room: int) -> list[Row]:
    """Draw the yoke if there is one, and room for it beside the text."""
    columns = min(terminal.columns * 2 // 5, 2 * room)
    if columns < _LEAST_PICTURE[0] or terminal.rows < _LEAST_PICTURE[1]:
        return []
    return draw_yoke(scene, terminal, columns, room)


def _text(scene: Scene, columns: int) -> list[Row]:
    """Write all there is to tell."""
    rows: list[Row] = []
    for head, lines in _parts(scene):
        rows += [()] if rows else []
        rows.append((Styled(head, BOLD),))
        for line in lines:
            rows += paragraph(line, columns)
    return rows


def _parts(scene: Scene) -> Iterator[tuple[str, tuple[str, ...]]]:
    """Yield headings with what stands below each."""
    record, course = scene.record, scene.course
    made = f"{plural(len(course.rounds), 'round')}, {plural(course.stitches, 'stitch', 'stitches')}."
    yield "Knitted", tuple(line for line in (_days(scene), made) if line)
    if record.altered:
        yield "Altered", tuple(f"{each}." for each in record.altered)
    if record.notes:
        yield "Noted", record.notes
    yield "Soak and block", CARE


def _days(scene: Scene) -> str:
    """Say from when to when and how long it took; empty if the journal does not know."""
    record = scene.record
    if not record.begun:
        return ""
    days = _day(record.begun)
    if record.ended != record.begun:
        days = f"{days} to {_day(record.ended)}"
    hours = f", {say_duration(record.seconds)} at the needles" if record.seconds else ""
    return f"{days}: {plural(record.evenings, 'evening')}{hours}."


def _day(iso: str) -> str:
    found = date.fromisoformat(iso)
    return f"{found.day} {found:%B %Y}"
