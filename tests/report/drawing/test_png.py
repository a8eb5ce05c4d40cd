"""PNG from the same shapes, read back by Pillow."""

from __future__ import annotations

import io
import math
from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st
from PIL import Image

from stepper.report.drawing.png import SHARP, cut_dashes, write_png
from stepper.report.drawing.shapes import Area, Box, Drawing, Label, Path


def test_a_png_has_the_shapes_where_they_belong() -> None:
    """An area, a line and words in their colours on a white ground."""
    drawing = Drawing(
        width=100,
        height=60,
        title="",
        shapes=(
            Area(points=((0, 0), (40, 0), (40, 30), (0, 30)), colour="#ff0000"),
            Path(points=((60, 0), (60, 60)), colour="#0000ff", width=6),
            Label(at=(5, 55), text="HHHH", colour="#008000", size=18, bold=True),
        ),
    )
    image = Image.open(io.BytesIO(write_png(drawing)))
    assert image.format == "PNG"
    assert image.size == (100 * SHARP, 60 * SHARP)
    assert image.getpixel((20 * SHARP, 15 * SHARP)) == (255, 0, 0)
    assert image.getpixel((60 * SHARP, 45 * SHARP)) == (0, 0, 255)
    assert image.getpixel((95 * SHARP, 50 * SHARP)) == (255, 255, 255)
    words = image.crop((0, 36 * SHARP, 50 * SHARP, 58 * SHARP)).getcolors(100_000)
    assert words is not None
    assert any(colour[1] > 100 and colour[0] < 60 and colour[2] < 60 for _, colour in words)  # type: ignore[index]


def test_boxes_meet_at_the_very_pixel() -> None:
    """Two squares of a chart side by side: no seam of the ground between, no row of one in the other."""
    shapes = (
        Box(at=(1, 1), width=4, height=3, colour="#c80a14"),
        Box(at=(5, 1), width=4, height=3, colour="#0000ff"),
    )
    image = Image.open(
        io.BytesIO(write_png(Drawing(width=10, height=5, title="", shapes=shapes, ground="#fcfbf8")))
    )
    ground, red, blue = (252, 251, 248), (200, 10, 20), (0, 0, 255)
    row = [image.getpixel((x, 2 * SHARP)) for x in range(10 * SHARP)]
    assert row == [ground] * SHARP + [red] * 4 * SHARP + [blue] * 4 * SHARP + [ground] * SHARP
    column = [image.getpixel((2 * SHARP, y)) for y in range(5 * SHARP)]
    assert column == [ground] * SHARP + [red] * 3 * SHARP + [ground] * SHARP


@given(st.lists(st.tuples(st.integers(0, 50), st.integers(0, 50)), min_size=2, max_size=6))
def test_dashes_cover_their_share_of_a_line(points: list[tuple[int, int]]) -> None:
    """Of a pattern of 3 and 1, three quarters of the length are drawn, within one stroke."""
    line = tuple((float(x), float(y)) for x, y in points)
    whole = sum(math.dist(a, b) for a, b in pairwise(line))
    drawn = sum(math.dist(a, b) for piece in cut_dashes(line, (3, 1)) for a, b in pairwise(piece))
    assert whole * 3 / 4 - 1e-6 <= drawn <= whole * 3 / 4 + 1
    assert list(cut_dashes(line, ())) == [line]
