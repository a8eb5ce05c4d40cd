"""Shaping at edges, steps cast off, changes spread. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword


def written(printed: str) -> str:
    """Return a line in the words it is read in at the second look."""
    return " ".join(reword(made_plain(printed), spoken=True).text.split()).strip(" ,.")


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("At beg of each RS row, k1, ssk, k to end, 5 times in all.", "every RS row 5 times: k1, ssk, k to end"),
        ("At the end of every 4th row, k to last 3 sts, k2tog, k1, for a total of 6 times.", "every 4th row 6 times: k to last 3 sts, k2tog, k1"),
        ("At neck edge, dec 1 st every row 3 times.", "dec 1 st at neck edge every row 3 times"),
        ("Dec 1 st at neck edge on next row and again on the row after.", "Dec 1 st at neck edge on next 2 rows"),
        ("Dec 1 st at each end of every row until 45 sts rem, then on foll 2 rows.", "Dec 1 st at each end of every row until 45 sts rem. Dec 1 st at each end of next 2 rows"),
        ("Cast off 7 at beg of next 4 rows, then 8 at beg of foll 2 rows.", "Bind off 7 sts at beg of next 4 rows. Bind off 8 sts at beg of next 2 rows"),
        ("Dec at raglan edge on every RS row as set, at the same time dec 1 st at neck edge on next 4 rows.", "dec 1 st at neck edge on next 4 rows, at the same time Dec 1 st at armhole edge as before on every RS row"),
    ],
)
def test_what_is_shaped_is_told_in_one_order(printed: str, words: str) -> None:
    """The place stands behind the change, a list that goes on becomes a sentence, a row stands behind its rows."""
    assert written(printed) == words


@pytest.mark.parametrize(
    "line",
    [
        "At the end of every RS row, k1, ssk, work to end, 5 times.",
        "At the beginning of every RS row, k1, ssk, work to last 3 sts, turn, 5 times.",
        "Cast off 5 sts, taking 2 tog across.",
        "Knit, increasing 12 sts evenly, using k2tog.",
        "Work 8 rows of chart A, armhole and neck are shaped at the same time.",
    ],
)
def test_what_only_looks_alike_is_left(line: str) -> None:
    """The other end of the row, a row that turns, part of the stitches, a stitch that takes one with it, and work before the telling."""
    assert not reads(line)
