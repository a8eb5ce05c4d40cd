"""How often the cables of a line are crossed, against what the line says. No I/O.

The rounds of the pattern say where a cable is crossed; a line that names the interval beside them only says
it again. If the two differ, nobody can tell which is meant.
"""

from __future__ import annotations

from itertools import pairwise

from stepper.craft.stitches import Kind, stitch
from stepper.plan.drafts import DraftRound
from stepper.plan.model import runs_written
from stepper.plan.state.needles import Needles
from stepper.project.duration import Paced
from stepper.project.instructions import Crossed


def check_crossings(instruction: Crossed, needles: Needles) -> None:
    """Report a line whose rounds cross cables otherwise than every so many rounds, counted from the last."""
    if needles.counting.lost:
        return
    every, begin, end = instruction.every.of(needles.size), needles.line.start, len(needles.drafts)
    first = max(needles.section.start, begin - every)
    crossed = [at for at in range(first, end) if _crosses(needles.drafts[at])]
    apart = all(later - at == every for at, later in pairwise(crossed))
    if crossed and apart and crossed[0] < first + every and end - crossed[-1] <= every:
        return
    told = f"the pattern does not cross its cables every {every} rounds here."
    needles.report(instruction.place, told, "Write the rounds of the cable out, numbered.")
    needles.lose()


def check_pace(instruction: Paced, needles: Needles) -> None:
    """Report a line whose rounds grow or shrink otherwise than it says beside them."""
    if needles.counting.lost:
        return
    every = instruction.every.of(needles.size)
    by = instruction.direction * instruction.number.of(needles.size)
    begin = max(needles.section.start, needles.line.start - every)
    drafts = needles.drafts
    shaped = [at for at in range(begin, len(drafts)) if drafts[at].before != drafts[at].after]
    changes = {drafts[at].after - drafts[at].before for at in shaped}
    if changes == {by} and all(later - at == every for at, later in pairwise(shaped)):
        return
    told = "the rounds that are repeated do not change the stitches as the line says."
    needles.report(instruction.place, told, "Write the rounds out, and repeat them by their numbers.")
    needles.lose()


def _crosses(draft: DraftRound) -> bool:
    return any(stitch(run.stitch).kind is Kind.CABLE for run in runs_written(draft.phrase))
