"""The stitches between markers: one section, or each of them. No I/O."""

from __future__ import annotations

from itertools import pairwise

from stepper.craft.stitches import stitch
from stepper.plan.drafts import DraftRound
from stepper.plan.model import flatten
from stepper.plan.state.needles import Needles


def sections(needles: Needles) -> tuple[int, ...]:
    """Return the stitches of every section, from the beginning of the row across each marker to its end."""
    ends = (0, *needles.markers, needles.count)
    return tuple(later - before for before, later in pairwise(ends))


def between_markers(needles: Needles) -> int | None:
    """Return the stitches between the two markers that a pattern means by "between markers".

    If the row has two of them, it is those; if it has more, `pair_of_markers`.

    Returns:
        The stitches, or None if it is not clear which markers are meant.
    """
    inner = sections(needles)[1:-1]
    if len(inner) == 1:
        return inner[0]
    pair = pair_of_markers(needles)
    return pair[1] - pair[0] if pair is not None else None


def pair_of_markers(needles: Needles) -> tuple[int, int] | None:
    """Return the two markers between which alone the last shaping fell, as a gusset grows between its own.

    Returns:
        Their places, from the right side; None if the shaping fell elsewhere, or markers were moved since.
    """
    shaped = next((draft for draft in reversed(needles.drafts) if draft.shapes), None)
    if shaped is None or len(shaped.markers) != len(needles.markers):
        return None
    found = _sections_shaped(shaped)
    if len(found) != 1 or not 0 < min(found) < len(needles.markers):
        return None
    at = found.pop()
    if shaped.side == "WS":
        at = len(needles.markers) - at
    return needles.markers[at - 1], needles.markers[at]


def _sections_shaped(draft: DraftRound) -> set[int]:
    """Return the sections, numbered from the beginning of the row, in which a round changes stitches."""
    found: set[int] = set()
    made = 0
    for run in flatten(draft.phrase):
        if stitch(run.stitch).shapes:
            last = max(made, made + run.leaves - 1)
            found |= {sum(mark <= place for mark in draft.markers) for place in (made, last)}
        made += run.leaves
    return found
