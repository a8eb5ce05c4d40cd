"""The rows that lie below stitches which came back from hold: they belong to the length of the piece. No I/O.

The second side of a neck is as long as the first, and its armhole was opened before the neck was divided;
what was knitted since the stitches came back is a part of it only. Stitches held by another section begin a
part of their own, as a sleeve does.
"""

from __future__ import annotations

from collections.abc import Iterable

from stepper.plan.model import flatten
from stepper.plan.state.needles import Needles


def piece_begun(needles: Needles) -> int:
    """Return the index of the draft that the piece on the needles begins with."""
    begun = (at for at in range(len(needles.drafts) - 1, -1, -1) if not needles.drafts[at].before)
    return next(begun, 0)


def rows_below(needles: Needles, piece: int) -> tuple[int, ...]:
    """Return the drafts in which the stitches of a piece were worked before they went on hold.

    Args:
        needles: The knitting in hand.
        piece: Index of the draft that the piece begins with.

    Returns:
        Indices up to the row that put them on hold, which did not work them; none for stitches that another
        section held.
    """
    first = needles.drafts[piece : piece + 1]
    names = [run.yarn for draft in first for run in flatten(draft.phrase) if run.stitch == "return"]
    for at in range(piece - 1, needles.section.start - 1, -1) if names else ():
        if any(run.stitch == "hold" and run.yarn in names for run in flatten(needles.drafts[at].phrase)):
            begun = (on for on in range(at, -1, -1) if not needles.drafts[on].before)
            start = max(needles.section.start, next(begun, 0))
            return (*rows_below(needles, start), *range(start, at))
    return ()


def row_that_held(name: str, needles: Needles) -> int | None:
    """Return the index of the last draft that put stitches on hold by a name; None if none did."""
    for at in range(len(needles.drafts) - 1, -1, -1):
        if any(run.stitch == "hold" and run.yarn == name for run in flatten(needles.drafts[at].phrase)):
            return at
    return None


def height_of(needles: Needles, rows: Iterable[int]) -> float:
    """Return how long rows are together, by their indices. Unit: mm."""
    return sum(needles.drafts[at].height_mm for at in rows)


def held_in_section(needles: Needles) -> dict[str, int]:
    """Return which line of this section put each part on hold."""
    here = needles.section.name
    return {name: line for name, (section, line) in needles.held_by.items() if section == here}


def held_in_sections(needles: Needles) -> dict[str, str]:
    """Return in which section the stitches on hold were put there, by what they are called."""
    rows = {name: row_that_held(name, needles) for name in needles.held}
    return {name: needles.drafts[at].section for name, at in rows.items() if at is not None}
