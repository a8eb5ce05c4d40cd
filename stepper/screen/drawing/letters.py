"""Letters several lines high, so that what to do can be read across a room.

Drawn for this program on a field seven places high: two for what rises above a small x, four for the x
itself, one for what hangs below; capitals and figures are six high. Widths differ, so that words keep their
shape. Any two letters or figures differ in at least two places. An eighth line parts the lines of text. No
I/O.
"""

from __future__ import annotations

import unicodedata
from functools import lru_cache
from itertools import product
from types import MappingProxyType
from typing import Final

from stepper.records import dataclass
from stepper.screen.drawing.numerals import FIELD
from stepper.screen.drawing.rows import Row, Styled
from stepper.screen.drawing.style import BOLD, Terminal

HIGH: Final = 7
"""Places of a letter's field from top to bottom."""
PITCH: Final = 8
"""Places from one line of text to the next."""
_BETWEEN: Final = 1
_WORDS: Final = 3
# Places between two letters and between two words.

_ROUND: Final = """
a      b      c      d      e      g      h      k      m       n      o      p      q      s      u
....   #...   ....   ...#   ....   ....   #...   #...   .....   ....   ....   ....   ....   ....   ....
....   #...   ....   ...#   ....   ....   #...   #...   .....   ....   ....   ....   ....   ....   ....
###.   ###.   .###   .###   .##.   .###   ###.   #..#   ####.   ###.   .##.   ###.   .###   .###   #..#
.###   #..#   #...   #..#   ####   #..#   #..#   #.#.   #.#.#   #..#   #..#   #..#   #..#   ##..   #..#
#..#   #..#   #...   #..#   #...   .###   #..#   ###.   #.#.#   #..#   #..#   #..#   #..#   ..##   #..#
.###   ###.   .###   .###   .###   ...#   #..#   #..#   #.#.#   #..#   .##.   ###.   .###   ###.   .###
....   ....   ....   ....   ....   ###.   ....   ....   .....   ....   ....   #...   ...#   ....   ....
"""
_STRAIGHT: Final = """
f     i    j     l     r     t     v       w       x      y      z      .    ,     ;     :    -     '    !
.##   #    .#    #.    ...   ...   .....   .....   ....   ....   ....   .    ..    ..    .    ...   #    #
#..   .    ..    #.    ...   .#.   .....   .....   ....   ....   ....   .    ..    ..    .    ...   #    #
##.   #    .#    #.    #.#   ###   #...#   #...#   #..#   #..#   ####   .    ..    ..    .    ...   .    #
#..   #    .#    #.    ##.   .#.   #...#   #.#.#   .##.   #..#   ..#.   .    ..    .#    #    ###   .    #
#..   #    .#    #.    #..   .#.   .#.#.   #.#.#   .##.   .##.   .#..   .    ..    ..    .    ...   .    .
#..   #    .#    ##    #..   .##   ..#..   .#.#.   #..#   ..#.   ####   #    .#    .#    #    ...   .    #
...   .    #.    ..    ...   ...   .....   .....   ....   ##..   ....   .    #.    #.    .    ...   .    .
"""
_CAPITALS: Final = """
A      B      C      D      E      F      G      H      I     J      K      L      M       N       O
.##.   ###.   .###   ###.   ####   ####   .###   #..#   ###   ...#   #..#   #...   #...#   #...#   .###.
#..#   #..#   #...   #..#   #...   #...   #...   #..#   .#.   ...#   #.#.   #...   ##.##   ##..#   #...#
#..#   ###.   #...   #..#   ###.   ###.   #...   ####   .#.   ...#   ##..   #...   #.#.#   #.#.#   #...#
####   #..#   #...   #..#   #...   #...   #.##   #..#   .#.   ...#   ##..   #...   #.#.#   #..##   #...#
#..#   #..#   #...   #..#   #...   #...   #..#   #..#   .#.   #..#   #.#.   #...   #...#   #...#   #...#
#..#   ###.   .###   ###.   ####   #...   .###   #..#   ###   .##.   #..#   ####   #...#   #...#   .###.
....   ....   ....   ....   ....   ....   ....   ....   ...   ....   ....   ....   .....   .....   .....
"""
_CAPITALS_FROM_P: Final = """
P      Q       R      S      T       U      V       W       X      Y       Z      (     )     /      ?
###.   .###.   ###.   .###   #####   #..#   #...#   #...#   #..#   #...#   ####   .#    #.    ...#   ###.
#..#   #...#   #..#   #...   ..#..   #..#   #...#   #...#   #..#   #...#   ...#   #.    .#    ..#.   ...#
#..#   #...#   #..#   #...   ..#..   #..#   #...#   #.#.#   .##.   .#.#.   ..#.   #.    .#    ..#.   ..#.
###.   #.#.#   ###.   .##.   ..#..   #..#   .#.#.   #.#.#   .##.   ..#..   .#..   #.    .#    .#..   .#..
#...   #..#.   #.#.   ...#   ..#..   #..#   .#.#.   ##.##   #..#   ..#..   #...   #.    .#    .#..   ....
#...   .##.#   #..#   ###.   ..#..   .##.   ..#..   #...#   #..#   ..#..   ####   .#    #.    #...   .#..
....   .....   ....   ....   .....   ....   .....   .....   ....   .....   ....   ..    ..    ....   ....
"""
_SAME: Final = MappingProxyType({"’": "'", "‘": "'", "–": "-", "—": "-", "‑": "-"})
# Signs of print that are drawn as a keyboard's.


