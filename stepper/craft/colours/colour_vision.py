"""How eyes that lack a kind of cone see colours.

About one man in twelve and one woman in two hundred of northern European descent find it hard to tell red
from green (from memory). No I/O.
"""

from __future__ import annotations

from typing import Literal

from stepper.craft.colours.colour import Rgb, decode_channels, encode_srgb, lab
from stepper.craft.colours.colour_difference import colour_difference

Vision = Literal["red-blind", "green-blind", "blue-blind"]

VISIONS: tuple[Vision, ...] = ("red-blind", "green-blind", "blue-blind")
"""Protanopia, deuteranopia, tritanopia."""

# Acts on linear light. Source: Machado, Oliveira and Fernandes (2009), "A Physiologically-based Model for
# Simulation of Color Vision Deficiency", IEEE TVCG 15(6), severity 1.0.
_MATRICES: dict[Vision, tuple[tuple[float, float, float], ...]] = {
    "red-blind": (
        (0.152286, 1.052583, -0.204868),
        (0.114503, 0.786281, 0.099216),
        (-0.003882, -0.048116, 1.051998),
    ),
    "green-blind": (
        (0.367322, 0.860646, -0.227968),
        (0.280085, 0.672501, 0.047413),
        (-0.011820, 0.042940, 0.968881),
    ),
    "blue-blind": (
        (1.255528, -0.076749, -0.178779),
        (-0.078411, 0.930809, 0.147602),
        (0.004733, 0.691367, 0.303900),
    ),
}


def simulate_vision(colour: Rgb, vision: Vision) -> Rgb:
    """Return the colour that looks to ordinary eyes as the given one looks to these.

    Args:
        colour: Any screen colour.
        vision: One of `VISIONS`.

    Raises:
        ValueError: The vision is not one of them.

    Source: Machado, Oliveira and Fernandes (2009), severity 1.0. For blue-blind eyes the model is only
        an approximation.
    """
    if vision not in _MATRICES:
        raise ValueError(f'vision must be one of {", ".join(VISIONS)} (got "{vision}").')
    light = decode_channels(colour)
    red, green, blue = (
        round(255 * encode_srgb(min(1.0, max(0.0, sum(m * c for m, c in zip(row, light, strict=True))))))
        for row in _MATRICES[vision]
    )
    return Rgb(red, green, blue)


def hardest_vision(one: Rgb, other: Rgb) -> tuple[Vision, float]:
    """Find the kind of colour vision that has the most trouble telling two colours apart.

    Returns:
        The vision, and the CIEDE2000 difference that remains for it.

    Source: `simulate_vision` and `colour_difference`.
    """
    left = {
        vision: colour_difference(lab(simulate_vision(one, vision)), lab(simulate_vision(other, vision)))
        for vision in VISIONS
    }
    worst = min(VISIONS, key=lambda vision: left[vision])
    return worst, left[worst]
