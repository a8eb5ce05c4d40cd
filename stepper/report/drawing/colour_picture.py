"""The charts as a picture: in colour, in grey, as other eyes see them, and after the change. Pure."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import Final

from stepper.craft.colours.colour import Rgb, contrast, grey
from stepper.craft.colours.colour_difference import value_difference
from stepper.report.colours import CALLED, ChartSquares, Colours, PairRow, colours_after_mend, list_views
from stepper.report.drawing.shapes import Box, Drawing, Label, Point

_MARGIN: Final = 28.0
_CELL: Final = 9.0
"""Width of a square."""
_PANEL_SQUARES: Final = 24
"""Fewest squares across a panel, so that a small repeat is seen as a pattern."""
_PANEL_ROUNDS: Final = 10
_GAP: Final = 22.0
_LINE: Final = 22.0
_INK: Final = Rgb(32, 32, 36).hex
_PAPER: Final = Rgb(252, 251, 248).hex
_NO_YARN: Final = Rgb(226, 224, 218)
_UNKNOWN: Final = Rgb(200, 60, 200)
"""For a yarn whose colour the file does not name; garish, since something is missing."""


def draw_colours(found: Colours, title: str) -> Drawing:
    """Draw the charts, the pairs and the proposed change.

    Args:
        found: The colours of the garment.
        title: Its title.
    """
    items: list[Box | Label] = [_label((_MARGIN, _MARGIN + 14), text=f"{title}: colours", size=20, bold=True)]
    top, right = _MARGIN + 44, 420.0
    views = [(_called(name), colours) for name, colours in list_views(found)]
    for chart in found.charts:
        items.append(_label((_MARGIN, top), text=f"Chart {chart.name}", size=15, bold=True))
        top, right = _views(items, chart, views, top + 24, right)
    top = _pairs(items, found, top + 6)
    if found.mend is not None:
        top, right = _mend(items, found, top + 14, right)
    right = max([right, *(_right_edge(each) for each in items)])
    return Drawing(
        width=right + _MARGIN,
        height=top + _MARGIN / 2,
        title=f"{title}: charts in colour and in grey",
        shapes=tuple(items),
        ground=_PAPER,
    )


def _called(name: str) -> str:
    return next((words for vision, words in CALLED.items() if vision == name), name)


def _views(
    items: list[Box | Label],
    chart: ChartSquares,
    views: list[tuple[str, dict[str, Rgb]]],
    top: float,
    right: float,
) -> tuple[float, float]:
    """Draw a chart once for each view; return where the next item begins, and the right edge."""
    left, bottom = _MARGIN, top
    for name, colours in views:
        items.append(_label((left, top), text=name, size=12))
        boxes = list(_boxes(chart, colours, left, top + 8))
        items += boxes
        edge = max(left + 7.0 * len(name), max(box.right for box in boxes))
        bottom = max(bottom, max(box.bottom for box in boxes))
        right = max(right, edge)
        left = edge + _GAP
    return bottom + 2 * _LINE, right


def _boxes(chart: ChartSquares, colours: Mapping[str, Rgb], left: float, top: float) -> Iterator[Box]:
    """Yield the squares of a chart, repeated to fill a panel, joining neighbours of one colour in one box."""
    wide = len(chart.squares[0])
    across = max(1, -(-_PANEL_SQUARES // wide))
    down = max(1, -(-_PANEL_ROUNDS // len(chart.squares)))
    high = round(_CELL / max(0.5, min(2.0, chart.wide)), 2)
    for row, line in enumerate(chart.squares * down):
        squares = line * across
        start = 0
        for column in range(1, len(squares) + 1):
            if column < len(squares) and squares[column] == squares[start]:
                continue
            key = squares[start]
            yield Box(
                at=(left + start * _CELL, round(top + row * high, 2)),
                width=(column - start) * _CELL,
                height=high,
                colour=(_NO_YARN if key is None else colours.get(key, _UNKNOWN)).hex,
            )
            start = column


def _pairs(items: list[Box | Label], found: Colours, top: float) -> float:
    for pair in found.pairs:
        one, other = found.colours[pair.one], found.colours[pair.other]
        for at, (left, right) in enumerate(((one, other), (grey(one), grey(other)))):
            x = _MARGIN + at * 84
            items.append(Box(at=(x, top - 14), width=36, height=18, colour=left.hex))
            items.append(Box(at=(x + 36, top - 14), width=36, height=18, colour=right.hex))
        items.append(_label((_MARGIN + 178, top), text=_told(pair, found), size=13))
        top += _LINE + 6
    return top


def _told(pair: PairRow, found: Colours) -> str:
    hard = f"; hard for {CALLED[pair.hardest]} eyes" if pair.hard else ""
    return (
        f"{found.names[pair.one]} and {found.names[pair.other]}: {pair.in_grey} in grey, "
        f"{pair.lightness_apart:.1f} apart in lightness, contrast {pair.contrast:.2f}:1{hard}"
    )


def _mend(items: list[Box | Label], found: Colours, top: float, right: float) -> tuple[float, float]:
    """Draw the change: the yarn before and after, and its charts after."""
    change = found.mend
    assert change is not None  # the caller has checked
    own = found.colours[change.yarn]
    items.append(Box(at=(_MARGIN, top - 14), width=36, height=18, colour=own.hex))
    items.append(Box(at=(_MARGIN + 44, top - 14), width=36, height=18, colour=change.colour.hex))
    figures = ", ".join(
        f"{value_difference(change.colour, found.colours[other]):.1f} apart from {found.names[other]} "
        f"(contrast {contrast(change.colour, found.colours[other]):.2f}:1)"
        for other in found.beside(change.yarn)
    )
    text = f"{found.names[change.yarn]} {own.hex} as {change.colour.hex}: {figures}"
    items.append(_label((_MARGIN + 94, top), text=text, size=13, bold=True))
    top += _LINE + 10
    after = replace(found, colours=colours_after_mend(found))
    views = [(_called(name), colours) for name, colours in list_views(after)]
    for chart in found.with_yarn(change.yarn):
        items.append(_label((_MARGIN, top), text=f"Chart {chart.name}, changed", size=15, bold=True))
        top, right = _views(items, chart, views, top + 24, right)
    return top, right


def _label(at: Point, text: str, size: float, *, bold: bool = False) -> Label:
    return Label(at=at, text=text, colour=_INK, size=size, bold=bold)


def _right_edge(item: Box | Label) -> float:
    """Return the right edge of an item; for words, the furthest they may reach."""
    return item.right if isinstance(item, Box) else item.at[0] + 0.56 * item.size * len(item.text)
