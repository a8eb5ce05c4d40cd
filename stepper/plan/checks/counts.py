"""Compare printed counts with the arithmetic. No I/O."""

from __future__ import annotations

import re
from typing import Final

from stepper.craft.rows import row_word
from stepper.craft.stitches import STITCHES
from stepper.plan.checks.count_reading import read_as
from stepper.plan.drafts import Finding
from stepper.plan.fabric.marker_sections import between_markers, sections
from stepper.plan.lines.held.gaps import pieces_ahead
from stepper.plan.model import Run, flatten
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.needle_by_needle import SAY_HOW, UNDIVIDED
from stepper.project.instructions import PrintedCount
from stepper.project.problems import Span
from stepper.project.stitchwork import PickUp
from stepper.regex import regex


def check_count(instruction: PrintedCount, needles: Needles) -> None:
    """Compare a printed count with the stitches on the needles, or with what the last round changed."""
    printed = instruction.number.of(needles.size)
    if needles.counting.lost:
        if not instruction.change and not instruction.sections:
            needles.regain(printed)
        return
    if instruction.change and needles.section.shaky and len(needles.drafts) == needles.line.start:
        return  # the round it speaks of is behind a line that was not read
    if instruction.change and needles.drafts:
        last = needles.drafts[-1]
        changed = (last.after - last.before) * instruction.change
        if changed != printed and printed * instruction.change != _changed_by_rows_above(needles):
            gained = "gained" if instruction.change > 0 else "lost"
            needles.report(
                instruction.place,
                f"the pattern prints {printed} stitches {gained} in this round; it comes to {changed}.",
                f"The round goes from {last.before} to {last.after} stitches.",
            )
        return
    if instruction.sections:
        _check_sections(instruction, printed, needles)
        return
    short = printed - needles.count
    if short and _is_of_last_stretch(instruction, printed, needles):
        return
    if not short:
        needles.counting.off = 0
        needles.counting.confirmed.append(len(needles.drafts))
    elif short != needles.counting.off and not _picked_up_to(printed, instruction.place, needles):
        needles.find(
            Finding(
                place=instruction.place,
                message=f"the pattern prints {printed} stitches; the lines so far come to {needles.count}",
                size=needles.size,
                kind="count",
                printed=printed,
                counted=needles.count,
                read=read_as(needles.drafts[needles.line.start :]),
            )
        )
        needles.counting.off = short


_TO_END: Final = regex(r"\bto\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?(?:row|round|rnd))?\s*[(\[][\s=]*", re.I)
"""What a printed number stands right behind that is of the stitches worked there."""


def _is_of_last_stretch(instruction: PrintedCount, printed: int, needles: Needles) -> bool:
    """Return whether a number behind "to end" counts the stitches worked last, beyond a buttonhole.

    "Bind off 2, knit to end (4 sts)." tells how many are knitted after the last buttonhole, as the numbers
    between the holes are told. Source: common practice.
    """
    if len(needles.drafts) != needles.line.start + 1:
        return False
    runs = tuple(flatten(needles.drafts[-1].phrase))
    holes = [at for at, run in enumerate(runs) if at and run.stitch in ("bo", "co")]
    line = next((one for one in needles.project.lines if one.place.line == instruction.place.line), None)
    if not holes or line is None:
        return False
    if sum(STITCHES[run.stitch].leaves * run.times for run in runs[holes[-1] + 1 :]) != printed:
        return False
    before = line.text[: instruction.place.column - line.place.column]
    matches = [*_TO_END.finditer(before)]
    return bool(matches) and matches[-1].end() == len(before)


def _changed_by_rows_above(needles: Needles) -> int | None:
    """Return what the numbered rows right above a line without rows of its own gained; None without any."""
    rows, end = needles.last.written
    here = len(needles.drafts)
    if not rows or end != here or needles.line.start != here:
        return None
    return needles.drafts[-1].after - needles.drafts[-len(rows)].before


