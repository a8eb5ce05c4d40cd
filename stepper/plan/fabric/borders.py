"""Edges in garter stitch: they stay as wide as they are where a row shapes inside them. No I/O.

A row that makes or takes a stitch within such an edge ("k1, m1, k to last st, m1, k1" between edges of two
stitches) moves its stitches inwards or away; the next row has its edge where it always was.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from stepper.craft.stitches import TURNS
from stepper.plan.drafts import DraftRound
from stepper.plan.state.in_hand import Column

WIDEST = 8
"""Most stitches of an edge in garter stitch. Unit: stitches; common practice has two to four, and five to
eight in shawls, blankets and bands."""
_NEAR = 4
"""Stitches beside an edge into which a change within it may move. Unit: stitches."""
_ENDS = TURNS | {"bo", "co", "hold", "return", "pu", "rest"}
"""What gives a row another edge than it had."""


def keep_borders(before: Sequence[Column], after: list[Column], draft: DraftRound) -> list[Column]:
    """Return the columns after a row in rows, with the garter edges as wide as before it.

    Args:
        before: Columns before the row, from the first stitch of the right side.
        after: Columns after it, each stitch as it was worked.
        draft: The row.
    """
    if not draft.flat or draft.before == draft.after or draft.codes & _ENDS or len(after) <= 2 * _NEAR:
        return after
    made = _with_border(before, after)
    return _with_border(before[::-1], made[::-1])[::-1]


def _with_border(before: Sequence[Column], after: list[Column]) -> list[Column]:
    """Return columns after a row with the garter edge that begins the row before it."""
    wide = border_of(before)
    beyond = before[wide : wide + 2 * max(_NEAR, wide)]
    if not wide or border_of(after) == wide or any(map(_is_garter, beyond)):
        return after  # no edge, one that is as wide as it was, or columns of a broken rib
    inner = next((column for column in after[wide:] if not _is_garter(column)), None)
    if inner is None:
        return after
    beside = [inner if _is_garter(column) else column for column in after[wide : wide + _NEAR]]
    return [before[0]] * wide + beside + after[wide + _NEAR :]


def border_of(columns: Sequence[Column]) -> int:
    """Return how many stitches of a row's beginning are in garter stitch; 0 if more than an edge has."""
    wide = next((at for at, column in enumerate(columns) if not _is_garter(column)), len(columns))
    return wide if wide <= WIDEST else 0


def _is_garter(column: Column) -> bool:
    """Return whether a column is knit and purl in turn, as seen from the right side."""
    cells = [code for code, _ in column]
    in_turn = all(one != other for one, other in pairwise(cells))
    return in_turn and len(cells) % 2 == 0 and set(cells) == {"k", "p"}
