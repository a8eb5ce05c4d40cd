"""How text may look, and which colours a terminal can show. No I/O.

Two rules keep every text legible in lamplight, on dark terminals and light ones. Text on the terminal's own
background is in the terminal's own ink, plain or bold, never dim and never coloured: the knitter has chosen
that look herself. Text in colour stands on a background painted here, in black or white, whichever reads
better; one of the two always has a contrast of at least 4.58:1 with any colour (the square root of 21, the
contrast of black on white). Nothing is conveyed by colour alone.
"""

from __future__ import annotations

from dataclasses import field
from enum import Enum
from functools import lru_cache
from types import MappingProxyType
from typing import Final

from stepper.craft.colours.colour import Rgb, contrast, lab, rgb_from_hex
from stepper.craft.colours.colour_difference import colour_difference
from stepper.records import dataclass

BLACK: Final = Rgb(0, 0, 0)
WHITE: Final = Rgb(255, 255, 255)


class Depth(Enum):
    """How many colours a terminal shows."""

    TRUE = "true colour"
    INDEXED = "256"
    SIXTEEN = "16"
    NONE = "none"


@dataclass(frozen=True, slots=True, kw_only=True)
class Terminal:
    """The terminal to draw on."""

    columns: int
    """Range: 1 and up."""
    rows: int
    """Range: 1 and up."""
    depth: Depth = Depth.TRUE
    blocks: bool = True
    """Whether it has characters beyond ASCII: blocks, lines, arrows."""
    solid: bool = False
    """Whether it has at least full and half blocks, as the code pages 437 and 850 have."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Paint:
    """How a piece of text looks."""

    ground: Rgb | None = None
    """Background colour; the terminal's own if None."""
    ink: Rgb | None = None
    """Colour of the letters; the terminal's own if None. Without a ground only for pictures made of block
    characters, never for text."""
    bold: bool = False
    reverse: bool = False
    """Whether the terminal's own two colours are swapped, if it has no others."""
    _hash: int = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        """Refuse text of unknown colour on a painted ground.

        Raises:
            ValueError: There is a ground but no ink.
        """
        if self.ground is not None and self.ink is None:
            raise ValueError("a painted ground needs its ink.")
        object.__setattr__(self, "_hash", hash((self.ground, self.ink, self.bold, self.reverse)))

    def __hash__(self) -> int:
        """Return the hash, worked out once: a paint is looked up for every span that is written."""
        return self._hash


PLAIN: Final = Paint()
BOLD: Final = Paint(bold=True)


class Badge(Enum):
    """A patch of colour with a word in it. The word has the meaning; the colour is quick to find."""

    STANDS = "stands"
    """As it should be."""
    ASKS = "asks"
    """Something is asked of the knitter."""
    OFF = "off"
    """Something is not as it should be."""
    CALM = "calm"
    """A plain fact."""


# Chosen here, dark or light enough for white or black text at more than 7:1.
_BADGES: Final = MappingProxyType(
    {
        Badge.STANDS: rgb_from_hex("#1b4d3a"),
        Badge.ASKS: rgb_from_hex("#e8b93e"),
        Badge.OFF: rgb_from_hex("#7d1f2a"),
        Badge.CALM: rgb_from_hex("#3b4654"),
    }
)

SIXTEEN: Final = MappingProxyType(
    {
        rgb_from_hex(value): name
        for name, value in (
            ("ansiblack", "#000000"),
            ("ansired", "#cd0000"),
            ("ansigreen", "#00cd00"),
            ("ansiyellow", "#cdcd00"),
            ("ansiblue", "#0000ee"),
            ("ansimagenta", "#cd00cd"),
            ("ansicyan", "#00cdcd"),
            ("ansigray", "#e5e5e5"),
            ("ansibrightblack", "#7f7f7f"),
            ("ansibrightred", "#ff0000"),
            ("ansibrightgreen", "#00ff00"),
            ("ansibrightyellow", "#ffff00"),
            ("ansibrightblue", "#5c5cff"),
            ("ansibrightmagenta", "#ff00ff"),
            ("ansibrightcyan", "#00ffff"),
            ("ansiwhite", "#ffffff"),
        )
    }
)
"""The sixteen colours as they usually are, and their names, in the order of their numbers. A terminal may
show others under these names. Source: xterm's default resources, from memory."""

_STEPS: Final = (0, 95, 135, 175, 215, 255)
INDEXED: Final = (
    *(Rgb(red, green, blue) for red in _STEPS for green in _STEPS for blue in _STEPS),
    *(Rgb(level, level, level) for level in range(8, 248, 10)),
)
"""Colours 16 to 255 of a terminal with 256. Source: xterm's 256colres, from memory."""

_MIDDLE: Final = 128
# Each channel of a middle grey.


@lru_cache(maxsize=512)
def paint_ground(ground: Rgb, depth: Depth, *, bold: bool = False) -> Paint:
    """Return the paint for a ground as the terminal can show it, with the ink that reads best on it.

    Always: without colour it is reversed; otherwise ink and ground as shown have at least 4.5:1 contrast.
    """
    if depth is Depth.NONE:
        return Paint(bold=bold, reverse=True)
    shown = match_colour(ground, depth)
    return Paint(ground=shown, ink=best_ink(shown), bold=bold)


def paint_badge(kind: Badge, depth: Depth) -> Paint:
    """Return the paint of a badge."""
    return paint_ground(_BADGES[kind], depth, bold=True)


def best_ink(ground: Rgb) -> Rgb:
    """Choose black or white, whichever contrasts more with a ground. Always: at least 4.58:1."""
    return max(BLACK, WHITE, key=lambda ink: contrast(ink, ground))


@lru_cache(maxsize=256)
def dim_colour(colour: Rgb) -> Rgb:
    """Move a colour half-way to a middle grey, so that it recedes on dark and light terminals alike."""
    return Rgb(*((channel + _MIDDLE) // 2 for channel in (colour.red, colour.green, colour.blue)))


@lru_cache(maxsize=512)
def match_colour(colour: Rgb, depth: Depth) -> Rgb:
    """Return the nearest colour a terminal can show. With true colour or none: the colour itself."""
    if depth in (Depth.TRUE, Depth.NONE):
        return colour
    wanted = lab(colour)
    shades = tuple(SIXTEEN) if depth is Depth.SIXTEEN else INDEXED
    return min(shades, key=lambda shade: colour_difference(wanted, lab(shade)))
