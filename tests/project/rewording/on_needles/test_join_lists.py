"""Rows worked across several pieces. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.on_needles.join_lists import write_join_lists
from stepper.project.rewording.reworded import as_printed


def test_each_piece_is_worked_across_by_itself() -> None:
    """Some pieces are told with their stitches, some without, and markers stand between."""
    line = write_join_lists(as_printed("Knit across 48 sts of left sleeve, front, pm, second sleeve and the sts of the back. 96 sts."))
    assert line.text == "k across 48 held left sleeve sts, k across held front sts, pm, k across held second sleeve sts, k across held back sts. 96 sts."
    assert len(line.places) == len(line.text) + 1
    counted = write_join_lists(as_printed("Work across sleeve, front, sleeve, back: 276 sts on one needle."))
    assert counted.text.endswith("work across held sleeve sts, work across held back sts. 276 sts.")


@pytest.mark.parametrize("printed", ["Knit the front, back.", "Knit across the left sleeve, turn.", "Purl the back, then join the sleeves.", "Knit across back, place 20 sts on a holder, knit across front."])
def test_other_rows_stay(printed: str) -> None:
    """Without a sleeve and a part of the body no pieces are joined."""
    assert write_join_lists(as_printed(printed)).text == printed
