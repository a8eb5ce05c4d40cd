"""The repeat with which columns of the fabric begin, to be continued by new ones. No I/O."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import takewhile

from stepper.plan.state.in_hand import Column

WIDEST_REPEAT = 24
"""Most stitches of a repeat that a new column is found in. Unit: stitches."""
SEEN = 3 * WIDEST_REPEAT
"""Stitches beside a new column that are looked at for a repeat. Unit: stitches."""


def repeat_of(columns: Sequence[Column | None]) -> list[Column]:
    """Return the repeat that columns begin with; empty where they begin with none.

    Of several that fit it is the one that holds longest: five knit stitches beside the edge of a broad rib
    are no stockinette.

    Args:
        columns: From the new one onwards; those from the first None on are not known.
    """
    beside = [column for column in takewhile(bool, columns) if column]
    best, longest = 0, 0
    for width in range(1, min(WIDEST_REPEAT, len(beside) // 2) + 1):
        alike = takewhile(lambda pair: pair[0] == pair[1], zip(beside, beside[width:], strict=False))
        holds = width + sum(1 for _ in alike)
        if holds >= 2 * width and holds > longest:
            best, longest = width, holds
        if longest == len(beside):
            break  # none holds longer
    return beside[:best]


def first_repeat_of(columns: Sequence[Column | None]) -> list[Column]:
    """Return the shortest repeat that columns begin with; empty where they begin with none.

    Away from the edges a new stitch is one more of those beside it, where three of them are alike.

    Args:
        columns: As for `repeat_of`.
    """
    beside = [column for column in takewhile(bool, columns) if column]
    for width in range(1, min(WIDEST_REPEAT, len(beside) // 2) + 1):
        seen = beside[: 3 * width]
        if seen[width:] == seen[:-width]:
            return beside[:width]
    return []
