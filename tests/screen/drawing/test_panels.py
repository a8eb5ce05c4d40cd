"""A chart side by side as other eyes see it."""

from __future__ import annotations

from stepper.craft.colours.colour import rgb_from_hex
from stepper.screen.drawing.panels import draw_panel, put_side_by_side
from stepper.screen.drawing.rows import row_width, text_of
from stepper.screen.drawing.style import Depth

SQUARES = (("MC", "A", None), ("A", "A", "MC"))
SIGNS = {"MC": ".", "A": "A"}
COLOURS = {"MC": rgb_from_hex("#ece6d8"), "A": rgb_from_hex("#1f4d3a")}


def test_in_colour_a_square_has_its_letter_and_its_ground() -> None:
    """Two columns a square; no stitch is an empty place."""
    head, first, second = draw_panel("in colour", SQUARES, SIGNS, COLOURS, Depth.TRUE)
    assert text_of(head).strip() == "in colour"
    assert text_of(first) == " . A     "
    assert text_of(second).rstrip() == " A A ."
    assert first[0].paint.ground == COLOURS["MC"]


def test_without_a_letter_only_the_ground_tells() -> None:
    """What vanishes in grey vanishes here."""
    _, first, _ = draw_panel("in grey", SQUARES, {}, COLOURS, Depth.TRUE)
    assert text_of(first).strip() == ""
    assert first[1].paint.ground == COLOURS["A"]


def test_without_colours_a_digit_tells_how_light_it_is() -> None:
    """#ece6d8 has L* 91.3, #1f4d3a 29.1 (scikit-image): nine and two; the letters stay where they are asked for."""
    _, first, second = draw_panel("in grey", SQUARES, {}, COLOURS, Depth.NONE)
    assert text_of(first).split() == ["9", "2"]
    assert text_of(second).split() == ["2", "2", "9"]
    assert text_of(draw_panel("in colour", SQUARES, SIGNS, COLOURS, Depth.NONE)[1]).split() == [".", "A"]


def test_a_yarn_without_a_colour_is_a_question() -> None:
    """Nothing is made up for it."""
    assert text_of(draw_panel("in grey", SQUARES, {}, {}, Depth.TRUE)[1]).split() == ["?", "?"]


def test_as_many_panels_as_fit_stand_beside_each_other() -> None:
    """Three of nine columns with gaps of three are 33; the next begins a line of its own below."""
    drawn = draw_panel("in colour", SQUARES, SIGNS, COLOURS, Depth.TRUE)
    assert row_width(drawn[0]) == 9
    wide = put_side_by_side([drawn] * 4, 35)
    assert len(wide) == 7
    assert row_width(wide[0]) == 33
    assert wide[3] == ()
    assert row_width(wide[4]) == 9
    assert len(put_side_by_side([drawn] * 4, 5)) == 15
