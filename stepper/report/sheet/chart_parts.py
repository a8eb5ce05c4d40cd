"""A chart cut into parts that fit the sheet with squares large enough to read. Pure."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import pairwise
from typing import Final

from stepper.craft.stitches import Kind, stitch
from stepper.language.measures import plural
from stepper.project.model import Cell, Chart
from stepper.records import dataclass

MOST_MM: Final = 5.2
"""Side of a square on paper, where there is room. Chosen here. Unit: mm."""
LEAST_MM: Final = 4.2
"""Side of a square on paper below which a chart is cut into parts. Chosen here: the letter in it is then
about as high as that of a 10 pt line. Unit: mm."""
SHEET_MM: Final = (184.0, 240.0)
"""What a chart may take of a sheet: across between the margins on A4, down below a heading on A4 or Letter,
where it has to shrink a little. Unit: mm."""
ASIDE: Final = 3.2
"""What the numbers take beside a chart. Unit: squares."""
BELOW: Final = 2.72
"""What the numbers take below it. Unit: squares."""


@dataclass(frozen=True, slots=True)
class DrawnPart:
    """A part of a chart that is drawn by itself."""

    left: int
    """First square of a line, from 0 at the left."""
    right: int
    """Square behind the last."""
    below: int
    """First round, from 0 at the bottom."""
    above: int
    """Round behind the last."""


def whole_chart(chart: Chart) -> DrawnPart:
    """Return the part that is all of a chart."""
    return DrawnPart(0, chart.width, 0, len(chart.rounds))


def cut_chart(chart: Chart) -> tuple[DrawnPart, ...]:
    """Cut a chart that is too large for the sheet into parts whose squares can be read.

    Returns:
        The parts in reading order: from the right, where a round begins, to the left, and those of the first
        rounds first. One part, if the whole chart fits with squares of `LEAST_MM` or more.
    """
    columns = _cut(chart.width, _fitting(SHEET_MM[0], ASIDE), _between_stitches(chart))
    lines = _cut(len(chart.rounds), _fitting(SHEET_MM[1], BELOW), range(len(chart.rounds) + 1))
    return tuple(
        DrawnPart(left, right, below, above)
        for below, above in pairwise(lines)
        for left, right in reversed(list(pairwise(columns)))
    )


def _fitting(room_mm: float, margin: float) -> int:
    """Return how many squares of the least size fit."""
    return int(room_mm / LEAST_MM - margin)


def _cut(count: int, most: int, allowed: Iterable[int]) -> list[int]:
    """Cut a row of squares into as few equal stretches as fit, at the nearest allowed places."""
    parts = -(-count // most)
    places = list(allowed)
    inner = {min(places, key=lambda place: abs(place - count * each / parts)) for each in range(1, parts)}
    return [0, *sorted(inner - {0, count}), count]


def _between_stitches(chart: Chart) -> list[int]:
    """List where a chart may be cut from top to bottom: through no cable."""
    free = set(range(chart.width + 1))
    for cells in chart.rounds:
        free &= {column for column, _, _ in list_worked(cells)} | {chart.width}
    return sorted(free | {0})


def square_mm(part: DrawnPart) -> float:
    """Return how large the squares of a part are on paper: as large as the sheet allows. Unit: mm."""
    across = SHEET_MM[0] / (part.right - part.left + ASIDE)
    down = SHEET_MM[1] / (part.above - part.below + BELOW)
    return min(MOST_MM, across, down)


def name_part(chart: Chart, part: DrawnPart) -> str:
    """Say which part of a chart it is: "10 stitches, 5 rounds", or "stitches 1 to 32 of 64, rounds 1 to
    40"."""
    word = "row" if chart.right_side_only else "round"
    if part == whole_chart(chart):
        return f"{plural(chart.width, 'stitch', 'stitches')}, {plural(len(chart.rounds), word)}"
    said = f"stitches {chart.width - part.right + 1} to {chart.width - part.left} of {chart.width}"
    first, last = number_of(chart, part.below + 1), number_of(chart, part.above)
    return f"{said}, {word}s {first} to {last}"


def number_of(chart: Chart, place: int) -> str:
    """Return the number of a round by its place from 1 at the bottom."""
    return str(2 * place - 1 if chart.right_side_only else place)


def list_worked(cells: tuple[Cell, ...]) -> Iterator[tuple[int, Cell, int]]:
    """Yield what is worked, from left to right: its first square, the stitch, and how many squares it takes.

    A cable stands in the first of its squares, and the others hold no stitch.
    """
    column = 0
    while column < len(cells):
        cell, wide = cells[column], 1
        entry = stitch(cell.stitch) if cell.stitch else None
        if entry is not None and entry.kind is Kind.CABLE:
            beside = cells[column + 1 : column + entry.uses]
            if len(beside) == entry.uses - 1 and not any(each.stitch for each in beside):
                wide = entry.uses
        yield column, cell, wide
        column += wide
