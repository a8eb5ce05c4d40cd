"""Keep the patterns that a page defines, rows written under a name, for when the name is called. No I/O.

"Trellis pattern (multiple of 6 + 1): Row 1: ... Row 4: ..." is not worked where it is written. Rows under a
name that mentions no repeat and that no line calls are worked like any others.
"""

from __future__ import annotations

import re
from dataclasses import replace

from stepper.plan.drafts import Template
from stepper.plan.fabric.begun_charts import chart_parts_in
from stepper.plan.fabric.named_patterns import NAMED
from stepper.plan.lines.line_in_hand import begin_line
from stepper.plan.lines.numbered_rounds import (
    lead_of,
    lines_by_number,
    row_of,
    said_after_round,
    side_of,
    template_of,
)
from stepper.plan.state.needle_and_yarn import yarn_key
from stepper.plan.state.needles import Needles
from stepper.project.duration import Times
from stepper.project.instructions import (
    BreakYarn,
    Forms,
    Line,
    Needle,
    Phrase,
    PrintedCount,
    Repeated,
    Sentence,
    TurnMethod,
    WithYarn,
    WorkRounds,
)
from stepper.project.pattern_heads import (
    ANY_WIDTH,
    FRONT_ENDS,
    NAME_ENDS,
    NUMBERED,
    OF_GARMENT,
    WIDTH,
    key_of,
)
from stepper.project.problems import one_of
from stepper.project.stitchwork import Work, every_element
from stepper.regex import regex

_NAME = regex(rf"^[^(,]*?\b{NAME_ENDS}{NUMBERED}\.?$", re.I)
_FRONT_NAME = regex(rf"^[^(,]*?\b{FRONT_ENDS}{NUMBERED}\.?$", re.I)
_WITH_WIDTH = regex(rf"^(?P<name>[^(,]*?)\s*[,(]\s*(?:(?P<any>{ANY_WIDTH})|{WIDTH})$", re.I)


def defined_name(line: Line, needles: Needles) -> str:
    """Return the name of the pattern that a numbered line and those that go with it define; empty if none.

    A name with the stitches it needs is one if it ends as such names do ("Ladder lace, 6 sts") or fits many
    counts; any other, "Ladder (6 sts)", if a line calls it. "Heel flap (28 sts)" is a part of the piece.
    """
    label = line.label or ""
    wide = _WITH_WIDTH.match(label)
    name = wide["name"] if wide is not None else label
    bare = needles.count == 0 and not needles.counting.lost
    named = _NAME.match(name) or (_FRONT_NAME.match(name) if bare else None)
    if wide is not None and (wide["any"] or named):
        return key_of(name)
    if not named and (wide is None or OF_GARMENT.search(name)):
        return ""
    key = key_of(name)
    return key if key and _is_called(key, needles) else ""


def told_in_a_row(line: Line, needles: Needles) -> str:
    """Return the name of the pattern that a line tells in its only row: "Rib pattern: *K2, p2; rep from *".

    Such a line is worked like any other, under its name, unless that says the many counts which the pattern
    fits, or nothing is on the needles to work it on.
    """
    label = line.label or ""
    wide = _WITH_WIDTH.match(label)
    name = wide["name"] if wide is not None else label
    if line.times is not None or line.side or not isinstance(next(iter(line.sentences), None), Phrase):
        return ""
    if wide is not None and wide["any"]:
        return key_of(name)
    bare = needles.count == 0 and not needles.counting.lost
    return key_of(name) if bare and _NAME.match(name) and not OF_GARMENT.search(name) else ""


def define_row(name: str, line: Line, needles: Needles) -> None:
    """Keep the only row of a pattern under its name."""
    counts = tuple(one for one in line.sentences if isinstance(one, PrintedCount))
    needles.patterns[name] = (replace(template_of(line.sentences[0], needles), counts=counts),)
    if needles.count or not _is_called(name, needles):
        _tell_kept(name, line, needles)


def _tell_kept(name: str, line: Line, needles: Needles) -> None:
    called = _is_called(name, needles)
    told = "kept for where a line calls them" if called else "kept, and no line calls them by that name"
    needles.warn(line.place, f"the rows of {name} pattern are not worked here: they are {told}.")


def _called(needles: Needles) -> set[str]:
    """Collect the names of the patterns that the lines of the garment call."""
    called: set[str] = set()
    for one in (one for line in needles.project.lines for one in line.sentences):
        if isinstance(one, WorkRounds) and one.manner.startswith(NAMED):
            called.add(key_of(one.manner.removeprefix(NAMED)))
        if isinstance(one, WorkRounds) and one.manner.startswith("rib "):
            called.add("{}x{} rib".format(*one.manner.split()[1:]))
        if isinstance(one, Repeated):
            called.add(key_of(one.pattern))
        if isinstance(one, Phrase):
            called.update(key_of(part.name) for part in chart_parts_in(one.elements))
    return called


