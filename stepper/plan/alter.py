"""Apply the knitter's alterations to the pattern, marking each where it changes something. No I/O.

Only the garment as it is knitted is altered; the printed sizes are checked as the pattern prints them.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from stepper.craft.gauge import half_up
from stepper.plan.alter_needles import OwnNeedle, own_needles, with_own_needle
from stepper.plan.alter_stitches import (
    chart_without_bobbles,
    with_bind_off,
    with_count,
    with_rib,
    without_bobbles,
)
from stepper.project.duration import Rounds, UntilLength
from stepper.project.instructions import AtIntervals, EdgeShaping, Evenly, Line, Sentence, WorkRounds
from stepper.project.keys.alterations import meets
from stepper.project.model import Alteration, Project, RuleKind, Section
from stepper.project.problems import Span
from stepper.project.sizes import find_size
from stepper.project.stitchwork import Numbers, PrintedLength
from stepper.records import dataclass

ALTERED: Final = ", altered"
"""Ending of a length that is no longer the printed one."""

PLAIN_CHART: Final = " without bobbles"
"""Ending of the key of a chart that was made from another one."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Altered:
    """A project as it is knitted."""

    project: Project
    marks: dict[int, tuple[str, ...]]
    """Line of the file to what is altered in it, in the knitter's words."""
    unfit: tuple[tuple[Span, str], ...]
    """Rules that found nothing to alter: where they are written, and why."""
    needles: dict[str, OwnNeedle]
    """Sections that begin with a needle of the knitter's own."""


def apply_rules(project: Project) -> Altered:
    """Apply the rules that change lines.

    A rule about length, count, bind-off or rib that finds nothing to alter is reported; one about bobbles or
    needles may find none, because it is often written just in case.
    """
    marks: dict[int, tuple[str, ...]] = {}
    unfit = []
    for rule in project.alterations:
        charts: dict[str, str] = {}
        if rule.kind is RuleKind.NO_BOBBLES:
            project, charts = _with_plain_charts(project)
        touched = 0
        sections = list(project.sections)
        for at, section in enumerate(sections):
            if not meets(rule, section.name):
                continue
            if rule.kind is RuleKind.LENGTH:
                lines = _resized(rule, section, project)
            else:
                lines = tuple(_altered(line, rule, charts) for line in section.lines)
            for old, new in zip(section.lines, lines, strict=True):
                if old is not new:
                    touched += 1
                    if rule.kind not in _NEEDLES:
                        marks[old.place.line] = (*marks.get(old.place.line, ()), rule.text)
            sections[at] = replace(section, lines=lines)
        project = replace(project, sections=tuple(sections))
        if not touched and rule.kind in _MUST_FIND:
            unfit.append((rule.place, f'"{rule.text}" finds nothing to alter there.'))
    return Altered(project=project, marks=marks, unfit=tuple(unfit), needles=own_needles(project))


def _with_plain_charts(project: Project) -> tuple[Project, dict[str, str]]:
    """Add a chart without bobbles beside each that has some; return also its key, by the name of that one."""
    names, charts = {}, dict(project.charts)
    for name, chart in project.charts.items():
        plain = chart_without_bobbles(chart)
        if plain is not None:
            # It keeps its printed name; only its key in the file differs.
            charts[f"{name}{PLAIN_CHART}"] = plain
            names[name.lower()] = f"{name}{PLAIN_CHART}"
    return (replace(project, charts=charts) if names else project), names


def size_in(project: Project, section: str) -> tuple[int, str] | None:
    """Return the size of a section that has one of its own, and the rule; None if it has none."""
    for rule in project.alterations:
        if rule.kind is RuleKind.SIZE and meets(rule, section):
            size = find_size(rule.words, project.sizes)
            if size is not None:
                return size, rule.text
    return None


def _altered(line: Line, rule: Alteration, charts: dict[str, str]) -> Line:
    """Return a line as a rule has it; the very line if the rule does not change it."""
    sentences = tuple(_altered_sentence(each, line, rule, charts) for each in line.sentences)
    return line if sentences == line.sentences else replace(line, sentences=sentences)


def _altered_sentence(each: Sentence, line: Line, rule: Alteration, charts: dict[str, str]) -> Sentence:
    match rule.kind:
        case RuleKind.BIND_OFF:
            return with_bind_off(each, rule)
        case RuleKind.RIB:
            return with_rib(each, rule, line.side)
        case RuleKind.NO_BOBBLES:
            return without_bobbles(each, charts)
        case RuleKind.NEEDLE | RuleKind.NO_NEEDLE_CHANGE:
            return with_own_needle(each, rule)
        case RuleKind.COUNT:
            meant = (line.label or "").casefold() == rule.words.casefold()
            spreads = any(isinstance(other, Evenly) for other in line.sentences)
            return with_count(each, rule.stitches) if meant and spreads else each
        case _:
            return each


def _resized(rule: Alteration, section: Section, project: Project) -> tuple[Line, ...]:
    """Change the longest plain stretch of a section, worked to a length if it has one."""
    found: list[tuple[bool, float, int, int]] = []
    for row, line in enumerate(section.lines):
        for column, sentence in enumerate(line.sentences):
            if isinstance(sentence, AtIntervals | EdgeShaping):
                ends = (leg.upto.length for leg in sentence.legs if leg.upto is not None)
                # Longer, it would be shaped more often: where this is the longest, nothing is altered.
                found += [(True, max(length.values), row, column) for length in ends]
                continue
            if not isinstance(sentence, WorkRounds):
                continue
            duration = sentence.duration
            if isinstance(duration, UntilLength):
                found.append((True, max(duration.length.values), row, column))
            elif isinstance(duration, Rounds):
                found.append((False, max(duration.number.values), row, column))
    if not found:
        return section.lines
    _, _, row, column = max(found, key=lambda each: each[:2])
    line = section.lines[row]
    sentence = line.sentences[column]
    round_mm = project.fabrics[section.gauge].gauge.round_mm
    new = _longer(sentence, rule, round_mm) if isinstance(sentence, WorkRounds) else None
    if new is None:
        return section.lines
    sentences = (*line.sentences[:column], new, *line.sentences[column + 1 :])
    return (*section.lines[:row], replace(line, sentences=sentences), *section.lines[row + 1 :])


def _longer(sentence: WorkRounds, rule: Alteration, round_mm: float) -> WorkRounds | None:
    """Make a stretch longer or shorter; None if nothing of it would be left."""
    duration = sentence.duration
    if isinstance(duration, UntilLength):
        by = rule.mm if rule.mm is not None else rule.rounds * round_mm
        lengths = tuple(value + by for value in duration.length.values)
        if min(lengths) <= 0:
            return None
        length = PrintedLength(lengths, duration.length.place, duration.length.printed + ALTERED)
        return replace(sentence, duration=replace(duration, length=length))
    if isinstance(duration, Rounds):
        more = rule.rounds if rule.mm is None else half_up(rule.mm / round_mm)
        numbers = tuple(value + more for value in duration.number.values)
        if min(numbers) < 1:
            return None
        return replace(sentence, duration=replace(duration, number=Numbers(numbers, duration.number.place)))
    return None


_NEEDLES: Final = (RuleKind.NEEDLE, RuleKind.NO_NEEDLE_CHANGE)
# These mark the rounds worked on the needle, not the line that changes it.
_MUST_FIND: Final = (RuleKind.LENGTH, RuleKind.BIND_OFF, RuleKind.RIB, RuleKind.COUNT)
