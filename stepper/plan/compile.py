"""A checked project to the plan of every round.

The pattern is worked once for each printed size, which checks every printed count, and once as it is knitted,
with its switches of size. Only the last becomes the plan. No I/O.
"""

from __future__ import annotations

from dataclasses import dataclass

from stepper.plan.alter import altered, size_in
from stepper.plan.findings import cautions_of, problems_of
from stepper.plan.finish import finish
from stepper.plan.model import Plan
from stepper.plan.needles import Finding, Needles, Template
from stepper.plan.rounds import work_template
from stepper.plan.working import work
from stepper.project.instructions import (
    AtIntervals,
    ChartWork,
    Count,
    Labelled,
    Line,
    Phrase,
    Rounds,
    Sentence,
    Worked,
)
from stepper.project.model import Project, Section
from stepper.project.problems import Problem


@dataclass(frozen=True, slots=True, kw_only=True)
class Compiled:
    """The outcome: a plan, or the problems that prevent one."""

    plan: Plan | None
    problems: tuple[Problem, ...]


def compile_plan(project: Project) -> Compiled:
    """Work out every round of the garment.

    Args:
        project: The checked file.

    Returns:
        The plan of the garment as it is knitted; or every place where the arithmetic of some printed size, or
        of the blend, does not come out.
    """
    knitted = _work_garment(project, project.size, knitted=True)
    findings = list(knitted.findings)
    for size in range(len(project.sizes)):
        if project.switches or size != project.size:
            findings += _work_garment(project, size, knitted=False).findings
    problems = problems_of(findings, knitted.findings, project)
    if problems:
        return Compiled(plan=None, problems=problems)
    if not knitted.drafts:
        where = project.sections[0].place
        return Compiled(plan=None, problems=(where.problem("the pattern has no rounds to knit."),))
    plan = finish(knitted, project, cautions_of(knitted.cautions))
    return Compiled(plan=plan, problems=())


def _work_garment(project: Project, size: int, *, knitted: bool) -> Needles:
    """Work all sections in one size, or as they are knitted, with the switches of size."""
    needles = Needles(project=project, size=size, checking=not knitted)
    switches = {switch.label.lower(): switch for switch in project.switches} if knitted else {}
    own = altered(project) if knitted else None
    if own is not None:
        needles.marks = own.marks
        for place, why in own.unfit:
            needles.report(place, why, "Name a section with such a line, or write it as - note: …")
    for section in own.project.sections if own is not None else project.sections:
        _begin(section, needles)
        chosen = size_in(project, section.name) if knitted else None
        for block in _blocks(section.lines):
            switch = switches.get((block[0].label or "").lower())
            size = switch.size if switch is not None else size
            needles.size = chosen[0] if chosen is not None else size
            needles.section_altered = (chosen[1],) if chosen is not None else ()
            needles.reshape = switch is not None and switch.reshape
            _work_block(block, section, needles)
    return needles


def _begin(section: Section, needles: Needles) -> None:
    """Take up a section: its gauge, its needle, its yarn."""
    project = needles.project
    needles.section = section.name
    needles.section_start = len(needles.drafts)
    needles.fabric = project.fabrics.get(section.gauge)
    needles.yarn = section.yarn
    needles.pattern = ()
    needles.numbered = {}
    needles.named = {}
    needles.label = None
    if needles.count == 0:
        needles.flat = False
        needles.side = "RS"
        needles.markers = ()
    fabric_needle = needles.fabric.needle_mm if needles.fabric is not None else None
    if fabric_needle is not None:
        needles.needle_mm = fabric_needle


def _blocks(lines: tuple[Line, ...]) -> list[list[Line]]:
    """Put lines that number their rounds together until the numbering begins anew."""
    blocks: list[list[Line]] = []
    for line in lines:
        joins = (
            line.numbers
            and blocks
            and blocks[-1][-1].numbers
            and not line.label
            and not _extra(blocks[-1][-1])
            and not set(line.numbers) & {number for other in blocks[-1] for number in other.numbers}
        )
        if joins:
            blocks[-1].append(line)
        else:
            blocks.append([line])
    return blocks


def _extra(line: Line) -> tuple[Sentence, ...]:
    """Give what a numbered line says after its round."""
    rest = [sentence for sentence in line.sentences[1:] if not isinstance(sentence, Count)]
    return tuple(rest)


