"""The single change of colour that best tells apart yarns that vanish beside each other.

The proposed colour keeps the hue of the knitter's own and changes in lightness alone, since lightness is what
sets a motif off from its ground in grey and what every kind of eye can see. No I/O.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Final

from stepper.craft.colours.colour import Rgb, change_lightness, lab
from stepper.craft.colours.colour_difference import (
    VANISHES_BELOW,
    WEAK_BELOW,
    colour_difference,
    value_difference,
)
from stepper.craft.colours.colour_vision import hardest_vision
from stepper.records import dataclass

HARD_BELOW: Final = 10.0
"""CIEDE2000 difference below which two colours are called hard to tell apart. A convention of this project:
from 2 to 10 a difference is visible at a glance on two patches side by side (from memory), but stitches are
not patches."""

_STEP: Final = 0.5
"""Steps of lightness tried. Unit: L*."""

Pair = tuple[str, str]


@dataclass(frozen=True, slots=True, kw_only=True)
class ColourChange:
    """One change of colour and what it does."""

    yarn: str
    """Key of the yarn to change."""
    colour: Rgb
    """The colour to change it to."""
    far: float
    """How far that is from its own colour. Unit: CIEDE2000."""
    apart: float
    """The smallest difference in lightness that pairs with this yarn then have. Unit: L*."""
    left: tuple[Pair, ...] = ()
    """Pairs that still vanish or are too hard for some eyes."""


def vanishes(one: Rgb, other: Rgb) -> bool:
    """Return whether a pair vanishes in grey or for eyes that lack a kind of cone."""
    return value_difference(one, other) < VANISHES_BELOW or hardest_vision(one, other)[1] < HARD_BELOW


def find_mend(
    colours: Mapping[str, Rgb], pairs: Iterable[Pair], *, least: float = WEAK_BELOW
) -> ColourChange | None:
    """Find the smallest change of one colour that tells the vanishing pairs apart.

    Args:
        colours: Every yarn's colour by its key.
        pairs: Pairs of keys that touch.
        least: Difference in lightness that every pair with the changed yarn must have. Unit: L*.

    Returns:
        The change after which the fewest pairs vanish, and of those the one nearest to the yarn's own colour;
        None if no pair vanishes or no change helps.

    Always: no pair vanishes after it that did not vanish before.
    """
    touching = list(pairs)
    lost = [pair for pair in touching if vanishes(colours[pair[0]], colours[pair[1]])]
    found = []
    for yarn in dict.fromkeys(key for pair in lost for key in pair):
        own = [pair for pair in touching if yarn in pair]
        others = [colours[one if other == yarn else other] for one, other in own]
        change = _nearest(colours[yarn], others, least)
        if change is not None:
            left = tuple(pair for pair in lost if yarn not in pair)
            found.append(_made(yarn, change, colours[yarn], others, left))
    return min(found, key=lambda one: (len(one.left), one.far), default=None)


def _nearest(colour: Rgb, others: list[Rgb], least: float) -> Rgb | None:
    """Return the nearest colour of the same hue that is distinct from all others; None if there is none."""
    own = lab(colour)
    steps = [number * _STEP for number in range(int(100 / _STEP) + 1)]
    lighter = [step for step in steps if step >= own.lightness]
    darker = [step for step in reversed(steps) if step < own.lightness]
    found = []
    for way in (lighter, darker):
        for wanted in way:
            tried = change_lightness(colour, wanted)
            apart = min(value_difference(tried, other) for other in others)
            if apart >= least and not any(vanishes(tried, other) for other in others):
                found.append(tried)
                break
    return min(found, key=lambda tried: colour_difference(own, lab(tried)), default=None)


def _made(yarn: str, colour: Rgb, own: Rgb, others: list[Rgb], left: tuple[Pair, ...]) -> ColourChange:
    return ColourChange(
        yarn=yarn,
        colour=colour,
        far=colour_difference(lab(own), lab(colour)),
        apart=min(value_difference(colour, other) for other in others),
        left=left,
    )
