"""Find where another part goes on from here: "Complete as for right mitten". No I/O.

The part in hand was begun on its own, with its own placing of a thumb or of an edge. What it came to is
compared with the other part row for row: where that part ended a line after as many rows, with as many
stitches and markers, the lines behind it are the rest. Anywhere else nobody can tell, and it is refused.
"""

from __future__ import annotations

from stepper.plan.state.needles import Needles
from stepper.project.instructions import AsPart, Line
from stepper.project.model import Section


def find_rest(
    instruction: AsPart, parts: tuple[Section, ...], section: Section, needles: Needles
) -> tuple[tuple[Section, tuple[Line, ...]], ...]:
    """Return the lines of another part that are left to work here.

    Args:
        instruction: The line that asks for them.
        parts: The sections of the other part, in their order.
        section: The section in hand.
        needles: The knitting in hand.

    Returns:
        Each section with its lines that are left; none, and reported, if it cannot be told which come next.
    """
    names = {part.name: at for at, part in enumerate(parts)}
    piece = section.name.lower().partition(", ")[0]
    theirs = [draft for draft in needles.drafts if draft.section in names]
    own = [
        draft
        for draft in needles.drafts
        if draft.section not in names and draft.section.lower().partition(", ")[0] == piece
    ]
    done = len(own)
    if 0 < done < len(theirs):
        last, following, here = theirs[done - 1], theirs[done], own[-1]
        alike = last.after == here.after == needles.count and last.flat == here.flat
        alike = alike and last.side == here.side and len(last.markers) == len(here.markers)
        if alike and (last.section, last.line) != (following.section, following.line):
            at = names[last.section]
            numbers = [line.place.line for line in parts[at].lines]
            if last.line in numbers:
                told = f"goes on with line {following.line}; the rows before it are worked here already."
                needles.warn(instruction.place, f"as the {instruction.part}: {told}")
                rest = parts[at].lines[numbers.index(last.line) + 1 :]
                left = ((parts[at], rest), *((part, part.lines) for part in parts[at + 1 :]))
                return tuple((part, lines) for part, lines in left if lines)
    told = f"{done} rows are worked here and {needles.count} stitches on the needles"
    unknown = f"no line of the {instruction.part} ends where it has come to that"
    needles.miss(instruction.place, f"{told}, and {unknown}.", "Write its lines out.", anywhere=True)
    return ()
