"""Read charts drawn as a picture: one pixel, or one square block of pixels, for each stitch. No I/O.

Every pixel is matched to the nearest yarn, or colour of the key, by CIEDE2000; a colour that is near none is
reported with its place. Transparent pixels are `no stitch`. Blocks are the largest squares that are each of
one kind; if the file does not say how many stitches wide the picture is, that is a guess, and the knitter is
told.
"""

from __future__ import annotations

from collections.abc import Mapping
from math import gcd

from stepper.craft.colours.colour import Lab, Rgb, lab
from stepper.craft.colours.colour_difference import colour_difference
from stepper.project.keys.charts import MAX_ROUNDS, MAX_WIDTH
from stepper.project.model import Cell, Chart
from stepper.project.problems import Problem, Span
from stepper.records import dataclass

TOLERANCE = 10.0
"""Farthest a pixel may be from the colour of its yarn. Unit: CIEDE2000. A convention of this project: colours
that far apart are still called by the same name, while the yarns of one chart are told apart at a glance."""
APART = 2.0
"""How much nearer one yarn must be than the next; else the pixel could be either. Unit: CIEDE2000."""
MAX_PIXELS = 4_000_000
"""Largest picture: 500 by 500 stitches of four by four pixels. Unit: pixels."""
MAX_COLOURS = 2_000
"""Most colours of a picture. A chart has a dozen; one that was scanned or smoothed has some hundreds."""
_MOST_TOLD = 5
_SEEN_THROUGH = 128
"""Opacity below which a pixel is no stitch. Range: 0 to 255."""

