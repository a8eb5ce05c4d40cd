"""What did not fit, size by size, told once for each place as problems of the file. No I/O."""

from __future__ import annotations

from collections.abc import Iterable

from stepper.plan.model import Caution
from stepper.plan.needles import Finding
from stepper.project.model import Project
from stepper.project.problems import Problem, one_of


def problems_of(
    findings: Iterable[Finding], blended: Iterable[Finding], project: Project
) -> tuple[Problem, ...]:
    """Put the findings of all sizes together, in the order of the file.

    Args:
        findings: What was found in every size and in the blend.
        blended: Those of them met on the way that is knitted.
        project: The checked file, for the names of the sizes.
    """
    places: dict[tuple[int, int, str], list[Finding]] = {}
    for finding in findings:
        key = (finding.place.line, finding.place.column, finding.kind)
        places.setdefault(key, []).append(finding)
    in_blend = {id(finding) for finding in blended} if project.switches else set()
    problems = [_problem(group, in_blend, project) for group in places.values()]
    return tuple(sorted(set(problems)))


def _problem(group: list[Finding], in_blend: set[int], project: Project) -> Problem:
    first = group[0]
    sizes = sorted({finding.size for finding in group})
    several = len(project.sizes) > 1
    only_blend = all(id(finding) in in_blend for finding in group)
    head = f"size {project.sizes[first.size]}: " if several else ""
    if only_blend and several:
        labels = one_of(f'"{switch.label}"' for switch in project.switches)
        head = f"size {project.sizes[first.size]}, after the switch at {labels}: "
    message = head + first.message
    hint = first.hint
    if first.kind == "count":
        message += _difference(first, group) + "."
        hint = hint or _likely_cause(first, group, project, only_blend=only_blend)
    others = [project.sizes[size] for size in sizes if size != first.size]
    if others and several:
        message = f"{message.rstrip('.')} (also size {one_of(others)})."
    return first.place.problem(message, hint)


def _numbers(finding: Finding) -> tuple[int, int]:
    words = [int(word) for word in finding.message.replace(",", " ").split() if word.isdigit()]
    return words[0], words[-1]


def _difference(first: Finding, group: list[Finding]) -> str:
    printed, counted = _numbers(first)
    more = counted - printed
    return f", {abs(more)} {'more' if more > 0 else 'fewer'}"


def _likely_cause(first: Finding, group: list[Finding], project: Project, *, only_blend: bool) -> str:
    """Say what most often lies behind such a difference."""
    printed, counted = _numbers(first)
    if only_blend:
        return (
            "The count belongs to the size alone; the blend comes here with other stitches. Switch at a line "
            "that names its own count, such as an increase line."
        )
    sizes = {finding.size for finding in group}
    if len(sizes) == len(project.sizes) and len(sizes) > 1:
        return "It differs in every size, so an instruction before it is left out, doubled or misread."
    others = {finding.size: _numbers(finding) for finding in group}
    if any(counted == other_printed for size, (other_printed, _) in others.items() if size != first.size):
        return "Two numbers of the list seem to be exchanged."
    if sorted(str(printed)) == sorted(str(counted)):
        return "Two digits seem to be exchanged."
    return "Compare this size's numbers in the line with the printed page; the other sizes come out right."


def cautions_of(cautions: Iterable[Finding]) -> tuple[Caution, ...]:
    """Make the cautions of the plan, each told once."""
    seen = {(caution.place.line, caution.message): None for caution in cautions}
    return tuple(Caution(line=line, text=text) for line, text in sorted(seen))
