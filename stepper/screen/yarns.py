"""The yarns as the screen shows them: a colour if there is one, and always a sign.

The sign is the second channel: three yarns in a round are told apart by it without any colour. No I/O.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from stepper.craft.colour import Rgb
from stepper.screen.rows import Span, clean
from stepper.screen.style import BOLD, Depth, Paint, dim_colour, paint_ground

GROUND_SIGN = "."
"""Sign of the yarn that comes first in the file, which most of the fabric is in. ASCII on purpose."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ScreenYarn:
    """One yarn."""

    name: str
    """How it is called."""
    sign: str
    """One letter, no other yarn's."""
    colour: Rgb | None = None
    """Nothing where the file gives none."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Yarns:
    """All yarns of a garment, by their keys."""

    by_key: Mapping[str, ScreenYarn] = field(default_factory=dict)

    def of(self, key: str) -> ScreenYarn:
        """Return a yarn; one nobody told of is called by its key."""
        return self.by_key.get(key) or ScreenYarn(name=key, sign=(clean(key).strip() or "?")[0].upper())

    def paint(self, key: str, depth: Depth, *, dim: bool = False, bold: bool = False) -> Paint:
        """Return the paint of a stitch in a yarn; without a colour the terminal's own ink."""
        colour = self.of(key).colour
        if colour is None or depth is Depth.NONE:
            return Paint(bold=bold)
        return paint_ground(dim_colour(colour) if dim else colour, depth, bold=bold)

    def swatch(self, key: str, depth: Depth) -> Span:
        """Show a yarn by its name and sign on its colour."""
        yarn = self.of(key)
        paint = self.paint(key, depth, bold=True)
        return Span(f" {yarn.sign} {clean(yarn.name)} ", paint if paint.ground else BOLD)


def yarns_of(names: Mapping[str, str], colours: Mapping[str, Rgb | None]) -> Yarns:
    """Return each yarn its sign.

    Args:
        names: How each is called, by its key, in the order of the file.
        colours: The colour of each, by its key.

    Always: no two have the same sign.
    """
    given: dict[str, ScreenYarn] = {}
    taken: set[str] = set()
    for number, (key, name) in enumerate(names.items()):
        sign = GROUND_SIGN if number == 0 else _sign(key, name, taken)
        taken.add(sign)
        given[key] = ScreenYarn(name=name, sign=sign, colour=colours.get(key))
    return Yarns(by_key=given)


_LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789"


def _sign(key: str, name: str, taken: set[str]) -> str:
    """Choose the first that is free: a letter of the key, of the name, of the alphabet, any letter beyond."""
    wanted = [letter for letter in (key + name).upper() if letter in _LETTERS]
    beyond = [chr(code) for code in range(0x391, 0x3AA) if chr(code).isalpha()]
    free: list[str] = [letter for letter in (*wanted, *_LETTERS, *beyond) if letter not in taken]
    return free[0]


NO_YARNS = Yarns()
"""For a garment whose file tells of none."""
