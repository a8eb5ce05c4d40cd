"""A whole worked again below its last part: "Make another one" below a thumb is another mitten. No I/O."""

from __future__ import annotations

from typing import Final

from stepper.plan.state.needles import Needles
from stepper.project.model import Section

_OF_WHOLE: Final = frozenset({"thumb", "finger", "toe", "heel", "crown", "top"})
"""What is worked at last of such a whole, of stitches that waited or were picked up."""


def whole_ended_by(section: Section, needles: Needles) -> tuple[Section, ...]:
    """Return the sections of the whole that one ends with which was not begun by itself; empty if it was.

    "Make another one" below the thumb of a mitten, or below the top that goes on from its hand, is another
    mitten: from the last stitches that were cast on while no others waited.
    """
    drafts, start = needles.drafts, needles.section.start
    if start >= len(drafts):
        return ()
    of_opening = not _OF_WHOLE.isdisjoint(section.name.lower().split()) and "co" not in drafts[start].codes
    if not drafts[start].before and not of_opening:
        return ()
    for at in range(start - 1, -1, -1):
        if not drafts[at].before and "co" in drafts[at].codes and not (at and drafts[at - 1].held):
            names = {draft.section for draft in drafts[at:]}
            return tuple(one for one in needles.project.sections if one.name in names)
    return ()
