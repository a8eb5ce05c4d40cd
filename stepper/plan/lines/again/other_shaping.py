"""Work one shaping of another part: "Shape armholes as for back". No I/O.

The rows of the other part that shape it are worked again by their own lines, from the one in which it begins
to the last that shapes. A front that is half of a piece has one armhole where the back has two, so it is
refused.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.plan.drafts import DraftRound
from stepper.plan.model import runs_written
from stepper.plan.state.measuring_places import last_shaped, stretch_named
from stepper.plan.state.needles import Needles
from stepper.project.duration import UntilCount
from stepper.project.instructions import AsPart, Line
from stepper.project.model import Section
from stepper.regex import regex

_HALF: Final = regex(r"\b(?:left|right)\b", re.I)


def shaping_of(
    instruction: AsPart, parts: tuple[Section, ...], needles: Needles
) -> tuple[Section, tuple[Line, ...], int] | None:
    """Return the lines of another part that shape what a line names, and how many rows of them are worked.

    Args:
        instruction: The line that asks for the shaping.
        parts: The sections of the other part, in their order.
        needles: The knitting in hand.

    Returns:
        The section they are of, the lines from the first on, and the rows; None, and reported, if it is not
        known where it begins, if it begins within a line, if it is of two edges and this piece has one, or
        if stitches were bound off at an edge here as it does first.
    """
    names = {part.name: part for part in parts}
    own = [at for at, draft in enumerate(needles.drafts) if draft.section in names]
    drafts = range(own[0], own[-1] + 1) if own else range(0)
    stretch = stretch_named(instruction.shaped, needles, drafts) if own else None
    last = last_shaped(instruction.shaped, needles, drafts) if own else None
    if stretch is None or last is None:
        _refused(f"no rows of the {instruction.part} are said to shape it", instruction, needles)
        return None
    first = needles.drafts[stretch[0]]
    halves = bool(_HALF.search(needles.section.name)), bool(_HALF.search(first.section))
    if halves[0] != halves[1] or needles.held:
        _refused(f"the {instruction.part} has other edges than this piece", instruction, needles)
        return None
    if _begins_bound_off(first) and any(map(_begins_bound_off, needles.drafts[needles.section.start :])):
        _refused("it begins with a bind-off, and this piece has its own already", instruction, needles)
        return None
    source = names[first.section]
    at = next((at for at, line in enumerate(source.lines) if line.place.line == first.line), None)
    if at is None or (stretch[0] and needles.drafts[stretch[0] - 1].line == first.line):
        _refused(f"line {first.line} works other rows before it", instruction, needles)
        return None
    if isinstance(instruction.until, UntilCount):
        wanted = instruction.until.number.of(needles.size)
        shaped = (row for row in range(stretch[0], last + 1) if needles.drafts[row].after == wanted)
        found = next(shaped, None)
        if found is None or first.before != needles.count:
            _refused(f"it does not leave {wanted} stitches there", instruction, needles)
            return None
        last = found
    elif instruction.until is not None:
        _refused("only the stitches at which it ends are read here", instruction, needles)
        return None
    told = f"line {first.line} to the last row of line {needles.drafts[last].line} that shapes it."
    needles.warn(instruction.place, f"{instruction.shaped} as for the {instruction.part}: {told}")
    return source, source.lines[at:], last + 1 - stretch[0]


def _begins_bound_off(draft: DraftRound) -> bool:
    """Return whether a row binds off at its beginning, and is not the end of the piece."""
    first = next(runs_written(draft.phrase), None)
    return bool(draft.after) and first is not None and first.stitch == "bo"


def _refused(why: str, instruction: AsPart, needles: Needles) -> None:
    told = f"the {instruction.shaped} of the {instruction.part} cannot be worked here: {why}."
    needles.miss(instruction.place, told, "Write its rows out.", anywhere=True)
