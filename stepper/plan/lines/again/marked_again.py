"""How often the rows between two marks of the page are worked again to a length. No I/O."""

from __future__ import annotations

from stepper.craft.gauge import half_up
from stepper.plan.state.measuring_places import measured_from, without_heel, without_held
from stepper.plan.state.needles import Needles
from stepper.project.duration import UntilLength
from stepper.project.instructions import AsPart, Line


def times_again(instruction: AsPart, lines: tuple[Line, ...], needles: Needles) -> int:
    """Return how often marked rows are worked again: as the line says, or to a length by the gauge.

    To a length they are worked whole, the nearest number of times, which is told.

    Returns:
        The times; 0, reported, where the piece is that long already or the rows have no height.
    """
    duration = instruction.until
    if not isinstance(duration, UntilLength) or needles.counting.lost:
        return instruction.times
    if duration.ending is not None or duration.ending_side:
        told = "rows between marks are worked whole to a length; with which row they end is not chosen."
        needles.report(instruction.place, told, "Leave out with which row it ends.")
        return 0
    duration = without_held(without_heel(duration, needles), needles)
    origin, found = measured_from(duration, needles), len(needles.findings)
    exact, _ = needles.length_in_rounds(duration.length, origin=origin, blocked=duration.blocked)
    if len(needles.findings) > found:
        return 0
    rounds = _rows_last_worked({line.place.line for line in lines}, needles)
    times = half_up(exact / rounds) if rounds else 0
    if times < 1:
        long = duration.length.printed
        told = f"by the gauge the piece measures {long} before these rows are worked once more."
        needles.report(
            instruction.place, told, "Say from where it is measured, or how often they are worked."
        )
        return 0
    often = {1: "once", 2: "twice"}.get(times, f"{times} times")
    told = f"by the gauge these {rounds} rows are worked {often} more, whole, to {duration.length.printed}."
    needles.warn(instruction.place, told)
    return times


def _rows_last_worked(numbers: set[int], needles: Needles) -> int:
    """Count the rows that lines came to when they were last worked, by the numbers of the lines."""
    rows, above = 0, max(numbers, default=0)
    for draft in reversed(needles.drafts[needles.section.start :]):
        if draft.line not in numbers or draft.line > above or not draft.before:
            break
        above = draft.line
        rows += bool(draft.height_mm)
    return rows
