"""How different two colours look: CIEDE2000, and the contrast in value on which stranded knitting depends.

No I/O.
"""

from __future__ import annotations

from math import atan2, cos, degrees, exp, hypot, radians, sin, sqrt
from typing import Literal

from stepper.craft.colours.colour import Lab, Rgb, lightness, luminance

ValueWord = Literal["vanishes", "weak", "clear"]

VANISHES_BELOW = 10.0
"""Difference in L* below which a motif is said to vanish in grey. A convention of this project.

No threshold for yarn is published. The limits lie between pairs judged on a grey photograph: a difference of
8 was poor, 14 weak, 78 strong.
"""
WEAK_BELOW = 20.0
"""Difference in L* below which the contrast is called weak. A convention of this project."""

_POWER = 25.0**7


def value_difference(one: Rgb, other: Rgb) -> float:
    """Return how far apart two colours are in grey. Unit: L*. Range: 0 to 100.

    Source: ISO/CIE 11664-4 lightness of WCAG 2 luminance.
    """
    return abs(lightness(luminance(one)) - lightness(luminance(other)))


def value_word(one: Rgb, other: Rgb) -> ValueWord:
    """Return how well a motif of one colour shows on the other in grey.

    Source: `VANISHES_BELOW` and `WEAK_BELOW`.
    """
    apart = value_difference(one, other)
    if apart < VANISHES_BELOW:
        return "vanishes"
    return "weak" if apart < WEAK_BELOW else "clear"


def colour_difference(one: Lab, other: Lab) -> float:
    """Return the CIEDE2000 difference of two colours.

    Returns:
        About 1 is just visible side by side. Range: 0 and up. Always: the same in either order.

    Source: ISO/CIE 11664-6:2014; steps as in Sharma, Wu and Dalal (2005), weights kL = kC = kH = 1.
    """
    mean_chroma7 = ((hypot(one.a, one.b) + hypot(other.a, other.b)) / 2) ** 7
    stretch = 1 + 0.5 * (1 - sqrt(mean_chroma7 / (mean_chroma7 + _POWER)))
    chroma1, hue1 = hypot(one.a * stretch, one.b), _hue(one.a * stretch, one.b)
    chroma2, hue2 = hypot(other.a * stretch, other.b), _hue(other.a * stretch, other.b)

    turn, mean_hue = _hue_step(hue1, hue2, has_hue=chroma1 * chroma2 != 0)
    mean_lightness = (one.lightness + other.lightness) / 2
    mean_chroma = (chroma1 + chroma2) / 2
    by_lightness = (other.lightness - one.lightness) / _lightness_weight(mean_lightness)
    by_chroma = (chroma2 - chroma1) / (1 + 0.045 * mean_chroma)
    by_hue = 2 * sqrt(chroma1 * chroma2) * sin(radians(turn) / 2) / _hue_weight(mean_chroma, mean_hue)
    rotation = _rotation(mean_chroma, mean_hue)
    return sqrt(by_lightness**2 + by_chroma**2 + by_hue**2 + rotation * by_chroma * by_hue)


def _hue(a: float, b: float) -> float:
    return degrees(atan2(b, a)) % 360 if a or b else 0.0


def _hue_step(hue1: float, hue2: float, *, has_hue: bool) -> tuple[float, float]:
    """Return the shorter way from one hue to the other and the hue half-way between, in degrees."""
    if not has_hue:
        return 0.0, hue1 + hue2
    turn, middle = hue2 - hue1, (hue1 + hue2) / 2
    if abs(turn) <= 180:
        return turn, middle
    return turn - 360 if turn > 0 else turn + 360, middle + 180 if middle < 180 else middle - 180


def _lightness_weight(mean_lightness: float) -> float:
    off_middle = (mean_lightness - 50) ** 2
    return 1 + 0.015 * off_middle / sqrt(20 + off_middle)


def _hue_weight(mean_chroma: float, mean_hue: float) -> float:
    tone = (
        1
        - 0.17 * cos(radians(mean_hue - 30))
        + 0.24 * cos(radians(2 * mean_hue))
        + 0.32 * cos(radians(3 * mean_hue + 6))
        - 0.20 * cos(radians(4 * mean_hue - 63))
    )
    return 1 + 0.015 * mean_chroma * tone


def _rotation(mean_chroma: float, mean_hue: float) -> float:
    # In the blues chroma and hue are not independent of each other.
    angle = 30 * exp(-(((mean_hue - 275) / 25) ** 2))
    chroma7 = mean_chroma**7
    return -2 * sqrt(chroma7 / (chroma7 + _POWER)) * sin(radians(2 * angle))
