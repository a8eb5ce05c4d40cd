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


def test_a_row_for_one_edge_is_told_for_rows_of_one_side() -> None:
    """On the rows back its last stitches are at the other edge; every fourth row is one of a side."""
    row = "k to last 3 sts, k2tog, k1"
    for printed in (f"Dec 1 st at neck edge of every row 3 times: {row}.", f"Dec at the end of every 3rd row 3 times: {row}."):
        assert written(printed) == printed
    assert written(f"Dec 1 st at neck edge of every 4th row 3 times: {row}.") == f"Every 4th row 3 times: {row}."
    assert written("Dec at each end of every row 3 times: k2tog, k to last 2 sts, k2tog.").startswith("Every row 3 times")


def test_a_row_behind_a_colon_is_worked_as_often_as_is_told() -> None:
    """On which rows stands before it, how often before or behind; what is shaped is only said."""
    told = {
        "Now increase for the neckline at the beginning of every RS row: k2, M1L, k to end. Increase 4 (5) times in total = 28 (30) sts.": "Every RS row 4 (5) times: k2, M1L, k to end. 28 (30) sts.",
        "Dec for the neck at the beg of every RS row as follows: k1, ssk, k to end. Do this 8 times in total.": "Every RS row 8 times: k1, ssk, k to end.",
        "Shape the raglan every RS row thus: k2, ssk, k to last 4 sts, k2tog, k2, 14 times.": "Every RS row 14 times: k2, ssk, k to last 4 sts, k2tog, k2.",
        "Decrease 1 st at neck edge on next RS row (k1, ssk, k to end), then every RS row 4 times more.": "Every RS row 5 times: k1, ssk, k to end.",
        "Decrease on both sides of the marker: k1, k2tog, k to last 3 sts, skp, k1. Repeat this.": "Decrease: k1, k2tog, k to last 3 sts, skp, k1. Repeat this.",
    }
    assert {printed: written(printed) for printed in told} == told
    left = (
        "Decrease every 4th round: k1, k2tog, k to last 3 sts, ssk, k1. Repeat 6 times.",
        "Decrease every 4th round: k1, k2tog, k to last 3 sts, ssk, k1. Decrease 6 more times.",
        "Decrease on next RS row (k1, ssk, k to end). Do this on the following rows 3 times, or as often as you like.",
        "Decrease every row: k1, ssk, k to end, 4 times. Decrease 3 times in all.",
    )
    assert [printed for printed in left if written(printed) != printed] == []
