"""Repeat the rows of a turned heel until all its stitches are worked. No I/O.

Each row works up to the gap that the turn before it left, closes it with one more stitch of those that wait,
and turns. All are worked when neither a right-side row nor a wrong-side row leaves any waiting at its turn.
Where one stitch is left at a side, the decrease takes it, and the stitch worked behind the decrease is left
out (common practice). Rows that are told by numbers, "sl 1, k6, skp, k1, turn", are worked with one stitch
more before the decrease on each row, as the two that the page writes out: only so does it close the gap.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.craft.stitches import TURNS, stitch
from stepper.plan.drafts import DraftRound, Template
from stepper.plan.lines.cut_short import tell_cut_short
from stepper.plan.lines.rounds import work_template
from stepper.plan.model import flatten
from stepper.plan.state.needles import Needles
from stepper.project.duration import UntilAllWorked
from stepper.project.problems import Span
from stepper.project.stitchwork import Numbers, TurnHere, Until, Work

_MOST_ROWS = 400
"""More rows than the turn of any heel has."""


def work_until_none_waits(
    cycle: tuple[Template, ...], duration: UntilAllWorked, needles: Needles, *, start: int
) -> None:
    """Work a cycle of short rows until none leaves a stitch waiting."""
    if needles.counting.lost:
        return
    place, leaves = duration.place, duration.left.of(needles.size) if duration.left is not None else 0
    waiting = {draft.side: _left_waiting(draft) for draft in needles.drafts[-2:]}
    if len(waiting) < 2 or not all(waiting.values()):
        told = "stitches that wait beyond turns are worked here, and the two rows before leave none."
        needles.report(place, told, "Say how many times the rows are worked, or how many stitches are left.")
        needles.lose()
        return
    cycle = close_the_gap(cycle, place, needles)
    if needles.counting.lost:
        return
    for number in range(_MOST_ROWS):
        if all(waits == leaves for waits in waiting.values()):
            tell_cut_short(cycle, place, needles, at=start + number)
            last = needles.drafts[-1]
            told = f"all but {leaves} at each side" if leaves else "all stitches"
            last.remarks = (*last.remarks, f"{told} are worked, {needles.count} remain")
            return
        side, findings = needles.side, len(needles.findings)
        work_heel_row(cycle[(start + number) % len(cycle)], place, needles)
        if len(needles.findings) > findings or needles.counting.lost:
            return
        now = _left_waiting(needles.drafts[-1])
        if now < leaves:
            needles.report(place, f"the rows leave {now} stitches at a side, and never {leaves}.")
            needles.lose()
            return
        if now >= (waiting[side] or 1):
            break
        waiting[side] = now
    needles.report(place, "the rows take in none of the stitches that wait beyond their turns.")
    needles.lose()


def close_the_gap(cycle: tuple[Template, ...], place: Span, needles: Needles) -> tuple[Template, ...]:
    """Return the rows of a heel so that each works up to the gap, where two of them are told by numbers.

    Rows of another kind are returned as they are; two by numbers that do not go on so are reported.
    """
    told_by_numbers = [plain for row in cycle if (plain := _plain(row)) is not None]
    if len(cycle) != 2 or len(told_by_numbers) != 2:
        return cycle
    first, second = (plain.times.of(needles.size) for plain in told_by_numbers)
    if second != first + 1:
        told = "the rows are told by numbers, and the second has not one stitch more before its decrease."
        needles.report(place, told, 'Write "k to 1 st before gap" in both, or the rows out.')
        needles.lose()
        return cycle
    needles.warn(place, "each row has one stitch more before its decrease, so that this closes the gap.")
    return tuple(_to_the_gap(row, plain) for row, plain in zip(cycle, told_by_numbers, strict=True))


def _plain(row: Template) -> Work | None:
    """Return the plain stitches before the decrease of "sl 1, k6, skp, k1, turn"; None for another row."""
    match row.elements:
        case (*first, Work(stitch="k" | "p") as k, Work() as dec, Work(stitch="k" | "p") as last, TurnHere()):
            one = stitch(dec.stitch).uses == 2 and last.times.values == (1,)
            return k if one and len(first) < 2 else None
        case _:
            return None


def _to_the_gap(row: Template, plain: Work) -> Template:
    """Return a row told by numbers with its plain stitches worked to one before the gap instead."""
    one = Numbers((1,), plain.place)
    far = Until(plain.stitch, "turn", one, plain.yarn, plain.place, ribbed=plain.ribbed, fabric=plain.fabric)
    return replace(row, elements=tuple(far if each is plain else each for each in row.elements))


def work_heel_row(row: Template, place: Span, needles: Needles) -> None:
    """Work a row; without the stitch behind its decrease where only one waits on this side of a heel."""
    rows = needles.drafts[-3:]
    left = [_left_waiting(draft) for draft in rows]
    # Both sides have to come to one stitch: where only one of them does, a number of the page is wrong.
    last = len(rows) == 3 and rows[1].side == needles.side and left in ([left[0], 1, 1], [1, 1, 0])
    short = _without_last_stitch(row) if last else row
    findings = len(needles.findings)
    work_template(short, needles)
    if short is not row and len(needles.findings) == findings:
        needles.warn(place, "the last stitch behind the decrease is left out where none is left to work.")


def _without_last_stitch(row: Template) -> Template:
    """Return a row without the one stitch between its last decrease and its turn; the same if it has none."""
    if len(row.elements) < 3:
        return row
    *before, decrease, last, turn = row.elements
    plain = isinstance(last, Work) and last.stitch in ("k", "p") and last.times.values == (1,)
    closes = isinstance(decrease, Work) and stitch(decrease.stitch).uses == 2
    if not (plain and closes and isinstance(turn, TurnHere)):
        return row
    return replace(row, elements=(*before, decrease, turn))


def _left_waiting(draft: DraftRound) -> int:
    """Return the stitches that a row leaves beyond its turn; 0 for one that does not turn."""
    left, turned = 0, False
    for run in flatten(draft.phrase):
        if run.stitch in TURNS:
            turned = True
        elif turned and run.stitch == "rest":
            left += run.times
    return left
