"""Which rows of the screen can be read across a room. No I/O.

A letter of 20/20 is 5 arcmin high (Snellen's charts: 8.73 mm at 6 m, from memory), and that is the limit of
good eyes and not ease: a small x should be 6 arcmin high or more.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

EASE_ARCMIN: Final = 6.0
"""Height of a small x that is read with ease. Source: above. Unit: minutes of arc."""
X_HIGH: Final = 4
"""Places of a small x of the large letters from top to bottom, as they are drawn."""
PLAIN_X: Final = 0.47
"""Height of a small x as a share of a row, in a terminal's own letters: 1120 of 2048 units of the em, in rows
of 1.164 em. Source: the metrics of DejaVu Sans Mono, from memory; other fonts differ by a tenth."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Display:
    """The part of a display that a window can fill."""

    width_mm: float
    """Range: above 0. Unit: mm."""
    height_mm: float
    """Range: above 0. Unit: mm."""


LAPTOP: Final = Display(width_mm=310.0, height_mm=164.0)
"""A laptop of 14 inches, 16 to 9, is 310 by 174 mm (arithmetic); a centimetre goes to bars (assumed)."""


def row_height_mm(display: Display, columns: int, rows: int) -> float:
    """Return the height of a row if the letters are enlarged until the window fills a display.

    Args:
        display: The display.
        columns: Columns of the window. Range: 1 and up.
        rows: Rows of the window. Range: 1 and up.

    Returns:
        Unit: mm. A cell is taken to be twice as high as wide, as it usually is.
    """
    return min(display.height_mm / rows, 2 * display.width_mm / columns)


def angle_arcmin(height_mm: float, distance_mm: float) -> float:
    """Return the angle under which a height is seen. Unit: minutes of arc.

    Args:
        height_mm: Range: 0 and up. Unit: mm.
        distance_mm: From the eye, straight on. Range: above 0. Unit: mm.
    """
    return math.degrees(2 * math.atan(height_mm / (2 * distance_mm))) * 60
