from __future__ import annotations

from stepper.screen.course import course_of
from stepper.screen.pages.chart_page import draw_chart_page, middle_of
from stepper.screen.rows import text_of
from tests.screen.scenes import Desk, garment, terminal


def _rows(desk: Desk, *keys: str, columns: int = 80, rows: int = 24) -> list[str]:
    return [text_of(row) for row in draw_chart_page(desk.scene("d", *keys), terminal(columns, rows))]


def test_the_first_round_is_below_and_finished_rounds_are_marked() -> None:
    """As charts are printed; everything below the round in hand is done."""
    shown = _rows(Desk().do("go to yoke round 3"))
    labels = [line[-5:].strip() for line in shown[1:-1] if line.strip()]

    assert labels == ["3", "2", "1", "6", "5", "4", "3◂", "2✓", "1✓", "3✓", "2✓", "1✓"]


def test_it_can_be_moved_and_never_off_the_chart() -> None:
    """Up, down and along, to the edges and no further."""
    desk = Desk().do("go to yoke round 3")
    for keys in (["up"] * 50, ["down"] * 50, ["left"] * 50, ["right"] * 50):
        shown = _rows(desk, *keys, columns=40, rows=12)
        assert any(line[-2:].strip() for line in shown[1:-1])
    assert "70 to 37 of 70 sts" in _rows(desk, *["left"] * 50, columns=40)[0]
    assert "34 to 1 of 70 sts" in _rows(desk, columns=40)[0]


def test_the_middle_stays_within_the_garment() -> None:
    """Also when all is done."""
    course = course_of(garment())

    assert [middle_of(course, 5, down) for down in (0, 3, 99, -99)] == [5, 2, 0, 11]
    assert middle_of(course, 12, 0) == 11
