"""Stitches picked up along several edges. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.on_needles.pick_ups import write_pick_ups
from stepper.project.rewording.reworded import as_printed


def test_each_stretch_is_a_picking_up_of_its_own() -> None:
    """What is done is said once; where stays beside the work."""
    line = write_pick_ups(as_printed("Pick up and knit 4 sts along underarm, 28 sts up to shoulder seam, pm, 28 sts down to underarm BO and 4 sts along underarm."))
    assert line.text == "Pick up and knit 4 sts, pick up and knit 28 sts, pm, pick up and knit 28 sts, pick up and knit 4 sts."
    assert line.kept == ("along underarm", "up to shoulder seam", "down to underarm BO", "along underarm")
    assert len(line.places) == len(line.text) + 1


@pytest.mark.parametrize(
    "printed",
    [
        "Pick up and knit 30 sts along front edge.",
        "Pick up and knit 4 sts at underarm, 56 sts from held sleeve.",
        "Pick up and knit 4 sts at underarm, 56 sts across sleeve.",
        "Pick up and knit 4 sts along edge, 3 sts every 4 rows.",
        "Pick up and knit 4 sts along edge, k2tog 3 sts along edge.",
        "K4, 20 sts along edge.",
    ],
)
def test_stitches_that_are_held_or_told_otherwise_stay(printed: str) -> None:
    """Stitches of a sleeve on hold are knitted, not picked up, and a pace is no number."""
    assert write_pick_ups(as_printed(printed)).text == printed
