"""The yoke from above, as it would lie on a table: ring by ring in the terminal's cells. No I/O.

What is worked is dimmed and what is still to come is bright, as on every page; a finished yoke is all bright.

Each ring is a round, with the neck inside. The radius is proportional to the number of stitches, so the
picture is round if the yoke lies flat. The beginning of the round is at the top, the centre back; seen from
above the work runs clockwise, because it runs to the left for someone facing it. Two points of the picture
share a cell, one above the other; without colours every cell shows the sign of its yarn.
"""

from __future__ import annotations

import math
from bisect import bisect_left
from collections.abc import Iterator, Sequence
from functools import lru_cache
from itertools import accumulate, groupby
from typing import Final, NamedTuple

from stepper.craft.colours.colour import Rgb
from stepper.plan.yoke import yoke_of
from stepper.records import dataclass
from stepper.screen.cells import draw_squares
from stepper.screen.course import SummedPlan
from stepper.screen.drawing.layout import Block, stack_blocks
from stepper.screen.drawing.rows import Row, Styled, join_spans, row, row_width
from stepper.screen.drawing.style import BOLD, PLAIN, Depth, Paint, Terminal, dim_colour, match_colour
from stepper.screen.pages.bottom_row import draw_bottom_row
from stepper.screen.scene import Scene
from stepper.screen.yarns import Yarns

_NO_YOKE: Final = " This garment has no yoke worked in the round."
_NO_COLOUR: Final = Rgb(160, 160, 160)
# For a yarn whose colour the file does not give.


@dataclass(frozen=True, slots=True, kw_only=True)
class Rings:
    """The rounds of a yoke, from the neck outwards."""

    first: int
    """Index of the innermost round."""
    yarns: tuple[tuple[str, ...], ...]
    """For each round the yarn of each stitch, in working order."""
    signs: tuple[tuple[str, ...], ...]
    """For each round the sign of each stitch; empty for a plain one."""
    inner: float
    """Radius of the neck, as a share of the whole. Range: above 0, below 1."""


@lru_cache(maxsize=4)
def rings_of(course: SummedPlan) -> Rings | None:
    """Find the rounds of the yoke.

    None if there is no yoke worked in the round.
    """
    yoke = yoke_of(course.rounds)
    if yoke is None:
        return None
    chosen = yoke.rounds
    drawn = [draw_squares(each) for each in chosen]
    return Rings(
        first=chosen[0].index,
        yarns=tuple(tuple(square.yarn for square in each) for each in drawn),
        signs=tuple(tuple(square.sign for square in each) for each in drawn),
        inner=yoke.inner,
    )


def draw_yoke_page(scene: Scene, terminal: Terminal) -> list[Row]:
    """Draw the page. Always: as many rows as the terminal has."""
    rings = rings_of(scene.course)
    picture = [row(_NO_YOKE)]
    if rings is not None:
        drawn = _picture(rings, scene, terminal, terminal.columns, _room(terminal))
        picture = _centred(drawn, terminal.columns)
    blocks = [
        Block(rank=1, rows=[_head(terminal.columns)]),
        Block(rank=0, rows=picture, least=1),
        Block(rank=9, grown=lambda rows: [()] * rows),
        Block(rank=2, rows=[draw_bottom_row(scene, terminal)]),
    ]
    return stack_blocks(blocks, terminal.columns, terminal.rows)


def _head(columns: int) -> Row:
    """Write what is to be seen, and where what is, as far as there is room for whole words."""
    heads: list[Row] = [
        (Styled(" From above", BOLD), Styled(f"   {where}" if where else ""))
        for where in ("neck inside, centre back at the top", "neck inside", "")
    ]
    return next((head for head in heads if row_width(head) <= columns), heads[-1])


