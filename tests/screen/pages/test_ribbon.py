from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from stepper.screen.drawing.rows import text_of
from stepper.screen.pages.ribbon import draw_ribbon
from tests.screen.scenes import garment

ROUNDS = garment().rounds


@given(st.integers(1, 200), st.integers(0, 11), st.data())
def test_thick_is_what_is_worked(columns: int, index: int, data: st.DataObject) -> None:
    """As wide as asked for; empty before the first stitch, full after the last, never full before it."""
    total = ROUNDS[index].progress
    stitches = data.draw(st.integers(0, total))
    line = text_of(draw_ribbon(ROUNDS[index], stitches, columns, blocks=True))

    assert len(line) == columns
    assert (line.count("█") == columns) == (stitches == total)
    assert line.count("█") == stitches * columns // total


def test_a_round_fills_from_the_right_and_a_wrong_side_row_from_the_left() -> None:
    """As the needles do."""
    assert text_of(draw_ribbon(ROUNDS[2], 30, 10, blocks=True)) == "────◂█████"
    assert text_of(draw_ribbon(ROUNDS[10], 24, 10, blocks=False)) == "####>-----"


def test_markers_lie_across_the_line() -> None:
    """Three of them at a quarter, a half and three quarters of sixty stitches."""
    line = text_of(draw_ribbon(ROUNDS[3], 1, 40, blocks=True))

    assert [40 - 1 - at for at, sign in enumerate(line) if sign == "┃"] == [30, 20, 10]