def _read(drawn: str) -> dict[str, tuple[str, ...]]:
    names, *lines = [line.split() for line in drawn.strip().split("\n")]
    return {name: tuple(line[at] for line in lines) for at, name in enumerate(names)}


LETTERS: Final = MappingProxyType(
    {
        **_read(_ROUND),
        **_read(_STRAIGHT),
        **_read(_CAPITALS),
        **_read(_CAPITALS_FROM_P),
        **{digit: (*field, "....") for digit, field in FIELD.items()},
    }
)
"""The field of each letter: seven rows of places, `#` for a stroke."""


@dataclass(frozen=True, slots=True)
class Lettering:
    """A size of letters, as columns and rows of the screen for each place of the field."""

    across: float
    down: float

    @property
    def pitch(self) -> int:
        """Rows of the screen from one line of text to the next. Unit: rows."""
        return int(PITCH * self.down)


NARROW: Final = Lettering(0.5, 0.5)
"""Four places share a cell: as high as the next size, and half as wide."""
LETTERINGS: Final = (*(Lettering(float(times), times / 2) for times in (4, 3, 2, 1)), NARROW)
"""The sizes, the largest first."""


def letterings_for(terminal: Terminal) -> tuple[Lettering, ...]:
    """Return the sizes a terminal can show, the largest first.

    Four places in a cell need signs that code pages lack, and two in a cell at least half blocks; of ASCII
    signs only whole cells make letters that can be read.
    """
    if terminal.blocks:
        return LETTERINGS
    return tuple(each for each in LETTERINGS if each.down == int(each.down) or _by_halves(each, terminal))


def _by_halves(lettering: Lettering, terminal: Terminal) -> bool:
    return terminal.solid and lettering.across == int(lettering.across)


def can_draw(text: str) -> bool:
    """Return whether there is a field for every letter of a text."""
    return all(letter == " " or _field(letter) is not None for letter in text)


@lru_cache(maxsize=256)
def _field(letter: str) -> tuple[str, ...] | None:
    """Return the field of a letter, with its accent if it has one; None if there is none."""
    known = LETTERS.get(_SAME.get(letter, letter))
    if known is not None:
        return known
    apart = unicodedata.normalize("NFD", letter)
    marks, drawn = apart[1:], LETTERS.get(apart[0])
    if drawn is None or not marks or any(unicodedata.category(mark) != "Mn" for mark in marks):
        return None
    wide = len(drawn[0])
    if "#" in drawn[0] or wide < 2:
        return drawn  # a capital leaves no room for it, and an i has its dot there
    accent = "##".center(wide, ".")
    return (accent, *drawn[1:])


def draw_letters(
    text: str, lettering: Lettering, columns: int, terminal: Terminal, rows: int | None = None
) -> list[Row] | None:
    """Draw a text in lines, broken between words.

    Args:
        text: What to draw; lines of it are begun anew.
        lettering: How big.
        columns: Room. Unit: columns.
        terminal: What it is drawn on.
        rows: Room; as many as it takes if None. Unit: rows.

    Returns:
        Rows from the top, none wider than `columns`; None if a word is too wide, a letter is not known or
        there are more than `rows`.
    """
    full = "█" if terminal.blocks or terminal.solid else "#"
    lines = _lines_of(text, int(columns / lettering.across))
    if lines is None or (rows is not None and len(lines) * lettering.pitch > rows):
        return None
    drawn = [row for line in lines for row in _draw_line(line, lettering, full)]
    return [(Styled(row, BOLD),) if row else () for row in drawn]


