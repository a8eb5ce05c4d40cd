"""Lengths, endings, counts and yarns in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Knit a further 3 cm.", "Knit for 3 cm."),
        ("Work 4 rounds without shaping.", "Work 4 rounds even."),
        ("Work even until piece measures 4 cm, ending with RS facing for next row.", "Work even until piece measures 4 cm, ending with a WS row."),
        ("Knit 3 rounds, then bind off.", "Knit 3 rounds. bind off."),
        ("Break CC and join A.", "Break CC. join A."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """RS facing for the next row means that the last row was of the wrong side."""
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize(
    "printed",
    [
        "Work even until piece measures 4 cm, ending with a purl row.",
        "K10, then k to end.",
        "About 60 sts.",
    ],
)
def test_what_has_two_meanings_stays_as_it_is(printed: str) -> None:
    """A guess in the table would be a row knitted wrong in silence; such a line is refused."""
    assert reword(made_plain(printed)).text == printed
