"""The yarns as the screen shows them: a colour if there is one, and always a sign.

The sign is the second channel: it tells three yarns in a round apart without any colour. No I/O.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field

from stepper.craft.colours.colour import Rgb
from stepper.records import dataclass
from stepper.screen.drawing.rows import Styled, clean
from stepper.screen.drawing.style import BOLD, Depth, Paint, dim_colour, paint_ground

GROUND_SIGN = "."
"""Sign of the first yarn in the file, in which most of the fabric is worked. ASCII on purpose."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ScreenYarn:
    """One yarn."""

    name: str
    """What it is called."""
    sign: str
    """One character, unique among the yarns."""
    colour: Rgb | None = None
    """None if the file gives none."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Yarns:
    """All yarns of a garment, by their keys. One is made for each sitting, and what is drawn with it is kept
    under it."""

    by_key: Mapping[str, ScreenYarn] = field(default_factory=dict)

    def of(self, key: str) -> ScreenYarn:
        """Return a yarn; one the file does not mention is called by its key."""
        return self.by_key.get(key) or ScreenYarn(name=key, sign=(clean(key).strip() or "?")[0].upper())

    def paint(self, key: str, depth: Depth, *, dim: bool = False, bold: bool = False) -> Paint:
        """Return the paint of a stitch in a yarn: the terminal's own ink if it has no colour."""
        colour = self.of(key).colour
        if colour is None or depth is Depth.NONE:
            return Paint(bold=bold)
        return paint_ground(dim_colour(colour) if dim else colour, depth, bold=bold)

    def swatch(self, key: str, depth: Depth) -> Styled:
        """Return a yarn's sign and name on its colour."""
        yarn = self.of(key)
        paint = self.paint(key, depth, bold=True)
        return Styled(f" {yarn.sign} {clean(yarn.name)} ", paint if paint.ground else BOLD)


def yarns_of(names: Mapping[str, str], colours: Mapping[str, Rgb | None]) -> Yarns:
    """Assign a sign to each yarn.

    Args:
        names: What each is called, by its key, in the order of the file.
        colours: The colour of each, by its key.

    Always: no two share a sign.
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
    """Choose the first free one: a letter of the key, the name or the alphabet, or any other character."""
    wanted = [letter for letter in (key + name).upper() if letter in _LETTERS]
    beyond = [chr(code) for code in range(0x391, 0x3AA) if chr(code).isalpha()]
    free: list[str] = [letter for letter in (*wanted, *_LETTERS, *beyond) if letter not in taken]
    return free[0]


NO_YARNS = Yarns()
"""For a garment whose file names none."""
