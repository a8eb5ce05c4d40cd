"""How long a repeat goes on, in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Continue in this manner until there are 26 sts on needle.", "repeat last rounds until there are 26 sts on needle."),
        ("Cont in the same way, increasing as set, until you have 40 sts.", "repeat last rounds until you have 40 sts."),
        ("BO 4 sts, knit until there are 10 sts on right needle after BO, BO 4 sts, knit to end.", "BO 4 sts, knit 10, BO 4 sts, knit to end."),
        ("Bind off 6 sts for left underarm, knit until you have 20 sts on right needle, turn.", "Bind off 6 sts for left underarm, knit 20, turn."),
        ("K5, BO 4 sts, k until there are 10 sts on right needle after BO, k to end.", "K5, BO 4 sts, k 10, k to end."),
        ("Purl until all sts have been worked.", "Purl to end."),
        ("Cont in st st until 10 rows have been worked in all.", "Cont in st st until 10 rows altogether."),
        ("Knit until 12 rounds have been worked.", "Knit until 12 rounds so far."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """The stitch left from binding off is one of those on the right needle."""
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize(
    "printed",
    ["K5, knit until there are 10 sts on right needle.", "K5, BO 4 sts, knit until 10 sts on right needle, k to end.", "Work chart fern until 8 rows have been worked.", "Continue in this manner."]
)
def test_what_has_two_meanings_stays_as_it_is(printed: str) -> None:
    """Stitches worked before would count; rows of a chart are its own; without an end nobody can tell how far."""
    assert reword(made_plain(printed)).text == printed
