"""Sentences of pages that knitters write for one another. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Change to st st.", "go on in st st."),
        ("*Sl 1, p1* across on WS rows.", "WS rows: *Sl 1, p1; rep from * to end."),
        ("K1 (k2, k2), pm, k16, pm, k to end.", "K1 (2, 2), pm, k16, pm, k to end."),
        ("Bind off 6 sts 3 times from armhole side.", "Bind off 6 sts at armhole edge every 2nd row 3 times."),
        ("Work even for 9 cm from the first binding off.", "Work even until armhole measures 9 cm."),
        ("K to marker, slip sts between next two markers onto scrap yarn, k to end.", "K to marker, hold to next marker, k to end."),
        ("Join carefully not to twist and knit 3 rnds.", "join in the round. knit 3 rnds."),
    ],
)  # fmt: skip
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """What is meant is the same, whichever way the page writes it."""
    assert recast(made_plain(printed)).text == read


@pytest.mark.parametrize("printed", ["Change to lattice pattern.", "K1 (p2, k2), k16."])
def test_what_may_mean_something_else_stays_as_it_is(printed: str) -> None:
    """A fabric that nobody named is no stockinette, and a list of two stitches no list of sizes."""
    made = recast(made_plain(printed))
    assert made.text == printed
    assert made.kept == ()
