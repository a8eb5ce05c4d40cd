"""The knitter's alterations applied to the pattern, each marked where it changes something. No I/O.

Only the garment as it is knitted is altered; the printed sizes are checked as the pattern prints them.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from stepper.craft.gauge import half_up
from stepper.project.alterations import meets
from stepper.project.instructions import (
    BindOff,
    Length,
    Line,
    Numbers,
    Phrase,
    Rounds,
    Sentence,
    Several,
    UntilLength,
    Work,
    Worked,
)
from stepper.project.model import Alteration, Project, Section
from stepper.project.problems import Place
from stepper.project.sizes import find_size


@dataclass(frozen=True, slots=True, kw_only=True)
class Altered:
    """A project as it is knitted."""

    project: Project
    marks: dict[int, tuple[str, ...]]
    """Line of the file to what is altered in it, in the knitter's words."""
    unfit: tuple[tuple[Place, str], ...]
    """Rules that found nothing to alter: where they stand and why."""


def altered(project: Project) -> Altered:
    """Apply the rules that change lines: longer or shorter, another bind-off, another rib."""
    marks: dict[int, tuple[str, ...]] = {}
    unfit = []
    sections = list(project.sections)
    for rule in project.alterations:
        if rule.kind not in ("length", "bind-off", "rib"):
            continue
        touched = 0
        for at, section in enumerate(sections):
            if not meets(rule, section.name):
                continue
            lines = _lines(rule, section, project)
            for old, new in zip(section.lines, lines, strict=True):
                if old is not new:
                    touched += 1
                    marks[old.place.line] = (*marks.get(old.place.line, ()), rule.text)
            sections[at] = replace(section, lines=lines)
        if not touched:
            unfit.append((rule.place, f'"{rule.text}" finds nothing to alter there.'))
    return Altered(project=replace(project, sections=tuple(sections)), marks=marks, unfit=tuple(unfit))


def size_in(project: Project, section: str) -> tuple[int, str] | None:
    """Give the size of a section that has one of its own, and the rule; nothing where none has."""
    for rule in project.alterations:
        if rule.kind == "size" and meets(rule, section):
            size = find_size(rule.words, project.sizes)
            if size is not None:
                return size, rule.text
    return None


def _lines(rule: Alteration, section: Section, project: Project) -> tuple[Line, ...]:
    if rule.kind == "length":
        return _resized(rule, section, project)
    return tuple(_replaced(line, rule) for line in section.lines)


def _replaced(line: Line, rule: Alteration) -> Line:
    sentences: tuple[Sentence, ...] = tuple(_sentence(each, rule) for each in line.sentences)
    return line if sentences == line.sentences else replace(line, sentences=sentences)


def _sentence(sentence: Sentence, rule: Alteration) -> Sentence:
    if rule.kind == "bind-off" and isinstance(sentence, BindOff):
        return replace(sentence, manner=rule.words)
    if rule.kind == "rib" and isinstance(sentence, Phrase) and len(sentence.elements) == 1:
        (group,) = sentence.elements
        if isinstance(group, Several) and rule.rib_printed in ((), _ribbing(group)) and _ribbing(group):
            place = group.place
            works = tuple(Work(code, Numbers((times,), place), None, place) for code, times in rule.rib)
            return replace(sentence, elements=(replace(group, elements=works),))
    return sentence


def _ribbing(group: Several) -> tuple[tuple[str, int], ...]:
    """Give the stitches of a group that is a rib; nothing where it is none."""
    found = tuple(
        (one.stitch, one.times.values[0])
        for one in group.elements
        if isinstance(one, Work) and one.stitch in ("k", "p") and len(one.times.values) == 1
    )
    whole = len(found) == len(group.elements) and {code for code, _ in found} == {"k", "p"}
    return found if whole else ()


def _resized(rule: Alteration, section: Section, project: Project) -> tuple[Line, ...]:
    """Change the longest plain stretch of a section, worked to a length if it has one."""
    found: list[tuple[bool, float, int, int]] = []
    for row, line in enumerate(section.lines):
        for column, sentence in enumerate(line.sentences):
            if not isinstance(sentence, Worked):
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
    fabric = project.fabrics.get(section.gauge)
    round_mm = fabric.gauge.round_mm if fabric is not None else 0.0
    new = _longer(sentence, rule, round_mm) if isinstance(sentence, Worked) else None
    if new is None:
        return section.lines
    sentences = (*line.sentences[:column], new, *line.sentences[column + 1 :])
    return (*section.lines[:row], replace(line, sentences=sentences), *section.lines[row + 1 :])


def _longer(sentence: Worked, rule: Alteration, round_mm: float) -> Worked | None:
    """Make a stretch longer or shorter; nothing where that leaves nothing of it."""
    if not round_mm:
        return None
    duration = sentence.duration
    if isinstance(duration, UntilLength):
        by = rule.mm if rule.mm is not None else rule.rounds * round_mm
        lengths = tuple(value + by for value in duration.length.values)
        if min(lengths) <= 0:
            return None
        length = Length(lengths, duration.length.place, f"{duration.length.printed}, altered")
        return replace(sentence, duration=replace(duration, length=length))
    if isinstance(duration, Rounds):
        more = rule.rounds if rule.mm is None else half_up(rule.mm / round_mm)
        numbers = tuple(value + more for value in duration.number.values)
        if min(numbers) < 1:
            return None
        return replace(sentence, duration=replace(duration, number=Numbers(numbers, duration.number.place)))
    return None