@lru_cache(maxsize=512)
def _lines_of(text: str, places: int) -> tuple[str, ...] | None:
    """Break a text into lines; None if a word is wider than a line or a letter is not known."""
    if not can_draw(text.replace("\n", " ")):
        return None
    lines: list[str] = []
    for whole in text.split("\n"):
        broken = _break(whole, places)
        if broken is None:
            return None
        lines += broken
    return tuple(lines)


def _break(text: str, places: int) -> list[str] | None:
    """Break a text into lines between words; None if a word is wider than a line."""
    lines: list[str] = []
    taken = 0
    for word in text.split():
        wide = _width(word)
        if wide > places:
            return None
        if lines and taken + _WORDS + wide <= places:
            lines[-1], taken = f"{lines[-1]} {word}", taken + _WORDS + wide
        else:
            lines.append(word)
            taken = wide
    return lines


@lru_cache(maxsize=512)
def _width(word: str) -> int:
    """Count the places a word is wide."""
    return len(_word(word)[0])


@lru_cache(maxsize=512)
def _places_of(line: str) -> tuple[str, ...]:
    """Lay out a line of text as rows of places, the last of them the gap to the next line."""
    words = [_word(word) for word in line.split()]
    rows = [("." * _WORDS).join(word[at] for word in words) for at in range(HIGH)]
    return (*rows, "." * len(rows[0]))


def _word(word: str) -> list[str]:
    fields = [field for letter in word if (field := _field(letter)) is not None]
    return [("." * _BETWEEN).join(field[at] for field in fields) for at in range(HIGH)]


_QUARTERS: Final = " ▘▝▀▖▌▞▛▗▚▐▜▄▙▟█"
# By which quarters of the cell are full: upper left 1, upper right 2, lower left 4, lower right 8.


_QUARTERED: Final = MappingProxyType(
    {
        cell: _QUARTERS[sum(bit << at for at, bit in enumerate(sign == "#" for sign in cell))]
        for cell in product("#.", repeat=4)
    }
)
# A cell by its places: upper left, upper right, lower left, lower right.


@lru_cache(maxsize=256)
def _draw_line(line: str, lettering: Lettering, full: str) -> tuple[str, ...]:
    """Draw a line of text in cells, each row without the blanks at its end."""
    places = _places_of(line)
    if lettering is NARROW:
        pairs = zip(places[::2], places[1::2], strict=True)
        return tuple(_quartered(upper, lower).rstrip() for upper, lower in pairs)
    across, halves = int(lettering.across), int(2 * lettering.down)
    fine = [row for row in places for _ in range(halves)]
    signs = {("#", "#"): full, ("#", "."): "▀", (".", "#"): "▄", (".", "."): " "}
    cells = {pair: sign * across for pair, sign in signs.items()}
    return tuple(
        "".join(map(cells.__getitem__, zip(upper, lower, strict=True))).rstrip()
        for upper, lower in zip(fine[::2], fine[1::2], strict=True)
    )


def _quartered(upper: str, lower: str) -> str:
    if len(upper) % 2:
        upper, lower = f"{upper}.", f"{lower}."
    cells = zip(upper[::2], upper[1::2], lower[::2], lower[1::2], strict=True)
    return "".join(map(_QUARTERED.__getitem__, cells))


def enlarge(text: str, columns: int, rows: int, terminal: Terminal) -> list[Row] | None:
    """Draw a text as large as there is room for.

    Args:
        text: What to draw; its lines are run together if that makes it larger.
        columns: Room. Unit: columns.
        rows: Room. Unit: rows.
        terminal: What it is drawn on.

    Returns:
        At most `rows` rows; None if there is no room for any size.
    """
    for lettering in letterings_for(terminal):
        if lettering.pitch > rows:
            continue
        for words in dict.fromkeys((text, text.replace("\n", " "))):
            drawn = draw_letters(words, lettering, columns, terminal, rows)
            if drawn is not None:
                return drawn
    return None
