"""The screen as a picture: the same rows a terminal shows, written as SVG. No I/O.

Block characters are drawn as rectangles, so that the picture looks the same whatever font a viewer has.
"""

from __future__ import annotations

from collections.abc import Sequence
from types import MappingProxyType
from typing import Final
from xml.sax.saxutils import escape, quoteattr

from stepper.craft.colours.colour import Rgb, rgb_from_hex
from stepper.regex import regex
from stepper.screen.drawing.rows import Row, Styled, text_width
from stepper.screen.drawing.style import Paint
from stepper.screen.drawing.unprintable import blank_unprintable, show_unprintable

CELL: Final = (9, 19)
"""Width and height of a cell. Unit: user units of the picture."""
GROUND: Final = rgb_from_hex("#16181d")
INK: Final = rgb_from_hex("#f2efe9")
"""Used for the terminal's own colours."""
_MARGIN: Final = 12
_BASELINE: Final = 14
_SIZE: Final = 15

# Share of a cell that a block character fills: left, top, right, bottom.
_BLOCKS: Final = MappingProxyType(
    {
        "█": (0.0, 0.0, 1.0, 1.0),
        "▀": (0.0, 0.0, 1.0, 0.5),
        "▄": (0.0, 0.5, 1.0, 1.0),
        "▔": (0.0, 0.0, 1.0, 0.14),
        "─": (0.0, 0.46, 1.0, 0.54),
        "┃": (0.4, 0.0, 0.6, 1.0),
        "╵": (0.42, 0.0, 0.58, 0.5),
        "▏": (0.0, 0.0, 0.12, 1.0),
        "▘": (0.0, 0.0, 0.5, 0.5),
        "▝": (0.5, 0.0, 1.0, 0.5),
        "▖": (0.0, 0.5, 0.5, 1.0),
        "▗": (0.5, 0.5, 1.0, 1.0),
        "▌": (0.0, 0.0, 0.5, 1.0),
        "▐": (0.5, 0.0, 1.0, 1.0),
        "░": (0.0, 0.42, 1.0, 0.58),
    }
)


_PAIRS: Final = MappingProxyType({"▛": "▀▖", "▜": "▀▗", "▙": "▄▘", "▟": "▄▝", "▚": "▘▗", "▞": "▝▖"})
# Block characters that are drawn as two of those above.
_ALL: Final = "".join((*_BLOCKS, *_PAIRS))
_PARTS: Final = regex(f"([{_ALL}])\\1*|[^ {_ALL}]+")
# The same block character several times, or a word.


def write_svg(rows: Sequence[Row], columns: int, *, title: str) -> str:
    """Write rows as a picture.

    Args:
        rows: From the top.
        columns: How wide the screen is.
        title: The picture's name, for those who cannot see it.
    """
    wide = columns * CELL[0] + 2 * _MARGIN
    high = len(rows) * CELL[1] + 2 * _MARGIN
    head = (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {wide} {high}" width="{wide}" height="{high}" '
        f'role="img" aria-label={quoteattr(show_unprintable(title))}>'
    )
    style = (
        f"<title>{escape(show_unprintable(title))}</title>"
        f'<rect width="{wide}" height="{high}" rx="8" fill="{GROUND.hex}"/>'
        f'<g font-family="DejaVu Sans Mono, Menlo, Consolas, monospace" font-size="{_SIZE}" '
        'xml:space="preserve" shape-rendering="crispEdges">'
    )
    drawn = [part for number, row in enumerate(rows) for part in _row(row, number)]
    return "\n".join([head, style, *drawn, "</g></svg>", ""])


def _row(row: Row, number: int) -> list[str]:
    parts, column = [], 0
    for span in row:
        parts += _span(span, column, number)
        column += text_width(span.text)
    return parts


def _span(span: Styled, column: int, number: int) -> list[str]:
    """Draw a span: its background, then its block characters and its letters word by word."""
    behind, letters = _colours(span.paint)
    left, top = _MARGIN + column * CELL[0], _MARGIN + number * CELL[1]
    parts = []
    if behind != GROUND:
        parts.append(_rectangle(left, top, text_width(span.text) * CELL[0], CELL[1], behind))
    for found in _PARTS.finditer(span.text):
        at, sign = left + text_width(span.text[: found.start()]) * CELL[0], found[1]
        if sign is None:
            parts.append(_letters(found[0], at, top, letters, bold=span.paint.bold))
        else:
            parts += [_block(each, len(found[0]), at, top, letters) for each in _PAIRS.get(sign, sign)]
    return parts


def _colours(paint: Paint) -> tuple[Rgb, Rgb]:
    behind, letters = paint.ground or GROUND, paint.ink or INK
    return (letters, behind) if paint.reverse else (behind, letters)


def _block(sign: str, times: int, left: int, top: int, colour: Rgb) -> str:
    share = _BLOCKS[sign]
    return _rectangle(
        left + share[0] * CELL[0],
        top + share[1] * CELL[1],
        (times - 1) * CELL[0] + (share[2] - share[0]) * CELL[0],
        (share[3] - share[1]) * CELL[1],
        colour,
    )


def _rectangle(left: float, top: float, wide: float, high: float, colour: Rgb) -> str:
    return f'<rect x="{left:g}" y="{top:g}" width="{wide:g}" height="{high:g}" fill="{colour.hex}"/>'


def _letters(word: str, left: int, top: int, colour: Rgb, *, bold: bool) -> str:
    weight = ' font-weight="bold"' if bold else ""
    length = text_width(word) * CELL[0]
    return (
        f'<text x="{left}" y="{top + _BASELINE}" textLength="{length}" lengthAdjust="spacingAndGlyphs" '
        f'fill="{colour.hex}"{weight}>{escape(blank_unprintable(word))}</text>'
    )
