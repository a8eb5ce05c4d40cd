"""The schematic: every piece of a garment drawn flat and to scale, with its finished measurements. Pure.

A garment that divides for sleeves is drawn whole. From the underarm, which lies a yoke's depth below the
neckband, its side goes down for the length of the body; the edge along the shoulder is as long as the yoke is
deep, since that is how far every line down the yoke runs, and the top edge of the sleeve is as wide as the
upper arm laid flat. The corner between shoulder and sleeve is where those two meet, and the sleeve goes off
at right angles to its top edge. Any other garment is drawn piece by piece, side by side. One unit of the
drawing is a millimetre of the garment.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import field
from itertools import pairwise
from typing import Literal

from stepper.craft.figures import format_number, list_words
from stepper.language.measures import length
from stepper.language.places import sentence_case
from stepper.records import dataclass
from stepper.report.drawing.markup import svg, tag, text
from stepper.report.drawing.shapes import Point, list_points
from stepper.report.sheet.pieces import GarmentPiece, Level, merge_like_pieces

Anchor = Literal["start", "middle", "end"]

_LETTERS = 40.0
# The larger of width and height, in letter heights.


@dataclass(slots=True)
class _Sheet:
    """What is drawn so far, and how far it reaches."""

    units: str
    letters: float
    """Height of the letters. Unit: mm."""
    drawn: list[str] = field(default_factory=list)
    left: float = math.inf
    top: float = math.inf
    right: float = -math.inf
    bottom: float = -math.inf

    def reach(self, points: Iterable[Point], around: float = 0.0) -> None:
        """Make room for points."""
        for x, y in points:
            self.left, self.right = min(self.left, x - around), max(self.right, x + around)
            self.top, self.bottom = min(self.top, y - around), max(self.bottom, y + around)

    def shape(self, points: Sequence[Point]) -> None:
        """Draw a piece."""
        self.reach(points, self.letters / 4)
        self.drawn.append(tag("polygon", points=list_points(points), class_="piece"))

    def line(self, points: Sequence[Point], class_: str) -> None:
        """Draw a line."""
        self.reach(points)
        self.drawn.append(tag("polyline", points=list_points(points), class_=class_))

    def span(self, start: Point, end: Point) -> None:
        """Draw a dimension line with a short stroke across each end."""
        angle = math.atan2(end[1] - start[1], end[0] - start[0]) + math.pi / 2
        half = self.letters / 3
        across = (half * math.cos(angle), half * math.sin(angle))
        self.line([start, end], "measure")
        for x, y in (start, end):
            ends = [(x - across[0], y - across[1]), (x + across[0], y + across[1])]
            self.line(ends, "measure")

    def words(self, at: Point, lines: Sequence[str], anchor: Anchor = "middle", class_: str = "") -> None:
        """Write lines of text, the first with its baseline at a point."""
        for row, words in enumerate(lines):
            x, y = at[0], at[1] + row * self.letters * 1.2
            wide = 0.58 * self.letters * len(words)
            begin = x - {"start": 0.0, "middle": wide / 2, "end": wide}[anchor]
            self.reach([(begin, y - self.letters), (begin + wide, y + 0.35 * self.letters)])
            self.drawn.append(tag("text", text(words), x=x, y=y, text_anchor=anchor, class_=class_ or None))

    def finished(self, title: str) -> str:
        """Return the whole drawing."""
        margin = self.letters / 2
        wide, high = self.right - self.left + 2 * margin, self.bottom - self.top + 2 * margin
        moved = f"translate({format_number(margin - self.left)} {format_number(margin - self.top)})"
        inner = tag("g", self.drawn, transform=moved, font_size=self.letters, stroke_width=self.letters / 14)
        return svg(wide, high, [inner], title=title, class_="schematic")


def draw_schematic(pieces: Sequence[GarmentPiece], *, title: str, units: str) -> str:
    """Draw the garment.

    Args:
        pieces: Its pieces, in the order knitted; at least one.
        title: Of the garment.
        units: `cm` or `in`.
    """
    body = next((piece for piece in pieces if piece.divided_mm is not None), None)
    words = f"{title}: the pieces flat and to scale. {describe_pieces(pieces, units)}"
    if body is None:
        return _side_by_side(merge_like_pieces(pieces), units, words)
    sleeves = [piece for piece in pieces if piece.sleeve][:2]
    wide = body.widest.wide_mm + sum(0.75 * sleeve.long_mm for sleeve in sleeves)
    sheet = _Sheet(units=units, letters=max(wide, body.long_mm) / _LETTERS)
    _divided(sheet, body, sleeves)
    others = merge_like_pieces(piece for piece in pieces if piece is not body and piece not in sleeves)
    place = (sheet.left, sheet.bottom + 3 * sheet.letters)
    for piece in others:
        place = (_alone(sheet, piece, place) + 3 * sheet.letters, place[1])
    return sheet.finished(words)


def describe_pieces(pieces: Sequence[GarmentPiece], units: str) -> str:
    """Describe the measurements of every piece in words."""
    said = []
    for piece in pieces:
        names = list_words([part.name for part in piece.parts])
        first, widest, last = piece.levels[0], piece.widest, piece.levels[-1]
        kind = "around" if piece.doubled else "wide"
        said.append(
            f"{sentence_case(names)}: {length(first.around_mm, units)} {kind} at its beginning, "
            f"{length(widest.around_mm, units)} at its widest, {length(last.around_mm, units)} at its end, "
            f"{length(piece.long_mm, units)} long."
        )
    return " ".join(said)


# A garment with sleeves


@dataclass(frozen=True, slots=True, kw_only=True)
class _Armhole:
    """Where the right-hand sleeve of the drawing meets the body."""

    corner: Point
    """Lower corner of the yoke."""
    underarm: Point


def _divided(sheet: _Sheet, body: GarmentPiece, sleeves: Sequence[GarmentPiece]) -> None:
    assert body.divided_mm is not None
    band = [level for level in body.sides if level.depth_mm < body.yoke_mm]
    lower = [level for level in body.sides if level.depth_mm > body.divided_mm]
    above = [level for level in body.levels if level.depth_mm <= body.yoke_mm]
    below = next((level for level in body.levels if level.depth_mm > body.divided_mm), body.levels[-1])
    neck = (above[-1].wide_mm / 2, body.yoke_mm)
    underarm = (below.wide_mm / 2, body.divided_mm)
    across = sleeves[0].levels[0].wide_mm if sleeves else 0.0
    arm = _Armhole(
        corner=find_corner(neck, underarm, body.divided_mm - body.yoke_mm, across), underarm=underarm
    )
    right = [(level.wide_mm / 2, level.depth_mm) for level in band]
    right += [neck, arm.corner, arm.underarm]
    right += [(level.wide_mm / 2, level.depth_mm) for level in lower]
    for number_, sleeve in enumerate(sleeves):
        _sleeve(sheet, sleeve, arm, mirrored=number_ == 0)
    sheet.shape([*right, *((-x, y) for x, y in reversed(right))])
    _body_words(sheet, body, below, arm)


def find_corner(neck: Point, underarm: Point, yoke_mm: float, across_mm: float) -> Point:
    """Find where the shoulder meets the top edge of the sleeve, in the right half of the drawing.

    Args:
        neck: Where the shoulder begins.
        underarm: Where the top edge of the sleeve ends.
        yoke_mm: Length of the shoulder: the depth of the yoke. Unit: mm.
        across_mm: Length of the top edge: the upper arm laid flat. Unit: mm.

    Returns:
        The point at both distances, further up and out of the two. If the two edges are too short to meet, or
        one of them is too long, the top edge keeps its length and lies along the line from the underarm to
        the neck.
    """
    dx, dy = underarm[0] - neck[0], underarm[1] - neck[1]
    apart = math.hypot(dx, dy) or 1.0
    along = (yoke_mm**2 - across_mm**2 + apart**2) / (2 * apart)
    aside = yoke_mm**2 - along**2
    if aside <= 0:
        return underarm[0] - dx / apart * across_mm, underarm[1] - dy / apart * across_mm
    off = math.sqrt(aside)
    return (
        neck[0] + (along * dx + off * dy) / apart,
        neck[1] + (along * dy - off * dx) / apart,
    )


def _body_words(sheet: _Sheet, body: GarmentPiece, below: Level, arm: _Armhole) -> None:
    """Write the measurements of neck, chest and lower edge, and the lengths."""
    letters, units = sheet.letters, sheet.units
    first, last = body.levels[0], body.levels[-1]
    sheet.span((-first.wide_mm / 2, -letters), (first.wide_mm / 2, -letters))
    sheet.words((0, -1.8 * letters), [f"neck {length(first.around_mm, units)}"])
    y = arm.underarm[1] + 1.5 * letters
    sheet.line([(-below.wide_mm / 2, y), (below.wide_mm / 2, y)], "measure")
    sheet.words((0, y + 1.4 * letters), [f"chest {length(below.around_mm, units)}"])
    foot = body.long_mm + letters
    sheet.span((-last.wide_mm / 2, foot), (last.wide_mm / 2, foot))
    sheet.words((0, foot + 1.6 * letters), [f"lower edge {length(last.around_mm, units)}"])
    assert body.divided_mm is not None
    down = [(part.name, part.start_mm, part.end_mm) for part in body.parts]
    for name, start, end in down:
        half = _width_at(body, (start + end) / 2) / 2
        if start > 0 and start != body.divided_mm:
            edge = _width_at(body, start) / 2
            sheet.line([(-edge, start), (edge, start)], "seam")
        if end - start > 2.2 * letters:
            x = 0.0
            label = [sentence_case(name), length(end - start, units)]
            if end <= body.divided_mm:
                sheet.span((x, start + letters / 3), (x, end - letters / 3))
                sheet.words((x + 0.6 * letters, (start + end) / 2), label, "start")
            else:
                x = half - 1.2 * letters
                sheet.span((x, start), (x, end))
                sheet.words((x - 0.6 * letters, (y + 2.4 * letters + end) / 2), label, "end")


def _sleeve(sheet: _Sheet, sleeve: GarmentPiece, arm: _Armhole, *, mirrored: bool) -> None:
    """Draw a sleeve at right angles to its top edge."""
    (cx, cy), (ux, uy) = arm.corner, arm.underarm
    top = math.hypot(ux - cx, uy - cy) or 1.0
    along = ((ux - cx) / top, (uy - cy) / top)
    axis = (-along[1], along[0]) if -along[1] > 0 else (along[1], -along[0])
    middle = ((cx + ux) / 2, (cy + uy) / 2)
    flip = -1 if mirrored else 1

    def at(depth: float, side: float) -> Point:
        x = middle[0] + axis[0] * depth + along[0] * side
        y = middle[1] + axis[1] * depth + along[1] * side
        return flip * x, y

    sides = sleeve.sides
    outer = [at(level.depth_mm, -level.wide_mm / 2) for level in sides]
    inner = [at(level.depth_mm, level.wide_mm / 2) for level in sides]
    sheet.shape([*outer, *reversed(inner)])
    for part in sleeve.parts[1:]:
        half = _width_at(sleeve, part.start_mm) / 2
        sheet.line([at(part.start_mm, -half), at(part.start_mm, half)], "seam")
    letters, units = sheet.letters, sheet.units
    first, last = sleeve.levels[0], sleeve.levels[-1]
    anchor: Anchor = "end" if mirrored else "start"
    out = -max(level.wide_mm for level in sides) / 2 - letters
    sheet.span(at(0, out), at(sleeve.long_mm, out))
    names = sentence_case(list_words([part.name for part in sleeve.parts]))
    x, y = at(sleeve.long_mm / 2, out - letters * 0.8)
    sheet.words((x, y - letters), [names, length(sleeve.long_mm, units)], anchor)
    beyond = last.wide_mm / 2
    sheet.span(at(sleeve.long_mm + letters, -beyond), at(sleeve.long_mm + letters, beyond))
    x = at(sleeve.long_mm + letters, 0)[0]
    y = max(at(sleeve.long_mm + letters, side)[1] for side in (-beyond, beyond)) + 1.5 * letters
    sheet.words((x, y), [f"wrist {length(last.around_mm, units)}"], "middle")
    deep = 2 * letters
    half = _width_at(sleeve, deep) / 2
    sheet.line([at(deep, -half), at(deep, half)], "measure")
    x, y = at(-letters / 2, out - letters * 0.8)
    sheet.words((x, y), [f"upper arm {length(first.around_mm, units)}"], anchor)


# Piece by piece


def _side_by_side(pieces: Sequence[GarmentPiece], units: str, title: str) -> str:
    wide = sum(piece.widest.wide_mm for piece in pieces) + 60 * len(pieces)
    high = max(piece.long_mm for piece in pieces)
    sheet = _Sheet(units=units, letters=max(wide / 34, high / 27))
    x = 0.0
    for piece in pieces:
        x = _alone(sheet, piece, (x, 0.0)) + 3 * sheet.letters
    return sheet.finished(title)


def _alone(sheet: _Sheet, piece: GarmentPiece, corner: Point) -> float:
    """Draw a piece with its measurements below a corner; return how far it reaches to the right."""
    letters, units = sheet.letters, sheet.units
    kind = "around" if piece.doubled else "wide"
    first, widest, last = piece.levels[0], piece.widest, piece.levels[-1]
    room = max(widest.wide_mm / 2, 5 * letters)
    x0, y0 = corner[0] + room, corner[1]

    def right(level: Level) -> Point:
        return x0 + level.wide_mm / 2, y0 + level.depth_mm

    outline = [right(level) for level in piece.sides]
    sheet.shape([*outline, *((2 * x0 - x, y) for x, y in reversed(outline))])
    sheet.words((x0, y0 - 0.8 * letters), [f"{length(first.around_mm, units)} {kind}"])
    if piece.long_mm - widest.depth_mm > 2 * letters and widest.wide_mm > 1.05 * first.wide_mm:
        y = y0 + widest.depth_mm + letters / 2
        half = widest.wide_mm / 2
        sheet.line([(x0 - half, y), (x0 + half, y)], "measure")
        sheet.words((x0, y + 1.3 * letters), [f"{length(widest.around_mm, units)} {kind}"])
    foot = y0 + piece.long_mm + 1.5 * letters
    sheet.words((x0, foot), [f"{length(last.around_mm, units)} {kind}"])
    x = x0 + room + letters
    reached = x
    for part in piece.parts:
        tall = part.end_mm - part.start_mm
        if tall < letters / 3:
            continue  # a turned heel, say: hardly any height, so no room for words
        start, end = y0 + part.start_mm, y0 + part.end_mm
        if part.start_mm > 0:
            half = _width_at(piece, part.start_mm) / 2
            sheet.line([(x0 - half, start), (x0 + half, start)], "seam")
        sheet.span((x, start), (x, end))
        label = [sentence_case(part.name), length(tall, units)]
        if tall < 2.4 * letters:
            label = [", ".join(label)]
        sheet.words((x + 0.7 * letters, (start + end) / 2), label, "start")
        reached = max(reached, x + 0.7 * letters + 0.58 * letters * max(map(len, label)))
    return reached


def _width_at(piece: GarmentPiece, depth_mm: float) -> float:
    """Return the width of the outline at a depth. Unit: mm."""
    sides = piece.sides
    for above, under in pairwise(sides):
        if above.depth_mm <= depth_mm <= under.depth_mm and under.depth_mm > above.depth_mm:
            share = (depth_mm - above.depth_mm) / (under.depth_mm - above.depth_mm)
            return above.wide_mm + share * (under.wide_mm - above.wide_mm)
    return sides[-1].wide_mm
