"""The row a fabric begins with, ribs in stars, rows that take turns. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Work 9 rows in garter st (1st row is WS).", "next row (WS): Work 9 rows in garter st."),
        ("Work 5 rows in rib, the first row being a RS row.", "next row (RS): Work 5 rows in rib."),
        ("Begin Broken Seed with Row 1 and work for 10 rows.", "work in Broken Seed pattern, beginning with row 1 for 10 rows."),
        ("*K2, p2* rib for 6 rnds.", "work in k2, p2 rib for 6 rnds."),
        ("Work Rnds 1 and 2 alternately until 40 sts rem.", "rep Rnds 1 and 2 until 40 sts rem."),
    ],
)  # fmt: skip
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """Which row comes first decides on which side the purls stand."""
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize(
    "printed",
    ["Alternate Rnds 1 and 2 12 times.", "Work 9 rows in garter st (first row of chart).", "Begin at the centre with Row 1 and work for 10 rows."],
)  # fmt: skip
def test_what_has_two_meanings_stays_as_it_is(printed: str) -> None:
    """Twelve times each, or twelve rounds; a place is no pattern."""
    assert reword(made_plain(printed)).text == printed
