"""A round drawn whole and cut to a window."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.screen.cells import SquareLook, chart_row, draw_square
from stepper.screen.chart_lines import ChartWindow, draw_window
from stepper.screen.course import course_of
from stepper.screen.drawing.rows import Row
from stepper.screen.drawing.style import Depth, Paint
from stepper.session.state import Position
from tests.screen.scenes import garment, terminal, yarns

COURSE = course_of(garment())
YARNS = yarns()


def _letters(row: Row) -> list[tuple[str, Paint]]:
    return [(letter, span.paint) for span in row for letter in span.text]


@settings(derandomize=True, max_examples=60, deadline=None)
@given(st.data(), st.integers(1, 2), st.sampled_from((Depth.TRUE, Depth.NONE)))
def test_a_cut_line_looks_like_its_squares_drawn_one_by_one(
    data: st.DataObject, square: int, depth: Depth
) -> None:
    """Drawing a round once and cutting it is only for speed: a wrong cut would show her stitches beside the
    place where they are."""
    index = data.draw(st.integers(0, len(COURSE.rounds) - 1))
    total = COURSE.stitches_in(index)
    here = data.draw(st.integers(max(0, index - 1), min(len(COURSE.rounds) - 1, index + 1)))
    stitch = data.draw(st.integers(0, COURSE.stitches_in(here)))
    first = data.draw(st.integers(0, total))
    wide = data.draw(st.integers(1, total + 3))
    screen = terminal(80, 24, depth)

    row = chart_row(COURSE, index)
    worked = total if index < here else stitch if index == here else 0
    wanted: list[tuple[str, Paint]] = []
    for number in range(min(first + wide, total) - 1, first - 1, -1):
        order = total - 1 - number if row.turned else number  # the number of the stitch as worked
        look = SquareLook(
            worked=order < worked,
            in_hand=index == here and order == worked,
            caught=number in row.caught,
            marker=square > 1 and number in row.marked,
        )
        wanted += _letters((draw_square(row.squares[number], YARNS, screen, square, look),))

    place = Position(index=here, stitch=stitch)
    window = ChartWindow(first=first, end=first + wide)
    drawn = _letters(draw_window(COURSE, index, window, wide, place, YARNS, screen, square))
    assert len(drawn) == wide * square
    assert drawn[len(drawn) - len(wanted) :] == wanted
    assert all(letter == " " for letter, _ in drawn[: len(drawn) - len(wanted)])


@pytest.mark.parametrize("square", [1, 2])
def test_a_window_beyond_the_round_is_empty(square: int) -> None:
    """A shorter round beside a longer one: where it has no stitch, there is nothing to read off."""
    total = COURSE.stitches_in(0)
    row = draw_window(
        COURSE,
        0,
        ChartWindow(first=total, end=total + 5),
        5,
        Position(),
        YARNS,
        terminal(40, 12),
        square,
    )
    assert "".join(span.text for span in row) == " " * 5 * square
