"""The sheet as a PDF, made without a browser; the same blocks as on the page, more plainly laid out.

Letters are put into the file, so it prints the same everywhere and its words can be searched and copied:
Latin with its accents, Greek and Cyrillic. Letters of other scripts are reported, not guessed.
"""

from __future__ import annotations

import io
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import fields, is_dataclass
from typing import Any, assert_never

from stepper.records import dataclass
from stepper.report.sheet.blocks import (
    Block,
    Bullets,
    Gallery,
    Grid,
    Paragraph,
    RoundTable,
    SheetHeading,
    Terms,
)
from stepper.report.sheet.pdf_pictures import lay_gallery
from stepper.report.sheet.pdf_rounds import lay_rounds
from stepper.report.sheet.pdf_strips import (
    BOLD,
    MM,
    PLAIN,
    Span,
    Strip,
    break_lines,
    find_missing,
    load_typeface,
    place_strips,
    put_line,
    wide_of,
)

SIZES_MM = {"A4": (210.0, 297.0), "Letter": (215.9, 279.4)}
"""Sheets by their names. Source: ISO 216; ANSI/ASME Y14.1. Unit: mm."""
_SIDE, _TOP, _FOOT = 13 * MM, 13 * MM, 16 * MM
_SIZE = 9.5
_LEADING = 1.28
_TOGETHER = 8
# A table of so many rows is not parted: it can be read at one glance, and a row of it alone cannot.


@dataclass(frozen=True, slots=True, kw_only=True)
class PdfSheet:
    """A PDF."""

    content: bytes
    missing: str
    """Letters that the typeface does not have, each once; they are printed as empty boxes."""


def write_pdf(blocks: Sequence[Block], *, title: str, size: str = "A4") -> PdfSheet:
    """Write the sheet.

    Args:
        blocks: What stands on it.
        title: Of the garment, for the foot of every page.
        size: Name of the paper, of `SIZES_MM`.

    Raises:
        ImportError: A package that writes PDFs is missing.
    """
    from reportlab.pdfgen.canvas import Canvas

    load_typeface()
    wide, high = (each * MM for each in SIZES_MM[size])
    room = wide - 2 * _SIDE
    strips = [strip for block in blocks for strip in _strips(block, room)]
    sheets = place_strips(strips, high - _TOP - _FOOT)
    held = io.BytesIO()
    canvas = Canvas(held, pagesize=(wide, high), invariant=1, lang="en", initialFontName=PLAIN)
    canvas.setTitle(title)
    canvas.setCreator("stepper")
    for number, sheet in enumerate(sheets, start=1):
        for down, strip in sheet.strips:
            strip.draw(canvas, _SIDE, high - _TOP - down)
        canvas.setFillColor("#55514a")
        canvas.setFont(PLAIN, 8.5)
        canvas.drawCentredString(wide / 2, _FOOT - 8 * MM, f"{title} · {number} / {len(sheets)}")
        canvas.showPage()
    canvas.save()
    return PdfSheet(content=held.getvalue(), missing=find_missing(title + "".join(_texts(blocks))))


def _strips(block: Block, room: float) -> Iterator[Strip]:
    match block:
        case SheetHeading():
            yield _heading(block, room)
        case Paragraph():
            yield from _paragraph([(block.text, PLAIN)], room, quiet=block.quiet)
        case Bullets():
            for item in block.items:
                yield from _paragraph([("• " + item, PLAIN)], room)
        case Terms():
            yield from _terms(block, room)
        case Grid():
            yield from _grid(block, room)
        case Gallery():
            yield from lay_gallery(block, room)
        case RoundTable():
            yield from lay_rounds(block, room)
        case _:
            assert_never(block)


def _heading(block: SheetHeading, room: float) -> Strip:
    size = {1: 20.0, 2: 13.5, 3: 11.0}[block.level]
    above = {1: 0.0, 2: 5 * MM, 3: 3 * MM}[block.level]
    font = BOLD if block.level == 3 else PLAIN
    lines = break_lines([(block.text, font), (block.note, PLAIN)], size, room)
    high = above + len(lines) * size * 1.2 + 1.5 * MM

    def draw(canvas: Any, left: float, top: float) -> None:
        canvas.setFillColor("#1c1b19")
        for place, line in enumerate(lines):
            put_line(canvas, line, left, top - above - (place + 0.85) * size * 1.2, size)
        if block.level == 2:
            _rule(canvas, left, top - high + 0.8 * MM, room, 0.8)
        if block.level < 3:
            canvas.bookmarkPage(block.text)
            canvas.addOutlineEntry(block.text, block.text, block.level - 1)

    return Strip(high=high, draw=draw, keeps=block.level > 1)


def _paragraph(spans: Iterable[Span], room: float, *, quiet: bool = False) -> Iterator[Strip]:
    """Lay out a paragraph, a strip for each line."""
    size = 8.5 if quiet else _SIZE
    colour = "#55514a" if quiet else "#1c1b19"
    lines = break_lines(spans, size, room)
    for place, line in enumerate(lines):

        def draw(canvas: Any, left: float, top: float, line: list[Span] = line) -> None:
            canvas.setFillColor(colour)
            put_line(canvas, line, left, top - size, size)

        last = place == len(lines) - 1
        yield Strip(high=size * _LEADING + (0.6 * MM if last else 0.0), draw=draw, keeps=not last)


