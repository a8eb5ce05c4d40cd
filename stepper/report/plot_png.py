"""A drawing as a PNG file, by Pillow. Drawn larger and made smaller, so that lines are smooth."""

from __future__ import annotations

import io
import math
from collections.abc import Iterator
from itertools import pairwise
from typing import TYPE_CHECKING

from stepper.report.plot import Area, Drawing, Label, Path, Point

if TYPE_CHECKING:
    from PIL.ImageDraw import ImageDraw

SHARP = 2
"""Pixels of the picture for one of the drawing: for a screen of high resolution, and for print."""
_FINER = 2
# And how many times finer it is drawn than it is kept.


def png(drawing: Drawing) -> bytes:
    """Paint a drawing; the file's bytes."""
    from PIL import Image, ImageDraw

    scale = SHARP * _FINER
    image = Image.new("RGB", (drawing.width * scale, drawing.height * scale), drawing.ground)
    draw = ImageDraw.Draw(image)
    for shape in drawing.shapes:
        if isinstance(shape, Label):
            _label(draw, shape, scale)
        elif isinstance(shape, Area):
            draw.polygon([(x * scale, y * scale) for x, y in shape.points], fill=shape.colour)
        else:
            _path(draw, shape, scale)
    small = image.resize((drawing.width * SHARP, drawing.height * SHARP), Image.Resampling.LANCZOS)
    out = io.BytesIO()
    small.save(out, format="PNG", optimize=True)
    return out.getvalue()


def _label(draw: ImageDraw, label: Label, scale: int) -> None:
    from PIL import ImageFont

    # The typeface that comes with Pillow, so that the picture is the same on every machine.
    font = ImageFont.load_default(label.size * scale)
    anchor = {"start": "ls", "middle": "ms", "end": "rs"}[label.anchor]
    at = (label.at[0] * scale, label.at[1] * scale)
    stroke = scale // 3 if label.bold else 0
    draw.text(
        at,
        label.text,
        font=font,
        fill=label.colour,
        anchor=anchor,
        stroke_width=stroke,
        stroke_fill=label.colour,
    )


def _path(draw: ImageDraw, path: Path, scale: int) -> None:
    width = max(1, round(path.width * scale))
    for piece in dashes(path.points, path.dash):
        points = [(x * scale, y * scale) for x, y in piece]
        draw.line(points, fill=path.colour, width=width, joint="curve")


def dashes(points: tuple[Point, ...], pattern: tuple[float, ...]) -> Iterator[tuple[Point, ...]]:
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
            corner = _between(start, end, done / length)
            if number % 2 == 0:
                yield (*stroke, corner)
            number, left, stroke = number + 1, pattern[(number + 1) % len(pattern)], [corner]
        left -= length - done
        stroke.append(end)
    if number % 2 == 0 and len(stroke) > 1:
        yield tuple(stroke)


def _between(start: Point, end: Point, share: float) -> Point:
    return start[0] + (end[0] - start[0]) * share, start[1] + (end[1] - start[1]) * share
