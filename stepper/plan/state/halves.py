"""How many stitches front and back have of a body that waits as one: told by its underarms. No I/O.

A yoke is joined by "knit across left sleeve, front, right sleeve, back", and the body lies on one needle.
Its last round put the stitches of both underarms aside, or bound them off; what lies between them are front
and back. They are told apart only where both are alike, as which of them comes first is the page's own
affair. Source: a seamless yoke from the hem up, common practice.
"""

from __future__ import annotations

from typing import Final

from stepper.plan.drafts import DraftRound
from stepper.plan.model import flatten
from stepper.plan.state.held_below import row_that_held
from stepper.plan.state.needles import Needles

_AWAY: Final = frozenset(("hold", "bo"))


def half_of(name: str, needles: Needles) -> int:
    """Return the stitches of front or back, of a part on hold as one.

    Args:
        name: The part.
        needles: The knitting in hand.

    Returns:
        Half of its stitches; 0 if it has no two underarms with as many stitches on both sides.
    """
    waiting = needles.held.get(name, 0)
    drafts = needles.drafts
    last = row_that_held(name, needles)
    if last is None or drafts[last].after:
        return 0
    for draft in reversed(drafts[:last]):
        pieces = _between(draft)
        if len(pieces) > 1:
            return pieces[0] if len(pieces) == 2 and 2 * pieces[0] == waiting == sum(pieces) else 0
        if draft.after != draft.before:
            break
    return 0


def _between(draft: DraftRound) -> list[int]:
    """Return the stitches between those a round took off the needle; what lies at both its ends is one."""
    pieces, began = [0], False
    for at, run in enumerate(flatten(draft.phrase)):
        if run.stitch not in _AWAY:
            pieces[-1] += run.leaves
        elif at == 0:
            began = True
        elif pieces[-1]:
            pieces.append(0)
    if len(pieces) > 1 and not began:
        pieces[0] += pieces.pop()
    return [piece for piece in pieces if piece]
