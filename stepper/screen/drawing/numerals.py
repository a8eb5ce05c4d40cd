"""Numerals several lines high, to be read at arm's length without looking for them.

Drawn for this program on a field of four by six: one stroke wide, no serifs, and any two differing in at
least three places, so that a glance tells a 3 from an 8. No I/O.
"""

from __future__ import annotations

from collections.abc import Mapping
from enum import Enum
from types import MappingProxyType
from typing import Final

from stepper.screen.drawing.rows import Row, Styled
from stepper.screen.drawing.style import BOLD

_DRAWN: Final = """
.##.  ..#.  ###.  ###.  #..#  ####  .###  ####  ####  ####
#..#  .##.  ...#  ...#  #..#  #...  #...  ...#  #..#  #..#
#..#  ..#.  ..##  .###  #..#  ###.  #...  ..##  ####  ####
#..#  ..#.  .##.  ...#  ####  ...#  ####  ..#.  #..#  ...#
#..#  ..#.  ##..  ...#  ...#  ...#  #..#  ..#.  #..#  ...#
.##.  .###  ####  ###.  ...#  ###.  ####  ..#.  ####  .##.
"""

FIELD: Final = MappingProxyType(
    {str(digit): tuple(line.split()[digit] for line in _DRAWN.split("\n") if line) for digit in range(10)}
)
"""The field of each numeral: six rows of four places, `#` for a stroke."""


class Scale(Enum):
    """The size, as columns and rows of the screen for each place of the field."""

    SMALL = (1, 0.5)
    """Three rows high: two places of the field share a row."""
    LARGE = (2, 1.0)
    """Six rows high."""
    HUGE = (4, 2.0)
    """Twelve rows high."""

    @property
    def rows(self) -> int:
        """Rows of the screen. Unit: rows."""
        return int(6 * self.value[1])


def draw_numeral(number: int, scale: Scale, *, blocks: bool = True) -> list[Row]:
    """Draw a number.

    Args:
        number: Range: 0 and up.
        scale: How big.
        blocks: Whether the terminal has block signs; without them strokes are drawn in ASCII.

    Returns:
        Rows from the top. Always: as many and as wide as the scale says.
    """
    fields = [FIELD[digit] for digit in str(number)]
    if scale is Scale.SMALL:
        halves = _HALVES if blocks else _HALVES_IN_ASCII
        lines = [_halved(fields, at, halves) for at in range(0, 6, 2)]
    else:
        columns, rows = int(scale.value[0]), int(scale.value[1])
        full = "█" if blocks else "#"
        between = " " * columns
        lines = [
            between.join(
                "".join((full if place == "#" else " ") * columns for place in field[at]) for field in fields
            )
            for at in range(6)
            for _ in range(rows)
        ]
    return [(Styled(line, BOLD),) for line in lines]


_HALVES: Final = MappingProxyType({"..": " ", "#.": "▀", ".#": "▄", "##": "█"})
_HALVES_IN_ASCII: Final = MappingProxyType({"..": " ", "#.": '"', ".#": ".", "##": "#"})


def _halved(fields: list[tuple[str, ...]], at: int, halves: Mapping[str, str]) -> str:
    """Draw two rows of the field in one row of the screen."""
    return " ".join(
        "".join(halves[upper + lower] for upper, lower in zip(field[at], field[at + 1], strict=True))
        for field in fields
    )
