"""Rows over two sides of a neck that are worked at once, each from its own ball of yarn. No I/O.

Theory of operation. Where a line joins a second ball, the row goes on as one over both sides: what parts
them is carried through every row as the one marker there is (`Facing.parted`), and each row that goes past it
takes the other ball there. So a row that begins by binding off does it at one armhole, and "each neck edge"
lies on both sides of the place. What would join the sides again, or work a part of them, is refused. Source:
common practice.
"""

from __future__ import annotations

from collections.abc import Iterator

from stepper.craft.stitches import TURNS, stitch
from stepper.plan.model import Group, Item, Run, flatten
from stepper.plan.stitches.row_elements import MisfitError
from stepper.plan.stitches.row_facing import Facing
from stepper.plan.stitches.row_repeats import RowRepeats
from stepper.project.problems import Span
from stepper.project.stitchwork import Mark

BALLS = ("join 2nd ball", "other ball")
"""Codes of what is done where the sides of a neck part: once, and in every row from then on."""

BESIDE_NECK = "markers beside a neck whose two sides are worked at once are not read."
"""Why a marker is refused there: what parts the sides is carried as the one marker there is."""


def cross_neck(element: Mark, progress: RowRepeats, items: list[Item]) -> None:
    """Join a second ball at this place of the row, or take the other one.

    Raises:
        MisfitError: a marker is meant, or the sides do not part here.
    """
    parted, joins = progress.facing.parted, element.stitch == "join 2nd ball"
    here = bool(progress.waiting) and progress.waiting[0] == progress.used
    if joins and parted:
        raise MisfitError(element.place, "two sides are worked at once already, each from its own ball.")
    if joins:
        _join(element, progress, here=here)
    elif element.stitch not in BALLS:
        raise MisfitError(element.place, BESIDE_NECK)
    elif not parted or not here:
        told = "the sides of the neck do not part at this place" if parted else "no second ball was joined"
        hint = 'Join it first: "K20, join 2nd ball, bind off 10, k to end."'
        raise MisfitError(element.place, f'"{element.stitch}": {told}.', hint)
    else:
        progress.waiting.pop(0)
        progress.placed.append(progress.made)
    items.append(Run(element.stitch, 1, progress.yarn))


def _join(element: Mark, progress: RowRepeats, *, here: bool) -> None:
    if here:
        progress.waiting.pop(0)  # a marker that showed where the sides part
    if progress.waiting or progress.placed:
        raise MisfitError(
            element.place,
            "other markers are on the needles where a second ball is joined, which is not followed.",
            'Remove them first, or leave one side on hold ("K20, turn, leave rem 20 sts on a holder").',
        )
    if not progress.supplies.flat or not progress.used or progress.used == progress.facing.end:
        told = "a second ball is joined in the middle of a row, where the sides of a neck part."
        raise MisfitError(element.place, told, "Write the row with the stitches of the first side before it.")
    progress.placed.append(progress.made)


def with_other_ball(items: list[Item], facing: Facing, yarn: str, place: Span) -> list[Item]:
    """Return a row over both sides with the other ball taken where they part.

    Args:
        items: What the row works, from its beginning.
        facing: The stitches as the row meets them, with the place where the sides part.
        yarn: Key of the yarn in hand.
        place: Where the line stands.

    Raises:
        MisfitError: the row ends within a side, joins both, or casts on between them.
    """
    runs = list(flatten(tuple(items)))
    if not any(run.leaves for run in runs):
        return items  # all of it goes off the needles, or on hold
    used = sum(run.uses for run in runs)
    ends_short = any(run.stitch == "hold" or run.stitch in TURNS for run in runs)
    if used != facing.end or not facing.markers or ends_short:
        told = "two sides are worked at once here, and this row does not go to the end of both."
        raise MisfitError(place, told, "Write the rows of each side by itself.")
    if any(run.stitch == "other ball" for run in runs):
        return items
    made: list[Item] = []
    at = 0
    for item in _cut_at(facing.markers[0], items, place):
        if at == facing.markers[0] and item.uses and not any(_is_ball(each) for each in made):
            made.append(Run("other ball", 1, yarn))
        at += item.uses
        made.append(item)
    return made


def _cut_at(gap: int, items: list[Item], place: Span) -> Iterator[Item]:
    """Yield the items of a row, the one that goes across a place cut in two there."""
    at = 0
    for item in items:
        end = at + item.uses
        if not at < gap < end:
            if gap == at and not item.uses and stitch(next(flatten((item,))).stitch).leaves:
                raise MisfitError(place, "stitches are made between two sides that are worked at once.")
            yield item
        elif isinstance(item, Group):
            each = item.uses // item.times
            before = (gap - at) // each
            after = item.times - before - ((gap - at) % each > 0)
            yield from (Group(item.items, before, item.name),) if before else ()
            if (gap - at) % each:
                yield from _cut_at(gap - at - before * each, list(item.items), place)
            yield from (Group(item.items, after, item.name),) if after else ()
        else:
            each = item.uses // item.times
            if (gap - at) % each:
                raise MisfitError(place, f"{item.stitch} would join the two sides that are worked at once.")
            yield Run(item.stitch, (gap - at) // each, item.yarn)
            yield Run(item.stitch, (end - gap) // each, item.yarn)
        at = end


def _is_ball(item: Item) -> bool:
    return isinstance(item, Run) and item.stitch in BALLS
