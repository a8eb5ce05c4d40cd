"""The single change of colour that makes yarns that vanish beside each other stand apart again.

The colour proposed keeps the hue of the knitter's own and moves in lightness alone, since lightness is what
tells a motif from its ground in grey, and what every kind of eye has. No I/O.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Final

from stepper.craft.colour import Rgb, change_lightness, lab
from stepper.craft.colour_difference import VANISHES_BELOW, WEAK_BELOW, colour_difference, value_difference
from stepper.craft.colour_vision import hardest_vision

HARD_BELOW: Final = 10.0
"""CIEDE2000 difference below which two colours are called hard to tell apart. A convention of this project:
from 2 to 10 a difference is seen at a glance on two patches side by side (from memory), and stitches are no
patches."""

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
    """The least difference of lightness that pairs with this yarn have then. Unit: L*."""
    left: tuple[Pair, ...] = ()
    """Pairs that vanish all the same, or are too hard for some eyes."""


def vanishes(one: Rgb, other: Rgb) -> bool:
    """Return whether a pair is lost: in grey, or to eyes that lack a kind of cone."""
    return value_difference(one, other) < VANISHES_BELOW or hardest_vision(one, other)[1] < HARD_BELOW


def find_mend(
    colours: Mapping[str, Rgb], pairs: Iterable[Pair], *, least: float = WEAK_BELOW
) -> ColourChange | None:
    """Find the smallest change of one colour that mends the pairs that vanish.

    Args:
        colours: Every yarn's colour by its key.
        pairs: Pairs of keys that touch.
        least: Difference of lightness that every pair of the changed yarn must have. Unit: L*.

    Returns:
        The change that leaves the fewest pairs lost, and among those the nearest to the yarn's own colour;
        None if no pair is lost, or no change helps.

    Always: no pair that was not lost before is lost after it.
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
    """Return the nearest colour of the same hue that stands apart from all others; None if there is none."""
    own = lab(colour)
    grounds = [lab(other).lightness for other in others]
    steps = [number * _STEP for number in range(int(100 / _STEP) + 1)]
    lighter = [step for step in steps if step >= own.lightness]
    darker = [step for step in reversed(steps) if step < own.lightness]
    found = []
    for way in (lighter, darker):
        for wanted in way:
            # What is too near by its lightness alone is refused without making the colour.
            if any(abs(wanted - ground) < least - 1 for ground in grounds):
                continue
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
