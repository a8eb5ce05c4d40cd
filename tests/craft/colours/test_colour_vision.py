"""Simulated colour vision against colour-science's own copy of the published model."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.colours.colour import Rgb, lab, rgb_from_hex
from stepper.craft.colours.colour_difference import colour_difference
from stepper.craft.colours.colour_vision import VISIONS, Vision, hardest_vision, simulate_vision
from tests.tables import each_row

NAMES = {"red-blind": "Protanomaly", "green-blind": "Deuteranomaly", "blue-blind": "Tritanomaly"}


@given(st.builds(Rgb, *[st.integers(0, 255)] * 3), st.sampled_from(VISIONS))
def test_agrees_with_colour_science(colour: Rgb, vision: Vision) -> None:
    """Machado et al. (2009) at full severity, applied to linear light; a rounding step apart at most."""
    import colour as colour_science

    light = colour_science.models.eotf_sRGB(np.array([colour.red, colour.green, colour.blue]) / 255)
    matrix = colour_science.matrix_cvd_Machado2009(NAMES[vision], 1.0)
    outside = np.rint(255 * colour_science.models.eotf_inverse_sRGB(np.clip(matrix @ light, 0, 1)))
    ours = simulate_vision(colour, vision)
    assert np.abs(outside - [ours.red, ours.green, ours.blue]).max() <= 1


@pytest.mark.parametrize("vision", VISIONS)
def test_agrees_with_colour_science_to_the_very_step(vision: Vision) -> None:
    """Of 500 colours from all over the screen hardly one falls on the other side of a half: a figure of the matrices off
    by a thousandth would move a hundred of them."""
    import colour as colour_science

    channels = np.random.default_rng(2009).integers(0, 256, (500, 3))
    matrix = colour_science.matrix_cvd_Machado2009(NAMES[vision], 1.0)
    light = colour_science.models.eotf_sRGB(channels / 255) @ matrix.T
    outside = np.rint(255 * colour_science.models.eotf_inverse_sRGB(np.clip(light, 0, 1))).astype(int)
    ours = [simulate_vision(Rgb(*map(int, each)), vision) for each in channels]
    assert np.count_nonzero(outside != [(each.red, each.green, each.blue) for each in ours]) <= 3


@each_row("vision", VISIONS)
@each_row("level", [0, 60, 128, 255])
def test_greys_stay_grey(vision: Vision, level: int) -> None:
    """Eyes that lack a cone see neutral tones as everyone does (rows of the published matrices sum to 1)."""
    seen = simulate_vision(Rgb(level, level, level), vision)
    assert (seen.red, seen.green, seen.blue) == pytest.approx((level, level, level), abs=1)


def test_red_and_green_yarns_meet_for_red_green_blind_eyes() -> None:
    """The vanishing pair of the grey test is far apart for ordinary eyes and much nearer for these."""
    red, green = rgb_from_hex("#C0392B"), rgb_from_hex("#1E7A34")
    ordinary = colour_difference(lab(red), lab(green))
    vision, left = hardest_vision(red, green)
    assert vision in ("red-blind", "green-blind")
    assert left < ordinary / 2


def test_blue_and_green_are_hardest_for_blue_blind_eyes() -> None:
    """The third kind of cone tells these apart."""
    assert hardest_vision(rgb_from_hex("#2f6fb0"), rgb_from_hex("#2f8f8a"))[0] == "blue-blind"


def test_other_eyes_are_refused() -> None:
    """The sentence lists the visions there are."""
    with pytest.raises(ValueError, match="one of red-blind, green-blind, blue-blind"):
        simulate_vision(Rgb(1, 2, 3), "cat")  # type: ignore[arg-type]  # the point of the test
