"""Which size where: every pair of sizes and every labelled line at which one could give way to the other.

No I/O.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, replace

from stepper.craft.spacing import between, summary
from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan
from stepper.project.instructions import Evenly
from stepper.project.model import Project, Switch


@dataclass(frozen=True, slots=True, kw_only=True)
class Blend:
    """One way to knit the garment: a size, and perhaps another from a labelled line on."""

    size: str
    then: str
    """The size switched to; the same as `size` where none is."""
    label: str
    """The line of the switch; empty where none is."""
    plan: Plan | None
    """The garment so knitted; nothing where the arithmetic does not carry it."""
    before: int
    """Stitches the blended round begins with; 0 without one. Unit: stitches."""
    after: int
    """Stitches it ends with. Unit: stitches."""
    gaps: tuple[tuple[int, int], ...]
    """Plain stitches between its changes and how often, the larger first."""
    why_not: str
    """Why it cannot be knitted; empty where it can."""


def switch_labels(project: Project) -> tuple[str, ...]:
    """List the labelled lines where a switch makes a blended round: evenly spaced ones, labelled once."""
    labels = [line.label for section in project.sections for line in section.lines if line.label]
    once = {label for label, times in Counter(label.lower() for label in labels).items() if times == 1}
    return tuple(
        line.label
        for section in project.sections
        for line in section.lines
        if line.label
        and line.label.lower() in once
        and any(isinstance(sentence, Evenly) for sentence in line.sentences)
    )


def blends(project: Project) -> Iterator[Blend]:
    """Try every size alone, then every pair of sizes at every line of `switch_labels`."""
    for size in range(len(project.sizes)):
        yield tried(project, size, size, "")
    for label in switch_labels(project):
        for size in range(len(project.sizes)):
            for then in range(len(project.sizes)):
                if then != size:
                    yield tried(project, size, then, label)


def tried(project: Project, size: int, then: int, label: str) -> Blend:
    """Work the garment in one size and, from a labelled line on, in another.

    Args:
        project: The checked file.
        size: Place in `sizes`, from 0.
        then: Place of the size switched to.
        label: The line of the switch; empty for none.
    """
    where = project.sections[0].place
    switches = (Switch(label=label, size=then, place=where),) if label else ()
    compiled = compile_plan(replace(project, size=size, switches=switches))
    names = project.sizes[size], project.sizes[then]
    plan = compiled.plan
    if plan is None:
        problem = compiled.problems[0]
        why = f"{problem.message} {problem.hint}".strip()
        return Blend(
            size=names[0], then=names[1], label=label, plan=None, before=0, after=0, gaps=(), why_not=why
        )
    found = next((each for each in plan.rounds if label and each.label == label), None)
    before, after = (found.before, found.after) if found is not None else (0, 0)
    uses = 0 if after >= before else 2
    gaps = (
        summary(between(found.shaping, before, flat=found.flat, uses=uses)) if found and found.shaping else ()
    )
    return Blend(
        size=names[0],
        then=names[1],
        label=label,
        plan=plan,
        before=before,
        after=after,
        gaps=gaps,
        why_not="",
    )
