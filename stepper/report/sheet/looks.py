"""How the page shows a yarn: its colour, and a letter or a line that says the same in grey. Pure."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from stepper.craft.colours.colour import Rgb, contrast, rgb_from_hex
from stepper.project.model import Project
from stepper.records import dataclass

_DARK, _LIGHT = "#1c1b19", "#ffffff"
_NO_COLOUR = Rgb(238, 236, 231)
# For a yarn whose colour the file does not name.


@dataclass(frozen=True, slots=True, kw_only=True)
class YarnLooks:
    """One yarn on paper."""

    key: str
    """By which the lines name it."""
    name: str
    colour: str
    """`#rrggbb`."""
    ink: str
    """Colour of text that can be read on it."""
    letter: str
    """Letter in its squares; empty for the first yarn, whose squares are left plain."""
    stripes: int
    """Number of lines along its rings in the yoke from above; 0 for the first two yarns."""

    @property
    def named(self) -> str:
        """Its key and its name, as the lines and the ball band have them: "MC, tarn"."""
        return self.name if self.key == self.name else f"{self.key}, {self.name}"


def assign_looks(project: Project, keys: Iterable[str]) -> dict[str, YarnLooks]:
    """Decide how each yarn looks, in the order of the file; the first stays plain.

    Args:
        project: For names and colours.
        keys: Every yarn that is drawn, even one the file does not list.

    Always: no two yarns have the same letter.
    """
    found: dict[str, YarnLooks] = {}
    taken: set[str] = set()
    for place, key in enumerate(dict.fromkeys((*project.yarns, *keys))):
        yarn = project.yarns.get(key)
        colour = rgb_from_hex(yarn.colour) if yarn is not None and yarn.colour else _NO_COLOUR
        letter = "" if place == 0 else _letter(key, taken)
        taken.add(letter)
        ink = max((_DARK, _LIGHT), key=lambda each: contrast(rgb_from_hex(each), colour))
        found[key] = YarnLooks(
            key=key,
            name=yarn.name if yarn is not None else key,
            colour=colour.hex,
            ink=ink,
            letter=letter,
            stripes=max(0, place - 1),
        )
    return found


def _letter(key: str, taken: set[str]) -> str:
    wanted = [each for each in key.upper() if each.isalnum()]
    free: Iterator[str] = (
        each for each in (*wanted, *"ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789") if each not in taken
    )
    return next(free)
