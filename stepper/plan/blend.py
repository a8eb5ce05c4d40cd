"""Try which sizes go together: every pair, at every labelled line where one could give way to the other.

The printed sizes are known to work out by then, so each way is worked once, as it would be knitted. No I/O.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from stepper.craft.even.spacing import count_gaps, gaps_between
from stepper.plan.alter import Altered, apply_rules
from stepper.plan.checks.findings import problems_of
from stepper.plan.compile import SecondReading, work_as_knitted
from stepper.plan.drafts import DraftRound
from stepper.plan.model import flatten
from stepper.plan.state.in_hand import Caches
from stepper.plan.state.size_alone import LinesAlone, lines_alone, lines_labelled_once, spreads_change
from stepper.plan.stitches.evenly import shaping_places
from stepper.plan.stitches.run_repeats import laid_flat
from stepper.project.instructions import Evenly, Line
from stepper.project.model import Project, Switch
from stepper.records import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Blend:
    """One way to knit the garment: a size, and perhaps another from a labelled line on."""

    size: str
    then: str
    """The size switched to; the same as `size` if there is no switch."""
    label: str
    """The line of the switch; empty if there is none."""
    rounds: tuple[DraftRound, ...]
    """The garment worked this way; empty if the arithmetic does not carry it."""
    at: int = 0
    """Index of the blended round in them."""
    before: int = 0
    """Stitches the blended round begins with; 0 without one. Unit: stitches."""
    after: int = 0
    """Stitches it ends with. Unit: stitches."""
    gaps: tuple[tuple[int, int], ...] = ()
    """Plain stitches between its changes and how often, the larger first."""
    why_not: str = ""
    """Why it cannot be knitted; empty if it can."""

    @property
    def works(self) -> bool:
        """Whether it can be knitted."""
        return not self.why_not


def blends(project: Project, readings: frozenset[SecondReading] = frozenset()) -> Iterator[Blend]:
    """Try every size alone, then every pair of sizes at every labelled line where a switch is possible.

    That is a line that spreads a change evenly, by whatever words. At any other, a switch is tried if both
    sizes come to it with the same stitches.

    Args:
        project: The checked file.
        readings: As `stepper.plan.compile.compile_plan` found them.
    """
    sizes = range(len(project.sizes)) if project.alone is None else (project.size,)
    own = apply_rules(project)
    known = work_as_knitted(replace(project, switches=()), readings, own=own).caches
    alone = {size: try_sizes(project, size, size, "", readings, known, own) for size in sizes}
    yield from alone.values()
    counts = {size: lines_alone(each.rounds) for size, each in alone.items()}
    for line in lines_labelled_once(project):
        for then in sizes:
            spreads = any(isinstance(sentence, Evenly) for sentence in line.sentences) or spreads_change(
                line, counts[then]
            )
            for size in sizes:
                if then == size or not (spreads or _meet(line, counts[size], counts[then])):
                    continue
                blend = try_sizes(project, size, then, line.label or "", readings, known, own)
                if blend.works or spreads:
                    yield blend


def _meet(line: Line, one: LinesAlone, other: LinesAlone) -> bool:
    """Return whether two sizes come to a line with the same stitches."""
    mine, yours = (alone.get(line.place.line, ()) for alone in (one, other))
    return bool(mine and yours) and mine[0].before == yours[0].before


def try_sizes(
    project: Project,
    size: int,
    then: int,
    label: str,
    readings: frozenset[SecondReading] = frozenset(),
    known: Caches | None = None,
    own: Altered | None = None,
) -> Blend:
    """Work the garment in one size and, from a labelled line on, in another.

    Args:
        project: The checked file.
        size: Place in `sizes`, from 0.
        then: Place of the size switched to.
        label: The line of the switch; empty for none.
        readings: As `stepper.plan.compile.compile_plan` found them.
        known: What was worked out where the same garment was worked another way, to save time.
        own: Its alterations as applied, to save time.
    """
    where = project.sections[0].place
    reshape = any(switch.reshape for switch in project.switches)
    over = max((each.over for each in project.switches if each.label.lower() == label.lower()), default=1)
    switches = (Switch(label=label, size=then, place=where, reshape=reshape, over=over),) if label else ()
    blended = replace(project, size=size, switches=switches)
    needles = work_as_knitted(blended, readings, known, own)
    blend = Blend(size=project.sizes[size], then=project.sizes[then], label=label, rounds=())
    if needles.findings:
        findings, unmet = needles.findings, needles.alterations.unmet
        problem = problems_of(findings, findings, blended, unmet=unmet)[0]
        _, _, said = problem.message.rpartition(f'after the switch at "{label}": ')
        why = " ".join(f"{said} {problem.hint}".split())
        return replace(blend, why_not=why)
    rounds = tuple(needles.drafts)
    at = next((index for index, each in enumerate(rounds) if label and each.label == label), None)
    if at is None:
        return replace(blend, rounds=rounds)
    first, last = rounds[at], rounds[at + over - 1] if rounds[at].before != rounds[at].after else rounds[at]
    places = first.shaping if first.shaping is not None else shaping_places(laid_flat(first.phrase))
    uses = max((run.uses // run.times for run in flatten(first.phrase)), default=0)
    gaps = gaps_between(places, first.before, flat=first.flat, uses=uses if uses > 1 else 0) if places else ()
    before, after = first.before, last.after
    return replace(blend, rounds=rounds, at=at, before=before, after=after, gaps=count_gaps(gaps))
