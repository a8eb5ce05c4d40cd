"""A drawing in both its forms, read back by general libraries."""

from __future__ import annotations

import io
import xml.etree.ElementTree as ET

from PIL import Image

from stepper.craft.colour import Rgb
from stepper.report.drawing import INK, PAPER, PNG_SCALE, Box, Drawing, Words, png_of, svg_of

RED = Rgb(200, 10, 20)
DRAWING = Drawing(
    wide=120,
    high=60,
    title='Squares & "words" <here>',
    items=(
        Box(x=10, y=10, wide=20, high=15, colour=RED),
        Words(x=40, y=40, text="a & b <c>", size=14, bold=True),
    ),
)


def test_the_png_has_the_box_where_it_is() -> None:
    """Pillow reads back the very colours, at the scale of the picture."""
    image = Image.open(io.BytesIO(png_of(DRAWING)))
    assert image.size == (120 * PNG_SCALE, 60 * PNG_SCALE)
    assert image.getpixel((11 * PNG_SCALE, 11 * PNG_SCALE)) == (200, 10, 20)
    assert image.getpixel((30 * PNG_SCALE, 11 * PNG_SCALE)) == (PAPER.red, PAPER.green, PAPER.blue)
    inked = [image.getpixel((x, y)) for x in range(80, 200) for y in range(56, 84)]
    assert (INK.red, INK.green, INK.blue) in inked


def test_the_svg_is_whole_and_its_words_are_escaped() -> None:
    """The standard library's reader takes it, and gives back what was written."""
    root = ET.fromstring(svg_of(DRAWING))
    names = {"s": "http://www.w3.org/2000/svg"}
    assert root.find("s:title", names).text == DRAWING.title  # type: ignore[union-attr]
    assert root.get("aria-label") == DRAWING.title
    assert [each.text for each in root.iter("{http://www.w3.org/2000/svg}text")] == ["a & b <c>"]
    boxes = list(root.iter("{http://www.w3.org/2000/svg}rect"))
    assert (boxes[1].get("x"), boxes[1].get("fill")) == ("10", RED.hex)
