from __future__ import annotations

import re

import pytest

from stepper.screen.drawing.numerals import Scale
from stepper.screen.drawing.rows import text_of
from stepper.screen.pages.round_page import draw_round_page, scale_for
from tests.plans import plan
from tests.screen.scenes import MOMENTS, SIZES, Desk, terminal
from tests.screen.test_view import shows_large


def _text(scene_of: str, columns: int, rows: int) -> str:
    return "\n".join(text_of(row) for row in draw_round_page(MOMENTS[scene_of](), terminal(columns, rows)))


def test_numerals_grow_with_the_screen() -> None:
    """Three rows, six, twelve."""
    scales = [scale_for(terminal(*size)) for size in SIZES]

    assert scales == [Scale.LARGE, Scale.SMALL, Scale.HUGE]
    assert [scale.rows for scale in scales] == [6, 3, 12]


@pytest.mark.parametrize("size", [(40, 12), (58, 24)])
def test_a_needle_to_change_is_said_before_the_instruction(size: tuple[int, int]) -> None:
    """She must not knit a round on the wrong needle."""
    desk = Desk().do("go to yoke")
    stop, step = (
        "\n".join(text_of(row) for row in draw_round_page(each, terminal(*size)))
        for each in (desk.scene(), desk.do("next").scene())
    )

    assert "Change to 3.75 mm needles" in stop
    assert "Place marker" not in stop
    assert "Place marker" in step
    assert "Change to" not in step


def test_the_yarns_in_hand_are_named_with_their_signs() -> None:
    """All three of them."""
    assert "in hand  . chalk   A pine   B ember" in _text("three-yarns", 80, 24)


def test_a_section_of_a_hundred_rounds_leaves_room_for_the_words() -> None:
    """Three numerals are wider than two."""
    desk = Desk(plan(("body", ["co8", *["(k1 p1)x4"] * 120]))).do("go to round 118")
    text = "\n".join(text_of(row) for row in draw_round_page(desk.scene(), terminal(58, 24)))

    assert "of 121" in text
    assert "Knit one, purl one, four times." in text


def test_the_smallest_screens_still_say_round_and_step() -> None:
    """In letters, where there is no room for numerals."""
    text = _text("rib", 30, 4)

    assert "3 of 3" in text
    assert "knit two, purl two" in text


def _pages(desk: Desk, columns: int, rows: int) -> str:
    """Turn all pages of the round's text with tab; return the words on them, without what stands on each."""
    lines: dict[str, None] = {}
    for turned in range(12):
        drawn = draw_round_page(desk.scene(*["tab"] * turned), terminal(columns, rows))
        texts = [re.sub("[▀-▟]", " ", text_of(row)) for row in drawn[1:-1]]
        lines |= dict.fromkeys(each for each in texts if "Stitch " not in each and not set(each) & set("─◂"))
    return " ".join(" ".join(lines).replace("?", " ").split())


def test_a_long_answer_does_not_push_the_round_away() -> None:
    """Whatever is told, round, step and place stay, and the whole answer can be turned to."""
    desk = Desk().do("next", "what can i say")
    text = "\n".join(text_of(row) for row in draw_round_page(desk.scene(), terminal(40, 12)))

    assert "Neckband 2 of 3" in text
    assert "Knit two, purl two" in text
    assert "Stitch 0 of 60   60 sts" in text
    assert "Say: next step" in _pages(desk, 40, 12)


