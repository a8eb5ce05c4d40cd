from __future__ import annotations

import pytest

from stepper.screen.numerals import Scale
from stepper.screen.pages.round_page import draw_round_page, scale_for
from stepper.screen.rows import text_of
from tests.plans import plan
from tests.screen.scenes import MOMENTS, SIZES, Desk, terminal


def _text(scene_of: str, columns: int, rows: int) -> str:
    return "\n".join(text_of(row) for row in draw_round_page(MOMENTS[scene_of](), terminal(columns, rows)))


def test_numerals_grow_with_the_screen() -> None:
    """Three rows, six, twelve."""
    scales = [scale_for(terminal(*size)) for size in SIZES]

    assert scales == [Scale.LARGE, Scale.SMALL, Scale.HUGE]
    assert [scale.rows for scale in scales] == [6, 3, 12]


@pytest.mark.parametrize("size", SIZES)
def test_a_needle_to_change_is_said_before_the_instruction(size: tuple[int, int]) -> None:
    """She must not knit a round on the wrong needle."""
    text = _text("needle-change", *size)

    assert text.index("Change to 3.75 mm needles") < text.index("Place marker, knit")


def test_the_yarns_in_hand_are_named_with_their_signs() -> None:
    """All three of them."""
    assert "in hand  . chalk   A pine   B ember" in _text("three-yarns", 80, 24)


def test_a_section_of_a_hundred_rounds_leaves_room_for_the_words() -> None:
    """Three numerals are wider than two."""
    desk = Desk(plan(("body", ["co8", *["(k1 p1)x4"] * 120]))).do("go to round 118")
    text = "\n".join(text_of(row) for row in draw_round_page(desk.scene(), terminal()))

    assert "of 121" in text
    assert "Knit one, purl one, four times." in text


def test_the_smallest_screens_still_say_round_and_step() -> None:
    """In letters, where there is no room for numerals."""
    text = _text("rib", 30, 4)

    assert "3 of 3" in text
    assert "knit two, purl two" in text


def test_a_long_answer_does_not_push_the_round_away() -> None:
    """Whatever is told, round and instruction stay."""
    desk = Desk().do("next", "what can i say")
    text = "\n".join(text_of(row) for row in draw_round_page(desk.scene(), terminal(40, 12)))

    assert "of 3" in text
    assert "Knit two, purl two" in text
    assert "Say: next step" in text


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
