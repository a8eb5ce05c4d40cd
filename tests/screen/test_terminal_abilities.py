from __future__ import annotations

import pytest

from stepper.screen.drawing.style import Depth
from stepper.screen.terminal_abilities import assess_terminal


def _depth(**environ: str) -> Depth:
    return assess_terminal(environ, is_terminal=True, encoding="utf-8", windows=False).depth


@pytest.mark.parametrize(
    ("environ", "depth"),
    [
        ({"TERM": "xterm-256color", "COLORTERM": "truecolor"}, Depth.TRUE),
        ({"TERM": "xterm-256color", "COLORTERM": "24bit"}, Depth.TRUE),
        ({"TERM": "xterm-direct"}, Depth.TRUE),
        ({"TERM": "xterm-256color"}, Depth.INDEXED),
        ({"TERM": "screen-256color"}, Depth.INDEXED),
        ({"TERM": "xterm"}, Depth.SIXTEEN),
        ({"TERM": "linux"}, Depth.SIXTEEN),
        ({"TERM": "vt100"}, Depth.NONE),
        ({"TERM": "xterm-256color", "COLORTERM": "truecolor", "NO_COLOR": "1"}, Depth.NONE),
        ({"TERM": "xterm-256color", "NO_COLOR": ""}, Depth.INDEXED),
    ],
)
def test_colours_are_what_the_terminal_says(environ: dict[str, str], depth: Depth) -> None:
    """NO_COLOR counts when it is not empty (no-color.org)."""
    assert _depth(**environ) is depth


@pytest.mark.parametrize("term", ["", "dumb", "unknown", "DUMB"])
def test_a_dumb_terminal_says_why_there_is_no_full_screen(term: str) -> None:
    """And the same without a terminal at all."""
    found = assess_terminal({"TERM": term}, is_terminal=True, encoding="utf-8", windows=False)
    piped = assess_terminal({"TERM": "xterm"}, is_terminal=False, encoding="utf-8", windows=False)

    assert found.why_not == "This terminal cannot show a full screen"
    assert piped.why_not == "The output does not go to a terminal"


def test_a_windows_console_says_nothing_and_is_no_dumb_terminal() -> None:
    """It sets no TERM; the newer one can be told by its session."""
    old = assess_terminal({}, is_terminal=True, encoding="cp1252", windows=True)
    new = assess_terminal({"WT_SESSION": "1"}, is_terminal=True, encoding="utf-8", windows=True)

    assert (old.why_not, old.depth, old.blocks) == ("", Depth.SIXTEEN, False)
    assert (new.why_not, new.depth, new.blocks) == ("", Depth.TRUE, True)


@pytest.mark.parametrize(("encoding", "solid"), [("cp437", True), ("cp850", True), ("cp1252", False), ("ascii", False)])
def test_a_code_page_with_blocks_gets_solid_letters(encoding: str, solid: bool) -> None:
    """The code pages 437 and 850 have full and half blocks, 1252 has none (Python's codecs)."""
    found = assess_terminal({}, is_terminal=True, encoding=encoding, windows=True)

    assert (found.blocks, found.solid) == (False, solid)
