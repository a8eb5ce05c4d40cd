"""The table of how stitches are told in words."""

from __future__ import annotations

import re

from stepper.craft.stitches import find_stitch
from stepper.project.own_stitches.stitches_told import NUMBERS, TOLD


def test_every_row_is_an_expression() -> None:
    """A row that cannot be compiled would stop every page that explains anything."""
    assert all(re.compile(words, re.I) for words, _ in TOLD)


def test_a_row_that_names_a_stitch_names_one_of_the_table() -> None:
    """A misspelt stitch would be read by nothing, and its row be dead."""
    named = [made for _, made in TOLD if isinstance(made, str) and re.fullmatch(r"[a-z0-9/ ]{3,}", made)]
    others = {"knit", "purl", "work", "psso", "p2sso", "sl2 kwise", "wyif", "wyib", "pwise", "kwise"}
    assert {made for made in named if find_stitch(made) is None} <= others


def test_number_words_are_numbers() -> None:
    """They stand in front of stitches."""
    assert list(NUMBERS.values()) == [str(number) for number in range(1, 7)]
