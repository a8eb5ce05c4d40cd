"""Colour against published definitions, scikit-image and colour-science."""

from __future__ import annotations

import math

import numpy as np
import pytest
import skimage
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.colours.colour import (
    Lab,
    Rgb,
    change_lightness,
    contrast,
    decode_srgb,
    encode_srgb,
    grey,
    lab,
    lightness,
    luminance,
    rgb_from_hex,
    rgb_of_lab,
)
from tests.tables import each_row

colours = st.builds(Rgb, *[st.integers(0, 255)] * 3)


@each_row(
    ("one", "other", "ratio"),
    [
        ("#000000", "#FFFFFF", 21.0),
        ("#767676", "#FFFFFF", 4.5422),
        ("#777777", "#FFFFFF", 4.4781),
        ("#595959", "#FFFFFF", 7.0047),
        ("#949494", "#FFFFFF", 3.0335),
        ("#959595", "#FFFFFF", 2.9953),
        ("#808080", "#000000", 5.3172),
        ("#808080", "#FFFFFF", 3.9494),
        ("#FF0000", "#FFFFFF", 3.9985),
        ("#00FF00", "#FFFFFF", 1.3722),
        ("#0000FF", "#FFFFFF", 8.5925),
        ("#FFFF00", "#FFFFFF", 1.0738),
        ("#FF0000", "#00FF00", 2.9139),
        ("#FF0000", "#0000FF", 2.1489),
        ("#FFFF00", "#0000FF", 8.0016),
        ("#123456", "#123456", 1.0),
    ],
)
def test_contrast_ratios(one: str, other: str, ratio: float) -> None:
    """WCAG 2 contrast ratio, in either order (values computed from the W3C's formula)."""
    assert contrast(rgb_from_hex(one), rgb_from_hex(other)) == pytest.approx(ratio, abs=5e-5)
    assert contrast(rgb_from_hex(other), rgb_from_hex(one)) == pytest.approx(ratio, abs=5e-5)


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("#808080", 0.215861),
        ("#767676", 0.181164),
        ("#777777", 0.184475),
        ("#C0C0C0", 0.527115),
        ("#ff0", 0.9278),
    ],
)
def test_luminance(text: str, value: float) -> None:
    """WCAG 2 relative luminance."""
    assert luminance(rgb_from_hex(text)) == pytest.approx(value, abs=5e-7)


@given(colours)
def test_luminance_agrees_with_numpy_and_colour_science(colour: Rgb) -> None:
    """The same decoding and weights by an outside library."""
    import colour as colour_science

    channels = np.array([colour.red, colour.green, colour.blue]) / 255
    light = colour_science.models.eotf_sRGB(channels)
    assert luminance(colour) == pytest.approx(float(light @ [0.2126, 0.7152, 0.0722]), abs=1e-9)


def test_light_is_encoded_as_an_outside_library_does() -> None:
    """Light between two codes too, as a colour seen by other eyes or at another lightness has. Source: colour-science."""
    import colour as colour_science

    for light in (*(each / 20000 for each in range(200)), *(each / 97 for each in range(98))):
        outside = float(colour_science.models.eotf_inverse_sRGB(np.float64(light)))
        assert encode_srgb(light) == pytest.approx(outside, abs=1e-7), light


@each_row("code", range(256))
def test_both_thresholds_in_print_give_the_same_codes(code: int) -> None:
    """W3C note of May 2021: 0.03928 and 0.04045 differ for no 8-bit value; decoding undoes encoding."""
    channel = code / 255
    assert (channel <= 0.04045) == (channel <= 0.03928)
    assert round(255 * encode_srgb(decode_srgb(channel))) == code


@pytest.mark.parametrize(
    ("percent", "value"),
    [
        (0, 0),
        (0.5, 4.516481),
        (100 * 216 / 24389, 8.0),
        (1, 8.991442),
        (10, 37.842430),
        (12.19722535, 41.527876),
        (18.418652, 50.0),
        (20, 51.837212),
        (50, 76.069261),
        (100, 100),
    ],
)
def test_lightness(percent: float, value: float) -> None:
    """CIE 1976 lightness, ISO/CIE 11664-4, also by colour-science."""
    import colour as colour_science

    assert lightness(percent / 100) == pytest.approx(value, abs=1e-6)
    assert lightness(percent / 100) == pytest.approx(float(colour_science.lightness(percent)), abs=1e-6)


@pytest.mark.parametrize(
    ("text", "value"),
    [("#FF0000", 53.233), ("#00FF00", 87.737), ("#0000FF", 32.303), ("#808080", 53.585), ("#FFFF00", 97.138)],
)
def test_lightness_of_screen_colours(text: str, value: float) -> None:
    """L* by WCAG luminance."""
    assert lightness(luminance(rgb_from_hex(text))) == pytest.approx(value, abs=6e-4)


@given(colours)
def test_lab_agrees_with_scikit_image(colour: Rgb) -> None:
    """L* within the 0.02 that matrix rounding makes, a* and b* within 0.05."""
    outside = skimage.color.rgb2lab(np.array([[[colour.red, colour.green, colour.blue]]], dtype=np.uint8))[
        0, 0
    ]
    ours = lab(colour)
    assert ours.lightness == pytest.approx(outside[0], abs=0.02)
    assert (ours.a, ours.b) == pytest.approx((outside[1], outside[2]), abs=0.05)


