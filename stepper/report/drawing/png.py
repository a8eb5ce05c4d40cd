"""A drawing as a PNG file, by Pillow. Pure.

A picture with slanting lines is drawn larger and then reduced, so that the lines are smooth.
"""

from __future__ import annotations

import io
import math
from collections.abc import Iterator
from itertools import pairwise
from typing import TYPE_CHECKING

from stepper.report.drawing.shapes import Area, Box, Drawing, Label, Path, Point

if TYPE_CHECKING:
    from PIL.ImageDraw import ImageDraw

SHARP = 2
"""Pixels of the picture per unit of the drawing, for high-resolution screens and for print."""
_FINER = 2
# How many times larger a picture with slanting lines is drawn before it is reduced.


def write_png(drawing: Drawing) -> bytes:
    """Return a drawing as the bytes of a PNG file."""
    from PIL import Image, ImageDraw

    finer = 1 if drawing.upright else _FINER
    scale = SHARP * finer
    size = (round(drawing.width * scale), round(drawing.height * scale))
    image = Image.new("RGB", size, drawing.ground)
    draw = ImageDraw.Draw(image)
    for shape in drawing.shapes:
        match shape:
            case Label():
                _draw_label(draw, shape, scale)
            case Box():
                _draw_box(draw, shape, scale)
            case Area():
                draw.polygon([(x * scale, y * scale) for x, y in shape.points], fill=shape.colour)
            case Path():
                _draw_path(draw, shape, scale)
    small = image.resize((size[0] // finer, size[1] // finer), Image.Resampling.LANCZOS)
    out = io.BytesIO()
    small.save(out, format="PNG", optimize=True)
    return out.getvalue()


def _draw_label(draw: ImageDraw, label: Label, scale: int) -> None:
    from PIL import ImageFont

    # The typeface that comes with Pillow, so that the picture is the same on every machine.
    font = ImageFont.load_default(label.size * scale)
    anchor = {"start": "ls", "middle": "ms", "end": "rs"}[label.anchor]
    at = (label.at[0] * scale, label.at[1] * scale)
    # That typeface has only one weight; a thin outline makes the letters bold.
    stroke = max(1, scale // 3) if label.bold else 0
    draw.text(
        at,
        label.text,
        font=font,
        fill=label.colour,
        anchor=anchor,
        stroke_width=stroke,
        stroke_fill=label.colour,
    )


def _draw_box(draw: ImageDraw, box: Box, scale: int) -> None:
    left, top = round(box.at[0] * scale), round(box.at[1] * scale)
    # The far edge belongs to the neighbour, so that boxes meet without gap or overlap.
    right, bottom = round(box.right * scale) - 1, round(box.bottom * scale) - 1
    if right >= left and bottom >= top:
        draw.rectangle((left, top, right, bottom), fill=box.colour)


def _draw_path(draw: ImageDraw, path: Path, scale: int) -> None:
    width = max(1, round(path.width * scale))
    for piece in cut_dashes(path.points, path.dash):
        points = [(x * scale, y * scale) for x, y in piece]
        draw.line(points, fill=path.colour, width=width, joint="curve")


def cut_dashes(points: tuple[Point, ...], pattern: tuple[float, ...]) -> Iterator[tuple[Point, ...]]:
    """Cut a line into its strokes, as SVG's dashes do: the pattern runs on around corners.

    Args:
        points: The line.
        pattern: Lengths of stroke and gap in turn; none for a whole line.
    """
    if not pattern:
        yield points
        return
    number, left = 0, pattern[0]
    stroke: list[Point] = [points[0]]
    for start, end in pairwise(points):
        length, done = math.dist(start, end), 0.0
        while length - done > left:
            done += left
            corner = _point_between(start, end, done / length)
            if number % 2 == 0:
                yield (*stroke, corner)
            number, left, stroke = number + 1, pattern[(number + 1) % len(pattern)], [corner]
        left -= length - done
        stroke.append(end)
    if number % 2 == 0 and len(stroke) > 1:
        yield tuple(stroke)


def _point_between(start: Point, end: Point, share: float) -> Point:
    return start[0] + (end[0] - start[0]) * share, start[1] + (end[1] - start[1]) * share
