from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.screen.course import course_of
from stepper.screen.drawing.rows import row_width, text_of
from stepper.screen.drawing.style import Badge, Depth, dim_colour, paint_badge
from stepper.screen.pages.strip import draw_strip, part_in_hand, window_of
from stepper.session.state import Knitting, Position, State
from stepper.session.steps import By
from tests.screen.scenes import COLOURS, garment, terminal, yarns

COURSE = course_of(garment())


def _state(index: int, stitch: int = 0, by: By = By.ROUND) -> State:
    return State(knitting=Knitting(place=Position(index=index, stitch=stitch), by=by))


def _strip(state: State, columns: int = 40, rows: int = 4, square: int = 1) -> list[str]:
    drawn = draw_strip(COURSE, state, yarns(), terminal(columns, 24), rows=rows, square=square)
    return [text_of(row).rstrip() for row in drawn]


def test_the_round_runs_from_right_to_left_between_its_neighbours() -> None:
    """Read by hand: 2 chalk, 3 pine, 2 chalk, 3 ember from the right edge; the step underlined."""
    above, here, under, below = _strip(_state(5, 0, By.COLOUR))

    assert here.endswith("BBB..AAA..    3◂")
    assert under.rstrip().endswith("▔▴")
    assert above.endswith("    4")
    assert below.endswith("+......    2✓")


@given(st.integers(0, 11), st.data(), st.sampled_from(By), st.integers(8, 90))
def test_the_window_holds_the_beginning_of_the_step(
    index: int, data: st.DataObject, by: By, columns: int
) -> None:
    """Wherever she is and however wide the screen, the next stitch is to be seen."""
    round_ = COURSE.rounds[index]
    stitch = data.draw(st.integers(0, max(0, round_.progress - 1)))
    part = part_in_hand(COURSE, _state(index, stitch, by))
    assert part is not None
    window = window_of(round_, part, columns)
    at = part.start if round_.side == "RS" else round_.progress - 1 - part.start

    assert 0 <= window.first <= at < window.end <= round_.progress
    assert window.end - window.first <= columns


@pytest.mark.parametrize("square", [1, 2])
def test_no_row_is_wider_than_the_screen(square: int) -> None:
    """For every round of the garment."""
    for index in range(len(COURSE.rounds)):
        for row in draw_strip(COURSE, _state(index), yarns(), terminal(40, 24), rows=7, square=square):
            assert row_width(row) <= 40


def test_shaped_rounds_stand_on_each_other_at_the_right_edge() -> None:
    """Fourteen stitches on, two increases on: the window over the increase begins two stitches less below."""
    state = _state(4, 42, By.REPEAT)
    drawn = _strip(state, columns=20)

    assert drawn[1].endswith("    2◂")
    assert len(drawn) == 4


def test_what_is_worked_is_dimmed_and_the_next_stitch_is_marked() -> None:
    """Bright is what is still to come, and the one in hand is found at once, in colour and without."""
    drawn = draw_strip(COURSE, _state(5, 21), yarns(), terminal(150, 24, Depth.TRUE), rows=4, square=2)
    chalk = COLOURS["MC"]
    assert chalk is not None
    grounds = [span.paint.ground for span in drawn[1]]
    assert {chalk, dim_colour(chalk)} <= set(grounds)
    assert grounds.index(dim_colour(chalk)) > grounds.index(chalk)
    assert sum(span.paint == paint_badge(Badge.ASKS, Depth.TRUE) for span in drawn[1]) == 1

    plain = draw_strip(COURSE, _state(5, 21), yarns(), terminal(150, 24), rows=4, square=2)
    hand = [text_of((span,)) for span in plain[1] if span.paint.reverse]
    assert hand == [" B"]
    assert text_of(plain[2]).count("▴") == 1


def test_when_all_is_done_there_is_no_strip() -> None:
    """Nothing is in hand."""
    assert _strip(_state(12)) == []
