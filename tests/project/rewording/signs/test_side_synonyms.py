"""Sides of rows, and stitches with their number in front. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword


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
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize("printed", ["K3, 2 k tog, k to end.", "P1, 2 p tog, p to end."])
def test_a_row_that_numbers_both_ways_is_left_as_it_is(printed: str) -> None:
    """Whether a number belongs to the stitch before it or behind it is not guessed within a row."""
    assert (
        "2 k tog" in reword(made_plain(printed)).text.lower()
        or "2 p tog" in reword(made_plain(printed)).text.lower()
    )


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Every 8th round, work dec rnd 4 times.", "Work dec rnd every 8th round 4 times."),
        ("On each 4th row, rep the inc row twice more.", "Work inc row each 4th row twice more."),
        ("On every RS row, dec 1 st at each end until 18 sts rem.", "dec 1 st at each end of every RS row until 18 sts rem."),
        ("On every WS row, work p1, p2tog, p to end, 3 times.", "every WS row 3 times: p1, p2tog, p to end."),
        ("Start knitting with the smaller circular needle.", "Change to smaller needles."),
        ("P1, sl 2 with wool at back, p to end.", "P1, sl 2 wyib, p to end."),
        ("Swyif, k to end.", "sl 1 wyif, k to end."),
        ("K1, sl 3 swyib, k to end.", "K1, sl 3 wyib, k to end."),
    ],
)  # fmt: skip
def test_a_line_is_put_into_the_words_that_are_read_where_rows_are_told_first(printed: str, read: str) -> None:
    """The rows stand behind the shaping, as the grammar reads them."""
    assert reword(made_plain(printed)).text.lower() == read.lower()


@pytest.mark.parametrize(
    "printed",
    ["On every RS row, work k1, ssk, k to end.", "Every 6th round, work a bobble 2 times.", "On every RS row, dec 1 st at each end."],
)  # fmt: skip
def test_what_has_no_end_or_no_row_is_not_read(printed: str) -> None:
    """For how long, and what, has to be said."""
    assert not reads(printed)


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Change to smaller needles (3.25 mm).", "Change to 3.25 mm needles."),
        (
            "Switch to larger circular needle, US 8, and knit 1 row.",
            "change to US 8 needles, and knit 1 row.",
        ),
        ("Change to the smaller UK 10 needles.", "Change to UK 10 needles."),
        (
            "With larger double-pointed needles (size 4 mm), knit 1 round.",
            "change to 4 mm needles. knit 1 round.",
        ),
    ],
)
def test_the_size_is_read(printed: str, read: str) -> None:
    """Which of two needles is meant is then clear."""
    assert " ".join(reword(made_plain(printed)).text.split()).replace(" ,", ",") == read


def test_a_word_alone_stays() -> None:
    """The file says which two needles there are."""
    assert reword(made_plain("Change to larger needles.")).text == "Change to larger needles."
