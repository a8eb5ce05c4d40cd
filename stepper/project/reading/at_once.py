"""Two lines that shape one thing each, told to be worked at the same time by the line above them. No I/O.

"Read on before you begin, as armhole and neck are shaped at the same time" stands above "Armhole: ..." and
"Neck: ...": one after the other they would be another garment. The two become one line, side by side. Where
what is below is not told so that it can be, what announces it stays, and is refused when it is worked.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.instructions import (
    AtIntervals,
    AtOnce,
    EdgeShaping,
    EdgesTogether,
    Line,
    PrintedCount,
    Remark,
    Sentence,
    Together,
    is_only_said,
)
from stepper.project.rewording.work.edge_synonyms import AT_ONCE
from stepper.regex import regex

ANNOUNCED: Final = regex(rf"\b{AT_ONCE}\b", re.I)
"""Words that say that two things told below are worked at the same time."""


def join_at_once(lines: list[Line]) -> list[Line]:
    """Return the lines of a section with each two that are announced to be worked at once as one."""
    made = [_steps_told_apart(line) for line in lines]
    for at in range(len(made) - 1, -1, -1):
        if not _announces(made[at]):
            continue
        joined = _joined(*made[at + 1 : at + 3]) if len(made) > at + 2 else None
        if joined is not None:
            place = made[at].place
            told = replace(made[at], sentences=(Remark(made[at].text, place),))
            made[at : at + 3] = [told, joined]
        elif not any(_side_by_side(line) for line in made[at + 1 : at + 4]):
            made[at] = replace(made[at], sentences=(*made[at].sentences, AtOnce(made[at].place)))
    return made


def _steps_told_apart(line: Line) -> Line:
    """Return a line with what is refused put before two edges of which one has had a step in it just before.

    Of "bind off 4 sts at armhole edge, then 2 sts twice, and at the same time ..." the first step runs beside
    the other edge too.
    """
    made: list[Sentence] = []
    for one in line.sentences:
        before = made[-1] if made else None
        step = before.edge if isinstance(before, EdgeShaping) and before.stitch == "bo" else ""
        beside = one.parts if isinstance(one, EdgesTogether) else ()
        if any(part.stitch == "bo" and part.edge == step for part in beside):
            made.append(AtOnce(one.place))
        made.append(one)
    return line if len(made) == len(line.sentences) else replace(line, sentences=tuple(made))


def _announces(line: Line) -> bool:
    """Return whether a line only says that what is told below is worked at the same time."""
    if any(isinstance(one, AtOnce) for one in line.sentences):
        return True
    return is_only_said(line) and ANNOUNCED.search(line.text) is not None


def _side_by_side(line: Line) -> bool:
    return any(isinstance(one, Together | EdgesTogether) for one in line.sentences)


def _joined(one: Line, other: Line) -> Line | None:
    """Return two lines that shape one thing each as one that shapes both; None if they are not like that."""
    first, *told = one.sentences
    second, *counts = other.sentences
    plain = not one.numbers and not other.numbers and not one.side and not other.side
    alone = not told and all(isinstance(each, PrintedCount) for each in counts)
    if not alone or not plain or one.only != other.only:
        return None
    both: Sentence
    if isinstance(first, EdgeShaping) and isinstance(second, EdgeShaping):
        both = EdgesTogether((first, second), first.place)
    elif isinstance(first, AtIntervals) and isinstance(second, AtIntervals):
        both = Together((first, second), first.place)
    else:
        return None
    return replace(
        one,
        sentences=(both, *counts),
        text=f"{one.text} At the same time: {other.text}",
        said=(*one.said, *other.said),
        assumed=(*one.assumed, *other.assumed),
        marks=(*one.marks, *other.marks),
    )
