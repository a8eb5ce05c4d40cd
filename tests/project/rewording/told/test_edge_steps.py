"""Shapings in steps at one end of rows of a side. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.edge_steps import write_edge_steps


def written(printed: str) -> str:
    """Return a line with its steps written one by one."""
    return write_edge_steps(as_printed(printed)).text


@pytest.mark.parametrize(
    "printed",
    [
        "At the neck edge (beginning of the WS rows) bind off 3 sts once and 2 sts twice.",
        "At the start of wrong-side rows, bind off 3 sts once, then 2 sts 2 times.",
        "Bind off at the beginning of WS rows for the neck: 3 sts once and 2 sts twice.",
    ],
)
def test_each_step_is_a_sentence(printed: str) -> None:
    """Where may stand before or behind."""
    assert written(printed) == "Bind off 3 sts at beginning of every WS row 1 times. Bind off 2 sts at beginning of every WS row 2 times."


@pytest.mark.parametrize(
    "printed",
    [
        "At the beginning of RS rows bind off 3 sts.",
        "Bind off 3 sts at the beginning of each row: 2 sts.",
        "At the end of WS rows bind off 3 sts twice.",
        "At the beginning of rows bind off 3 sts twice.",
    ],
)
def test_what_does_not_say_how_often_or_on_which_rows_stays(printed: str) -> None:
    """Nobody can tell where such a shaping ends; none binds off at the end of a row."""
    assert written(printed) == printed
