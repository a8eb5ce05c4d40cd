"""How far from the edge a shaping lies is read wherever the line tells it."""

from __future__ import annotations

import pytest

from stepper.project.rewording.clauses.insets import write_insets
from stepper.project.rewording.reworded import as_printed


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        (
            "Inc 1 st each side (2 sts in from edge) of next row, then every 8th row 2 times more-86 sts.",
            "Inc 1 st each side of next row, then every 8th row 2 times more, working incs 2 sts in from edge. 86 sts.",
        ),
        (
            "Dec 1 st 3 sts in from each end on every RS row 4 times.",
            "Dec 1 st at each end on every RS row 4 times, working decs 3 sts in from edge.",
        ),
    ],
)
def test_it_is_written_behind_the_shaping(printed: str, words: str) -> None:
    """Left out, the shaping would lie a stitch in from the edge, and seams and bands would not match."""
    assert write_insets(as_printed(printed)).text == words


@pytest.mark.parametrize(
    "printed",
    [
        "Place a marker 3 sts in from each end of the row.",
        "Inc 1 st at each end of next row. Place markers 2 sts in from edge.",
        "Dec 1 st 3 sts in from the edge on every RS row.",
        "Dec 1 st at each end of next row, 2 sts in from edge at the beginning and 3 sts in from edge at the end.",
    ],
)
def test_what_is_no_shaping_or_lies_at_one_end_alone_is_left(printed: str) -> None:
    """Of one edge it is not said which, and two numbers are for two ends."""
    assert write_insets(as_printed(printed)).text == printed
