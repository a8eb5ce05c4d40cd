"""Charts too large for the sheet: cut where they can be read on, with squares large enough to read."""

from __future__ import annotations

import pytest

from stepper.project.model import Cell, Chart
from stepper.project.problems import Span
from stepper.report.sheet.chart_parts import ASIDE, DrawnPart, cut_chart, name_part, square_mm, whole_chart
from tests.tables import each_row


def chart_of(wide: int, high: int, cells: tuple[Cell, ...] | None = None) -> Chart:
    """Make a plain chart of a size."""
    row = cells or (Cell("k", None),) * wide
    return Chart(name="large", rounds=(row,) * high, place=Span(line=1, column=1))


def test_sixty_four_stitches_are_drawn_five_millimetres_wide() -> None:
    """In two halves, the one a round begins in first; drawn whole on A4 they would be 2.7 mm wide (184 mm over 64
    squares and the numbers), too small for a letter in each."""
    chart = chart_of(64, 30)
    parts = cut_chart(chart)
    assert parts == (DrawnPart(32, 64, 0, 30), DrawnPart(0, 32, 0, 30))
    assert [name_part(chart, part) for part in parts] == [
        "stitches 1 to 32 of 64, rounds 1 to 30",
        "stitches 33 to 64 of 64, rounds 1 to 30",
    ]
    assert all(square_mm(part) == pytest.approx(5.2, abs=0.01) for part in parts)


@each_row("wide", [1, 8, 33, 40, 41, 64, 100, 200])
@each_row("high", [1, 50, 55, 120])
def test_every_square_is_in_one_part_that_fits_the_sheet(wide: int, high: int) -> None:
    """Nothing twice, nothing left out, no square below 4.2 mm and no part wider than A4 between its margins."""
    parts = cut_chart(chart_of(wide, high))
    squares = [
        (column, row)
        for part in parts
        for column in range(part.left, part.right)
        for row in range(part.below, part.above)
    ]
    assert len(squares) == len(set(squares)) == wide * high
    for part in parts:
        assert square_mm(part) >= 4.2 - 1e-9
        assert square_mm(part) * (part.right - part.left + ASIDE) <= 184.01


def test_a_chart_that_fits_is_left_whole() -> None:
    """Forty stitches shrink a little rather than being cut."""
    chart = chart_of(40, 20)
    assert cut_chart(chart) == (whole_chart(chart),)
    assert 4.2 <= square_mm(whole_chart(chart)) < 5.2
    assert name_part(chart, whole_chart(chart)) == "40 stitches, 20 rounds"


def test_no_cable_is_cut() -> None:
    """A cross over the middle of a chart of sixty stitches stays in one piece."""
    plain = Cell("k", None)
    cells = (*(plain,) * 28, Cell("2/2 rc", None), *(Cell("", None),) * 3, *(plain,) * 28)
    parts = cut_chart(chart_of(60, 4, cells))
    assert len(parts) == 2
    assert parts[0].left in (28, 32)
    assert parts[0].left == parts[1].right
