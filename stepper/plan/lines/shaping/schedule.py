"""On which rows shapings fall: the plain rows before each, interval by interval. No I/O."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from stepper.craft.gauge import half_up
from stepper.plan.fabric.established import ground
from stepper.plan.fabric.marker_sections import between_markers
from stepper.plan.lines.shaping.to_length import refuse_none
from stepper.plan.state.needles import MOST_ROUNDS, Needles
from stepper.plan.stitches.round_sources import TwoReadings
from stepper.project.instructions import AtIntervals, EdgeShaping, Leg
from stepper.project.problems import Span
from stepper.project.stitchwork import Numbers


def occasions(
    legs: tuple[Leg, ...], needles: Needles, *, since: int = 0, end: int | None = None
) -> Iterator[tuple[int, Leg]]:
    """Yield the plain rows before each shaping, and the interval it belongs to.

    The caller works those rows and the shaping before asking for the next, since an interval that runs to a
    count ends when the stitches on the needles reach it. Once the count is lost, nothing more is yielded.

    Args:
        legs: The intervals.
        needles: The knitting in hand.
        since: Plain rows already worked of the first interval.
        end: Rows of the garment at which the last interval ends, if that is by a length.
    """
    for leg in legs:
        if leg.upto is not None:
            if end is not None:
                yield from _up_to(end, leg, needles, since)
            return
        if leg.until is not None and needles.counting.lost:
            if not leg.between:
                needles.regain(leg.until.of(needles.size))
            continue
        every = _rows_apart(leg, needles)
        for _ in range(leg.times.of(needles.size) if leg.times is not None else MOST_ROUNDS):
            before = _counted(leg, needles)
            if before is None:
                return
            if leg.until is not None and before == leg.until.of(needles.size):
                break
            yield every - 1 - since, leg
            since = 0
            if needles.counting.lost or not _nearer(leg, before, needles):
                return


def _up_to(end: int, leg: Leg, needles: Needles, since: int) -> Iterator[tuple[int, Leg]]:
    """Yield the shapings that fall before a length is reached, each so far from the beginning as is said.

    Intervals by a length are rounded from the beginning each time, so that they do not drift away from it.
    """
    begin, worked = len(needles.drafts) - since, 0
    apart = float(max(1, leg.every.of(needles.size)))
    if leg.length is not None:
        apart, _ = needles.length_in_rounds(leg.length, origin=len(needles.drafts))
    found = len(needles.findings)
    while not needles.counting.lost and len(needles.findings) == found:
        plain = max(0, begin + half_up((worked + 1) * apart) - 1 - len(needles.drafts))
        if len(needles.drafts) + plain + 1 > end:
            break
        yield plain, leg
        worked += 1
    if not worked:
        refuse_none(leg, needles)


def _rows_apart(leg: Leg, needles: Needles) -> int:
    """Return the number of rows from one shaping to the next, including the latter."""
    if leg.length is None:
        return max(1, leg.every.of(needles.size))
    apart, _ = needles.length_in_rounds(leg.length, origin=len(needles.drafts))
    return max(1, half_up(apart))


def _nearer(leg: Leg, before: int, needles: Needles) -> bool:
    """Return whether a shaping got nearer to its target count; report it if it cannot get there."""
    if leg.until is None:
        return True
    wanted, after = leg.until.of(needles.size), _counted(leg, needles)
    if after is None:
        return False
    passed = (before - wanted) * (after - wanted) < 0
    if not passed and abs(after - wanted) < abs(before - wanted):
        return True
    how = f"goes from {before} to {after} stitches"
    where = " between the markers" if leg.between else ""
    needles.report(leg.until.place, f"the shaping never leaves {wanted} stitches{where}: it {how}.")
    return False


def _counted(leg: Leg, needles: Needles) -> int | None:
    """Return the stitches by which an interval ends: all, or between markers; None, reported, if unknown."""
    if not leg.between or leg.until is None:
        return needles.count
    found = between_markers(needles)
    if found is None and not needles.counting.lost:
        told = f"the stitches between two markers are counted, and {len(needles.markers)} markers are there."
        needles.report(leg.until.place, told, "Say the stitches in all, or how many times, instead.")
    return found


def tell_sides_around(instruction: AtIntervals, needles: Needles) -> None:
    """Tell the knitter once what the rows of a side are, where the work goes in rounds.

    "Every RS row" is every other row of flat knitting, and stays every other round; a page that was written
    for rows and is worked around may mean every round.
    """
    named = next((leg for leg in instruction.legs if leg.side), None)
    if named is None or needles.flat or any(caution.kind == "sides" for caution in needles.cautions):
        return
    every = named.every.of(needles.size)
    often = {1: "every", 2: "every other"}.get(every, f"every {every}th")
    taken = f"the {named.side} rows of this line, worked around, are taken as {often} round"
    told = f'rounds all show the right side: {taken}. Write "every round" where each one is meant.'
    needles.warn(named.every.place, told, "sides")


def refuse_worked_sides(asked: tuple[Leg, ...], needles: Needles) -> bool:
    """Report "every k row" where not all k rows are right-side rows, as they are in stockinette alone."""
    leg = next((leg for leg in asked if leg.worked), None)
    if leg is None or (needles.flat and ground(needles) in ("plain", "")):
        return False
    needles.report(leg.every.place, "which rows are knit rows cannot be told here.", 'Write "every RS row".')
    return True


def next_in_times(printed: Numbers, line: Span, needles: Needles) -> TwoReadings:
    """Return the two readings of "next and every 4th row 5 times": the next is one more, or one of them."""
    times = printed.of(needles.size)
    return TwoReadings(
        place=printed.place,
        words=f"next and every … {times} times",
        first=f"{times + 1} times in all",
        second=f"{times} times in all",
        line=line.line,
    )


def once_less(legs: tuple[Leg, ...], needles: Needles, often: int = 1) -> tuple[Leg, ...]:
    """Return legs with the first worked one time less, since it was worked once before, or so often."""
    first, *rest = legs
    if first.times is None:
        return legs
    number = Numbers((first.times.of(needles.size) - often,), first.times.place)
    return (replace(first, times=number), *rest)


def with_first(instruction: EdgeShaping, needles: Needles) -> tuple[Leg, ...]:
    """Return the legs of a shaping at an edge, with the row it begins with; that may be one of its times."""
    legs, row = instruction.legs, instruction.first
    if row is None:
        return legs
    once = Leg(row, Numbers((1,), row.place), False)
    times = legs[0].times
    if times is None or legs[0].more:
        return (once, *legs)
    if not needles.reads_second(next_in_times(times, instruction.place, needles)):
        return (once, *legs)
    return (once, *once_less(legs, needles)) if times.of(needles.size) else legs
