from __future__ import annotations

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.craft.colours.colour import Rgb, contrast, rgb_from_hex
from stepper.lap.palette import draw_icon, palette_of, write_garment_css
from stepper.screen.yarns import NO_YARNS, yarns_of
from tests.screen.scenes import yarns

LEVEL = st.integers(0, 255)
COLOUR = st.builds(Rgb, LEVEL, LEVEL, LEVEL)


def _yarns(colours: list[Rgb | None]) -> object:
    keys = [f"Y{number}" for number in range(len(colours))]
    return yarns_of(dict(zip(keys, keys, strict=True)), dict(zip(keys, colours, strict=True)))


@settings(max_examples=60, deadline=None)
@given(st.lists(st.none() | COLOUR, max_size=4), st.booleans())
def test_whatever_the_yarns_all_text_is_read(colours: list[Rgb | None], dark: bool) -> None:
    """Source: WCAG 2.2, SC 1.4.3 (text 4.5:1), 1.4.6 (7:1), 1.4.11 (what is touched 3:1)."""
    found = palette_of(_yarns(colours), dark=dark)  # type: ignore[arg-type] # what it is by its maker
    assert contrast(found.ink, found.ground) >= 7
    assert contrast(found.soft, found.ground) >= 4.5
    assert contrast(found.edge, found.ground) >= 3
    assert contrast(found.step, found.ground) >= 3
    assert contrast(found.step_ink, found.step) >= 4.5


@pytest.mark.parametrize("dark", [False, True])
def test_the_ground_is_of_the_first_yarn_and_the_field_of_the_most_colourful(dark: bool) -> None:
    """A garment on the page is to be known by its colours."""
    found = palette_of(yarns(), dark=dark)
    assert found.step.red > found.step.green > found.step.blue  # ember
    assert found.ground.red >= found.ground.blue  # chalk is warm


def test_a_garment_without_colours_has_a_page_all_the_same() -> None:
    """Most project files name no colour at first."""
    assert palette_of(NO_YARNS, dark=False).ground != palette_of(NO_YARNS, dark=True).ground


def test_daylight_and_lamplight_are_one_style_sheet() -> None:
    """The browser follows the device, with no script."""
    css = write_garment_css(yarns())
    light, dark = re.findall(r"--ground:(#[0-9a-f]{6})", css)
    assert "prefers-color-scheme:dark" in css
    assert contrast(rgb_from_hex(light), rgb_from_hex("#ffffff")) < 2 < contrast(rgb_from_hex(dark), rgb_from_hex("#ffffff"))
    for badge in ("stands", "asks", "off", "calm"):
        ground, ink = (re.search(rf"--{badge}{end}:(#[0-9a-f]{{6}})", css) for end in ("", "-ink"))
        assert ground is not None
        assert ink is not None
        assert contrast(rgb_from_hex(ground[1]), rgb_from_hex(ink[1])) >= 4.5


def test_the_icon_is_one_stitch_in_the_colours_of_the_page() -> None:
    """It is told from other tabs at a glance."""
    assert palette_of(yarns(), dark=False).step.hex in draw_icon(yarns())
