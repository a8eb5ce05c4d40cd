"""Rows told behind their shaping, in brackets or behind a colon. Source: common practice."""

from __future__ import annotations

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.shaped_rows import write_shaped_rows


def written(printed: str) -> str:
    """Return a line with its row written with the rows on which it is worked."""
    return write_shaped_rows(as_printed(printed)).text


def test_a_row_in_brackets_is_worked_as_often_as_is_told() -> None:
    """Once and once more are two."""
    printed = "Decrease 1 st at neck edge on next RS row (k1, ssk, k to end)"
    assert written(f"{printed}.") == "Every RS row 1 times: k1, ssk, k to end."
    assert written(f"{printed}. Decrease once more in the same manner.") == "Every RS row 2 times: k1, ssk, k to end."
    assert written(f"{printed}. Do this 3 (4) more times.") == "Every RS row 4 (5) times: k1, ssk, k to end."
