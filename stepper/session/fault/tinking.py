"""Undo stitch by stitch: which stitches come off, the last worked first, and where that leads. No I/O."""

from __future__ import annotations

from stepper.craft.stitches import stitch
from stepper.plan.model import Plan, Run
from stepper.plan.stitches.run_repeats import join_runs
from stepper.records import dataclass
from stepper.session.state import Position


@dataclass(frozen=True, slots=True, kw_only=True)
class Reverse:
    """Stitches to undo."""

    place: Position
    """Where the knitting stands after it."""
    runs: tuple[Run, ...]
    """What comes off, the last worked first; equal neighbours joined."""
    stitches: int
    """How many stitches, as counted on the right needle. Unit: stitches."""


def reverse(plan: Plan, place: Position, stitches: int) -> Reverse | None:
    """Undo at least this many stitches, whole ones only; None if fewer were worked.

    Args:
        plan: The plan as knitted.
        place: Where the knitting stands.
        stitches: As counted on the right needle. Range: 1 and up. A stitch that leaves two comes off whole.
    """
    runs: list[Run] = []
    index, at, undone = place.index, place.stitch, 0
    while undone < stitches:
        if at == 0:
            if index == 0:
                return None
            index -= 1
            at = plan.rounds[index].progress
            continue
        for run in reversed(_worked(plan, index, at)):
            each = stitch(run.stitch).progress
            if each == 0:
                runs.append(run)
                continue
            if undone >= stitches:
                break
            times = min(run.times, -(-(stitches - undone) // each))
            runs.append(Run(run.stitch, times, run.yarn))
            undone += times * each
            at -= times * each
    return Reverse(place=Position(index=index, stitch=max(0, at)), runs=join_runs(runs), stitches=undone)


def _worked(plan: Plan, index: int, stitches: int) -> list[Run]:
    """Return the whole stitches worked of a round."""
    left, found = stitches, []
    for run in plan.rounds[index].runs:
        each = stitch(run.stitch).progress
        times = run.times if run.progress <= left else left // max(1, each)
        if times and (each or left):
            found.append(Run(run.stitch, times, run.yarn))
        left -= times * each
        if times < run.times:
            break
    return found
