"""Lay out blocks of rows on a screen that may be too small for all: what matters most goes in first. No
I/O."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from stepper.records import dataclass
from stepper.screen.drawing.rows import Row, cut


@dataclass(frozen=True, slots=True, kw_only=True)
class Block:
    """Rows that belong together."""

    rank: int
    """How much it matters: 0 goes in first, whatever else has to be left out."""
    rows: Sequence[Row] = ()
    least: int | None = None
    """Number of rows it can be cut to if not all fit; None if it goes in whole or is cut only at the very end
    of the screen."""
    grown: Callable[[int], Sequence[Row]] | None = None
    """For a block that takes the remaining room: draws it in a given number of rows."""
    floor: int = 1
    """Fewest rows in which a growing block is shown at all."""


def stack_blocks(blocks: Sequence[Block], columns: int, rows: int) -> list[Row]:
    """Stack blocks from the top, in the order given.

    Args:
        blocks: The blocks; at most one of them grows. Those after it are at the bottom of the screen.
        columns: Columns of the screen.
        rows: Rows of the screen.

    Always: exactly `rows` rows, none wider than `columns`; a block of lower rank is never left out for one of
    higher rank.
    """
    given: dict[int, Sequence[Row]] = {}
    left = rows
    growing = None
    for number in sorted(range(len(blocks)), key=lambda each: blocks[each].rank):
        block = blocks[number]
        if block.grown is not None:
            growing = number
            continue
        # Blocks that matter less than the growing one leave it enough room to appear.
        room = left if growing is None else max(0, left - blocks[growing].floor)
        if len(block.rows) > room and (block.least is None or block.least > room) and block.rank > 0:
            continue
        given[number] = block.rows[:room]
        left -= len(given[number])
    if growing is not None:
        block = blocks[growing]
        assert block.grown is not None
        given[growing] = block.grown(left) if left >= block.floor else ()
        left -= len(given[growing])
    at = growing if growing is not None else len(blocks)
    upper = [row for number in range(at + 1) for row in given.get(number, ())]
    lower = [row for number in range(at + 1, len(blocks)) for row in given.get(number, ())]
    return [cut(row, columns) for row in (*upper, *[()] * max(0, left), *lower)]
