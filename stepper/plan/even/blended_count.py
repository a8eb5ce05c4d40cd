"""Find what a line should reach after a switch, while the stitches in hand are another size's. No I/O.

They are another size's until a line changes them to the new one's. A line that prints the count to reach does
so by itself. One that changes by an amount, or is written out, reaches what the size alone has after it.
"""

from __future__ import annotations

from stepper.plan.state.needles import Needles
from stepper.plan.state.size_alone import RoundAlone
from stepper.project.instructions import Evenly


def meets_alone(needles: Needles) -> RoundAlone | None:
    """Return what the round in hand comes to in the size alone, if it begins there with another count."""
    blended = needles.alterations.blended
    if blended is None or needles.counting.lost:
        return None
    rounds = blended(needles.size).get(needles.line.number, ())
    at = len(needles.drafts) - needles.line.start
    if at >= len(rounds) or rounds[at].before == needles.count:
        return None
    return rounds[at]


def blended_target(instruction: Evenly, by: int, needles: Needles) -> int | None:
    """Return the count that a line that changes by an amount should reach from another size's stitches.

    Returns:
        None if the amount is to be taken as printed.
    """
    alone = meets_alone(needles)
    if alone is None:
        return None
    due = abs(alone.after - needles.count)
    needles.warn(
        instruction.place,
        f"the line would {instruction.word} by {by}, from {alone.before} to {alone.after}; "
        f"from the {needles.count} on the needles it is {due} to reach {alone.after}.",
    )
    return alone.after
