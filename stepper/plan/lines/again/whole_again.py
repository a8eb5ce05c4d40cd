"""A whole worked again: all its parts, whatever headings stand between them. No I/O.

"Make another one" below a thumb is another mitten, and "work as for right mitten" works the hand too, though
HAND stands above it in the letters of a part.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from stepper.plan.drafts import DraftRound
from stepper.plan.state.needles import Needles
from stepper.project.model import Section
from stepper.project.pairs import WHOLE_NAMES

_OF_WHOLE: Final = frozenset({"thumb", "finger", "toe", "heel", "crown", "top"})
"""What is worked at last of such a whole, of stitches that waited or were picked up."""
_PIECES: Final = frozenset({"back", "front", "sleeve"})
"""What a garment is sewn together of, whose shaping may stand below a heading of its own."""


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


def to_its_end(
    piece: Sequence[Section], sections: Sequence[Section], called: set[str], needles: Needles
) -> tuple[Section, ...]:
    """Return the sections of a piece with those behind it that are knitted on with what it leaves.

    A section that goes on with the stitches on the needle is of the piece, whatever heads it, if the piece is
    a whole or one of those a garment is sewn together of; so is the thumb or heel of a mitten or sock, of
    stitches that waited or were picked up. Source: common practice.

    Args:
        piece: The sections that bear its name.
        sections: All that may be of it, in their order.
        called: What the line calls it, in the singular: "as for cuff" is no more than the cuff.
        needles: What was worked so far.
    """
    of_whole = bool(called & WHOLE_NAMES)
    if not of_whole and not called & _PIECES:
        return tuple(piece)
    found, left = list(piece), _last_of(piece[-1], needles)
    for section in sections[sections.index(piece[-1]) + 1 :]:
        first = next((draft for draft in needles.drafts if draft.section == section.name), None)
        if first is None or left is None or ("co" in first.codes and not first.before):
            break
        goes_on = bool(left.after) and first.before == left.after
        if not goes_on and not (of_whole and not left.after and first.codes & {"return", "pu"}):
            break
        found.append(section)
        left = _last_of(section, needles)
    return tuple(found)


def _last_of(section: Section, needles: Needles) -> DraftRound | None:
    own = [draft for draft in needles.drafts if draft.section == section.name]
    return own[-1] if own else None
