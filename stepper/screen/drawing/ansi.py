"""Rows as text for a terminal that is written to line by line. No I/O.

Source: ECMA-48, select graphic rendition; 256 and true colours as in ISO 8613-6, from memory.
"""

from __future__ import annotations

from typing import Final

from stepper.craft.colours.colour import Rgb
from stepper.screen.drawing.rows import Row, clean
from stepper.screen.drawing.style import INDEXED, SIXTEEN, Depth, Paint, match_colour

_RESET: Final = "\x1b[0m"


def write_ansi(row: Row, depth: Depth) -> str:
    """Write a row with the codes that paint it; without any if the terminal shows no colours."""
    if depth is Depth.NONE:
        return clean("".join(span.text for span in row)).rstrip()
    return "".join(_painted(clean(span.text), span.paint, depth) for span in row)


def _painted(text: str, paint: Paint, depth: Depth) -> str:
    codes = []
    if paint.bold:
        codes.append("1")
    if paint.reverse:
        codes.append("7")
    if paint.ink is not None:
        codes.append(_code(paint.ink, depth, ground=False))
    if paint.ground is not None:
        codes.append(_code(paint.ground, depth, ground=True))
    return f"\x1b[{';'.join(codes)}m{text}{_RESET}" if codes else text


def _code(colour: Rgb, depth: Depth, *, ground: bool) -> str:
    head = 48 if ground else 38
    if depth is Depth.TRUE:
        return f"{head};2;{colour.red};{colour.green};{colour.blue}"
    shown = match_colour(colour, depth)
    if depth is Depth.INDEXED:
        return f"{head};5;{16 + INDEXED.index(shown)}"
    number = list(SIXTEEN).index(shown)
    bright = 60 if number >= 8 else 0  # eight are plain and eight bright
    return str((40 if ground else 30) + bright + number % 8)
