from __future__ import annotations

import os
from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest

from stepper.craft.colours.colour import contrast
from stepper.screen.drawing.letters import LETTERINGS, draw_letters
from stepper.screen.drawing.rows import row_width, text_of
from stepper.screen.drawing.style import Depth
from stepper.screen.keys import Page
from stepper.screen.terminal_abilities import assess_terminal
from stepper.screen.view import draw_screen
from tests.screen.scenes import MOMENTS, SIZES, terminal
from tests.tables import each_row

EVERY_SIZE = (*SIZES, (200, 60))
"""The sizes of the goldens, and that of a large display."""
GOLDEN = Path(__file__).parent / "golden"
UPDATE = "STEPPER_WRITE_GOLDENS"
"""Set to 1, the screens are written anew: `STEPPER_WRITE_GOLDENS=1 python -m pytest tests/screen/test_view.py`."""

_BLOCK_SIGNS = frozenset("█▀▄ ")


@each_row("size", SIZES)
@each_row("moment", MOMENTS)
def test_the_screen_is_as_it_was_agreed_on(moment: str, size: tuple[int, int]) -> None:
    """A change of what she sees is a change of a text that somebody reads."""
    columns, rows = size
    shown = draw_screen(MOMENTS[moment](), terminal(columns, rows))
    text = "\n".join(text_of(row).rstrip() for row in shown).rstrip("\n") + "\n"
    path = GOLDEN / f"{moment}-{columns}x{rows}.txt"
    if os.environ.get(UPDATE) == "1":
        path.write_text(text, encoding="utf-8")

    assert text == path.read_text(encoding="utf-8")


def test_no_golden_is_left_over() -> None:
    """A screen nobody draws any more must not be kept as if it were agreed on."""
    expected = {f"{moment}-{columns}x{rows}.txt" for moment in MOMENTS for columns, rows in SIZES}
    expected |= {path.name for path in GOLDEN.glob("emulated-*.txt")}

    assert {path.name for path in GOLDEN.glob("*.txt")} == expected


@each_row("blocks", [True, False])
@each_row("moment", MOMENTS)
def test_every_screen_has_its_size_whatever_the_size(moment: str, blocks: bool) -> None:
    """Nothing is ever wider or higher than the window, down to one cell."""
    scene = MOMENTS[moment]()
    for columns, rows in [*SIZES, (1, 1), (10, 3), (24, 8), (59, 17), (200, 60), (300, 90)]:
        shown = draw_screen(scene, terminal(columns, rows, blocks=blocks))

        assert len(shown) == rows
        assert max(row_width(row) for row in shown) <= columns


@pytest.mark.parametrize("depth", Depth)
@pytest.mark.parametrize("moment", MOMENTS)
def test_every_text_has_enough_contrast(moment: str, depth: Depth) -> None:
    """On a ground of ours the ink is 4.5:1 from it or more (WCAG 2, SC 1.4.3); elsewhere the terminal's own ink
    stands on its own ground, which is how a dark and a light terminal are both served."""
    for columns, rows in SIZES:
        for row in draw_screen(MOMENTS[moment](), terminal(columns, rows, depth)):
            for span in row:
                if set(span.text) <= _BLOCK_SIGNS:
                    continue  # part of a picture: it has no letters
                if span.paint.ground is None:
                    assert span.paint.ink is None, span
                else:
                    assert span.paint.ink is not None
                    assert contrast(span.paint.ink, span.paint.ground) >= 4.5, span


@each_row("moment", MOMENTS)
def test_without_colour_nothing_is_coloured(moment: str) -> None:
    """Where a terminal has no colours none is asked for."""
    for row in draw_screen(MOMENTS[moment](), terminal()):
        assert all(span.paint.ground is None and span.paint.ink is None for span in row)


@each_row("moment", MOMENTS)
def test_a_plain_terminal_gets_ascii_alone(moment: str) -> None:
    """A console that knows no more must not show boxes and question marks."""
    for columns, rows in SIZES:
        for row in draw_screen(MOMENTS[moment](), terminal(columns, rows, blocks=False)):
            assert text_of(row).isascii(), text_of(row)


@pytest.mark.parametrize("encoding", ["cp437", "cp850", "cp1252"])
def test_a_console_can_write_every_sign_of_ours(encoding: str) -> None:
    """A Windows console by its code page: what it lacks would come out as question marks."""
    found = assess_terminal({}, is_terminal=True, encoding=encoding, windows=True)
    "".join(sorted(_signs_shown(found.solid))).encode(encoding)


@cache
def _signs_shown(solid: bool) -> frozenset[str]:
    # Consoles differ in what they can write, and not in what is drawn.
    signs: set[str] = set()
    for scene in MOMENTS.values():
        for columns, rows in EVERY_SIZE:
            console = replace(terminal(columns, rows, Depth.SIXTEEN, blocks=False), solid=solid)
            for row in draw_screen(scene(), console):
                signs.update(text_of(row))
    return frozenset(signs)


def test_colour_changes_no_letter() -> None:
    """What is told by colour is told by letters too: they are the same in all depths but the picture's."""
    for moment, scene in MOMENTS.items():
        if scene().ui.page is Page.YOKE or moment == "finished":
            continue
        texts = {
            "\n".join(text_of(row).rstrip() for row in draw_screen(scene(), terminal(depth=depth)))
            for depth in Depth
        }
        assert len(texts) == 1, moment


def test_the_half_second_holds_on_every_size() -> None:
    """Round, what to do and whether the count stands are there on the smallest of the three screens too."""
    for columns, rows in SIZES:
        text = "\n".join(
            text_of(row) for row in draw_screen(MOMENTS["count-stands"](), terminal(columns, rows))
        )
        assert "of 3" in text
        assert "count stands" in text
        assert "Knit two, purl two" in " ".join(text.split()) or shows_large("Knit two", text)


def test_the_step_is_large_wherever_there_is_room() -> None:
    """Everything from 80 by 24 on is read across a room; a plain console of ASCII alone needs more for it."""
    for columns, rows in ((80, 24), (120, 40), (200, 60)):
        shown = draw_screen(MOMENTS["count-stands"](), terminal(columns, rows))
        assert shows_large("Knit two", "\n".join(map(text_of, shown))), (columns, rows)


def shows_large(words: str, text: str) -> bool:
    """Say whether words stand somewhere in a text in large letters of some size."""
    for lettering in LETTERINGS:
        drawn = draw_letters(words, lettering, 1000, terminal())
        assert drawn is not None
        if all(text_of(row).strip() in text for row in drawn):
            return True
    return False
