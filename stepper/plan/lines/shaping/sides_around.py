"""Tell what "every RS row" is taken for where the work goes in rounds. No I/O."""

from __future__ import annotations

from stepper.plan.state.needles import Needles
from stepper.project.instructions import AtIntervals

_AROUND = "rounds all show the right side"


def tell_sides_around(instruction: AtIntervals, needles: Needles) -> None:
    """Tell the knitter once what the rows of a side are, where the work goes in rounds.

    "Every RS row" is every other row of flat knitting, and stays every other round; a page that was written
    for rows and is worked around may mean every round.
    """
    named = next((leg for leg in instruction.legs if leg.side), None)
    if named is None or needles.flat or any(_AROUND in caution.message for caution in needles.cautions):
        return
    every = named.every.of(needles.size)
    often = {1: "every", 2: "every other"}.get(every, f"every {every}th")
    told = f"{_AROUND}: the {named.side} rows of this line, worked around, are taken as {often} round."
    needles.warn(named.every.place, f'{told} Write "every round" where each one is meant.')