@given(colours)
def test_grey_keeps_the_luminance(colour: Rgb) -> None:
    """The grey is neutral and no other grey code is nearer in screen value."""
    tone = grey(colour)
    assert tone.red == tone.green == tone.blue
    assert abs(encode_srgb(luminance(colour)) - tone.red / 255) <= 0.5 / 255 + 1e-9


def test_white_has_no_colour() -> None:
    """A neutral stays neutral: a* and b* of every grey are nought."""
    assert (lab(Rgb(255, 255, 255)).a, lab(Rgb(77, 77, 77)).b) == pytest.approx((0, 0), abs=1e-9)


@pytest.mark.parametrize("text", ["#1f4d3a", "1F4D3A", " #1f4d3a "])
def test_hex_is_read_in_every_usual_writing(text: str) -> None:
    """With or without the sign, either case."""
    assert rgb_from_hex(text) == Rgb(0x1F, 0x4D, 0x3A)
    assert rgb_from_hex("#fa0") == Rgb(255, 170, 0)


@given(colours)
def test_hex_goes_there_and_back(colour: Rgb) -> None:
    """Reading undoes writing."""
    assert rgb_from_hex(colour.hex) == colour


@pytest.mark.parametrize("text", ["", "#12", "#12345", "#1234567", "pine", "##123456", "#12345g"])
def test_other_writings_are_refused(text: str) -> None:
    """The sentence shows how a colour is written."""
    with pytest.raises(ValueError, match='written like "#1f4d3a"'):
        rgb_from_hex(text)


def test_values_off_the_scale_are_refused() -> None:
    """Channels are bytes, luminance is not negative."""
    with pytest.raises(ValueError, match="0 to 255"):
        Rgb(0, 256, 0)
    with pytest.raises(ValueError, match="luminance"):
        lightness(-0.1)


@given(colours)
def test_a_colour_goes_to_lab_and_back(colour: Rgb) -> None:
    """To the very byte, for every colour of the screen."""
    assert rgb_of_lab(lab(colour)) == colour


@given(st.floats(0, 100), st.floats(-90, 90), st.floats(-90, 90))
def test_the_way_back_agrees_with_scikit_image(lightness_: float, a: float, b: float) -> None:
    """skimage.color.lab2rgb inside the screen's colours; outside them there is none here."""
    found = rgb_of_lab(Lab(lightness_, a, b))
    if found is not None:
        expected = skimage.color.lab2rgb(np.array([[[lightness_, a, b]]], dtype=float))[0, 0] * 255
        assert np.allclose(expected, (found.red, found.green, found.blue), atol=2.5)


def test_the_darkest_greys_agree_with_scikit_image() -> None:
    """Where the curve of lightness is a straight line, and where it goes over into the cube root, both ways."""
    for level in range(40):
        expected = float(skimage.color.rgb2lab([[[level / 255] * 3]])[0, 0, 0])
        assert lab(Rgb(level, level, level)).lightness == pytest.approx(expected, abs=1e-3), level
    for step in range(300):
        wanted = step / 20
        found = rgb_of_lab(Lab(wanted, 0, 0))
        assert found is not None
        expected = float(skimage.color.lab2rgb(np.array([[[wanted, 0, 0]]]))[0, 0, 1]) * 255
        assert abs(found.green - expected) < 0.51, wanted


@given(colours, st.floats(0, 100))
def test_a_colour_at_another_lightness_keeps_its_hue(colour: Rgb, wanted: float) -> None:
    """Lightness to a step of the screen; hue as far as there is any colour left."""
    found = lab(change_lightness(colour, wanted))
    assert found.lightness == pytest.approx(wanted, abs=1.0)
    before = lab(colour)
    if min(abs(found.a) + abs(found.b), abs(before.a) + abs(before.b)) > 20:
        turn = math.degrees(math.atan2(found.b, found.a) - math.atan2(before.b, before.a))
        assert abs((turn + 180) % 360 - 180) < 8


@each_row("hexadecimal", ["#c0392b", "#1e7a34", "#2040ff", "#ffd400", "#8a2be2"])
@each_row("wanted", [15.0, 50.0, 90.0])
def test_no_stronger_colour_of_that_hue_is_to_be_had_at_that_lightness(
    hexadecimal: str, wanted: float
) -> None:
    """Against a search through four thousand strengths, from the full one down: a yarn proposed paler than need be is
    not the one she would choose."""
    colour = rgb_from_hex(hexadecimal)
    own = lab(colour)
    strengths = (4096 - step for step in range(4097))
    tried = (rgb_of_lab(Lab(wanted, own.a * each / 4096, own.b * each / 4096)) for each in strengths)
    assert change_lightness(colour, wanted) == next(each for each in tried if each is not None)


def test_the_thresholds_themselves_are_on_the_straight_part() -> None:
    """IEC 61966-2-1: up to and with 0.04045 on the screen, and 0.0031308 of light, the line; above, the curve."""
    assert decode_srgb(0.04045) == 0.04045 / 12.92
    assert encode_srgb(0.0031308) == 12.92 * 0.0031308
    assert decode_srgb(math.nextafter(0.04045, 1)) == ((math.nextafter(0.04045, 1) + 0.055) / 1.055) ** 2.4
