"""Shape both edges of a piece side by side, each at its own intervals: armhole and neck of a V-neck. No I/O.

Common practice ("at the same time"): both count their rows from the next one on. On a row that both fall on,
one is worked at its beginning and the other at its end. Stitches are bound off where a row begins at the
edge, and steps of one edge follow each other ("8 sts once, 7 sts once"). A shaping that goes on until so many
stitches are left is worked as often as that takes beside the other, whose number of times is said.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.craft.stitches import stitch
from stepper.plan.drafts import Template
from stepper.plan.lines.rounds import work_template
from stepper.plan.lines.shaping.edge_shaping import edge_rows, refuse_as_before, refuse_other_side
from stepper.plan.lines.shaping.edge_sides import side_beginning_at
from stepper.plan.lines.shaping.intervals import work_between
from stepper.plan.lines.shaping.side_by_side import join_shapings
from stepper.plan.model import other_side
from stepper.plan.state.needles import Needles
from stepper.project.duration import Rounds
from stepper.project.instructions import AtOnce, EdgeShaping, EdgesTogether
from stepper.project.stitchwork import Numbers


def work_edges_together(instruction: EdgesTogether, needles: Needles) -> None:
    """Work the shapings of several edges, row by row, to the last of them."""
    if needles.counting.lost:
        return
    before = len(needles.findings)
    due: dict[int, list[Template]] = {}
    sides: dict[str, str] = {}
    worked: dict[str, int] = {}
    lasts = _rows_beside(instruction, needles)
    for part in _counted_out(instruction, lasts, needles):
        side = side_beginning_at(part.edge, part.place, needles)
        if not side:
            return
        other = next((edge for edge, where in sides.items() if where == side and edge != part.edge), "")
        if other:
            told = f"the {part.edge} edge and the {other} edge are one, as the piece is shaped so far."
            needles.report(part.place, told, "Write the rows out.")
            break
        off = part.stitch == "bo"
        if part.edge in sides and not off:
            told = f"two shapings of the {part.edge} edge are worked one after the other, not side by side."
            needles.report(part.place, told, "Write how often each is worked in a line of its own.")
            break
        if refuse_other_side(part, side, needles):
            break
        sides[part.edge] = side
        begins, ends = edge_rows(part, side, needles)
        for at in _rows_of(part, needles, after=worked.get(part.edge, 0), begins=side if off else ""):
            worked[part.edge] = at
            row = begins if _side_of(at, needles) == side else ends
            if row is None:
                refuse_as_before(part, needles)
                return
            due.setdefault(at, []).append(row)
    last = max(due, default=0)
    if lasts and last > lasts:
        told = f"the shaping takes {last} rows, and {lasts} are worked beside it."
        needles.report(instruction.place, told, "Check how often it is worked, or how many rows there are.")
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
    work_between(lasts - done, needles, instruction.place, goes_on=goes_on)


def refuse_at_once(instruction: AtOnce, needles: Needles) -> None:
    """Report two things told to be worked at the same time of which it is not plain where each is told."""
    told = "what is worked at the same time is not told in the two lines below this one."
    needles.report(instruction.place, told, 'Write both in one line, with "at the same time" between them.')


def _rows_beside(instruction: EdgesTogether, needles: Needles) -> int:
    """Return how many rows the line gives for its shapings; 0 if none, or if they are reported."""
    base = instruction.base
    if base is None:
        return 0
    plain = (base.bare or base.manner in ("pattern", "stockinette")) and not base.even
    if not plain or base.first or base.edges or base.but_last:
        told = "beside the shaping of an edge, rows are read that go on as before."
        needles.report(base.place, told, 'Write "Work 6 rows".')
    if isinstance(base.duration, Rounds) and not base.duration.total:
        return base.duration.number.of(needles.size)
    needles.report(base.place, "beside the shaping of an edge, rows are read by their number.")
    return 0


def _counted_out(instruction: EdgesTogether, lasts: int, needles: Needles) -> tuple[EdgeShaping, ...]:
    """Return the shapings with a number of times each, that of one which ends at a count worked out.

    None, and reported, where the line leaves open how often, or no number of times comes to the count. A
    shaping that says no end goes on as long as the other, or as the rows that the line gives.
    """
    size, count = needles.size, needles.count
    left_open: list[EdgeShaping] = []
    beside = [part for part in instruction.parts if _goes_along(part)]
    if beside and (lasts or len(beside) < len(instruction.parts)):
        apart = tuple(part for part in instruction.parts if part not in beside)
        if any(part.legs[-1].until is not None for part in apart):
            return _to_one_count(instruction, lasts, needles)
        found = _counted_out(replace(instruction, parts=apart), lasts, needles) if apart else ()
        end = lasts or max((row for part in found for row in _rows_of(part, needles)), default=0)
        if not end or (apart and not found):
            return ()
        return (*found, *(_ended_with(part, end, needles) for part in beside))
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


def _to_one_count(instruction: EdgesTogether, lasts: int, needles: Needles) -> tuple[EdgeShaping, ...]:
    """Return two shapings that end together, on the row that leaves the stitches one of them goes on to."""
    (last,) = (part.legs[-1] for part in instruction.parts if part.legs[-1].until is not None)
    assert last.until is not None
    wanted, far = last.until.of(needles.size), abs(needles.count)
    open_ends = [_worked_often(part, far) for part in instruction.parts]
    rows = {row for part in open_ends for row in _rows_of(part, needles)}
    for row in sorted(rows):
        ended = tuple(_ended_with(part, row, needles, tell=False) for part in instruction.parts)
        gained = (_change(part, needles) * _times_said(part, needles.size) for part in ended)
        count = needles.count + sum(gained)
        over = any(at > row for part in ended for at in _rows_of(part, needles))
        if count == wanted and not over and not lasts and len(instruction.parts) == 2:
            words = f"worked on to row {row} from here, which leaves {wanted} stitches."
            needles.warn(instruction.place, f"both edges: {words}")
            return ended
    told = f"no row leaves {wanted} stitches beside the other shaping."
    needles.report(last.until.place, told, "Write how often each is worked.")
    return ()


def _worked_often(part: EdgeShaping, times: int) -> EdgeShaping:
    """Return a shaping with a number of times for its last interval, whatever else ends it."""
    *others, leg = part.legs
    number = Numbers((times,), part.place)
    return replace(part, legs=(*others, replace(leg, times=number, until=None)))


def _goes_along(part: EdgeShaping) -> bool:
    """Return whether a shaping says no end of its own."""
    *others, leg = part.legs
    return not others and leg.times is None and leg.until is None and leg.upto is None and not leg.length


def _ended_with(part: EdgeShaping, end: int, needles: Needles, *, tell: bool = True) -> EdgeShaping:
    """Return a shaping that goes on to a row, counted from here, as often as it falls on one up to there."""
    in_all = sum(row <= end for row in _rows_of(_worked_often(part, end), needles))
    if tell:
        needles.warn(part.place, f"the {part.edge} edge is shaped as long as the other, {in_all} times.")
    said = _times_said(part, needles.size)
    return _worked_often(part, max(0, in_all - said))


def _times_said(part: EdgeShaping, size: int) -> int:
    """Return how often the line says that a shaping is worked, without what goes on until a count."""
    said = sum(leg.times.of(size) for leg in part.legs if leg.times is not None)
    return said + (part.first is not None)


def _change(part: EdgeShaping, needles: Needles) -> int:
    """Return how many stitches one row of a shaping gains; fewer than none for a decrease."""
    return part.number.of(needles.size) * stitch(part.stitch).change


def _rows_of(part: EdgeShaping, needles: Needles, *, after: int = 0, begins: str = "") -> list[int]:
    """Return the rows on which a shaping falls, counted from 1 from here.

    Args:
        part: The shaping.
        needles: The knitting in hand.
        after: The row of the step before it at the same edge; 0 if there is none.
        begins: Side of the rows that alone can shape it, as only they begin at the edge; empty if any can.
    """
    rows, at = list[int](), after
    if part.first is not None:
        at += part.first.of(needles.size)
        at += 1 if begins and _side_of(at, needles) != begins else 0
        rows.append(at)
    for leg in part.legs:
        assert leg.times is not None
        for _ in range(leg.times.of(needles.size)):
            at += max(1, leg.every.of(needles.size))
            wanted = begins or leg.side
            if wanted and _side_of(at, needles) != wanted:
                at += -1 if leg.every.of(needles.size) > 1 else 1
            rows.append(at)
    return rows


def _side_of(row: int, needles: Needles) -> str:
    """Return the side of a row, counted from 1 from here."""
    return needles.side if row % 2 else other_side(needles.side)
