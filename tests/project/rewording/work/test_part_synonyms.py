"""The second of a pair in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Make 2.", "make again 1."),
        ("Make a pair.", "make again 1."),
        ("Make second sleeve same as first.", "make again 1 sleeve."),
        ("Second sock the same.", "make again 1 sock."),
        ("Work the other mitten to match.", "make again 1 mitten."),
        ("Make another sock to match.", "make again 1 sock."),
        ("Complete as given for first side, reversing shaping.", "complete like other side, reversing shaping."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """One more of the piece, whichever way it is said."""
    assert recast(made_plain(printed)).text == read


@pytest.mark.parametrize("printed", ["Make 2 buttonholes.", "Make second sleeve 2 cm longer.", "Work second row to match.", "Make 2 sts from 1."])
def test_what_says_more_than_that_stays_as_it_is(printed: str) -> None:
    """What differs in the second piece must not be passed over."""
    assert "again" not in recast(made_plain(printed)).text
