"""The charts as drawings for print: yarns by colour and letter, stitches by symbol, rounds numbered. Pure.

Source of the symbols: the Craft Yarn Council's chart symbols, from memory: an empty square for knit, a dash
for purl, a ring for a yarn over, strokes that lean as the decreases do. A stitch without a symbol is written
as its abbreviation.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import groupby
from types import MappingProxyType
from typing import Final

from stepper.craft.figures import format_number
from stepper.craft.stitches import Kind, stitch
from stepper.project.model import Cell, Chart
from stepper.report.drawing.markup import svg, tag, text
from stepper.report.sheet.blocks import Sign
from stepper.report.sheet.chart_parts import (
    ASIDE,
    DrawnPart,
    list_worked,
    name_part,
    number_of,
    square_mm,
    whole_chart,
)
from stepper.report.sheet.looks import YarnLooks

SQUARE: Final = 14.0
"""Side of a square. Unit: of the drawing."""
_MARGIN: Final = 1.6 * SQUARE
_NOTHING: Final = "#c9c5bc"

_STROKES: Final[Mapping[str, str]] = MappingProxyType(
    {
        "p": "M3 7H11",
        "k2tog": "M3 11L11 3",
        "p2tog": "M3 11L11 3M8 11H11",
        "ssk": "M3 3L11 11",
        "skp": "M3 3L11 11",
        "ssp": "M3 3L11 11M3 11H6",
        "k3tog": "M2 11L7 3M5 11L10 3M8 11L12 5",
        "sssk": "M12 11L7 3M9 11L4 3M6 11L2 5",
        "s2kp": "M7 3V11M3 11L7 4L11 11",
        "sk2p": "M3 11L7 3L11 11M7 3V7",
        "sl": "M3 3L7 11L11 3",
        "m1": "M7 3V11M3 7H11",
        "m1l": "M3 3V11H11",
        "m1r": "M11 3V11H3",
        "yo": "",
    }
)
"""Strokes in a square of 14; a yarn over is a ring."""


def draw_chart(
    chart: Chart, shades: Mapping[str, YarnLooks], ground: str, part: DrawnPart | None = None
) -> str:
    """Draw a chart, the first round at the bottom, with numbers at the side each round is read from.

    Args:
        chart: What to draw.
        shades: How every yarn looks, by its key.
        ground: Key of the current yarn, for squares that name none.
        part: The part of it; by default all of it.
    """
    part = part or whole_chart(chart)
    columns, lines = part.right - part.left, part.above - part.below
    wide, high = columns * SQUARE, lines * SQUARE
    inner: list[str] = []
    shown = [cells[part.left : part.right] for cells in chart.rounds[part.below : part.above]]
    for row, cells in enumerate(reversed(shown)):
        y = _MARGIN / 2 + row * SQUARE
        inner += _row(cells, y, shades, ground)
        number = number_of(chart, part.above - row)
        inner.append(
            tag("text", number, x=_MARGIN / 2 + wide + 0.4 * SQUARE, y=y + 0.74 * SQUARE, class_="number")
        )
    inner += _grid(chart, part)
    first, last = chart.width - part.right + 1, chart.width - part.left
    for column in range(first, last + 1):
        if column in (first, last) or column % 5 == 0:
            x = _MARGIN / 2 + wide - (column - first + 0.5) * SQUARE
            y = _MARGIN / 2 + high + 0.95 * SQUARE
            inner.append(tag("text", str(column), x=x, y=y, text_anchor="middle", class_="number"))
    title = f"Chart {chart.name}: {name_part(chart, part)}. "
    title += " ".join(_read_out(chart, shown, part.below, shades, ground))
    style = f"width:{format_number(square_mm(part) * (columns + ASIDE))}mm"
    return svg(wide + 2 * _MARGIN, high + 1.7 * _MARGIN, inner, title=title, class_="chart", style=style)


def _row(cells: tuple[Cell, ...], y: float, shades: Mapping[str, YarnLooks], ground: str) -> Iterator[str]:
    for column, cell, wide in list_worked(cells):
        x = _MARGIN / 2 + column * SQUARE
        if not cell.stitch:
            yield tag("rect", x=x, y=y, width=SQUARE, height=SQUARE, fill=_NOTHING)
            continue
        shade = shades[cell.yarn or ground]
        for each in range(wide):
            yield tag("rect", x=x + each * SQUARE, y=y, width=SQUARE, height=SQUARE, fill=shade.colour)
        yield _sign(cell.stitch, shade, x, y) if wide == 1 else _crossing(cell.stitch, wide, shade, x, y)


def _crossing(code: str, wide: int, shade: YarnLooks, x: float, y: float) -> str:
    """Draw a cable over its squares: the strand in front whole, the other one broken behind it."""
    across, top, foot = wide * SQUARE, 2.5, SQUARE - 2.5
    left, right = across * 0.12, across * 0.88
    near, far = across * 0.38, across * 0.62
    a_third = (foot - top) / 3
    if code.lower().endswith("lc") or code.lower().endswith("f"):  # in front goes to the left
        left, right, near, far = right, left, far, near
    points = (
        f"M{format_number(left)} {format_number(foot)}L{format_number(right)} {format_number(top)}"
        f"M{format_number(left)} {format_number(top)}L{format_number(near)} {format_number(top + a_third)}"
        f"M{format_number(far)} {format_number(foot - a_third)}L{format_number(right)} {format_number(foot)}"
    )
    moved = f"translate({format_number(x)} {format_number(y)})"
    return tag("path", d=points, transform=moved, fill="none", stroke=shade.ink, stroke_width=1.5)


def _sign(code: str, shade: YarnLooks, x: float, y: float) -> str:
    """Draw the symbol of a stitch, or the letter of its yarn if it is a plain one."""
    if code == "k":
        return _letters(shade.letter, shade.ink, x, y, 0.66) if shade.letter else ""
    if code == "yo":
        middle = SQUARE / 2
        return tag(
            "circle", cx=x + middle, cy=y + middle, r=3.6, fill="none", stroke=shade.ink, stroke_width=1.2
        )
    strokes = _STROKES.get(code)
    if strokes:
        moved = f"translate({format_number(x)} {format_number(y)})"
        return tag("path", d=strokes, transform=moved, fill="none", stroke=shade.ink, stroke_width=1.3)
    return _letters(code.replace(" ", ""), shade.ink, x, y, min(0.66, 1.5 / len(code)))


def _letters(words: str, ink: str, x: float, y: float, share: float) -> str:
    size, middle = share * SQUARE, SQUARE / 2
    return tag(
        "text", text(words), x=x + middle, y=y + middle + 0.36 * size, font_size=size, fill=ink,
        text_anchor="middle",
    )  # fmt: skip


def _grid(chart: Chart, part: DrawnPart) -> Iterator[str]:
    """Draw the lines between the squares, with heavy ones around the repeat if the chart has edges."""
    left, top = _MARGIN / 2, _MARGIN / 2
    wide, high = (part.right - part.left) * SQUARE, (part.above - part.below) * SQUARE
    lines = "".join(
        f"M{format_number(left + each * SQUARE)} {format_number(top)}v{format_number(high)}"
        for each in range(part.right - part.left + 1)
    )
    lines += "".join(
        f"M{format_number(left)} {format_number(top + each * SQUARE)}h{format_number(wide)}"
        for each in range(part.above - part.below + 1)
    )
    yield tag("path", d=lines, class_="grid")
    if chart.edge_left or chart.edge_right:
        begin = max(part.left, chart.edge_left)
        inside = min(part.right, chart.width - chart.edge_right) - begin
        if inside > 0:
            x = left + (begin - part.left) * SQUARE
            yield tag("rect", x=x, y=top, width=inside * SQUARE, height=high, class_="repeat")


def list_signs(chart: Chart, shades: Mapping[str, YarnLooks], ground: str) -> list[Sign]:
    """List the symbols of a chart, each drawn and in words, in the order they occur."""
    found: dict[tuple[str, str], Sign] = {}
    worked = (each for cells in chart.rounds for each in reversed(tuple(list_worked(cells))))
    for _, cell, wide in worked:
        if not cell.stitch:
            found.setdefault(("", ""), _swatch("", _NOTHING, "no stitch"))
            continue
        key = cell.yarn or ground
        shade = shades[key]
        coloured = any(each.yarn for cells in chart.rounds for each in cells)
        said = name_stitch(cell.stitch)
        words = (
            f"{said}, {shade.named}" if coloured and cell.stitch != "k" else shade.named if coloured else said
        )
        sign = _sign(cell.stitch, shade, 0, 0) if wide == 1 else _crossing(cell.stitch, wide, shade, 0, 0)
        found.setdefault((cell.stitch, key), _swatch(sign, shade.colour, words, wide))
    return list(found.values())


def name_stitch(code: str) -> str:
    """Return the name of a stitch of a chart: its abbreviation, or "knit", "purl", "yarn over"."""
    entry = stitch(code)
    name = entry.code.upper() if entry.kind is Kind.CABLE else entry.code
    return {"k": "knit", "p": "purl", "yo": "yarn over"}.get(code, name)


def _swatch(sign: str, colour: str, words: str, wide: int = 1) -> Sign:
    across = wide * SQUARE
    square = tag("rect", x=0.5, y=0.5, width=across - 1, height=SQUARE - 1, fill=colour, stroke="#8a867d")
    style = f"width:{5 * wide}mm" if wide > 1 else None
    drawing = svg(across, SQUARE, [square, sign], title=words, class_="swatch", style=style)
    return Sign(drawing=drawing, words=words, wide=wide)


def _read_out(
    chart: Chart, shown: Sequence[tuple[Cell, ...]], below: int, shades: Mapping[str, YarnLooks], ground: str
) -> Iterator[str]:
    """Yield the rounds in words, each from right to left, for those who cannot see the drawing."""
    for place, cells in enumerate(shown, start=below + 1):
        worked = (cell for _, cell, _ in reversed(tuple(list_worked(cells))))
        names = (_said(cell, shades, ground) if cell.stitch else "no stitch" for cell in worked)
        said = ", ".join(f"{len(tuple(alike))} {name}" for name, alike in groupby(names))
        yield f"Round {number_of(chart, place)}: {said}."


def _said(cell: Cell, shades: Mapping[str, YarnLooks], ground: str) -> str:
    name = shades[cell.yarn or ground].name if cell.yarn else ""
    stitched = "" if cell.stitch == "k" and name else name_stitch(cell.stitch)
    return " ".join(filter(None, [stitched, name]))
