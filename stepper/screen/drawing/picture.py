"""The screen as a picture: the same rows a terminal shows, written as SVG. No I/O.

Block characters are drawn as rectangles, so that the picture looks the same whatever font a viewer has.
"""

from __future__ import annotations

from collections.abc import Sequence
from types import MappingProxyType
from typing import Final
from xml.sax.saxutils import escape, quoteattr

from stepper.craft.colours.colour import Rgb, rgb_from_hex
from stepper.screen.drawing.rows import Row, Span, text_width
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


def write_svg(rows: Sequence[Row], columns: int, *, title: str, ground: Rgb = GROUND, ink: Rgb = INK) -> str:
    """Write rows as a picture.

    Args:
        rows: From the top.
        columns: How wide the screen is.
        title: The picture's name, for those who cannot see it.
        ground: Colour used for the terminal's own background.
        ink: Colour used for its own text.
    """
    wide = columns * CELL[0] + 2 * _MARGIN
    high = len(rows) * CELL[1] + 2 * _MARGIN
    head = (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {wide} {high}" width="{wide}" height="{high}" '
        f'role="img" aria-label={quoteattr(show_unprintable(title))}>'
    )
    style = (
        f"<title>{escape(show_unprintable(title))}</title>"
        f'<rect width="{wide}" height="{high}" rx="8" fill="{ground.hex}"/>'
        f'<g font-family="DejaVu Sans Mono, Menlo, Consolas, monospace" font-size="{_SIZE}" '
        'xml:space="preserve" shape-rendering="crispEdges">'
    )
    drawn = [part for number, row in enumerate(rows) for part in _row(row, number, ground, ink)]
    return "\n".join([head, style, *drawn, "</g></svg>", ""])


def _row(row: Row, number: int, ground: Rgb, ink: Rgb) -> list[str]:
    parts, column = [], 0
    for span in row:
        parts += _span(span, column, number, ground, ink)
        column += text_width(span.text)
    return parts


def _span(span: Span, column: int, number: int, ground: Rgb, ink: Rgb) -> list[str]:
    """Draw a span: its background, then its block characters, then its letters word by word."""
    behind, letters = _colours(span.paint, ground, ink)
    left, top = _MARGIN + column * CELL[0], _MARGIN + number * CELL[1]
    parts = []
    if behind != ground:
        parts.append(_rectangle(left, top, text_width(span.text) * CELL[0], CELL[1], behind))
    word, word_at = "", 0
    at = 0
    run: tuple[str, int, int] | None = None
    for letter in f"{span.text} ":
        if letter in _BLOCKS or letter in _PAIRS or letter == " ":
            if word:
                parts.append(_letters(word, left + word_at * CELL[0], top, letters, bold=span.paint.bold))
            word = ""
        elif not word:
            word, word_at = letter, at
        else:
            word += letter
        if run is not None and run[0] != letter:
            parts += [_block((each, *run[1:]), left, top, letters) for each in _PAIRS.get(run[0], run[0])]
            run = None
        if letter in _BLOCKS or letter in _PAIRS:
            run = (letter, run[1] if run is not None else at, at + 1)
        at += text_width(letter)
    return parts


def _colours(paint: Paint, ground: Rgb, ink: Rgb) -> tuple[Rgb, Rgb]:
    behind, letters = paint.ground or ground, paint.ink or ink
    return (letters, behind) if paint.reverse else (behind, letters)


def _block(run: tuple[str, int, int], left: int, top: int, colour: Rgb) -> str:
    sign, first, end = run
    share = _BLOCKS[sign]
    return _rectangle(
        left + first * CELL[0] + share[0] * CELL[0],
        top + share[1] * CELL[1],
        (end - first - 1) * CELL[0] + (share[2] - share[0]) * CELL[0],
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
