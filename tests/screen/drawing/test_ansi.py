"""Rows as text for a terminal, read back by an emulated terminal."""

from __future__ import annotations

import pyte
import pytest

from stepper.craft.colours.colour import rgb_from_hex
from stepper.screen.drawing.ansi import write_ansi
from stepper.screen.drawing.rows import Styled
from stepper.screen.drawing.style import BOLD, Depth, Paint, paint_ground

PINE = rgb_from_hex("#1f4d3a")


def shown(text: str) -> tuple[str, pyte.screens.Char]:
    """Return what an emulated terminal shows, and how its first letter looks."""
    screen = pyte.Screen(40, 2)
    pyte.Stream(screen).feed(text)
    return screen.display[0].rstrip(), screen.buffer[0][0]


def test_true_colour_is_the_yarns_own() -> None:
    """pyte keeps the very colour and puts it out again at the end of the span."""
    row = (Styled("A ", paint_ground(PINE, Depth.TRUE)), Styled("plain"))
    text, first = shown(write_ansi(row, Depth.TRUE))
    assert (text, first.bg, first.fg) == ("A plain", "1f4d3a", "ffffff")
    screen = pyte.Screen(40, 2)
    pyte.Stream(screen).feed(write_ansi(row, Depth.TRUE))
    assert screen.buffer[0][3].bg == "default"


@pytest.mark.parametrize("depth", [Depth.INDEXED, Depth.SIXTEEN])
def test_fewer_colours_are_painted_too(depth: Depth) -> None:
    """Some ground is there, and it is not the terminal's own."""
    text, first = shown(write_ansi((Styled("A ", paint_ground(PINE, depth)),), depth))
    assert text == "A"
    assert first.bg != "default"


def test_bold_and_reverse_are_written() -> None:
    """As ECMA-48 has them."""
    assert shown(write_ansi((Styled("x", BOLD),), Depth.TRUE))[1].bold
    assert shown(write_ansi((Styled("x", Paint(reverse=True)),), Depth.TRUE))[1].reverse


def test_without_colours_there_is_no_code_at_all() -> None:
    """`NO_COLOR` means what it says."""
    assert write_ansi((Styled("A ", paint_ground(PINE, Depth.TRUE)), Styled("b  ", BOLD)), Depth.NONE) == "A b"
