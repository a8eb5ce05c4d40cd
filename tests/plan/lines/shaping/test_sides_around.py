"""Rows of a side where the work goes in rounds."""

from __future__ import annotations

import pytest

from tests.project.corpus_judge import text_of, worked


def told(*lines: str) -> list[str]:
    """Work lines; give what is told of sides."""
    text, _ = text_of(list(lines), 1, "cm")
    (plan,), problems = worked(text, 1)
    assert problems == ()
    return [caution.text for caution in plan.warnings if "right side" in caution.text]


ROUND = ("CO 24 sts. Join in the round.", "Knit 1 round.")


@pytest.mark.parametrize(
    ("line", "often"),
    [
        ("Dec 1 st at each end of every RS row 2 times.", "the RS rows of this line, worked around, are taken as every other round"),
        ("Dec 1 st at each end of every other RS row 2 times.", "the RS rows of this line, worked around, are taken as every 4th round"),
    ],
)  # fmt: skip
def test_it_is_told_what_is_taken(line: str, often: str) -> None:
    """In rows every second row shows the right side; in the round every round does: common practice."""
    (said,) = told(*ROUND, line)
    assert often in said


def test_it_is_told_once() -> None:
    """The second line is meant as the first."""
    line = "Dec 1 st at each end of every RS row once."
    assert len(told(*ROUND, line, line)) == 1


def test_nothing_is_told_in_rows_or_of_rounds() -> None:
    """There the words say what is meant."""
    assert (
        told("CO 24 sts. Work flat.", "Knit 2 rows.", "Dec 1 st at each end of every RS row 2 times.") == []
    )
    assert told(*ROUND, "Dec 1 st at each end of every other round 2 times.") == []
