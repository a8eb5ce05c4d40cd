"""A chart shown several times side by side, each time as other eyes see it. No I/O.

In the panel in colour every square has its yarn's letter; in the others it has none, so that what those eyes
cannot see does vanish. Without colours a digit says how light a square is: 0 black to 9 white.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from stepper.craft.colours.colour import Rgb, lightness, luminance
from stepper.screen.drawing.rows import Row, Styled, join_spans, pad, put_beside, row, row_width
from stepper.screen.drawing.style import BOLD, Depth, paint_ground

SQUARE = 2
"""Columns of a square, so that it is about as wide as high."""
_GAP = 3

Squares = Sequence[Sequence[str | None]]


def draw_panel(
    title: str, squares: Squares, signs: Mapping[str, str], colours: Mapping[str, Rgb], depth: Depth
) -> list[Row]:
    """Draw a chart under its title.

    Args:
        title: What it is drawn as: `in grey`.
        squares: Keys of the yarns, rounds from the top, squares from the left; empty for no stitch.
        signs: The letter of each yarn to put into its squares; empty to put none.
        colours: The colour of each yarn; one that has none is shown by its letter.
        depth: What the terminal shows.
    """
    wide = max([len(title), *(len(line) * SQUARE for line in squares)])
    drawn = [join_spans(_square(key, signs, colours, depth) for key in line) for line in squares]
    return [pad(row(title, BOLD), wide), *(pad(line, wide) for line in drawn)]


def put_side_by_side(panels: Sequence[list[Row]], columns: int) -> list[Row]:
    """Put as many panels beside each other as fit, the others below.

    Args:
        panels: Each with rows of one width.
        columns: How wide the terminal is.
    """
    lines: list[list[Row]] = []
    for each in panels:
        used = row_width(lines[-1][0]) + _GAP if lines else columns
        if used + row_width(each[0]) <= columns:
            lines[-1] = put_beside(lines[-1], each, at=used)
        else:
            lines.append(each)
    return [row for number, line in enumerate(lines) for row in ([()] if number else []) + line]


def _square(key: str | None, signs: Mapping[str, str], colours: Mapping[str, Rgb], depth: Depth) -> Styled:
    if key is None:
        return Styled(" " * SQUARE)
    colour = colours.get(key)
    sign = signs.get(key, "")
    if colour is None or depth is Depth.NONE:
        sign = sign or ("?" if colour is None else str(_tenth(colour)))
        return Styled(sign.rjust(SQUARE))
    return Styled(sign.rjust(SQUARE), paint_ground(colour, depth))


def _tenth(colour: Rgb) -> int:
    return min(9, int(lightness(luminance(colour)) / 10))
