"""Colour difference against two outside libraries; value contrast against worked pairs."""

from __future__ import annotations

import math

import pytest
import skimage
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.colours.colour import Lab, Rgb, contrast, rgb_from_hex
from stepper.craft.colours.colour_difference import colour_difference, value_difference, value_word

labs = st.builds(Lab, st.floats(0, 100), st.floats(-120, 120), st.floats(-120, 120))


def _triple(colour: Lab) -> tuple[float, float, float]:
    return colour.lightness, colour.a, colour.b


def test_pairs_of_sharma() -> None:
    """Sharma, Wu and Dalal (2005), pair 1, two blues: 2.0425; pair 7, a grey, which has no hue: 2.3669."""
    blue = colour_difference(Lab(50, 2.6772, -79.7751), Lab(50, 0, -82.7485))
    assert blue == pytest.approx(2.04245968, abs=1e-7)
    grey = colour_difference(Lab(50, 0, 0), Lab(50, -1, 2))
    assert grey == pytest.approx(2.3669, abs=5e-5)


@given(labs, labs)
def test_agrees_with_scikit_image_and_colour_science(one: Lab, other: Lab) -> None:
    """CIEDE2000 as both libraries compute it, in either order."""
    import colour as colour_science

    ours = colour_difference(one, other)
    assert ours == pytest.approx(float(skimage.color.deltaE_ciede2000(_triple(one), _triple(other))), abs=1e-6)
    assert ours == pytest.approx(
        float(colour_science.delta_E(_triple(one), _triple(other), method="CIE 2000")), abs=1e-6
    )
    assert colour_difference(other, one) == pytest.approx(ours, abs=1e-6)


@pytest.mark.parametrize(
    ("one", "other"),
    [((50, 0, 0), (50, -1, 2)), ((50, 2.5, 0), (50, 0, -2.5)), ((50, 2.49, -0.001), (50, -2.49, 0.0011)),
     ((50, 2.5, 0), (56, -27, -3)), ((22.7233, 20.0904, -46.694), (23.0331, 14.973, -42.5619)),
     ((0, 0, 0), (0, 0, 0)), ((100, 0, 0), (0, 0, 0))],
)  # fmt: skip
def test_awkward_hues_agree_too(one: tuple[float, ...], other: tuple[float, ...]) -> None:
    """Greys, opposite hues and the blue region, where the formula has its branches."""
    ours = colour_difference(Lab(*one), Lab(*other))
    assert ours == pytest.approx(float(skimage.color.deltaE_ciede2000(one, other)), abs=1e-9)


@pytest.mark.parametrize("turn", [178.5, 179.5, 180.5, 181.5])
def test_nearly_opposite_hues_agree_all_round_the_circle(turn: float) -> None:
    """The hue half-way between leaps to the other side at half a circle. Source: scikit-image, which takes the same branch."""
    hues = [math.radians(each) for each in range(3, 360, 17)]
    one, other = (
        [(60.0, 40 * math.cos(hue + more), 40 * math.sin(hue + more)) for hue in hues] for more in (0.0, math.radians(turn))
    )
    for first, second, expected in zip(one, other, skimage.color.deltaE_ciede2000(one, other), strict=True):
        assert colour_difference(Lab(*first), Lab(*second)) == pytest.approx(float(expected), abs=1e-9)


@pytest.mark.parametrize(
    ("one", "other", "ratio", "apart", "word"),
    [
        ("#C0392B", "#1E7A34", 1.007, 0.19, "vanishes"),
        ("#FF0000", "#008000", 1.285, 7.0, "vanishes"),
        ("#FFD700", "#F4EFE6", 1.225, 7.7, "vanishes"),
        ("#8B4513", "#2E8B57", 1.672, 14.1, "weak"),
        ("#1B2A41", "#F4EFE6", 12.61, 77.8, "clear"),
    ],
)
def test_strong_hue_is_no_value_contrast(one: str, other: str, ratio: float, apart: float, word: str) -> None:
    """Red on green vanishes in a grey photograph, navy on cream does not (computed pairs)."""
    first, second = rgb_from_hex(one), rgb_from_hex(other)
    assert contrast(first, second) == pytest.approx(ratio, rel=1e-3)
    assert value_difference(first, second) == pytest.approx(apart, abs=0.05)
    assert value_word(first, second) == word


def test_below_ten_a_motif_vanishes_and_from_twenty_on_it_is_clear() -> None:
    """Of greys in steps of three, by the lightness that scikit-image gives them; the limits are those of the module."""
    levels = range(0, 256, 3)
    greys = [Rgb(level, level, level) for level in levels]
    lightness = [float(skimage.color.rgb2lab([[[level / 255] * 3]])[0, 0, 0]) for level in levels]
    told = set()
    for one, light in zip(greys, lightness, strict=True):
        for other, dark in zip(greys, lightness, strict=True):
            apart = abs(light - dark)
            word = "vanishes" if apart < 10 else "weak" if apart < 20 else "clear"
            if min(abs(apart - 10), abs(apart - 20)) > 0.001:
                assert value_word(one, other) == word, (one, other, apart)
                told.add((word, round(apart)))
    assert {("vanishes", 10), ("weak", 10), ("weak", 20), ("clear", 20)} <= told
