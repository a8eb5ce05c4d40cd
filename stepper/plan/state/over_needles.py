"""Divide stitches over the needles of a sock, and slip them from one needle to the next. No I/O."""

from __future__ import annotations

from itertools import pairwise

from stepper.plan.state.needles import Needles
from stepper.plan.stitches.halves import bounds_of
from stepper.plan.stitches.needle_by_needle import SAY_HOW, UNDIVIDED
from stepper.project.laying_out import InstepOn, MoveOver, OverNeedles


def over_needles(instruction: OverNeedles, needles: Needles) -> None:
    """Divide the stitches in hand over needles."""
    size, place, total = needles.size, instruction.place, needles.count
    number = instruction.needles.of(size) if instruction.needles is not None else 0
    counts = [each.of(size) for each in instruction.counts]
    if len(counts) == 1:
        (each,) = counts
        wanted = number or len(needles.ends) + 1 if needles.ends else number
        if not each or total % each or total == each or (wanted and wanted * each != total):
            on = f" on {wanted} needles" if wanted else ""
            needles.report(place, f"{each} stitches on each needle do not come to {total}{on}.")
            return
        counts = [each] * (total // each)
    elif counts:
        if len(counts) != number or sum(counts) != total:
            told = " + ".join(map(str, counts))
            needles.report(place, f"{told} stitches on {number} needles; {total} are in hand.")
            return
    elif not 1 < number <= max(total, 1):
        needles.report(place, f"{total} stitches are not divided over {number} needles.")
        return
    else:
        counts = [total // number] * number if total % number == 0 else []
    ends = tuple(sum(counts[: at + 1]) for at in range(len(counts) - 1))
    if instruction.counted and needles.ends and ends != needles.ends:
        bounds = [0, *needles.ends, total]
        lie = " + ".join(str(end - start) for start, end in pairwise(bounds))
        needles.report(place, f"{' + '.join(map(str, counts))} stitches are counted; the needles hold {lie}.")
        return
    if instruction.counted and not set(bounds_of(needles.instep, total)) <= set(ends):
        told = "they are counted from the beginning of the round, and no needle ends where the instep does."
        needles.report(place, told, SAY_HOW)
        return
    said, needles.ends = ends == needles.ends, ends
    if counts and said:
        return
    if counts:
        needles.remarks.append(f"on {len(counts)} needles: {', '.join(map(str, counts))} stitches")
    else:
        needles.remarks.append(f"divide over {number} needles")


def move_over(instruction: MoveOver, needles: Needles) -> None:
    """Slip stitches from one needle to the next."""
    number, place = instruction.number.of(needles.size), instruction.place
    source, to = instruction.source, instruction.to
    if not needles.ends:
        needles.report(place, UNDIVIDED, SAY_HOW)
        return
    bounds = [0, *needles.ends, needles.count]
    if not (1 <= source < len(bounds) and 1 <= to < len(bounds)) or abs(source - to) != 1:
        needles.report(
            place, f"stitches are slipped between neighbouring needles, and not from {source} to {to}."
        )
        return
    holds = bounds[source] - bounds[source - 1]
    if number > holds:
        needles.report(place, f"needle {source} holds {holds} stitches, not {number}.")
        return
    ends = list(needles.ends)
    ends[min(source, to) - 1] += number if source > to else -number
    needles.ends = tuple(ends)
    needles.remarks.append(f"slip {number} stitches from needle {source} to needle {to}")


def lay_instep(instruction: InstepOn, needles: Needles) -> None:
    """Take the stitches on some needles as the instep; they have to lie side by side."""
    place, own = instruction.place, sorted(instruction.needles)
    if not needles.ends:
        needles.miss(place, UNDIVIDED, SAY_HOW)
        return
    bounds = [0, *needles.ends, needles.count]
    if own[-1] >= len(bounds) or own != list(range(own[0], own[-1] + 1)) or len(own) == len(bounds) - 1:
        told = f"the stitches are on {len(bounds) - 1} needles, and the instep does not lie on {own} of them."
        needles.report(place, told)
        return
    needles.instep = bounds[own[0] - 1], bounds[own[-1]]
