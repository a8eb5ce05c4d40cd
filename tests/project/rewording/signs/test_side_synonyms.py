"""Sides of rows, and stitches with their number in front. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Row 3 from the right side: Knit.", "Row 3 (RS): Knit."),
        ("Row 4, seen from the wrong side: Purl.", "Row 4 (WS): Purl."),
        ("All right-side rows: Knit.", "RS rows: Knit."),
        ("Wrong side rows: Purl.", "WS rows: Purl."),
        ("On the next right side row, work k3, ssk, k to end.", "Next row (RS): k3, ssk, k to end."),
        ("On the WS row, p3, k to end.", "Next row (WS): p3, k to end."),
        ("1 k, 2 k tog, k to end.", "k1, k2tog, k to end."),
        ("2k, 2p tog, 3k tog, 4k. 18 sts.", "k2, p2tog, k3tog, k4. 18 sts."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """A row is read by one way to number its stitches: its own."""
    assert recast(made_plain(printed)).text == read


@pytest.mark.parametrize("printed", ["K3, 2 k tog, k to end.", "P1, 2 p tog, p to end."])
def test_a_row_that_numbers_both_ways_is_left_as_it_is(printed: str) -> None:
    """Whether a number belongs to the stitch before it or behind it is not guessed within a row."""
    assert (
        "2 k tog" in recast(made_plain(printed)).text.lower()
        or "2 p tog" in recast(made_plain(printed)).text.lower()
    )
