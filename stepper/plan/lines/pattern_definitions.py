"""Keep the patterns that a page defines, rows written under a name, for when the name is called. No I/O.

"Trellis pattern (multiple of 6 + 1): Row 1: ... Row 4: ..." is not worked where it is written. Rows under a
name that mentions no repeat and that no line calls are worked like any others.
"""

from __future__ import annotations

import re
from dataclasses import replace

from stepper.plan.drafts import Template
from stepper.plan.fabric.named_patterns import NAMED, key_of
from stepper.plan.lines.line_in_hand import begin_line
from stepper.plan.lines.numbered_rounds import is_numbered, lines_by_number, row_of, side_of, template_of
from stepper.plan.state.needles import Needles
from stepper.project.instructions import Count, Line, Repeated, WorkRounds
from stepper.project.problems import one_of

_NAME = re.compile(
    r"^(?P<name>[^(]*?\b(?:pattern|patt|stitch|st|rib|ribbing|lace|moss|mesh|twill))\.?$", re.I
)
_REPEAT = re.compile(
    r"^(?P<name>[^(,]*?)\s*[,(]\s*(?:a\s+)?(?:mult(?:iple)?\.?\s+of|worked\s+over|over)\b[^()]*\)?$", re.I
)


def defined_name(line: Line, needles: Needles) -> str:
    """Return the name of the pattern that a numbered line and those that go with it define; empty if none."""
    repeat, name = _REPEAT.match(line.label or ""), _NAME.match(line.label or "")
    if not is_numbered(line) or (repeat is None and name is None):
        return ""
    if repeat is not None:
        return key_of(repeat["name"])
    assert name is not None
    key = key_of(name["name"])
    return key if key in _called(needles) else ""


def _called(needles: Needles) -> set[str]:
    """Collect the names of the patterns that the lines of the garment call."""
    sentences = (
        sentence
        for section in needles.project.sections
        for line in section.lines
        for sentence in line.sentences
    )
    return {
        key_of(one.manner.removeprefix(NAMED))
        for one in sentences
        if isinstance(one, WorkRounds) and one.manner.startswith(NAMED)
    }


def define_pattern(name: str, block: list[Line], needles: Needles) -> None:
    """Keep the rows of a block under their name."""
    begin_line(block[0], needles)
    back, back_line = needles.section.back, needles.section.back_line
    order = lines_by_number(block, needles)
    needles.section.back, needles.section.back_line = back, back_line
    made: dict[int, Template] = {}
    for number in sorted(order):
        line, row = order[number], row_of(order[number])
        if isinstance(row, Repeated) and len(row.numbers) == 1 and row.numbers[0] in made:
            made[number] = made[row.numbers[0]]
            continue
        counts = tuple(one for one in line.sentences if isinstance(one, Count))
        made[number] = replace(template_of(row, needles), counts=counts)
    missing = [number for number in range(1, max(order) + 1) if number not in order]
    if missing:
        needles.report(
            block[0].place, f"row {one_of(map(str, missing))} of {name} pattern is not written out."
        )
    first = side_of(1, order)
    needles.patterns[name] = tuple(
        replace(made[number], side=first if number == 1 else "") for number in sorted(made)
    )
