"""Tell whether the beginning of a piece, or the round that closes a heel, is flat. No I/O.

Both can be told only by what comes after them. Stitches cast on, picked up or taken back from a holder
are the first row of a piece if rows follow. The round that picks up along a heel flap and works across the
instep begins as a row and ends as a round, so that all that follows is worked around.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import islice, pairwise, takewhile
from typing import Final

from stepper.craft.stitches import TURNS, Kind, stitch
from stepper.plan.drafts import DraftRound


def settle_flat(drafts: Sequence[DraftRound]) -> None:
    """Set `flat` of the rounds for which only what follows tells."""
    for index, (draft, following) in enumerate(pairwise(drafts)):
        if draft.section != following.section or draft.after != following.before:
            continue
        if following.flat and not draft.flat and _only_begins(draft):
            draft.flat = _is_piece_flat(drafts, index)
        elif draft.flat and not following.flat and closes(draft):
            draft.flat = False


def _is_piece_flat(drafts: Sequence[DraftRound], start: int) -> bool:
    """Return whether a piece is in rows; short rows do not tell, since a round has them too."""
    section = drafts[start].section
    after = islice(drafts, start + 1, None)
    piece = takewhile(lambda each: each.before and each.section == section, after)
    return next((each.flat for each in piece if not (each.from_turn or each.codes & _TURNS)), True)


def closes(draft: DraftRound) -> bool:
    """Return whether a row picks up or takes back held stitches besides those that it works to its end."""
    codes = draft.codes
    joins = "pu" in codes or "return" in codes
    return joins and not codes & _TURNS and any(stitch(code).kind is Kind.PLAIN for code in codes)


def _only_begins(draft: DraftRound) -> bool:
    """Return whether a round puts stitches on the needles and works none of them."""
    return draft.before == 0 and draft.codes <= _BEGINNINGS


_TURNS: Final = TURNS | {"rest"}
_BEGINNINGS: Final = frozenset({"co", "pu", "return"})
