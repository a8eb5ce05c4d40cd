"""Wordings of leaflets and home pages. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("P2tog-b, p to end", "P2tog tbl, p to end"),
        ("K to marker, k to end, leaving a total of 52 sts.", "K to marker, k to end. 52 sts."),
        ("Rep last 2 rows of (k3, p3) ribbing 4 times.", "Rep last 2 rows 4 times."),
        ("Knit until work from beg measures 30 cm.", "Knit until piece measures 30 cm from beg."),
    ],
)  # fmt: skip
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """What is meant is the same, whichever way the page writes it."""
    assert recast(made_plain(printed)).text == read


def test_stitches_left_unworked_are_no_total() -> None:
    """Behind a turn "leaving 12 sts" says what is not worked, and that is no count of the row."""
    assert "." not in recast(made_plain("K12, turn, leaving 12 sts")).text


def test_how_far_it_should_reach_is_said_beside_the_rounds() -> None:
    """The number printed in brackets is worked; where it ought to come to is for the knitter to see."""
    made = recast(made_plain("Knit plain until sock reaches the ankle (22 rounds)."))
    assert made.text == "Knit 22 rounds."
    assert made.kept == ("until sock reaches the ankle",)
