from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.screen.course import course_of
from stepper.screen.drawing.rows import row_width, text_of
from stepper.screen.drawing.style import Depth, Terminal, dim_colour
from stepper.screen.pages.yoke_page import draw_yoke_page, rings_of
from tests.plans import plan
from tests.screen.scenes import COLOURS, Desk, garment, terminal
from tests.tables import each_row


def _page(desk: Desk, size: Terminal) -> list[str]:
    return [text_of(row) for row in draw_yoke_page(desk.scene("o"), size)]


def test_the_yoke_is_all_that_comes_before_the_division() -> None:
    """Seven rounds between cast-on and division; from 60 stitches to 70."""
    rings = rings_of(course_of(garment()))

    assert rings is not None
    assert (rings.first, len(rings.yarns)) == (1, 7)
    assert rings.inner == pytest.approx(60 / 70, abs=0.06)


def test_without_colour_the_picture_is_made_of_the_yarns_signs() -> None:
    """Three yarns and the purls of the neckband; the neck is empty."""
    shown = _page(Desk(), terminal(80, 40))

    assert set("".join(shown[1:-1])) >= {".", "A", "B", "-", " "}
    middle = shown[20].strip()
    assert "   " * 3 in middle


def test_the_picture_is_as_wide_as_high_and_in_the_middle() -> None:
    """A round yoke looks round: two columns are as wide as a row is high."""
    shown = [line.rstrip() for line in _page(Desk(), terminal(80, 40))[1:-1] if line.strip()]
    left = min(len(line) - len(line.lstrip()) for line in shown)
    right = max(len(line) for line in shown)

    assert abs((right - left + 1) - 2 * len(shown)) <= 2
    assert abs(left - (80 - right)) <= 2


def test_what_is_worked_steps_back_and_what_is_to_come_is_in_full_colour() -> None:
    """Half way through both are there, with the meaning they have on every page."""
    desk = Desk().do("go to yoke round 4")
    page = draw_yoke_page(desk.scene("o"), terminal(80, 40, Depth.TRUE))
    inks = {span.paint.ink for row in page for span in row}
    pine, ember = COLOURS["A"], COLOURS["B"]
    assert pine is not None
    assert ember is not None

    assert {pine, ember, dim_colour(pine)} <= inks
    assert dim_colour(ember) not in {
        span.paint.ink for row in draw_yoke_page(Desk().scene("o"), terminal(80, 40, Depth.TRUE)) for span in row
    }


def test_a_finished_yoke_is_all_in_full_colour() -> None:
    """There is nothing left to tell apart, and this is the picture she knitted for."""
    desk = Desk().do("go to body round 3", "next")
    page = draw_yoke_page(desk.scene("o"), terminal(80, 40, Depth.TRUE))
    inks = {span.paint.ink for row in page for span in row}

    assert {COLOURS["A"], COLOURS["B"]} <= inks
    assert not {dim_colour(each) for each in COLOURS.values() if each is not None} & inks


def test_the_work_runs_clockwise_from_the_centre_back() -> None:
    """A quarter of the round worked lies to the right of the top, seen from above (common practice)."""
    made = plan(("yoke", ["co8", "k4:A k4:B", "k4:A k4:B"]), yarns={"A": "pine", "B": "ember"})
    shown = _page(Desk(made), terminal(80, 40))
    across = shown[20]

    assert set(across[:40]) - {" "} == {"B"}
    assert set(across[40:]) - {" "} == {"A"}


@each_row("depth", Depth)
@each_row("size", [(80, 24), (40, 12), (120, 40), (12, 5)])
def test_it_fits_every_screen(depth: Depth, size: tuple[int, int]) -> None:
    """Never wider nor higher."""
    page = draw_yoke_page(Desk().scene("o"), terminal(*size, depth))

    assert len(page) == size[1]
    assert all(row_width(row) <= size[0] for row in page)


def test_what_is_no_yoke_says_so() -> None:
    """Flat pieces have none."""
    rows = garment()
    flat = replace(rows, rounds=tuple(replace(r, flat=True) for r in rows.rounds))

    assert rings_of(course_of(flat)) is None
    assert "no yoke worked in the round" in "\n".join(_page(Desk(flat), terminal()))
