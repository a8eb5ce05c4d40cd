"""Alterations of needles: a different one in place of a printed one, or no change of needle. No I/O."""

from __future__ import annotations

from dataclasses import replace

from stepper.project.instructions import Needle, Sentence
from stepper.project.keys.alterations import meets
from stepper.project.model import Alteration, Project, RuleKind
from stepper.records import dataclass


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
        for rule in project.alterations:
            if printed is None or not meets(rule, section.name):
                continue
            if rule.kind is RuleKind.NEEDLE and rule.instead_of in (None, printed) and rule.mm != printed:
                own[section.name] = OwnNeedle(mm=rule.mm, rule=rule.text)
            elif rule.kind is RuleKind.NO_NEEDLE_CHANGE:
                own[section.name] = OwnNeedle(mm=None, rule=rule.text)
    return own


def with_own_needle(sentence: Sentence, rule: Alteration) -> Sentence:
    """Change to the knitter's needle where a sentence changes to a printed one, or not at all."""
    if not isinstance(sentence, Needle):
        return sentence
    if rule.kind is RuleKind.NO_NEEDLE_CHANGE:
        return replace(sentence, own=rule.text, kept=True)
    if rule.mm is None or rule.instead_of not in (None, sentence.mm) or rule.mm == sentence.mm:
        return sentence
    return replace(sentence, mm=rule.mm, own=rule.text, instead_of=sentence.mm)
