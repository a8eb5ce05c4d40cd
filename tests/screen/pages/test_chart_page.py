from __future__ import annotations

from dataclasses import replace

from stepper.screen.course import course_of
from stepper.screen.drawing.rows import text_of
from stepper.screen.pages.chart_page import draw_chart_page, middle_of
from tests.plans import plan
from tests.screen.scenes import Desk, garment, terminal


def _rows(desk: Desk, *keys: str, columns: int = 80, rows: int = 24) -> list[str]:
    return [text_of(row) for row in draw_chart_page(desk.scene("d", *keys), terminal(columns, rows))]


def test_the_first_round_is_below_and_finished_rounds_are_marked() -> None:
    """As charts are printed; everything below the round in hand is done."""
    shown = _rows(Desk().do("go to yoke round 3"))
    labels = [" ".join(line[-8:].split()) for line in shown[1:-3] if line[-8:].strip(" ─▔▴")]

    assert labels == [
        *("3 RS", "2 WS", "1 RS", "6", "5", "4", "3 ◂", "2 ✓", "1 ✓", "3 ✓", "2 ✓", "1 ✓"),
    ]


def test_a_line_parts_the_sections_and_names_the_one_above_it() -> None:
    """Where the yoke begins is seen without counting rounds."""
    shown = _rows(Desk().do("go to yoke round 3"))
    borders = [line.strip("─ ") for line in shown if line.startswith("──")]

    assert borders == ["body", "yoke", "neckband"]


def test_the_signs_in_sight_are_explained_and_no_others() -> None:
    """A key to the signs belongs on the page of the signs."""
    shown = "\n".join(_rows(Desk().do("go to yoke round 3")))

    assert ". chalk" in shown
    assert "A pine" in shown
    assert "/ decrease leaning right" in shown
    assert "cable" not in shown


def test_catches_and_markers_are_marked() -> None:
    """Read by hand: pine is caught behind the sixth stitch of each repeat, and a marker stands after the tenth."""
    made = plan(("body", ["co20", "k10 pm k10", "(k2:A k8)x2"]), yarns={"MC": "chalk"})
    caught = replace(made.rounds[2], caught=(("A", (6, 16)),))
    desk = Desk(replace(made, rounds=(*made.rounds[:2], caught))).do("go to round 3")
    wide = _rows(desk, columns=120, rows=40)
    row = next(line for line in wide if line.endswith("3◂"))
    below = next(line for line in wide if line.endswith("2✓"))

    assert row.split("    3◂")[0].rstrip()[-40:] == " . . . .~. . . . A A . . . .~. . . . A A"
    assert below.rstrip("2✓ ")[-20:] == "|. . . . . . . . . ."
    assert any("~ float caught behind it" in line for line in wide)
    assert any("| marker" in line for line in wide)


def test_it_can_be_moved_and_never_off_the_chart() -> None:
    """Up, down and along, to the edges and no further."""
    desk = Desk().do("go to yoke round 3")
    for keys in (["up"] * 50, ["down"] * 50, ["left"] * 50, ["right"] * 50):
        shown = _rows(desk, *keys, columns=40, rows=12)
        assert any(line[-2:].strip("─ ") for line in shown[1:-1])
    assert "70 to 40 of 70 sts" in _rows(desk, *["left"] * 50, columns=40)[0]
    assert "31 to 1 of 70 sts" in _rows(desk, columns=40)[0]


def test_the_middle_stays_within_the_garment() -> None:
    """Also when all is done."""
    course = course_of(garment())

    assert [middle_of(course, 5, down) for down in (0, 3, 99, -99)] == [5, 2, 0, 11]
    assert middle_of(course, 12, 0) == 11