Pixel = tuple[int, int, int, int]
"""Red, green, blue, opacity. Range: 0 to 255 each."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Pixels:
    """A picture as it was read."""

    width: int
    height: int
    rows: tuple[tuple[Pixel, ...], ...]
    """Rows from the top down, each from left to right."""


def chart_of_picture(
    name: str,
    pixels: Pixels,
    colours: Mapping[str, Cell],
    place: Span,
    *,
    stitches: int | None = None,
) -> tuple[Chart | None, list[Problem]]:
    """Make a chart from a picture.

    Args:
        name: Name of the chart.
        pixels: The picture.
        colours: What each colour stands for, by `#rrggbb`.
        place: Where the picture is named in the file.
        stitches: How many stitches wide it is; None if the file does not say.

    Returns:
        The chart, or None with the problems that stopped it.
    """
    cells, unmatched = _matched(pixels, colours)
    block = pixels.width // stitches if stitches and pixels.width % stitches == 0 else 0
    if stitches and not (block and pixels.height % block == 0):
        size = f"{pixels.width} by {pixels.height} pixels"
        return None, [place.problem(f"the picture is {size}, which {stitches} squares across do not fill.")]
    known = block or _block(cells)
    if unmatched:
        return None, [place.problem(*_told(name, pixels, known, spot, why)) for spot, why in unmatched]
    if pixels.width // known > MAX_WIDTH or pixels.height // known > MAX_ROUNDS:
        return None, [place.problem(f"the picture is larger than {MAX_WIDTH} by {MAX_ROUNDS} stitches.")]
    mixed = _mixed(cells, known)
    if mixed is not None:
        row, column = mixed
        stitch, round_ = (pixels.width - column) // known, (pixels.height - row) // known
        message = (
            f"the square of stitch {stitch} of round {round_}, from pixel {column + 1}, {row + 1} on, "
            "holds more than one colour."
        )
        return None, [place.problem(message, "Draw each stitch as one square of one colour, without lines.")]
    rounds = tuple(row[::known] for row in reversed(cells[::known]))
    caution = ""
    if known > 1 and not block:
        caution = (
            f'the picture of chart "{name}" is read as {len(rounds[0])} stitches by {len(rounds)} rounds, '
            f"{known} pixels each; write `stitches:` and how many it is wide if that is wrong."
        )
    return Chart(name=name, rounds=rounds, place=place, caution=caution), []


_Rows = tuple[tuple[Cell, ...], ...]


def _matched(
    pixels: Pixels, colours: Mapping[str, Cell]
) -> tuple[_Rows, list[tuple[tuple[int, int, Pixel], str]]]:
    """Return what each pixel stands for, and the first place of each colour that matches nothing."""
    known = [(code, lab(_rgb(code)), cell) for code, cell in colours.items()]
    seen: dict[Pixel, Cell] = {}
    lost: list[tuple[tuple[int, int, Pixel], str]] = []
    for y in reversed(range(pixels.height)):  # from the bottom, as rounds are counted
        for x, pixel in enumerate(pixels.rows[y]):
            if pixel in seen:
                continue
            if pixel[3] < _SEEN_THROUGH:
                seen[pixel] = Cell("", None)
                continue
            found, why = _nearest(lab(Rgb(*pixel[:3])), known)
            seen[pixel] = found or Cell("?", str(pixel))  # a separate kind, so that squares are found
            if found is None:
                lost.append(((x, y, pixel), why))
    return tuple(tuple(seen[pixel] for pixel in row) for row in pixels.rows), lost[:_MOST_TOLD]


def _rgb(code: str) -> Rgb:
    return Rgb(int(code[1:3], 16), int(code[3:5], 16), int(code[5:7], 16))


def _nearest(colour: Lab, known: list[tuple[str, Lab, Cell]]) -> tuple[Cell | None, str]:
    """Return what a colour stands for; or None, and why."""
    ranked = sorted(((colour_difference(colour, other), code, cell) for code, other, cell in known), key=_far)
    if not ranked:
        return None, "no yarn of this file has a colour"
    apart, code, cell = ranked[0]
    if apart > TOLERANCE:
        return None, f"the nearest, {_meant(code, cell)}, is too far from it"
    others = [(far, near, other) for far, near, other in ranked[1:] if other != cell and far - apart < APART]
    if others:
        _, near, other = others[0]
        return None, f"it could be {_meant(code, cell)} or {_meant(near, other)}"
    return cell, ""


def _far(entry: tuple[float, str, Cell]) -> float:
    return entry[0]


def _meant(code: str, cell: Cell) -> str:
    return f"{code} ({cell.yarn or cell.stitch or 'no stitch'})"


def _told(name: str, pixels: Pixels, block: int, spot: tuple[int, int, Pixel], why: str) -> tuple[str, str]:
    """Say where a colour is that matches nothing, and what to do about it."""
    x, y, pixel = spot
    code = Rgb(*pixel[:3]).hex
    at = f"pixel {x + 1}, {y + 1} from the top left"
    if pixels.width // block <= MAX_WIDTH:
        stitch, round_ = (pixels.width - x - 1) // block + 1, (pixels.height - y - 1) // block + 1
        at = f"stitch {stitch} of round {round_} ({at})"
    return (
        f'chart "{name}" has the colour {code} at {at}: {why}.',
        f'Say what it is in the key of the chart, as "{code}": A, or give a yarn that colour.',
    )


def _block(cells: _Rows) -> int:
    """Return the side of the largest squares that are each of one kind. Unit: pixels."""
    height, width = len(cells), len(cells[0])
    side = gcd(width, height)
    for y in range(1, height):
        if cells[y] != cells[y - 1]:
            side = gcd(side, y)
    for y, row in enumerate(cells):
        if side == 1:
            return 1
        if y and row == cells[y - 1]:
            continue
        for x in range(1, width):
            if row[x] != row[x - 1]:
                side = gcd(side, x)
    return side


def _mixed(cells: _Rows, block: int) -> tuple[int, int] | None:
    """Find a square of more than one kind: row and column of its first pixel."""
    for y in range(0, len(cells), block):
        rows = cells[y : y + block]
        if all(row == rows[0] for row in rows):
            rows = rows[:1]
        for x in range(0, len(cells[0]), block):
            if len({cell for row in rows for cell in row[x : x + block]}) > 1:
                return y, x
    return None
