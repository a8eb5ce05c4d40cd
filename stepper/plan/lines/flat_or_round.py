"""Tell whether the first row of a picked-up band, or the round that closes a heel, is flat. No I/O.

Both can be told only by what comes after them. Stitches picked up with the right side facing are the first
row of a band if rows follow. The round that picks up along a heel flap and works across the instep begins as
a row and ends as a round, so that all that follows is worked around.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from stepper.craft.stitches import Kind, stitch
from stepper.plan.drafts import DraftRound
from stepper.plan.model import flatten, runs_written


def settle_flat(drafts: Sequence[DraftRound]) -> None:
    """Set `flat` of the rounds for which only the next one tells."""
    for draft, following in pairwise(drafts):
        if draft.section != following.section or draft.after != following.before:
            continue
        if following.flat and not draft.flat and _picks_up_alone(draft):
            draft.flat = True
        elif draft.flat and not following.flat and closes(draft):
            draft.flat = False


def closes(draft: DraftRound) -> bool:
    """Return whether a row picks up or takes back held stitches besides those that it works to its end."""
    runs = tuple(flatten(draft.phrase))
    codes = {run.stitch for run in runs}
    joins = "pu" in codes or "return" in codes
    turned = codes & {"turn", "w&t", "rest"}
    return joins and not turned and any(stitch(run.stitch).kind is Kind.PLAIN for run in runs)


def _picks_up_alone(draft: DraftRound) -> bool:
    return draft.before == 0 and {run.stitch for run in runs_written(draft.phrase)} == {"pu"}
