"""Floats: every strand that passes behind stitches of another yarn, and where long ones are caught. No I/O.

Source: a float is caught when it is over an inch (J. Richards, "Stranding and catching in the back"); in the
round it can cross the beginning of the round (common practice).
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Run
from stepper.records import dataclass

_WITHOUT_STRAND: Final = (Kind.EDGE, Kind.SHIFT)
"""Kinds of stitches that no yarn is carried behind."""
_SHIFTS: Final = (0, 1, -1, 2, -2)
"""Stitches by which catches are moved off those of the round below, smallest first."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Float:
    """One yarn passing behind stitches of others."""

    yarn: str
    start: int
    """Stitches of the round before the first one it passes. Unit: stitches."""
    stitches: int
    """How many it passes. Range: 1 and up. Unit: stitches."""


def floats(runs: Sequence[Run], *, flat: bool, over: int = 0) -> tuple[Float, ...]:
    """Find every float of a round, including those across the join.

    Args:
        runs: The round, laid out flat.
        flat: Whether the row has ends, which no float crosses.
        over: Only those that pass more stitches than these. Unit: stitches.

    Returns:
        In the order of the yarns and of the round; one across the join begins before the end of the round.
    """
    strands, total = _strands(runs, flat=flat)
    return tuple(
        Float(yarn=yarn, start=end % total, stitches=start - end)
        for yarn, gaps in strands.items()
        for end, start in gaps
        if start - end > over
    )


def longest_floats(runs: Sequence[Run], *, flat: bool) -> tuple[tuple[str, int], ...]:
    """Return the longest float of each yarn: stitches of other yarns between two of its own.

    Args:
        runs: The round, laid out flat.
        flat: Whether the row has ends, which no float crosses.

    Returns:
        Yarn and stitches, in the order in which the yarns first appear; empty with fewer than two yarns.
        Unit: stitches.
    """
    strands, _ = _strands(runs, flat=flat)
    longest = {
        yarn: max((start - end for end, start in gaps), default=0) for yarn, gaps in strands.items()
    }
    return tuple(longest.items())


def _strands(runs: Sequence[Run], *, flat: bool) -> tuple[dict[str, list[tuple[int, int]]], int]:
    """Find where each yarn of a round passes behind others.

    Returns:
        For each yarn, in the order in which they first appear, where its own stitches end and where they go
        on, beyond the end of the round across the join; empty with fewer than two yarns. Behind it the
        stitches of the round. Unit: stitches from its beginning.
    """
    own: dict[str, list[tuple[int, int]]] = {}
    place = 0
    for run in runs:
        leaves = run.leaves
        if not leaves or stitch(run.stitch).kind in _WITHOUT_STRAND:
            continue
        stretches = own.setdefault(run.yarn, [])
        end = place + leaves
        if stretches and stretches[-1][1] == place:
            stretches[-1] = (stretches[-1][0], end)
        else:
            stretches.append((place, end))
        place = end
    if len(own) < 2:
        return {}, place
    strands = {}
    for yarn, stretches in own.items():
        starts = [start for start, _ in stretches[1:]] + ([] if flat else [stretches[0][0] + place])
        ends = [end for _, end in stretches]
        strands[yarn] = [(end, start) for end, start in zip(ends, starts, strict=False) if start > end]
    return strands, place


def catches(one: Float, limit: int, total: int, shift: int) -> tuple[int, ...]:
    """Return the stitches behind which a float is caught, so that no part of it is over the limit.

    Args:
        one: The float.
        limit: Longest part left free. Range: 1 and up. Unit: stitches.
        total: Stitches in the round.
        shift: Stitches by which to move all places, as far as the limit allows.

    Returns:
        Numbers of stitches in the round, from 1, as far apart as can be; empty if it need not be caught.
    """
    parts = -(-one.stitches // limit)
    steps = [(part * one.stitches + parts // 2) // parts for part in range(1, parts)]
    if steps:
        # The first part grows by what the last one loses; neither exceeds the limit or vanishes.
        most = min(limit - steps[0], one.stitches - steps[-1] - 1)
        least = max(1 - steps[0], one.stitches - steps[-1] - limit)
        steps = [step + max(least, min(most, shift)) for step in steps]
    return tuple((one.start + step - 1) % total + 1 for step in steps)


def places_to_catch(
    found: Sequence[Float], limit: int, total: int, below: frozenset[int] = frozenset()
) -> tuple[int, ...]:
    """Return the places where the floats of one yarn are caught, away from those of the round below.

    A catch right above another shows through (common practice). All places of a round move alike, so that a
    repeat stays a repeat; if the limit leaves no room they stay.
    """
    tried: list[set[int]] = []
    for shift in _SHIFTS:
        tried.append({place for one in found for place in catches(one, limit, total, shift)})
        if below.isdisjoint(tried[-1]):
            break
    return tuple(sorted(min(tried, key=lambda places: len(below.intersection(places)))))