def _is_called(key: str, needles: Needles) -> bool:
    """Return whether a line calls a pattern by its name, or by how its name ends: "row 2 of panel"."""
    return any(key == name or (name and key.endswith(f" {name}")) for name in _called(needles))


def define_pattern(name: str, block: list[Line], needles: Needles) -> None:
    """Keep the rows of a block under their name."""
    begin_line(block[0], needles)
    back, back_line = needles.section.back, needles.section.back_line
    order = lines_by_number(block, needles)
    needles.section.back, needles.section.back_line = back, back_line
    made: dict[int, Template] = {}
    yarn = ""
    for number in sorted(order):
        line, row = order[number], row_of(order[number])
        own = _yarn_of(line, needles)
        yarn = own or yarn
        _refuse_orders(line, name, needles)
        repeated = _row_repeated(number, line, row, needles)
        if repeated in made:
            made[number] = replace(made[repeated], yarn=own or made[repeated].yarn)
            continue
        counts = tuple(one for one in line.sentences if isinstance(one, PrintedCount))
        made[number] = replace(_numbered(template_of(row, needles), number), counts=counts, yarn=yarn)
    if made and yarn and not made[min(made)].yarn and not _is_in_colours(row_of(order[min(order)])):
        told = f"row {min(made)} of {name} pattern names no yarn, and a later one does."
        needles.report(block[0].place, told, f'Write its yarn, too: "Row {min(made)}: With MC, …".')
    missing = [number for number in range(1, max(order) + 1) if number not in order]
    if missing:
        needles.report(
            block[0].place, f"row {one_of(map(str, missing))} of {name} pattern is not written out."
        )
    if needles.count or not _is_called(name, needles):
        _tell_kept(name, block[0], needles)
    first = side_of(1, order)
    needles.patterns[name] = tuple(
        replace(made[number], side=first if number == 1 else "") for number in sorted(made)
    )


def _is_in_colours(row: Sentence) -> bool:
    """Return whether a row names the yarns of its stitches one by one: "1 MC, 3 A"."""
    elements = row.elements if isinstance(row, Phrase) else ()
    return any(isinstance(one, Work) and one.yarn is not None for one in every_element(elements))


def _yarn_of(line: Line, needles: Needles) -> str:
    """Return the key of the yarn in which a line works its row; empty if it names none."""
    named = [one for one in lead_of(line) if isinstance(one, WithYarn)]
    return (yarn_key(named[-1].yarn, named[-1].place, needles) or "") if named else ""


def _refuse_orders(line: Line, name: str, needles: Needles) -> None:
    """Report what a row that is kept orders besides its stitches and its yarn: each time, or once."""
    kept = (*(one for one in lead_of(line) if not isinstance(one, WithYarn)), *said_after_round(line))
    for order in (one for one in kept if isinstance(one, Needle | BreakYarn | WithYarn | TurnMethod)):
        told = f"a row of {name} pattern orders more than its stitches; whether each time, is not known."
        needles.report(order.place, told, "Write it where the pattern is worked.")


def _numbered(template: Template, number: int) -> Template:
    """Return a row that says which of the pattern it is, if the same words of the page stand for several."""
    if template.own is None or not template.own.several:
        return template
    return replace(template, own=replace(template.own, text=f"row {number}: {template.own.text}"))


def _row_repeated(number: int, line: Line, row: object, needles: Needles) -> int:
    """Return which row another repeats, from 1: row 7 of "Rows 5-8: as rows 1-4" is row 3; 0 for none."""
    if not isinstance(row, Repeated) or not row.numbers or len(line.numbers) % len(row.numbers):
        return 0
    times = len(line.numbers) // len(row.numbers)
    if not row.implied:
        lasts = row.duration
        if not isinstance(lasts, Times) or lasts.number.of(needles.size) != times:
            return 0
    return row.numbers[line.numbers.index(number) % len(row.numbers)]


def closes_definition(line: Line, needles: Needles) -> bool:
    """Return whether a line only says that the rows just defined are the pattern: "Rep rows 1-4 for pattern."

    Its own name for them, as in "These 4 rows form trellis pattern", is kept beside that of the heading.
    """
    rows = needles.patterns.get(needles.section.defined, ())
    if line.label or len(line.sentences) != 1:
        return False
    (said,) = line.sentences
    if isinstance(said, Forms):
        fits = said.rounds is None or said.rounds.of(needles.size) == len(rows)
        if fits and key_of(said.name):
            needles.patterns.setdefault(key_of(said.name), rows)
        return fits
    if not isinstance(said, Repeated) or said.pattern:
        return False
    lasts = said.duration
    over = isinstance(lasts, Times) and (said.implied or (lasts.more and lasts.number.of(needles.size) == 0))
    named = said.numbers or range(1, (said.last.of(needles.size) if said.last else len(rows)) + 1)
    return over and tuple(named) == tuple(range(1, len(rows) + 1))
