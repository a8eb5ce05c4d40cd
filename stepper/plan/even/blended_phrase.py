"""Respace a written-out round of even changes over another size's stitches. No I/O."""

from __future__ import annotations

from stepper.plan.drafts import Template
from stepper.plan.even.blended_count import meets_alone
from stepper.plan.even.even_change import spread_to
from stepper.plan.lines.rounds import work_out
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.row_elements import MisfitError
from stepper.project.instructions import Evenly, Phrase
from stepper.project.stitchwork import Numbers


def work_blended_phrase(instruction: Phrase, needles: Needles) -> bool:
    """Spread the changes of a written-out round evenly, if as printed it does not reach the size's count.

    Returns:
        Whether that was done; if not, the round is to be worked as it is printed.
    """
    alone = meets_alone(needles)
    if alone is None or alone.change is None or _reaches(instruction, alone.after, needles):
        return False
    even = Evenly(alone.change.direction, Numbers((alone.after,), instruction.place), None, instruction.place)
    said = f"{alone.change.code} {alone.change.word}s as printed for {alone.before} to {alone.after} stitches"
    if spread_to(even, alone.after, needles, alone.change):
        needles.warn(
            instruction.place,
            f"{said}; from the {needles.drafts[-1].before} on the needles they are spread evenly to reach "
            f"{alone.after}.",
        )
    return True


def _reaches(instruction: Phrase, after: int, needles: Needles) -> bool:
    """Return whether the round as printed fits the stitches and leaves that many."""
    try:
        return work_out(Template(instruction.elements, instruction.place), needles).after == after
    except MisfitError:
        return False