def _terms(block: Terms, room: float) -> Iterator[Strip]:
    """Lay abbreviations out in two columns, read down one and then the other."""
    wide = room / 2 - 3 * MM
    half = -(-len(block.items) // 2)
    left_half, right_half = block.items[:half], block.items[half:]
    for place in range(half):
        cells = [
            (word, break_lines([(meaning, PLAIN)], 8.5, wide - 14 * MM))
            for word, meaning in (*left_half[place : place + 1], *right_half[place : place + 1])
        ]
        tall = max(len(lines) for _, lines in cells) * 8.5 * _LEADING + 0.4 * MM

        def draw(
            canvas: Any, left: float, top: float, cells: list[tuple[str, list[list[Span]]]] = cells
        ) -> None:
            canvas.setFillColor("#1c1b19")
            for column, (word, lines) in enumerate(cells):
                x = left + column * (wide + 6 * MM)
                put_line(canvas, [(word, BOLD)], x, top - 8.5, 8.5)
                for row, line in enumerate(lines):
                    put_line(canvas, line, x + 14 * MM, top - 8.5 - row * 8.5 * _LEADING, 8.5)

        yield Strip(high=tall, draw=draw)


def _grid(block: Grid, room: float) -> Iterator[Strip]:
    edges = _edges(block, room)
    head = _grid_row(block.head, "", edges, room, 8.5, "#55514a")
    yield Strip(high=head.high, draw=head.draw, keeps=True)
    for place, row in enumerate(block.rows):
        looks = row[0].looks
        cells = [cell.text for cell in row]
        colour = looks.colour if looks is not None else ""
        remark = next((cell.remark for cell in row if cell.remark), "")
        made = _grid_row(cells, colour, edges, room, _SIZE, "#1c1b19", remark)
        keeps = len(block.rows) <= _TOGETHER and place < len(block.rows) - 1
        yield Strip(high=made.high, draw=made.draw, head=head, keeps=keeps)


def _edges(block: Grid, room: float) -> list[float]:
    """Return where the columns end: each as wide as it must be, with the same room between all."""
    cells = [block.head, *(tuple(cell.text for cell in row) for row in block.rows)]
    needed = [max(wide_of(row[place], PLAIN, _SIZE) for row in cells) for place in range(len(block.head))]
    remarks = (cell.remark for row in block.rows for cell in row)
    needed[0] = max(needed[0], *(wide_of(each, PLAIN, _SIZE) for each in remarks), 0.0)
    needed[0] = min(needed[0] + 6 * MM, room * 0.45)
    between = max(0.0, (room - sum(needed)) / (len(needed) - 1))
    edges = [needed[0]]
    for each in needed[1:]:
        edges.append(edges[-1] + between + each)
    return edges


def _grid_row(
    cells: Sequence[str],
    swatch: str,
    edges: Sequence[float],
    room: float,
    size: float,
    ink: str,
    remark: str = "",
) -> Strip:
    shift = 4.5 * MM if swatch else 0.0
    lines = break_lines([(cells[0], PLAIN)], size, edges[0] - shift)
    if remark:
        lines += break_lines([(remark, PLAIN)], size, edges[0] - shift)
    high = len(lines) * size * _LEADING + 0.9 * MM

    def draw(canvas: Any, left: float, top: float) -> None:
        if swatch:
            canvas.setFillColor(swatch)
            canvas.setStrokeColor("#8a867d")
            canvas.setLineWidth(0.5)
            canvas.rect(left, top - size, 3.4 * MM, size - 1, fill=1, stroke=1)
        canvas.setFillColor(ink)
        for place, line in enumerate(lines):
            put_line(canvas, line, left + shift, top - size - place * size * _LEADING, size)
        for text, edge in zip(cells[1:], edges[1:], strict=True):
            x = left + edge - wide_of(text, PLAIN, size)
            put_line(canvas, [(text, PLAIN)], x, top - size, size)
        _rule(canvas, left, top - high + 0.5 * MM, room, 0.4)

    return Strip(high=high, draw=draw)


def _rule(canvas: Any, left: float, at: float, room: float, width: float) -> None:
    canvas.setDash()
    canvas.setStrokeColor("#1c1b19" if width > 0.5 else "#b9b4a9")
    canvas.setLineWidth(width)
    canvas.line(left, at, left + room, at)


def _texts(printed: object) -> Iterator[str]:
    """Yield every text of some blocks, to be looked through for letters that are missing."""
    if isinstance(printed, str):
        yield printed
    elif isinstance(printed, Sequence):
        for each in printed:
            yield from _texts(each)
    elif is_dataclass(printed):
        for field in fields(printed):
            yield from _texts(getattr(printed, field.name))
