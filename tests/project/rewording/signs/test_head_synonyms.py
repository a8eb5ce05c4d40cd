"""Heads of rows, cables in words and counts behind a row. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Row 7) Knit", "Row 7: Knit"),
        ("R4 k3, p3, k to end", "Row 4: k3, p3, k to end"),
        ("Second row - Purl 3, knit to end.", "Second row: Purl 3, knit to end."),
        ("Row 5 to 8: knit", "Rows 5-8: knit"),
        ("P2, sl next 3 sts onto cn and hold in front, k3, k3 from cn, p2", "P2, 3/3 LC, p2"),
        ("P2, slip next 1 st to cable needle and hold at back, k2, p1 from cable needle, p2", "P2, 2/1 RPC, p2"),
        ("P2, slip next 2 sts to cn and hold in front, p1, k2 from cn, p2", "P2, 2/1 LPC, p2"),
        ("K, decreasing one stitch at each end of row.", "k1, k2tog, k to last 3 sts, k2tog, k1."),
        ("K2, m1, k to end -33-", "K2, m1, k to end (33 sts)"),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """A cable is named after the stitches that lie in front, then those behind (Craft Yarn Council's `n/m LC`)."""
    assert recast(made_plain(printed)).text == read


@pytest.mark.parametrize(
    "printed",
    [
        "K2 (4, 6), p2",
        "P2, slip next 2 sts to cable needle, k2",
        "C6F: Sl next 3 sts to cn and hold in back, k3, then k3 from cn.",
    ],
)
def test_what_may_mean_something_else_stays_as_it_is(printed: str) -> None:
    """A list of sizes is no bracket to be repeated, and what a cable means is no row in which it is worked."""
    made = recast(made_plain(printed))
    assert "/" not in made.text
    assert "2, (" not in made.text
