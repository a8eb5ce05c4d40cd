"""Turn what did not fit, size by size, into problems of the file, one for each place. No I/O."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace

from stepper.plan.drafts import Finding
from stepper.plan.model import Caution
from stepper.project.model import Project
from stepper.project.problems import Problem, one_of

Right = Callable[[Finding], str]
"""Says which number would bring a differing count right."""
_TOLD_APART = ("count", "length")
"""Kinds that are told besides what else does not fit at a place; of each, and of the rest, one is told."""


def problems_of(
    findings: Iterable[Finding],
    blended: Iterable[Finding],
    project: Project,
    right: Right | None = None,
    unmet: str = "",
) -> tuple[Problem, ...]:
    """Combine the findings of all sizes, in the order of the file.

    Args:
        findings: What was found in every size and in the blend.
        blended: Those found in the garment as knitted.
        project: The checked file, for the names of the sizes.
        right: Says which number would bring a differing count right; None to leave that out.
        unmet: Why the line of a switch cannot carry it, and which lines can; empty where it can.
    """
    places: dict[tuple[int, int, str], list[Finding]] = {}
    for finding in findings:
        apart = finding.kind if finding.kind in _TOLD_APART else ""
        key = (finding.place.line, finding.place.column, apart)
        places.setdefault(key, []).append(finding)
    in_blend = {id(finding) for finding in blended} if project.switches else set()
    problems = [_problem(group, in_blend, project, right, unmet) for group in places.values()]
    return tuple(sorted(set(problems)))


def _problem(
    group: list[Finding], in_blend: set[int], project: Project, right: Right | None, unmet: str
) -> Problem:
    first = group[0]
    sizes = sorted({finding.size for finding in group})
    several = len(project.sizes) > 1 and project.alone is None
    only_blend = all(id(finding) in in_blend for finding in group)
    head = f"size {project.sizes[first.size]}: " if several else ""
    if only_blend and several:
        labels = one_of(f'"{switch.label}"' for switch in project.switches)
        head = f"size {project.sizes[first.size]}, after the switch at {labels}: "
    message = head + first.message
    hint = first.hint
    if first.kind == "count":
        message += _difference(first) + "."
        hint = hint or _taught(first, group, project, right, only_blend=only_blend)
    if only_blend and unmet:
        # To knit the rest would put the stitches of one size into the places of another.
        hint = unmet if first.kind == "left over" else f"{hint}\n{unmet}".strip()
    others = [project.sizes[size] for size in sizes if size != first.size]
    if others and several:
        message = f"{message.rstrip('.')} (also size {one_of(others)})."
    named = (project.sizes[first.size], *others) if several and not only_blend else ()
    return replace(first.place.problem(message, hint), kind=first.kind, sizes=named)


def _difference(first: Finding) -> str:
    more = first.counted - first.printed
    return f", {abs(more)} {'more' if more > 0 else 'fewer'}"


def _taught(
    first: Finding, group: list[Finding], project: Project, right: Right | None, *, only_blend: bool
) -> str:
    """Say how the line was read, what would bring the count right, and what the usual cause is."""
    told = [f"Read as: {first.read}."] if first.read else []
    found = right(first) if right is not None and not only_blend else ""
    told += [found] if found else []
    return "\n".join([*told, _likely_cause(first, group, project, only_blend=only_blend)])


def _likely_cause(first: Finding, group: list[Finding], project: Project, *, only_blend: bool) -> str:
    """Name the usual cause of such a difference."""
    if only_blend:
        return (
            "The count belongs to the size alone; the blend comes here with other stitches. Switch at a line "
            "that spreads a change evenly, such as an increase line."
        )
    sizes = {finding.size for finding in group}
    if len(sizes) == len(project.sizes) and len(sizes) > 1:
        return "It differs in every size, so an instruction before it is left out, doubled or misread."
    others = {finding.size: finding.printed for finding in group}
    if any(first.counted == printed for size, printed in others.items() if size != first.size):
        return "Two numbers of the list seem to be exchanged."
    if sorted(str(first.printed)) == sorted(str(first.counted)):
        return "Two digits seem to be exchanged."
    if len(project.sizes) == 1 or project.alone is not None:
        return "Compare the numbers of the line with the printed page."
    return "Compare this size's numbers in the line with the printed page; the other sizes come out right."


def cautions_of(cautions: Iterable[Finding]) -> tuple[Caution, ...]:
    """Make the cautions of the plan, each told once."""
    seen = {(caution.place.line, caution.message): None for caution in cautions}
    return tuple(Caution(line=line, text=text) for line, text in sorted(seen))
