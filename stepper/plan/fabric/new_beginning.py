"""End a round before its end, where the next then begins: `ending last rnd 4 sts before BOR`. No I/O.

Common practice: underarm stitches lie on both sides of the beginning of the round, and are bound off in one
go once it has moved to just before them. The stitches left are worked first in the next round; from then on
they are one round behind the others, and so is the pattern over them.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.craft.stitches import Kind, stitch
from stepper.plan.fabric.columns import UnknownFabricError
from stepper.plan.fabric.established import columns_of
from stepper.plan.model import Item, Run, flatten
from stepper.plan.state.in_hand import Column, Established
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.run_repeats import condense
from stepper.project.instructions import StopShort


def stop_short(instruction: StopShort, needles: Needles) -> None:
    """Leave the last stitches of the round just worked, and let the next round begin there."""
    if needles.counting.lost:
        return
    number, place = instruction.number.of(needles.size), instruction.place
    if number == 0:
        return
    last = needles.drafts[-1] if len(needles.drafts) > needles.section.start else None
    if last is None or needles.flat or last.flat or last.chart:
        needles.report(place, "no round was worked before this that could stop before its end.")
        return
    kept = _without_end(last.phrase, number)
    if kept is None:
        needles.report(
            place,
            f"the last {number} stitches of the round are not all plain, so it cannot stop before them.",
            f"The round has {last.after} stitches.",
        )
        return
    columns, phase = _columns(needles, number)
    remark = f"stop {number} stitches before the end of the round: from here on it begins there"
    rest = Run("rest", number, needles.yarn)
    needles.drafts[-1] = replace(
        last, phrase=(*kept, rest), remarks=(*last.remarks, remark), template=None, whole=True
    )
    if needles.stretches and needles.stretches[-1].last == len(needles.drafts) - 1:
        stretch = needles.stretches.pop()
        if stretch.first < stretch.last:
            needles.stretches.append(replace(stretch, last=stretch.last - 1))
    count = needles.count
    needles.markers = tuple(sorted({(mark + number) % count for mark in needles.markers} - {0}))
    needles.ends = ()
    here = len(needles.drafts)
    needles.established = Established(
        start=here,
        end=here,
        reached=here,
        columns=columns,
        phase=phase,
        why="" if columns is not None else "the beginning of the round moved in it",
    )


def _without_end(phrase: tuple[Item, ...], number: int) -> tuple[Item, ...] | None:
    """Return a round without its last stitches; None if they are not worked one by one."""
    runs = list(flatten(phrase))
    left = number
    while left:
        run = runs.pop() if runs else None
        if run is None or stitch(run.stitch).kind is Kind.MARK:
            if run is None:
                return None
            continue
        if run.uses != run.times or run.leaves != run.times or run.stitch in ("rest", "hold", "return"):
            return None
        if run.times > left:
            runs.append(replace(run, times=run.times - left))
        left -= min(left, run.times)
    return condense(tuple(runs)) if runs else None


def _columns(needles: Needles, number: int) -> tuple[list[Column] | None, int]:
    """Return the columns from the new beginning on, with the stitches left one row behind; None if
    unknown."""
    try:
        columns, phase = columns_of(needles)
    except UnknownFabricError:
        return None, 0
    behind = [(*column[-1:], *column[:-1]) for column in columns[-number:]]
    return [*behind, *columns[:-number]], phase
