"""Stitches held, taken up and picked up, in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("K10, sl next 12 sts on to a st holder, k to end.", "K10, hold 12 sts, k to end."),
        ("K10, put next 12 sts on a thread, k to end.", "K10, hold 12 sts, k to end."),
        ("Place 20 left sleeve sts on scrap yarn, k to end.", "hold 20 sts for left sleeve, k to end."),
        ("Place 20 held sts on US 6 (4 mm) dpns.", "change to US 6 (4 mm) double-pointed needles. return 20 held sts to needles."),
        ("With RS facing, rejoin yarn to held sts, bind off 6 sts, k to end.", "With RS facing, return held sts to needles. bind off 6 sts, k to end."),
        (
            "Pick up and knit 18 sts down left neck, 24 sts from holder, 18 sts up right neck.",
            "Pick up and knit 18 sts, k across 24 held sts, pick up and knit 18 sts.",
        ),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """The needle named with the stitches is changed to, not passed over."""
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize(
    ("printed", "kept"),
    [
        ("Pick up and k 30 sts round neck.", "round neck"),
        ("Place sts on holder and set aside.", "set aside"),
        ("With RS facing, beg at right shoulder, pick up and knit 44 sts.", "beg at right shoulder"),
    ],
)
def test_where_stitches_are_picked_up_is_kept(printed: str, kept: str) -> None:
    """It is worth no stitches, and she needs it."""
    assert kept in reword(made_plain(printed)).kept


def test_the_last_stitches_are_not_the_next() -> None:
    """"Slip last 15 sts to a holder" at the beginning of a row would hold the first."""
    assert "hold" not in reword("Slip last 15 sts to a stitch holder, k to end.").text.split(" to a ")[0]
