"""Tell where a row leaves open on which side of its markers the stitches lie that it makes. No I/O.

"K to first marker, m1, k to second marker, m1, k to end" makes one stitch more between the markers, two, or
none: a stitch made out of none lies before the marker or behind it, and no word slips the marker.
With one such place in a row nothing hangs on it; with two, the stitches between do. Source: common practice.
"""

from __future__ import annotations

from itertools import pairwise

from stepper.craft.stitches import Kind, find_stitch
from stepper.project.problems import Span
from stepper.project.stitchwork import Element, Mark, Until, Work

_EITHER = "inc"
"""An increase of which is not said whether it is made out of a stitch or beside it."""


def side_unsaid(elements: tuple[Element, ...]) -> Span | None:
    """Return where a row makes the second stitch at a marker of which it does not say when it is slipped.

    Args:
        elements: The row.

    Returns:
        The place of that stitch; None if each lies clearly, as in every row that slips a marker.
    """
    if any(isinstance(one, Mark) for one in elements):
        return None
    behind = (one for before, one in pairwise(elements) if _ends_at_marker(before))
    made = [one.place for one in behind if isinstance(one, Work) and _lies_beside(one)]
    return made[1] if len(made) > 1 else None


def _ends_at_marker(element: Element) -> bool:
    """Return whether an element works up to a marker itself, and not to some stitches before it."""
    return isinstance(element, Until) and element.goal == "marker" and element.short is None


def _lies_beside(work: Work) -> bool:
    """Return whether a stitch is made between two others."""
    stitch = find_stitch(work.stitch)
    return work.stitch == _EITHER or (stitch is not None and stitch.kind is Kind.INCREASE and not stitch.uses)
