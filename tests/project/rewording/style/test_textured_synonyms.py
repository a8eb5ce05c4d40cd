"""Lace and cables written out in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "words", "kept"),
    [
        ("K3, yo, k to spine st, yo, k1, yo, k to last 3 sts, yo, k3.", "K3, yo, k to centre st, yo, k1, yo, k to last 3 sts, yo, k3.", ()),
        ("K5, yo, knit the center st, yo, k5.", "K5, yo, k1, yo, k5.", ()),
        ("All WS rows: K the knit sts and p the purl sts.", "All WS rows: work in pattern to end.", ()),
        ("Rows 11-14: Work as for rows 3-6.", "Rows 11-14: rep rows 3-6.", ()),
        (
            "Repeat these 8 rows 3 more times, working one more repeat of the lace on each side every time.",
            "Repeat last 8 rows 3 more times.",
            ("working one more repeat of the lace on each side every time",),
        ),
        (
            "Cont in this way, with panels as set and moss st at sides, inc 1 st at each end of every 6th row 3 times.",
            "Cont as set, inc 1 st at each end of every 6th row 3 times.",
            ("with panels as set and moss st at sides",),
        ),
    ],
)
def test_it_is_put_into_the_words_that_are_read(printed: str, words: str, kept: tuple[str, ...]) -> None:
    """What goes on as it is, is said with the line."""
    made = reword(made_plain(printed))
    assert (made.text, made.kept) == (words, kept)


@pytest.mark.parametrize(
    "printed",
    [
        "Repeat these 8 rows 3 more times, working 2 sts less between repeats each time.",
        "Cont as set, with panels in rib at sides, inc 1 st at each end of every 6th row 3 times.",
        "Cast off 4 sts, working 2 sts tog at each end.",
        "Place a marker at each end of last row to mark 12 sts.",
    ],
)
def test_what_works_stitches_otherwise_is_no_aside(printed: str) -> None:
    """A change of fabric or of stitches stays in the line."""
    made = reword(made_plain(printed))
    assert made.kept == ()