def draw_yoke(scene: Scene, terminal: Terminal, columns: int, rows: int) -> list[Row]:
    """Draw the yoke alone, as large as there is room for.

    Args:
        scene: What there is to show.
        terminal: The terminal to draw on.
        columns: Room. Unit: columns.
        rows: Room. Unit: rows.

    Returns:
        Rows of one width; none if there is no yoke.
    """
    rings = rings_of(scene.course)
    return [] if rings is None else _picture(rings, scene, terminal, columns, rows)


def _centred(rows: list[Row], columns: int) -> list[Row]:
    """Put rows of one width in the middle."""
    margin = Styled(" " * ((columns - row_width(rows[0])) // 2))
    return [(margin, *each) for each in rows]


def _picture(rings: Rings, scene: Scene, terminal: Terminal, columns: int, room: int) -> list[Row]:
    """Draw the yoke in some room."""
    picture = _picture_of(scene.course, scene.yarns, *_measure(terminal, columns, room))
    worked = _dimmed(rings, scene)
    return [picture.draw(line, worked) for line in range(picture.lines)]


def _measure(terminal: Terminal, columns: int, room: int) -> tuple[int, int, Depth]:
    """Return the points across the picture, how many of them share a cell, and the colours there are."""
    halves = 2 if terminal.depth is not Depth.NONE and (terminal.blocks or terminal.solid) else 1
    # A cell is twice as high as wide: half a cell is a square point; without halves, two columns make one.
    across = 1 if halves == 2 else 2
    size = max(4, min(columns // across, room * halves))
    return size - size % 2, halves, terminal.depth


def prepare_yoke(scene: Scene, terminal: Terminal) -> Iterator[None]:
    """Draw the page ahead, one row with each step, so that the first turn to it is as quick as any other."""
    yoke = yoke_of(scene.course.rounds)
    if yoke is None:
        return
    yield
    for round_ in yoke.rounds:
        draw_squares(round_)
        yield
    rings = rings_of(scene.course)
    assert rings is not None
    yield
    picture = _picture_of(scene.course, scene.yarns, *_measure(terminal, terminal.columns, _room(terminal)))
    yield
    for line in range(picture.lines):
        picture.draw(line, _dimmed(rings, scene))
        yield


def _room(terminal: Terminal) -> int:
    """Return the rows of the page that are the picture's."""
    return max(1, terminal.rows - 2)


def _dimmed(rings: Rings, scene: Scene) -> int:
    """Count the stitches of the yoke that are dimmed: none if all is done and nothing is left to tell apart.

    Unit: stitches.
    """
    place = scene.state.place
    if place.index >= len(scene.course.rounds):
        return 0
    ring = place.index - rings.first
    whole = sum(len(each) for each in rings.yarns[: max(0, ring)])
    return whole + (place.stitch if 0 <= ring < len(rings.yarns) else 0)


class _Point(NamedTuple):
    """A stitch of the yoke."""

    number: int
    """How many stitches of the yoke are worked before it. Unit: stitches."""
    ring: int
    stitch: int
    yarn: str


_Line = tuple[_Point | None, ...]


class _Picture:
    """The yoke at one size in the terminal's cells; a row is drawn anew only if something in it has changed.

    Which stitch a point shows depends on garment and size alone, and how a row looks on how many of its
    stitches are worked.
    """

    def __init__(self, course: SummedPlan, yarns: Yarns, size: int, halves: int, depth: Depth) -> None:
        rings = rings_of(course)
        assert rings is not None
        self.lines = size // halves
        """Rows of the screen."""
        self._rings, self._yarns, self._size, self._halves = rings, yarns, size, halves
        self._before = (0, *accumulate(map(len, rings.yarns)))
        self._points: dict[int, tuple[_Line, ...]] = {}
        self._numbers: dict[int, list[int]] = {}
        self._drawn: dict[int, tuple[int, Row]] = {}
        keys = {yarn for ring in rings.yarns for yarn in ring}
        colours = {yarn: yarns.of(yarn).colour or _NO_COLOUR for yarn in keys}
        self._bright = {yarn: match_colour(colour, depth) for yarn, colour in colours.items()}
        self._faint = {yarn: match_colour(dim_colour(colour), depth) for yarn, colour in colours.items()}

    def draw(self, line: int, worked: int) -> Row:
        """Draw a row.

        Args:
            line: Which, from 0 at the top.
            worked: How many stitches of the yoke are shown as worked. Unit: stitches.
        """
        points = self._points_of(line)
        count = bisect_left(self._numbers[line], worked)
        known = self._drawn.get(line)
        if known is not None and known[0] == count:
            return known[1]
        upper, lower = points[0], points[-1]
        signs = self._halves == 1
        row = self._draw_signs(upper, worked) if signs else self._draw_halves(upper, lower, worked)
        self._drawn[line] = count, row
        return row

    def _points_of(self, line: int) -> tuple[_Line, ...]:
        """Find the stitches of a row, once."""
        known = self._points.get(line)
        if known is None:
            heights = range(line * self._halves, (line + 1) * self._halves)
            known = tuple(
                tuple(_point(self._rings, self._before, x, y, self._size) for x in range(self._size))
                for y in heights
            )
            self._points[line] = known
            self._numbers[line] = sorted(point.number for each in known for point in each if point)
        return known

    def _draw_halves(self, upper: _Line, lower: _Line, worked: int) -> Row:
        """Draw two lines of points in one row of cells."""
        columns = zip(self._colours_of(upper, worked), self._colours_of(lower, worked), strict=True)
        return tuple(_cells(top, bottom, len(list(same))) for (top, bottom), same in groupby(columns))

    def _colours_of(self, line: _Line, worked: int) -> list[Rgb | None]:
        """Return the colours of a line of points; None where there is no fabric."""
        bright, faint = self._bright, self._faint
        return [
            None if point is None else (faint if point[0] < worked else bright)[point[3]] for point in line
        ]

    def _draw_signs(self, line: _Line, worked: int) -> Row:
        """Draw a line of points as signs: those to come bold."""
        spans: list[Styled] = []
        for point in line:
            if point is None:
                spans.append(Styled("  "))
                continue
            sign = self._rings.signs[point.ring][point.stitch] or self._yarns.of(point.yarn).sign
            spans.append(Styled(f"{sign} ", PLAIN if point.number < worked else BOLD))
        return join_spans(spans)


@lru_cache(maxsize=4)
def _picture_of(course: SummedPlan, yarns: Yarns, size: int, halves: int, depth: Depth) -> _Picture:
    """Keep the picture from one key to the next."""
    return _Picture(course, yarns, size, halves, depth)


def _point(rings: Rings, before: Sequence[int], x: int, y: int, size: int) -> _Point | None:
    """Find the stitch at a point of the picture; None outside the yoke or inside the neck."""
    east, south = (x + 0.5) / size * 2 - 1, (y + 0.5) / size * 2 - 1
    radius = math.hypot(east, south)
    count = len(rings.yarns)
    if not rings.inner <= radius < 1:
        return None
    ring = min(count - 1, int((radius - rings.inner) / (1 - rings.inner) * count))
    turn = math.atan2(east, -south) / (2 * math.pi) % 1
    stitches = len(rings.yarns[ring])
    stitch = min(stitches - 1, int(turn * stitches))
    return _Point(before[ring] + stitch, ring, stitch, rings.yarns[ring][stitch])


@lru_cache(maxsize=1024)
def _cells(top: Rgb | None, bottom: Rgb | None, columns: int) -> Styled:
    """Draw cells of two points each, one above the other."""
    if top is None and bottom is None:
        return Styled(" " * columns)
    if bottom is None or top is None:
        # A lone half on the terminal's own background: a block, not text, so no contrast is needed.
        return Styled(("▀" if bottom is None else "▄") * columns, Paint(ink=top or bottom))
    return Styled("▀" * columns, Paint(ground=bottom, ink=top))
