"""Finish a front as the mirror image of the other: "Complete to match left front". No I/O.

What the front in hand has come to is compared with the other row for row. Its next shaping may come a row or
two sooner or later than there, since it begins on the other side of the work; anywhere else nobody can tell
where it goes on, and it is refused.
"""

from __future__ import annotations

from typing import Final

from stepper.plan.drafts import DraftRound
from stepper.plan.lines.again.part_names import sections_of_piece
from stepper.plan.lines.again.reversed_part import begins_at_edge, work_mirrored
from stepper.plan.state.needles import Needles
from stepper.project.instructions import AsPart
from stepper.project.model import Section

_APART: Final = 2
"""Rows by which the next shaping may come sooner or later than on the other front. Chosen here."""


def other_front(instruction: AsPart, section: Section, needles: Needles) -> tuple[Section, ...]:
    """Return the sections of the front that a line names, before its own; none if it names no such part."""
    if not instruction.front:
        return ()
    sections = needles.project.sections
    before = sections[: sections.index(section)] if section in sections else sections
    named = [one for one in before if one.name.lower().partition(", ")[0] == instruction.front]
    return sections_of_piece(named[0], before) if named else ()


def match_other_front(
    instruction: AsPart, front: tuple[Section, ...], section: Section, needles: Needles
) -> None:
    """Work the rest of a front as the mirror image of the other, from the row it has come to.

    Args:
        instruction: The line that asks for it.
        front: The sections of the other front.
        section: The section in hand.
        needles: The knitting in hand.
    """
    if needles.counting.lost:
        return
    names = {one.name for one in front}
    piece = section.name.lower().partition(", ")[0]
    theirs = [draft for draft in needles.drafts if draft.section in names]
    done = sum(draft.section.lower().partition(", ")[0] == piece for draft in needles.drafts)
    at = _goes_on_at(theirs, done, needles)
    if at is None:
        told = f"{done} rows are worked here and {needles.count} stitches on the needles"
        unknown = f"it is not known where in the {instruction.front} this goes on"
        needles.miss(instruction.place, f"{told}, and {unknown}.", "Write its rows out.", anywhere=True)
        return
    told = f"goes on as line {theirs[min(at, len(theirs) - 1)].line} does there, from the other edge."
    needles.warn(instruction.place, f"as the {instruction.front}: {told}")
    work_mirrored(theirs, at, instruction, needles)


def _goes_on_at(theirs: list[DraftRound], done: int, needles: Needles) -> int | None:
    """Return the index of the row whose mirror image comes next; None if nobody can tell."""
    if not needles.count or not 1 < done <= len(theirs) + _APART:
        return None
    near = range(max(1, done - _APART), min(len(theirs), done + _APART + 1))
    at = next((at for at in near if theirs[at].before != theirs[at].after), None)
    if at is not None and theirs[at].before == needles.count:
        if needles.side == theirs[at].side:
            return at
        return at + 1 if begins_at_edge(theirs[at]) else at - 1
    if done >= len(theirs) or at is not None:
        return None
    last, following = theirs[done - 1 : done + 1]
    alike = last.after == needles.count and following.side == needles.side
    return done if alike and last.line != following.line else None
