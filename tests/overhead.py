"""What counting and ripping cost at any distance between counts: the curve whose lowest point is looked for."""

from __future__ import annotations

import math

from stepper.craft.counting import CountCosts


def overhead(stitches_between: float, round_stitches: int, costs: CountCosts) -> float:
    """Return the time lost to counting and ripping, for each stitch knitted. Unit: s.

    With faults at rate f a stretch of w stitches is faulty with chance 1 - e^(-fw). The first fault lies on average
    1/f - w e^(-fw) / (1 - e^(-fw)) stitches into a faulty stretch. Checked against a simulated knitter in
    `tests/craft/test_counting.py`.
    """
    work, rate = stitches_between, costs.faults_per_stitch
    faulty = -math.expm1(-rate * work)
    if costs.back_to == "count":
        redone = faulty * work
    else:
        # faulty * (work - mean place of the first fault); a series where the difference would cancel out.
        redone = rate * work**2 / 2 if rate * work < 1e-4 else work - faulty / rate
    return (round_stitches * costs.count_s + redone * costs.redo_s) / work
