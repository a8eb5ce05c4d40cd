"""Drawings on a PDF, side by side as far as they fit, with titles, captions and the signs of charts. No
I/O."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from stepper.report.sheet.blocks import Gallery, Picture
from stepper.report.sheet.pdf_drawing import measure_drawing, put_drawing
from stepper.report.sheet.pdf_strips import BOLD, MM, PLAIN, Span, Strip, break_lines, put_line, wide_of

_SMALL = 8.5
_TALLEST = 232 * MM
# A drawing with its title and signs still fits a sheet of Letter.
_TALLEST_PIECES = 95 * MM
_GAP = 6 * MM


def lay_gallery(block: Gallery, room: float) -> Iterator[Strip]:
    """Lay drawings out in rows."""
    row: list[_Placed] = []
    used = 0.0
    rest = [_Placed(picture, room) for picture in block.pictures]
    if block.pictures[0].beside:
        first = rest.pop(0)
        beside = _take_beside(first, rest, room - first.wide - _GAP)
        yield _strip_of_rows(first, beside)
        rest = rest[sum(map(len, beside)) :]
    for placed in rest:
        if row and used + _GAP + placed.wide > room:
            yield _strip(row)
            row, used = [], 0.0
        used += placed.wide + (_GAP if row else 0.0)
        row.append(placed)
    if row:
        yield _strip(row)


class _Placed:
    """A drawing with everything that belongs to it, measured."""

    def __init__(self, picture: Picture, room: float) -> None:
        self.picture = picture
        across, down = measure_drawing(picture.drawing)
        tallest = _TALLEST if picture.title else _TALLEST_PIECES
        self.drawn = min(picture.wide_mm * MM, room, tallest / down * across)
        self.tall = self.drawn / across * down
        title = break_lines([(picture.title, BOLD)], 10, room)[0] if picture.title else []
        self.wide = max(self.drawn, min(room, wide_of(" ".join(word for word, _ in title), BOLD, 10)))
        self.title = break_lines([(picture.title, BOLD)], 10, self.wide) if picture.title else []
        self.caption = break_lines([(picture.caption, PLAIN)], _SMALL, self.wide) if picture.caption else []
        self.signs = list(self._list_signs())
        self.high = len(self.title) * 12.5 + self.tall + (len(self.caption) * _SMALL * 1.28) + 2 * MM
        self.high += self.signs[-1][1] + 5 * MM if self.signs else 0.0

    def _list_signs(self) -> Iterator[tuple[float, float, int]]:
        """Yield where each sign stands below the drawing: across, down, and which it is."""
        x = y = 0.0
        for place, sign in enumerate(self.picture.signs):
            wide = sign.wide * 4 * MM + 1.5 * MM + wide_of(sign.words, PLAIN, _SMALL)
            if x and x + wide > self.wide:
                x, y = 0.0, y + 5 * MM
            yield x, y, place
            x += wide + 4 * MM

    def draw(self, canvas: Any, left: float, top: float) -> None:
        """Put it on a page."""
        canvas.setFillColor("#1c1b19")
        for line in self.title:
            put_line(canvas, line, left, top - 10, 10)
            top -= 12.5
        put_drawing(canvas, self.picture.drawing, left, top, self.drawn, PLAIN)
        top -= self.tall + 1 * MM
        canvas.setFillColor("#55514a")
        for line in self.caption:
            _put(canvas, line, left, top)
            top -= _SMALL * 1.28
        for x, y, place in self.signs:
            sign = self.picture.signs[place]
            put_drawing(canvas, sign.drawing, left + x, top - y, sign.wide * 4 * MM, PLAIN)
            canvas.setFillColor("#55514a")
            _put(canvas, [(sign.words, PLAIN)], left + x + sign.wide * 4 * MM + 1.5 * MM, top - y - 1.5)


def _put(canvas: Any, line: list[Span], left: float, top: float) -> None:
    put_line(canvas, line, left, top - _SMALL, _SMALL)


def _take_beside(first: _Placed, rest: list[_Placed], room: float) -> list[list[_Placed]]:
    """Return the drawings that stand in rows beside a large one, as far down as it reaches."""
    rows: list[list[_Placed]] = []
    high = 0.0
    at = 0
    while at < len(rest):
        row: list[_Placed] = []
        while at < len(rest) and sum(each.wide + _GAP for each in row) + rest[at].wide <= room:
            row.append(rest[at])
            at += 1
        high += max((each.high for each in row), default=0.0)
        if not row or high > first.high:
            break
        rows.append(row)
    return rows


def _strip_of_rows(first: _Placed, rows: list[list[_Placed]]) -> Strip:
    def draw(canvas: Any, left: float, top: float) -> None:
        first.draw(canvas, left, top)
        for row in rows:
            x = left + first.wide + _GAP
            for placed in row:
                placed.draw(canvas, x, top)
                x += placed.wide + _GAP
            top -= max(placed.high for placed in row)

    return Strip(high=first.high + 2 * MM, draw=draw)


def _strip(row: list[_Placed]) -> Strip:
    def draw(canvas: Any, left: float, top: float) -> None:
        for placed in row:
            placed.draw(canvas, left, top)
            left += placed.wide + _GAP

    return Strip(high=max(placed.high for placed in row) + 2 * MM, draw=draw)
