"""Shapings that tell first on which rows, and yarn held. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


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
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """The rows stand behind the shaping, as the grammar reads them."""
    assert recast(made_plain(printed)).text.lower() == read.lower()


@pytest.mark.parametrize(
    "printed",
    ["On every RS row, work k1, ssk, k to end.", "Every 6th round, work a bobble 2 times.", "On every RS row, dec 1 st at each end."],
)  # fmt: skip
def test_what_has_no_end_or_no_row_stays_as_it_is(printed: str) -> None:
    """For how long, and what, has to be said."""
    made = recast(made_plain(printed)).text.lower()
    assert made.startswith(("on every", "every"))
