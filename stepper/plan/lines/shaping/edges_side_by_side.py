"""Shape both edges of a piece side by side, each at its own intervals: armhole and neck of a V-neck. No I/O.

Common practice ("at the same time"): both count their rows from the next one on. On a row that both fall on,
one is worked at its beginning and the other at its end. A shaping that goes on until so many stitches are
left is worked as often as that takes beside the other, whose number of times is said.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.craft.stitches import stitch
from stepper.plan.drafts import Template
from stepper.plan.lines.rounds import work_template
from stepper.plan.lines.shaping.edge_shaping import edge_rows
from stepper.plan.lines.shaping.edge_sides import side_beginning_at
from stepper.plan.lines.shaping.intervals import work_between
from stepper.plan.lines.shaping.side_by_side import join_shapings
from stepper.plan.model import other_side
from stepper.plan.state.needles import Needles
from stepper.project.instructions import EdgeShaping, EdgesTogether
from stepper.project.stitchwork import Numbers


def work_edges_together(instruction: EdgesTogether, needles: Needles) -> None:
    """Work the shapings of several edges, row by row, to the last of them."""
    if needles.counting.lost:
        return
    before = len(needles.findings)
    due: dict[int, list[Template]] = {}
    sides: dict[str, str] = {}
    for part in _counted_out(instruction, needles):
        side = side_beginning_at(part.edge, part.place, needles)
        if not side:
            return
        if side in sides.values():
            (other,) = (edge for edge, where in sides.items() if where == side)
            told = f"the {part.edge} edge and the {other} edge are one, as the piece is shaped so far."
            needles.report(part.place, told, "Write the rows out.")
            break
        sides[part.edge] = side
        begins, ends = edge_rows(part, needles)
        for at in _rows_of(part, needles):
            due.setdefault(at, []).append(begins if _side_of(at, needles) == side else ends)
    if len(needles.findings) > before:
        needles.lose()
        return
    goes_on, done = bool(needles.section.pattern), 0
    for at in sorted(due):
        row = join_shapings(due[at], instruction.place, needles)
        if row is None:
            return
        work_between(at - done - 1, needles, instruction.place, goes_on=goes_on)
        work_template(row, needles)
        if len(needles.findings) > before:
            return
        done = at


def _counted_out(instruction: EdgesTogether, needles: Needles) -> tuple[EdgeShaping, ...]:
    """Return the shapings with a number of times each, that of one which ends at a count worked out.

    None, and reported, where the line leaves open how often, or no number of times comes to the count. A
    shaping of every right-side or wrong-side row that says no end goes on as long as the other.
    """
    size, count = needles.size, needles.count
    left_open: list[EdgeShaping] = []
    beside = [part for part in instruction.parts if _goes_along(part)]
    if beside and len(beside) < len(instruction.parts):
        apart = tuple(part for part in instruction.parts if part not in beside)
        found = _counted_out(replace(instruction, parts=apart), needles)
        end = max((row for part in found for row in _rows_of(part, needles)), default=0)
        return (*found, *(_ended_with(part, end, needles) for part in beside if found))
    for part in instruction.parts:
        *others, last = part.legs
        unclear = any(leg.length or leg.upto or leg.between for leg in part.legs)
        if unclear or any(leg.times is None for leg in others) or (last.times is None and last.until is None):
            told = "side by side, shapings of an edge each need rows between them and a number of times."
            needles.report(part.place, told, "Write every how many rows, and how often.")
            return ()
        if last.times is None:
            left_open.append(part)
        count += _change(part, needles) * _times_said(part, size)
    if not left_open:
        return instruction.parts
    part = left_open[0]
    *others, last = part.legs
    assert last.until is not None
    wanted = last.until.of(size)
    times, over = divmod(wanted - count, _change(part, needles))
    if len(left_open) > 1 or over or times < 0:
        told = f"no number of times leaves {wanted} stitches beside the other shaping."
        if len(left_open) > 1:
            told = "both shapings go on until a number of stitches is left: which ends first is not said."
        needles.report(last.until.place, told, "Write how often each is worked.")
        return ()
    in_all = times + _times_said(part, size)
    words = f"worked {in_all} times in all, which leaves {wanted} stitches beside the other shaping."
    needles.warn(part.place, f"the {part.edge} edge: {words}")
    ended = replace(last, times=Numbers((times,), last.until.place), until=None)
    counted = replace(part, legs=(*others, ended))
    return tuple(counted if each is part else each for each in instruction.parts)


def _goes_along(part: EdgeShaping) -> bool:
    """Return whether a shaping of every row of one side says no end of its own."""
    *others, leg = part.legs
    ended = leg.times is not None or leg.until is not None or leg.upto is not None
    return not others and part.first is None and bool(leg.side) and not ended


def _ended_with(part: EdgeShaping, end: int, needles: Needles) -> EdgeShaping:
    """Return a shaping that goes along with another, as often as it falls on a row up to the other's last."""
    (leg,) = part.legs
    first = 1 if _side_of(1, needles) == leg.side else 2
    times = len(range(first, end + 1, max(1, leg.every.of(needles.size))))
    needles.warn(part.place, f"the {part.edge} edge is shaped as long as the other, {times} times.")
    return replace(part, legs=(replace(leg, times=Numbers((times,), part.place)),))


def _times_said(part: EdgeShaping, size: int) -> int:
    """Return how often the line says that a shaping is worked, without what goes on until a count."""
    said = sum(leg.times.of(size) for leg in part.legs if leg.times is not None)
    return said + (part.first is not None)


def _change(part: EdgeShaping, needles: Needles) -> int:
    """Return how many stitches one row of a shaping gains; fewer than none for a decrease."""
    return part.number.of(needles.size) * stitch(part.stitch).change


def _rows_of(part: EdgeShaping, needles: Needles) -> list[int]:
    """Return the rows on which a shaping falls, counted from 1 from here."""
    rows, at = list[int](), 0
    if part.first is not None:
        at = part.first.of(needles.size)
        rows.append(at)
    for leg in part.legs:
        assert leg.times is not None
        for _ in range(leg.times.of(needles.size)):
            at += max(1, leg.every.of(needles.size))
            if leg.side and _side_of(at, needles) != leg.side:
                at += -1 if leg.every.of(needles.size) > 1 else 1
            rows.append(at)
    return rows


def _side_of(row: int, needles: Needles) -> str:
    """Return the side of a row, counted from 1 from here."""
    return needles.side if row % 2 else other_side(needles.side)
