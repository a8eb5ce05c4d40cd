"""Place markers along the stitches in hand without working them. No I/O.

Common practice: the markers of a yoke are counted off from the beginning of the round, a jacket's from both
edges, before a row is worked.
"""

from __future__ import annotations

from itertools import accumulate

from stepper.plan.state.needles import Needles
from stepper.plan.stitches.both_sides import BESIDE_NECK
from stepper.project.laying_out import MarkAfter, MarkEvery
from stepper.project.problems import Span


def mark_after(instruction: MarkAfter, needles: Needles) -> None:
    """Place markers after so many stitches each, or one in from each end; report what does not fit."""
    counts = [numbers.of(needles.size) for numbers in instruction.counts]
    if needles.counting.lost:
        return
    if _refuse_beside_neck(instruction.place, needles):
        return
    places = tuple(accumulate(counts))
    if instruction.ends:
        places = (counts[0], needles.count - counts[0])
    *firsts, last = map(str, places)
    after = f"{', '.join(firsts)} and {last}" if firsts else last
    if list(places) != sorted(set(places)) or not all(0 < place < needles.count for place in places):
        needles.report(instruction.place, f"markers after {after} do not fit on {needles.count} stitches.")
        return
    needles.markers = places
    needles.remarks.append(f"place a marker after {after} stitches from the beginning, without working them")


def mark_every(instruction: MarkEvery, needles: Needles) -> None:
    """Place markers every so many stitches; report where they do not go on those in hand."""
    every = instruction.every.of(needles.size)
    if _refuse_beside_neck(instruction.place, needles):
        return
    if not 0 < every < max(needles.count, 1):
        told = f"a marker every {every} stitches does not go on {needles.count} stitches."
        needles.report(instruction.place, told)
        return
    needles.markers = tuple(range(every, needles.count, every))
    needles.remarks.append(f"place a marker every {every} stitches")


def _refuse_beside_neck(place: Span, needles: Needles) -> bool:
    """Report markers beside a neck whose sides are worked at once; return whether they are."""
    if needles.two_balls:
        needles.report(place, BESIDE_NECK)
        needles.lose()
    return needles.two_balls