def _work_block(block: list[Line], section: Section, needles: Needles) -> None:
    first = block[0]
    if first.numbers:
        _work_numbered(block, needles)
        return
    _start_line(first, needles)
    if first.rows or first.side:
        needles.flat = True
        needles.side = first.side or needles.side
    name = (first.label or "").lower()
    if _is_named_round(first):
        needles.named[name] = _template(first.sentences[0])
        if _only_defined(name, section):
            needles.label = None
            for sentence in first.sentences[1:]:
                if not isinstance(sentence, Count):
                    work(sentence, needles)
            return
    for sentence in first.sentences:
        work(sentence, needles)


def _start_line(line: Line, needles: Needles) -> None:
    needles.line = line.place.line
    needles.line_start = len(needles.drafts)
    needles.altered = (*needles.section_altered, *needles.marks.get(line.place.line, ()))
    needles.label = line.label or needles.label


def _is_named_round(line: Line) -> bool:
    """Say whether a line gives a round a name: `Dec round: k1, k2tog, …`."""
    last = (line.label or "").lower().split()[-1:]
    return bool(last and last[0] in ("round", "rnd", "row")) and isinstance(line.sentences[0], Phrase)


def _only_defined(name: str, section: Section) -> bool:
    """Say whether a named round is worked only where a later sentence says so.

    "Work dec round every 8th round 6 times" counts all six; "rep dec round …" comes on top of the once it is
    worked where it is written.
    """
    for line in section.lines:
        for sentence in line.sentences:
            if isinstance(sentence, Labelled) and sentence.label == name:
                return True
            if isinstance(sentence, AtIntervals) and sentence.label == name:
                more = any(leg.more for leg in sentence.legs)
                return not (sentence.again or more)
    return False


def _template(sentence: Sentence) -> Template:
    """Make a repeatable round of the first sentence of a numbered or named line."""
    if isinstance(sentence, Phrase):
        return Template(sentence.elements, sentence.place)
    if isinstance(sentence, ChartWork):
        return Template((), sentence.place, chart=sentence.name, chart_round=sentence.first or 1)
    place = sentence.place
    return Template((), place, stockinette=True)


def _work_numbered(block: list[Line], needles: Needles) -> None:
    """Work `Rnd 1: …`, `Rnds 2-4: …` in the order of their numbers, once."""
    order: dict[int, Line] = {}
    for line in block:
        for number in line.numbers:
            order[number] = line
    if min(order) == 1:
        needles.numbered = {}
    begin = len(needles.drafts)
    if block[0].label:
        needles.label = block[0].label
    done: set[int] = set()
    for number in sorted(order):
        line = order[number]
        _start_numbered(line, needles)
        _work_number(number, line, needles, last=number == max(line.numbers))
        done.add(number)
    needles.pattern = tuple(
        needles.numbered[number] for number in sorted(order) if number in needles.numbered
    )
    needles.line_start = begin
    for sentence in _extra(block[-1]):
        work(sentence, needles)


def _start_numbered(line: Line, needles: Needles) -> None:
    needles.line = line.place.line
    needles.line_start = len(needles.drafts)
    needles.altered = (*needles.section_altered, *needles.marks.get(line.place.line, ()))
    if line.rows:
        needles.flat = True
    if line.side:
        needles.flat = True
        if len(line.numbers) == 1:
            needles.side = line.side


def _work_number(number: int, line: Line, needles: Needles, *, last: bool) -> None:
    first = line.sentences[0]
    if isinstance(first, Worked) and isinstance(first.duration, Rounds):
        needles.report(
            first.place,
            "a numbered line gives one round, not a number of rounds.",
            "Write what each of the rounds is, for example Rnds 1-4: Knit.",
        )
        return
    template = _template(first)
    if not isinstance(first, Phrase | ChartWork):
        work(first, needles)
        return
    needles.numbered[number] = template
    if needles.count == 0:
        needles.report(first.place, "there are no stitches on the needles.", "Cast on first.")
        return
    work_template(template, needles)
    if last:
        for sentence in line.sentences[1:]:
            if isinstance(sentence, Count):
                work(sentence, needles)


def findings_of(project: Project, size: int) -> tuple[Finding, ...]:
    """Give what does not fit when the pattern is worked in one printed size (its place, from 0)."""
    return tuple(_work_garment(project, size, knitted=False).findings)
