"""Turned rows of a yoke's neck. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.on_needles.neck_turns import write_neck_turns
from stepper.project.rewording.reworded import as_printed


def test_each_row_ends_at_its_turn() -> None:
    """A row past the beginning of the round goes to it first, and counts its markers from there."""
    line = write_neck_turns(as_printed("K to 4 sts past the first marker, turn; DS, p back past BOR and to 4 sts past the marker, turn. DS, k to BOR."))
    assert line.text == "k to 4 sts past first marker, turn, DS, p to BOR, sm, p to 4 sts past marker, turn, DS, k to BOR."
    assert len(line.places) == len(line.text) + 1
    headed = write_neck_turns(as_printed("Row 2 (WS): DS, p to 12 sts past BOR, turn."))
    assert headed.text == "Row 2 (WS): DS, p to BOR, sm, p 12, turn."


@pytest.mark.parametrize(
    "printed",
    [
        "K to 4 sts past the marker between raglan and front, turn; DS, p to BOR, turn.",
        "Row 2 (WS): DS, p past BOR to 4 sts past the second marker, turn.",
        "K14, turn. P14, turn.",
        "Row 1 (RS): K14, turn.",
        "K to 4 sts past the first marker, turn.",
    ],
)
def test_other_rows_stay(printed: str) -> None:
    """A marker that may be counted from either end, or is told by what lies beside it, is not guessed."""
    assert write_neck_turns(as_printed(printed)).text == printed
