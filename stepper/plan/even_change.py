"""A round that increases or decreases evenly, worked on the stitches in hand. No I/O."""

from __future__ import annotations

from stepper.plan.columns import UnknownFabricError
from stepper.plan.drafts import Template
from stepper.plan.established import HINT, look
from stepper.plan.even_placement import placed_round
from stepper.plan.evenly import in_fabric, purled
from stepper.plan.model import Run
from stepper.plan.needles import Needles
from stepper.plan.run_repeats import condense
from stepper.project.instructions import Evenly


def work_evenly(instruction: Evenly, needles: Needles) -> None:
    """Work a round that increases or decreases evenly, to a count or by a number of stitches."""
    if needles.counting.lost:
        if instruction.to is not None:
            needles.regain(instruction.to.of(needles.size))
        return
    before = needles.count
    if instruction.to is not None:
        after = instruction.to.of(needles.size)
    else:
        by = instruction.by.of(needles.size) if instruction.by is not None else 0
        after = before + instruction.direction * by
    word = "increase" if instruction.direction > 0 else "decrease"
    if (after - before) * instruction.direction < 0 and not needles.alterations.reshape:
        needles.report(
            instruction.place,
            f"the line asks to {word} to {after} stitches, but {before} are on the needles already.",
            f"A line that goes from {before} to {after} must "
            f"{'decrease' if instruction.direction > 0 else 'increase'}; "
            f"or switch size at another line, or allow it with `reshape: yes` beside the switch.",
        )
        needles.count = after
        return
    try:
        phrase, positions, moved_by = placed_round(before, after, needles, instruction.place)
    except ValueError as error:
        needles.report(instruction.place, f"cannot {word} from {before} to {after} stitches: {error}")
        needles.count = max(after, 0)
        return
    if after == before:
        needles.warn(instruction.place, f"nothing to {word}: {before} stitches are on the needles already.")
        phrase = (Run("k", before, needles.yarn),)
    needles.markers = tuple(
        place + sum(1 for position in positions if position <= place) * (1 if after >= before else -1)
        for place in needles.markers
    )
    patterned = instruction.stitch == "pattern" and not needles.checking
    if patterned:
        try:
            phrase = condense(in_fabric(phrase, look(needles)))
        except UnknownFabricError as unknown:
            needles.report(
                instruction.place, f"nobody can tell how the pattern goes on here: {unknown}.", HINT
            )
            return
    needles.emit(
        purled(phrase) if instruction.stitch == "p" else phrase,
        after,
        template=Template((), instruction.place, evenly=instruction),
        evenly=not patterned,
        shaping=positions,
        altered=moved_by,
    )
