"""Which size where: every pair of sizes and every labelled line at which one could give way to the other.

The printed sizes are known to come out when this is asked, so each way is worked once, as it would be
knitted. No I/O.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, replace

from stepper.craft.spacing import count_gaps, gaps_between
from stepper.plan.alter import Altered, altered
from stepper.plan.compile import SecondReading, work_as_knitted
from stepper.plan.drafts import DraftRound
from stepper.plan.findings import problems_of
from stepper.plan.needles import Needles
from stepper.project.instructions import Evenly, Line
from stepper.project.model import Project, Switch


@dataclass(frozen=True, slots=True, kw_only=True)
class Blend:
    """One way to knit the garment: a size, and perhaps another from a labelled line on."""

    size: str
    then: str
    """The size switched to; the same as `size` where none is."""
    label: str
    """The line of the switch; empty where none is."""
    rounds: tuple[DraftRound, ...]
    """The garment so worked; none where the arithmetic does not carry it."""
    at: int = 0
    """Index of the blended round in them."""
    before: int = 0
    """Stitches the blended round begins with; 0 without one. Unit: stitches."""
    after: int = 0
    """Stitches it ends with. Unit: stitches."""
    gaps: tuple[tuple[int, int], ...] = ()
    """Plain stitches between its changes and how often, the larger first."""
    why_not: str = ""
    """Why it cannot be knitted; empty where it can."""

    @property
    def works(self) -> bool:
        """Whether it can be knitted."""
        return not self.why_not


def switch_labels(project: Project) -> tuple[str, ...]:
    """List the labelled lines where a switch makes a blended round: evenly spaced ones, labelled once."""
    return tuple(line.label for line in _labelled(project) if line.label and _is_even(line))


def _labelled(project: Project) -> tuple[Line, ...]:
    """List the lines whose label no other line has."""
    lines = [line for section in project.sections for line in section.lines if line.label]
    times = Counter((line.label or "").lower() for line in lines)
    return tuple(line for line in lines if times[(line.label or "").lower()] == 1)


def _is_even(line: Line) -> bool:
    return any(isinstance(sentence, Evenly) for sentence in line.sentences)


def blends(project: Project, readings: frozenset[SecondReading] = frozenset()) -> Iterator[Blend]:
    """Try every size alone, then every pair of sizes at every labelled line where a switch is possible.

    At a line that spreads no change evenly a switch is tried where both sizes come to it with the same
    stitches.

    Args:
        project: The checked file.
        readings: As `stepper.plan.compile.compile_plan` found them.
    """
    sizes = range(len(project.sizes))
    own = altered(project)
    like = work_as_knitted(replace(project, switches=()), readings, own=own)
    alone = [tried(project, size, size, "", readings, like, own) for size in sizes]
    yield from alone
    for line in _labelled(project):
        label = line.label or ""
        met = [_before(each, line) for each in alone]
        for size in sizes:
            for then in sizes:
                if then == size or (not _is_even(line) and (met[size] != met[then] or met[size] is None)):
                    continue
                blend = tried(project, size, then, label, readings, like, own)
                if blend.works or _is_even(line):
                    yield blend


def _before(blend: Blend, line: Line) -> int | None:
    """Return the stitches with which a size comes to a line; None if it works no round of its own."""
    return next((draft.before for draft in blend.rounds if draft.line == line.place.line), None)


def tried(
    project: Project,
    size: int,
    then: int,
    label: str,
    readings: frozenset[SecondReading] = frozenset(),
    like: Needles | None = None,
    own: Altered | None = None,
) -> Blend:
    """Work the garment in one size and, from a labelled line on, in another.

    Args:
        project: The checked file.
        size: Place in `sizes`, from 0.
        then: Place of the size switched to.
        label: The line of the switch; empty for none.
        readings: As `stepper.plan.compile.compile_plan` found them.
        like: The same garment worked another way, to be quick.
        own: Its alterations as applied, to be quick.
    """
    where = project.sections[0].place
    reshape = any(switch.reshape for switch in project.switches)
    switches = (Switch(label=label, size=then, place=where, reshape=reshape),) if label else ()
    blended = replace(project, size=size, switches=switches)
    needles = work_as_knitted(blended, readings, like, own)
    names = project.sizes[size], project.sizes[then]
    if needles.findings:
        problem = problems_of(needles.findings, needles.findings, blended)[0]
        _, _, said = problem.message.rpartition(f'after the switch at "{label}": ')
        why = f"{said} {problem.hint}".strip()
        return Blend(size=names[0], then=names[1], label=label, rounds=(), why_not=why)
    rounds = tuple(needles.drafts)
    at = next((index for index, each in enumerate(rounds) if label and each.label == label), None)
    if at is None:
        return Blend(size=names[0], then=names[1], label=label, rounds=rounds)
    found = rounds[at]
    uses = 0 if found.after >= found.before else 2
    places = found.shaping or ()
    gaps = count_gaps(gaps_between(places, found.before, flat=found.flat, uses=uses)) if places else ()
    return Blend(
        size=names[0],
        then=names[1],
        label=label,
        rounds=rounds,
        at=at,
        before=found.before,
        after=found.after,
        gaps=gaps,
    )
