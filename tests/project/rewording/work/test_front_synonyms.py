"""Fronts and necks, in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("After all decs have been worked, you should have 18 (20, 22) sts.", "18 (20, 22) sts."),
        ("18 sts rem when neck shaping is complete.", "18 sts rem."),
        ("Work same as back until raglan shapings have been completed.", "Work as for back to end of raglan shaping."),
        ("Work as for right front to armhole shaping, ending after a WS row.", "Work as for right front to armhole shaping. ends with a WS row."),
        ("Bind off remaining 8 sts at the beg of the next 2 rows.", "Bind off 8 sts at beg of next 2 rows. 0 sts."),
        ("Dec 1 st at neck edge on next RS row and foll 3 alt rows.", "Dec 1 st at neck edge on next RS row, then every alt row 3 times."),
        ("Cuff, rnd 2: Knit.", "Cuff rnd 2: Knit."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """A count stays a count that is checked, and what is left over after the last rows is none."""
    assert reword(made_plain(printed)).text.strip() == read


@pytest.mark.parametrize("printed", ["Work each side of neck separately.", "Both sides are worked separately.", "Keeping armhole edge correct, work 4 rows even."])
def test_what_works_nothing_is_said(printed: str) -> None:
    """The words stay beside the work."""
    assert reword(made_plain(printed)).kept


@pytest.mark.parametrize(
    "printed",
    [
        "When all shaping is complete, bind off 18 sts.",
        "When armhole shaping is complete, dec 1 st at neck edge every row.",
        "Work in patt until armhole shaping is complete.",
        "Work each side separately, dec 1 st at neck edge.",
        "Keeping armhole edge correct and neck edge as set, dec 1 st.",
        "Work in stockinette (knit RS rows, purl 2 rows) for 4 rows.",
        "Dec 1 st at armhole edge every RS row 3 times as foll: see chart.",
    ],
)
def test_another_meaning_in_like_words_is_not_read(printed: str) -> None:
    """What begins when a shaping ends, and rows that are not told, are work."""
    assert not reads(printed)
