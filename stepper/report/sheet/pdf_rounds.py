"""The rounds on a PDF: instruction, stitches, and a box with its number for every round. No I/O."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Any

from stepper.report.sheet.blocks import RoundRow, RoundTable, TickBox
from stepper.report.sheet.pdf_strips import BOLD, MM, PLAIN, Span, Strip, break_lines, put_line, wide_of

_SIZE = 9.5
_LEAD = _SIZE * 1.25
_BOX, _TALL, _STEP = 5.6 * MM, 4.6 * MM, 6.0 * MM
_NUMBERS, _COUNTS = 17 * MM, 21 * MM
_DONE = {1: 49 * MM, 2: 37 * MM}
_MOST_LINES = 2
# Boxes that would take more lines beside the instruction get lines of their own below it.


def lay_rounds(block: RoundTable, room: float) -> Iterator[Strip]:
    """Lay out a section."""
    pieces = len(block.pieces)
    words_wide = room - _NUMBERS - _COUNTS - pieces * _DONE[pieces]
    lefts = [0.0, _NUMBERS, _NUMBERS + words_wide]
    lefts += [_NUMBERS + words_wide + _COUNTS + place * _DONE[pieces] for place in range(pieces)]

    def draw_head(canvas: Any, left: float, top: float) -> None:
        canvas.setFillColor("#55514a")
        for text, x in zip((block.word, "Instruction", "Stitches", *block.pieces), lefts, strict=True):
            put_line(canvas, [(text, PLAIN)], left + x, top - 8.5, 8.5)
        _rule(canvas, left, top - 11, room)

    head = Strip(high=13.0, draw=draw_head)
    yield Strip(high=head.high, draw=draw_head, keeps=True)
    for place, row in enumerate(block.rows):
        *strips, last = _row(row, block, lefts, words_wide, room, head)
        yield from strips
        # A sheet of paper for a single round would be mislaid: the last goes with the one before.
        yield replace(last, keeps=last.keeps or place == len(block.rows) - 2)


def _row(
    row: RoundRow, block: RoundTable, lefts: Sequence[float], wide: float, room: float, head: Strip
) -> Iterator[Strip]:
    per_line = int((_DONE[len(block.pieces)] - 1 * MM) // _STEP)
    many = len(row.boxes[0]) > per_line * _MOST_LINES
    lines = [line for spans in _paragraphs(row) for line in break_lines(spans, _SIZE, wide - 2 * MM)]
    beside = 0 if many else -(-len(row.boxes[0]) // per_line)
    high = max(len(lines) * _LEAD, beside * (_TALL + 0.4 * MM)) + 1.0 * MM

    def draw(canvas: Any, left: float, top: float) -> None:
        canvas.setFillColor("#1c1b19")
        put_line(canvas, [(row.numbers, PLAIN)], left, top - _SIZE, _SIZE)
        for place, line in enumerate(lines):
            put_line(canvas, line, left + lefts[1], top - _SIZE - place * _LEAD, _SIZE)
        changed = BOLD if row.before != row.after else PLAIN
        put_line(canvas, [(row.stitches, changed)], left + lefts[2], top - _SIZE, _SIZE)
        for boxes, x in zip(row.boxes, lefts[3:], strict=True):
            if not many:
                _put_boxes(canvas, boxes, left + x, top - 0.5 * MM, per_line, blank=row.check is not None)
        if not many:
            _rule(canvas, left, top - high + 0.3 * MM, room)

    yield Strip(high=high, draw=draw, head=head, keeps=many)
    if many:
        yield from _wide_boxes(row, block, room)


def _paragraphs(row: RoundRow) -> Iterator[list[Span]]:
    for remark in row.remarks:
        yield [(remark, PLAIN)]
    *others, last = row.words
    label: list[Span] = [(f"{row.label}:", BOLD)] if row.label else []
    for words in others:
        yield [*label, (words, PLAIN)]
        label = []
    check: list[Span] = [(row.check.text, BOLD)] if row.check is not None else []
    yield [*label, (last, PLAIN), *check]
    if row.altered:
        yield [(row.altered, PLAIN)]


def _wide_boxes(row: RoundRow, block: RoundTable, room: float) -> Iterator[Strip]:
    """Lay boxes out as wide as the sheet, a strip for each line of them."""
    named = len(block.pieces) > 1
    indent = max((wide_of(name, PLAIN, 8.5) + 2 * MM for name in block.pieces), default=0.0) if named else 0.0
    per_line = int((room - indent) // _STEP)
    runs = [
        (name if named and not at else "", boxes[at : at + per_line], at + per_line >= len(boxes))
        for name, boxes in zip(block.pieces, row.boxes, strict=True)
        for at in range(0, len(boxes), per_line)
    ]
    for place, (name, boxes, ends) in enumerate(runs):
        last = place == len(runs) - 1

        def draw(
            canvas: Any, left: float, top: float, name: str = name, boxes: tuple[TickBox, ...] = boxes,
            ends: bool = ends, last: bool = last,
        ) -> None:  # fmt: skip
            canvas.setFillColor("#55514a")
            put_line(canvas, [(name, PLAIN)], left, top - 9.5, 8.5)
            blank = ends and row.check is not None
            _put_boxes(canvas, boxes, left + indent, top, per_line, blank=blank)
            if last:
                _rule(canvas, left, top - _TALL - 1.0 * MM, room)

        yield Strip(high=_TALL + (1.5 * MM if last else 0.4 * MM), draw=draw, keeps=not last)


def _put_boxes(
    canvas: Any, boxes: Sequence[TickBox], left: float, top: float, per_line: int, *, blank: bool
) -> None:
    canvas.setDash()
    for place, box in enumerate(boxes):
        x = left + place % per_line * _STEP
        y = top - place // per_line * (_TALL + 0.4 * MM) - _TALL
        canvas.setStrokeColor("#1c1b19")
        canvas.setLineWidth(0.6)
        canvas.roundRect(x, y, _BOX, _TALL, 1.5, fill=0, stroke=1)
        canvas.setFillColor("#55514a")
        canvas.setFont(PLAIN, 7)
        canvas.drawCentredString(x + _BOX / 2, y + _TALL / 2 - 2.4, str(box.number))
    if blank and 0 < len(boxes) % per_line <= per_line - 2:
        x = left + len(boxes) % per_line * _STEP + 1 * MM
        y = top - (len(boxes) - 1) // per_line * (_TALL + 0.4 * MM) - _TALL
        canvas.line(x, y, x + 10 * MM, y)


def _rule(canvas: Any, left: float, at: float, room: float) -> None:
    canvas.setDash()
    canvas.setStrokeColor("#b9b4a9")
    canvas.setLineWidth(0.4)
    canvas.line(left, at, left + room, at)