@pytest.mark.parametrize("size", [(40, 12), (30, 8), (24, 10), (80, 24), (120, 40)])
def test_nothing_she_must_read_is_ever_cut(size: tuple[int, int]) -> None:
    """The warnings about floats are longer than the window; section, stitch, count and every word stay."""
    catches = (
        "Catch pine behind stitches 4, 11, 19, 27, 33 and 40: it floats over 12 stitches. "
        "Catch ember behind stitches 6, 13, 20 and 39: its floats go over 13 stitches. "
        "Catch chalk behind stitches 5 and 21: those floats reach 14 stitches"
    )
    remarks = (catches, "Change to 4 mm needles", "Carry pine below chalk, in every round with both")
    desk = Desk(plan(("body", ["co45", ("(k2:A k13)x3", {"remarks": remarks, "flat": False})])))
    desk.do("next", "count is 45")
    columns, rows = size
    first = "\n".join(text_of(row) for row in draw_round_page(desk.scene(), terminal(*size)))
    stops = [_pages(desk, columns, rows), *(_pages(desk.do("next"), columns, rows) for _ in range(4))]
    everything = " ".join(stops)

    assert "Body" in first
    assert "45 sts" in first
    assert "Stitch 0 of 45" in first or shows_large("Stitch 0 of 45", first)
    assert "count stands" in everything
    assert {*f"{catches}.".split()} <= {*everything.split()}
    assert "Change to 4 mm needles" in everything or rows > 20  # there it is drawn in large letters


def test_the_figures_being_typed_are_always_in_sight() -> None:
    """Whatever else there is to read: she must see the number she is about to enter."""
    catches = "Catch pine behind stitches 4, 11, 19, 27, 33 and 40: it floats over 12 stitches. " * 3
    desk = Desk(plan(("body", ["co45", ("(k2:A k13)x3", {"remarks": (catches.strip(),)})]))).do("next")
    for columns, rows in [(40, 12), (20, 6), (12, 3), (200, 60)]:
        drawn = draw_round_page(desk.scene("4", "5"), terminal(columns, rows))
        assert text_of(drawn[-1]).startswith("  45 ")


def test_a_fault_question_keeps_its_number() -> None:
    """At 40 by 12 the number to compare with stood beyond the edge."""
    desk = Desk().do("go to yoke round 2", "count is 59", "no loop")
    expect = desk.scene().asked.expect
    everything = _pages(desk, 40, 12)

    assert f"{expect} expected" in everything


def test_a_question_stays_in_sight_until_it_is_answered() -> None:
    """She asked something else in between, and the question still waits."""
    desk = Desk().do("go to yoke round 2", "count is 59", "no loop", "where am i")

    assert f"{desk.scene().asked.expect} expected" in _pages(desk, 40, 12)


def test_what_is_asked_is_large_on_a_large_screen() -> None:
    """A count is asked of her across the room."""
    drawn = draw_round_page(MOMENTS["count-asked"](), terminal(200, 60))

    assert shows_large("Count now:", "\n".join(map(text_of, drawn)))
    assert shows_large("Stitch 0", "\n".join(map(text_of, drawn)))


def test_where_a_float_is_caught_stays_on_the_screen_all_round_long() -> None:
    """In the second repeat it holds as in the first; a change of needle is said once."""
    remarks = (
        "Change to 4 mm needles",
        "Catch pine behind stitch 5 of each repeat: it floats over 8 stitches",
    )
    desk = Desk(plan(("body", ["co20", ("(k2:A k8)x2", {"remarks": remarks})]))).do("next", "stitch 10")
    text = " ".join("\n".join(text_of(row) for row in draw_round_page(desk.scene(), terminal())).split())
    assert "Catch pine behind stitch 5" in text
    assert "Change to 4 mm" not in text


@pytest.mark.parametrize("size", [(40, 12), (80, 24), (120, 40), (200, 60)])
def test_nothing_is_said_twice(size: tuple[int, int]) -> None:
    """A count that is due stands once, on its badge or in large letters: the room belongs to the step."""
    shown = "\n".join(text_of(row) for row in draw_round_page(Desk().do("next").scene(), terminal(*size)))
    large = shows_large("Count now:", shown)

    assert shown.count("60 expected") == (0 if large else 1)
    assert "Count now: 60" not in shown
    assert shown.count("Stitch 0 of 60") == (0 if shows_large("Stitch 0 of 60", shown) else 1)
