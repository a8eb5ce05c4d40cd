"""A round as a line of the chart, drawn whole once and cut to the window that is in sight. No I/O.

A line is needed in two looks, worked and still to be worked; between them only the place parts them, and the
square in hand is drawn by itself. So a key that moves the window draws hardly a square anew.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterable
from functools import lru_cache
from itertools import accumulate

from stepper.records import dataclass
from stepper.screen.cells import CAUGHT, MARKER, ChartRow, Square, SquareLook, chart_row, draw_square
from stepper.screen.course import SummedPlan
from stepper.screen.drawing.rows import Row, Styled, join_spans
from stepper.screen.drawing.style import Terminal
from stepper.screen.yarns import Yarns
from stepper.session.state import Position


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartWindow:
    """Which stitches of a round are shown, counted from the chart's right edge."""

    first: int
    end: int
    """One past the last."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class _Line:
    """A whole round in one look, from the left edge of the chart."""

    spans: Row
    begins: tuple[int, ...]
    """The square with which each span begins, from 0 at the left edge. Shape: (spans,). Unit: stitches."""
    square: int
    """Letters of each square; they are as many columns wide."""

    def cut(self, first: int, end: int) -> Row:
        """Return the squares from one up to another, counted from the left edge."""
        if first >= end:
            return ()
        one, last = bisect_right(self.begins, first) - 1, bisect_right(self.begins, end - 1) - 1
        spans = self.spans[one : last + 1]
        into, over = (first - self.begins[one]) * self.square, (end - self.begins[last]) * self.square
        if one == last:
            return (Styled(spans[0].text[into:over], spans[0].paint),)
        head, tail = spans[0], spans[-1]
        return (Styled(head.text[into:], head.paint), *spans[1:-1], Styled(tail.text[:over], tail.paint))


@lru_cache(maxsize=512)
def _line_of(course: SummedPlan, index: int, drawn_with: _DrawnWith, *, worked: bool) -> _Line:
    """Draw a round whole in one look, and keep it from one key to the next."""
    drawn, square = chart_row(course, index), drawn_with.square
    looks = drawn_with.looks[worked]
    cells = [looks[each, ""] for each in drawn.squares]
    for number, extra in _list_extras(drawn, square):
        if 0 <= number < len(cells):
            cells[number] = looks[drawn.squares[number], extra]
    spans = join_spans(reversed(cells))
    begins = (0, *accumulate(len(span.text) // square for span in spans))[: len(spans)]
    return _Line(spans=spans, begins=begins, square=square)


def _list_extras(drawn: ChartRow, square: int) -> Iterable[tuple[int, str]]:
    """List the squares with a sign beside that of the stitch: a catch, or a marker, for which one letter has
    no room and which is the more important of the two."""
    yield from ((each, CAUGHT) for each in drawn.caught)
    if square > 1:
        yield from ((each, MARKER) for each in drawn.marked)


class _Looks(dict[tuple[Square, str], Styled]):
    """How each kind of square looks, with a sign beside it or none, drawn when it is first met: a round has
    many squares of few kinds."""

    def __init__(self, yarns: Yarns, terminal: Terminal, columns: int, *, worked: bool) -> None:
        super().__init__()
        self._drawn_with = yarns, terminal, columns
        self._worked = worked

    def __missing__(self, kind: tuple[Square, str]) -> Styled:
        square, extra = kind
        look = SquareLook(worked=self._worked, caught=extra == CAUGHT, marker=extra == MARKER)
        self[kind] = span = draw_square(square, *self._drawn_with, look)
        return span


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class _DrawnWith:
    """What a line is drawn with besides the round; one for each size of the screen."""

    square: int
    looks: tuple[_Looks, _Looks]
    """The squares still to be worked, and those that are."""


@lru_cache(maxsize=8)
def _drawn_with(yarns: Yarns, terminal: Terminal, square: int) -> _DrawnWith:
    """Keep the looks from one key to the next."""
    ahead, done = (_Looks(yarns, terminal, square, worked=each) for each in (False, True))
    return _DrawnWith(square=square, looks=(ahead, done))


def draw_window(
    course: SummedPlan,
    index: int,
    window: ChartWindow,
    wide: int,
    place: Position,
    yarns: Yarns,
    terminal: Terminal,
    square: int,
) -> Row:
    """Draw one round through a window.

    Args:
        course: What is knitted.
        index: Which round.
        window: Which of its stitches.
        wide: How many stitches there is room for; a shorter round stands at the right edge. Unit: stitches.
        place: Where the knitting stands.
        yarns: Their colours and signs.
        terminal: The terminal to draw on.
        square: How wide a stitch is. Range: 1 and up. Unit: columns.
    """
    total, drawn_with = course.stitches_in(index), _drawn_with(yarns, terminal, square)
    end = max(window.first, min(window.end, total))
    missing = Styled(" " * (wide - end + window.first) * square)
    # From the left edge, the squares in sight begin and end here.
    left, right = total - end, total - window.first
    if index != place.index:
        return (missing, *_line_of(course, index, drawn_with, worked=index < place.index).cut(left, right))
    drawn = chart_row(course, index)
    ahead, done = (_line_of(course, index, drawn_with, worked=each) for each in (False, True))
    one, other = (done, ahead) if drawn.turned else (ahead, done)
    hand = place.stitch if drawn.turned else total - 1 - place.stitch
    if not left <= hand < right:
        parting = max(left, min(right, hand if drawn.turned else hand + 1))
        return (missing, *join_spans((*one.cut(left, parting), *other.cut(parting, right))))
    number = total - 1 - hand
    marker = square > 1 and number in drawn.marked
    look = SquareLook(in_hand=True, caught=number in drawn.caught, marker=marker)
    in_hand = draw_square(drawn.squares[number], yarns, terminal, square, look)
    return (missing, *join_spans((*one.cut(left, hand), in_hand, *other.cut(hand + 1, right))))
