from __future__ import annotations

from stepper.screen.drawing.rows import row_width, text_of
from stepper.screen.pages.bottom_row import draw_bottom_row
from tests.screen.scenes import MOMENTS, Desk, terminal
from tests.tables import each_row


def test_what_enter_would_do_stands_beside_the_figures() -> None:
    """A count, a part of a count, or an answer: she sees which before she presses it."""
    plain = Desk().do("next").scene("6", "0")
    aloud = Desk().do("next", "count with me").scene("6", "0")
    search = Desk().do("go to yoke round 2", "count is 59", "no loop").scene("2", "8")

    assert "60   enter count" in text_of(draw_bottom_row(plain, terminal()))
    assert "enter adds to the count" in text_of(draw_bottom_row(aloud, terminal()))
    assert "enter answers the question" in text_of(draw_bottom_row(search, terminal()))


def test_the_end_of_a_long_note_stays_in_sight() -> None:
    """What she is typing is what she needs to see."""
    scene = Desk().scene("n", *("x" * 100), "e", "n", "d")
    shown = draw_bottom_row(scene, terminal(40))

    assert text_of(shown).rstrip().endswith("xend▏")
    assert row_width(shown) <= 40


@each_row("columns", [20, 40, 80])
@each_row("moment", ["start", "keys", "journal", "chart", "from-above"])
def test_the_way_out_is_always_named(moment: str, columns: int) -> None:
    """The first hint is what she needs most, the last leads to all others."""
    shown = text_of(draw_bottom_row(MOMENTS[moment](), terminal(columns)))

    assert "? keys" in shown or "esc" in shown or columns == 20
