"""Alterations of needles: a different one in place of a printed one, or no change of needle. No I/O."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from stepper.project.instructions import Line, Needle, Sentence
from stepper.project.keys.alterations import meets
from stepper.project.model import Alteration, Project, RuleKind, Section


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnNeedle:
    """The needle a section begins with if it is not that of its gauge."""

    mm: float | None
    """Unit: mm; None to keep the needle in hand."""
    rule: str
    """The rule, in the knitter's words."""


def own_needles(project: Project) -> dict[str, OwnNeedle]:
    """Return the sections that begin with a needle of the knitter's own, by name."""
    own: dict[str, OwnNeedle] = {}
    for section in project.sections:
        printed = project.fabrics[section.gauge].needle_mm
        for rule in _for_section(project.alterations, section):
            if printed is None:
                continue
            if rule.kind is RuleKind.NEEDLE and rule.instead_of in (None, printed) and rule.mm != printed:
                own[section.name] = OwnNeedle(mm=rule.mm, rule=rule.text)
            elif rule.kind is RuleKind.NO_NEEDLE_CHANGE:
                own[section.name] = OwnNeedle(mm=None, rule=rule.text)
    return own


def with_own_needles(lines: tuple[Line, ...], rule: Alteration) -> tuple[Line, ...]:
    """Change to the knitter's needle where the lines change to a printed one, or not at all."""
    return tuple(_line(line, rule) for line in lines)


def _line(line: Line, rule: Alteration) -> Line:
    sentences = tuple(_sentence(each, rule) for each in line.sentences)
    return line if sentences == line.sentences else replace(line, sentences=sentences)


def _sentence(sentence: Sentence, rule: Alteration) -> Sentence:
    if not isinstance(sentence, Needle):
        return sentence
    if rule.kind is RuleKind.NO_NEEDLE_CHANGE:
        return replace(sentence, own=rule.text, kept=True)
    if rule.mm is None or rule.instead_of not in (None, sentence.mm) or rule.mm == sentence.mm:
        return sentence
    return replace(sentence, mm=rule.mm, own=rule.text, instead_of=sentence.mm)


def _for_section(rules: Iterable[Alteration], section: Section) -> list[Alteration]:
    return [rule for rule in rules if meets(rule, section.name)]
