from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from prompt_toolkit.output.vt100 import ANSI_COLORS_TO_RGB
from pyte.graphics import FG_BG_256

from stepper.craft.colours.colour import Rgb, contrast, rgb_from_hex
from stepper.screen.drawing.style import (
    INDEXED,
    SIXTEEN,
    Badge,
    Depth,
    Paint,
    best_ink,
    dim_colour,
    match_colour,
    paint_badge,
    paint_ground,
)

COLOURS = st.builds(Rgb, st.integers(0, 255), st.integers(0, 255), st.integers(0, 255))


@given(COLOURS)
def test_black_or_white_reads_on_any_colour(colour: Rgb) -> None:
    """The square root of 21 is the worst that can happen (from WCAG 2's own limits, 1 to 21)."""
    assert contrast(best_ink(colour), colour) >= 21**0.5 - 1e-9


@given(COLOURS, st.sampled_from([Depth.TRUE, Depth.INDEXED, Depth.SIXTEEN]))
def test_letters_on_a_painted_ground_read_in_every_depth(colour: Rgb, depth: Depth) -> None:
    """The contrast holds for the colours as shown, not as wished for."""
    paint = paint_ground(colour, depth)

    assert paint.ground is not None
    assert paint.ink is not None
    assert contrast(paint.ground, paint.ink) >= 4.5


@pytest.mark.parametrize("kind", Badge)
@pytest.mark.parametrize("depth", [Depth.TRUE, Depth.INDEXED])
def test_a_patch_reads_better_than_it_must(kind: Badge, depth: Depth) -> None:
    """7:1 is what WCAG 2 asks for under harder conditions (SC 1.4.6); lamp light is one."""
    paint = paint_badge(kind, depth)

    assert paint.ground is not None
    assert paint.ink is not None
    assert contrast(paint.ground, paint.ink) >= 7


def test_the_256_colours_are_those_of_terminals() -> None:
    """Checked against the table of an emulator that is not ours (pyte)."""
    assert [colour.hex for colour in INDEXED] == [f"#{each}" for each in FG_BG_256[16:]]


def test_the_sixteen_are_those_of_terminals() -> None:
    """Checked against prompt_toolkit's table, but for the blues, which xterm made lighter later (from memory)."""
    ours = {name: (colour.red, colour.green, colour.blue) for colour, name in SIXTEEN.items()}

    blues = {"ansiblue", "ansibrightblue"}
    theirs = {name: value for name, value in ANSI_COLORS_TO_RGB.items() if name in ours}
    assert len(ours) == 16
    assert {each for each in ours if ours[each] != theirs[each]} == blues


@pytest.mark.parametrize("depth", [Depth.INDEXED, Depth.SIXTEEN])
def test_a_colour_the_terminal_has_is_shown_as_it_is(depth: Depth) -> None:
    """Nothing is lost on what needs no change."""
    for colour in INDEXED if depth is Depth.INDEXED else SIXTEEN:
        assert match_colour(colour, depth) == colour


def test_without_colour_a_patch_is_reversed() -> None:
    """So that it is found even then."""
    assert paint_badge(Badge.OFF, Depth.NONE) == Paint(bold=True, reverse=True)


@given(COLOURS)
def test_what_steps_back_moves_to_the_middle(colour: Rgb) -> None:
    """On a dark ground light colours grow darker, on a light one dark colours lighter."""
    moved = dim_colour(colour)

    for before, after in zip(
        (colour.red, colour.green, colour.blue), (moved.red, moved.green, moved.blue), strict=True
    ):
        assert abs(after - 128) <= abs(before - 128) / 2 + 1


def test_a_ground_needs_its_ink() -> None:
    """Letters of an unknown colour on a ground of ours could vanish."""
    with pytest.raises(ValueError, match="ink"):
        Paint(ground=rgb_from_hex("#ffffff"))
