"""A drawing of boxes and words, and its two forms: SVG text and a PNG.

No I/O; Pillow is loaded only when a PNG is made.
"""

from __future__ import annotations

import io
from dataclasses import dataclass
from typing import Any, Final
from xml.sax.saxutils import escape, quoteattr

from stepper.craft.colour import Rgb

INK: Final = Rgb(32, 32, 36)
PAPER: Final = Rgb(252, 251, 248)
PNG_SCALE: Final = 2
"""Dots of a PNG for one unit of the drawing, so that it is sharp on a fine screen and on paper."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Box:
    """A filled rectangle."""

    x: float
    y: float
    wide: float
    high: float
    colour: Rgb


@dataclass(frozen=True, slots=True, kw_only=True)
class Words:
    """A line of words."""

    x: float
    y: float
    """Height of the line the letters stand on."""
    text: str
    size: float = 13
    """Height of the letters."""
    bold: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Drawing:
    """Boxes and words on paper, in units of one dot of a screen."""

    wide: float
    high: float
    title: str
    """What it shows, for those who cannot see it."""
    items: tuple[Box | Words, ...]


def svg_of(drawing: Drawing) -> str:
    """Write a drawing as SVG."""
    head = (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {drawing.wide:g} {drawing.high:g}" '
        f'width="{drawing.wide:g}" height="{drawing.high:g}" '
        f'role="img" aria-label={quoteattr(drawing.title)}>'
    )
    style = f"<title>{escape(drawing.title)}</title>" + _box(
        Box(x=0, y=0, wide=drawing.wide, high=drawing.high, colour=PAPER)
    )
    font = '<g font-family="DejaVu Sans, Helvetica, Arial, sans-serif" shape-rendering="crispEdges">'
    items = [_box(each) if isinstance(each, Box) else _words(each) for each in drawing.items]
    return "\n".join([head, style, font, *items, "</g></svg>", ""])


def png_of(drawing: Drawing) -> bytes:
    """Make a PNG of a drawing."""
    image_module: Any = __import__("PIL.Image", fromlist=["new"])
    draw_module: Any = __import__("PIL.ImageDraw", fromlist=["Draw"])
    font_module: Any = __import__("PIL.ImageFont", fromlist=["load_default"])
    size = (round(drawing.wide * PNG_SCALE), round(drawing.high * PNG_SCALE))
    image = image_module.new("RGB", size, _triple(PAPER))
    draw = draw_module.Draw(image)
    fonts: dict[float, Any] = {}
    for each in drawing.items:
        if isinstance(each, Box):
            # The far edge belongs to the neighbour, so that boxes meet without a gap or an overlap.
            left, top = round(each.x * PNG_SCALE), round(each.y * PNG_SCALE)
            right = round((each.x + each.wide) * PNG_SCALE) - 1
            bottom = round((each.y + each.high) * PNG_SCALE) - 1
            if right >= left and bottom >= top:
                draw.rectangle((left, top, right, bottom), fill=_triple(each.colour))
            continue
        if each.size not in fonts:
            fonts[each.size] = font_module.load_default(each.size * PNG_SCALE)
        place = (each.x * PNG_SCALE, each.y * PNG_SCALE)
        # The font at hand has one weight; a thin line around the letters makes them bold.
        stroke = 1 if each.bold else 0
        draw.text(
            place, each.text, font=fonts[each.size], fill=_triple(INK), anchor="ls", stroke_width=stroke
        )
    written = io.BytesIO()
    image.save(written, format="PNG")
    return written.getvalue()


def _triple(colour: Rgb) -> tuple[int, int, int]:
    return colour.red, colour.green, colour.blue


def _box(box: Box) -> str:
    return (
        f'<rect x="{box.x:g}" y="{box.y:g}" width="{box.wide:g}" height="{box.high:g}" '
        f'fill="{box.colour.hex}"/>'
    )


def _words(words: Words) -> str:
    weight = ' font-weight="bold"' if words.bold else ""
    return (
        f'<text x="{words.x:g}" y="{words.y:g}" font-size="{words.size:g}" fill="{INK.hex}"{weight}>'
        f"{escape(words.text)}</text>"
    )
