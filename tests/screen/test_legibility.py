from __future__ import annotations

import pytest

from stepper.screen.drawing.letters import NARROW
from tests.legibility import EASE_ARCMIN, LAPTOP, PLAIN_X, X_HIGH, Display, angle_arcmin, row_height_mm
from tests.screen.test_view import EVERY_SIZE


def test_a_letter_of_twenty_twenty_is_five_minutes_high() -> None:
    """Snellen's charts: 8.73 mm at 6 m, and the same angle at 20 feet."""
    assert angle_arcmin(8.73, 6000) == pytest.approx(5.0, abs=0.01)
    assert angle_arcmin(8.73 * 6096 / 6000, 6096) == pytest.approx(5.0, abs=0.01)


def test_a_window_fills_the_display_in_one_direction() -> None:
    """By hand: 24 rows share 164 mm; on a tall display 80 columns share 310 mm, a row being two columns high."""
    assert row_height_mm(LAPTOP, 80, 24) == pytest.approx(164 / 24)
    assert row_height_mm(Display(width_mm=310, height_mm=500), 80, 24) == pytest.approx(7.75)


def test_the_smallest_large_letters_are_read_at_two_metres_in_every_window() -> None:
    """That is what they are for; the terminal's own letters do so in the smallest window alone."""
    for columns, rows in EVERY_SIZE:
        high = row_height_mm(LAPTOP, columns, rows)
        assert angle_arcmin(X_HIGH * NARROW.down * high, 2000) >= EASE_ARCMIN
        assert (angle_arcmin(PLAIN_X * high, 2000) >= EASE_ARCMIN) == (rows == 12)