def _check_sections(instruction: PrintedCount, printed: int, needles: Needles) -> None:
    """Compare a count printed of a part of the stitches (between markers, each section) with those there.

    "3 gusset sts" are those between its markers, or all stitches where it is on the needles by itself; "20
    sts each for front and back" are half of all stitches, or of two sections between markers.
    """
    if instruction.sections == "gusset" and printed == needles.count:
        return
    if instruction.sections == "pair":
        if needles.count != 2 * printed and sections(needles).count(printed) < 2:
            needles.report(
                instruction.place,
                f"the pattern prints {printed} stitches for each of two parts; the lines come to "
                f"{needles.count} in all.",
            )
        return
    if instruction.sections == "sides":
        _check_sides(instruction.place, printed, needles)
        return
    kind, _, number = instruction.sections.partition(" ")
    if number:
        check = _check_needle if kind == "needle" else _check_after_row
        check(int(number), instruction.place, printed, needles)
        return
    if not needles.markers:
        needles.report(instruction.place, "there are no markers on the needles to count between.")
        return
    found = sections(needles) if instruction.sections == "each" else (between_markers(needles),)
    if None in found:
        needles.report(instruction.place, "nobody can tell which of the markers are meant.")
    elif set(found) != {printed}:
        counts = ", ".join(str(number) for number in dict.fromkeys(found))
        needles.report(
            instruction.place, f"the pattern prints {printed} stitches there; the lines come to {counts}."
        )


def _check_sides(place: Span, printed: int, needles: Needles) -> None:
    """Compare a count printed of each side of a neck: of both at once, or of the one in hand."""
    found = sections(needles) if needles.two_balls else tuple(pieces_ahead(needles))
    divided = any(draft.divide for draft in needles.drafts[needles.section.start :])
    if len(found) != 2 and not (divided or needles.held):
        needles.report(place, "a count of each side is printed, and the stitches are not in two sides.")
    elif set(found if len(found) == 2 else (needles.count,)) != {printed}:
        counts = " and ".join(map(str, dict.fromkeys(found if len(found) == 2 else (needles.count,))))
        told = f"the pattern prints {printed} stitches on each side; the lines come to {counts}."
        needles.report(place, told)


def _check_needle(number: int, place: Span, printed: int, needles: Needles) -> None:
    """Compare a count printed of one needle with what it holds."""
    holds = stitches_on(number, place, needles)
    if holds is not None and holds != printed:
        needles.report(place, f"the pattern prints {printed} stitches on needle {number}; it holds {holds}.")


def stitches_on(number: int, place: Span, needles: Needles) -> int | None:
    """Return how many stitches a needle of a sock holds; None, reported, if there is none of that number."""
    bounds = [0, *needles.ends, needles.count]
    if not needles.ends or not 1 <= number < len(bounds):
        needles.report(place, UNDIVIDED if not needles.ends else f"there is no needle {number}.", SAY_HOW)
        return None
    return bounds[number] - bounds[number - 1]


def _check_after_row(number: int, place: Span, printed: int, needles: Needles) -> None:
    """Compare a count printed of a row further up with the stitches after it.

    Where the rows were worked several times, the count may be of any of these times.
    """
    written = needles.section.numbered.get(number)
    here = needles.drafts[needles.section.start :]
    found = [
        draft.after
        for draft in here
        if draft.chart_round == number or (written is not None and draft.template == written)
    ]
    row = f"{row_word(needles.flat)} {number}"
    if not found:
        needles.report(
            place,
            f"a count is printed after {row}, and no {row} is worked above.",
            f"Write the count behind the line that works {row}.",
        )
    elif printed not in found:
        counts = " and ".join(map(str, dict.fromkeys(found)))
        needles.report(place, f"the pattern prints {printed} stitches after {row}; it leaves {counts}.")


def _picked_up_to(printed: int, place: Span, needles: Needles) -> bool:
    """Accept the printed count if stitches were picked up by the rows of an edge, which is a rule of thumb.

    Returns:
        Whether that was done: the count is near enough, and the knitter is told both.
    """
    templates = [draft.template for draft in needles.drafts[-1:] if draft.template is not None]
    edges = [one for template in templates for one in template.elements if isinstance(one, PickUp)]
    edge = next((element for element in edges if not element.stitches_of_edge), None)
    if edge is None or abs(printed - needles.count) > max(4, printed // 8):
        return False
    last, short = needles.drafts[-1], printed - needles.count
    picked = next(item for item in last.phrase if isinstance(item, Run) and item.stitch == "pu")
    at = last.phrase.index(picked)
    runs = (*last.phrase[:at], Run("pu", picked.times + short, picked.yarn), *last.phrase[at + 1 :])
    ratio = f"{edge.stitches.of(needles.size)} for every {edge.rows.of(needles.size)} rows"
    needles.warn(
        place,
        f"{ratio} comes to {needles.count} stitches, the pattern prints {printed}: taken as {printed}.",
    )
    last.phrase, last.after, needles.count = runs, printed, printed
    return True


def check_promised(counts: tuple[PrintedCount, ...], needles: Needles, *, first: bool) -> None:
    """Compare the counts printed with a round that is written out before it is worked.

    What it gains or loses applies each time, the stitches after it only the first time.
    """
    for count in counts:
        if first or count.change:
            check_count(count, needles)
