"""From a checked project to the plan of every round.

The pattern is worked once for each printed size, which checks every printed count, and once as it is knitted,
with its switches of size. Only the last becomes the plan. No I/O.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.alter import Altered, apply_rules
from stepper.plan.checks.count_repairs import NumberRepair
from stepper.plan.checks.findings import cautions_of, problems_of
from stepper.plan.course import Course
from stepper.plan.drafts import Finding
from stepper.plan.finish import finish
from stepper.plan.lines.short_row_method import tell_open_turn
from stepper.plan.model import Plan
from stepper.plan.state.in_hand import Caches, SectionInHand
from stepper.plan.state.needles import Needles
from stepper.plan.state.size_alone import AloneIn, LinesAlone, lines_alone
from stepper.plan.stitches.round_sources import ChartRound, TwoReadings
from stepper.project.instructions import Unread
from stepper.project.model import Project
from stepper.project.problems import Problem, Span
from stepper.records import dataclass

_MOST_CHOICES = 12
"""Most ambiguous wordings that are tried both ways; each costs working the garment once more in every
size."""

SecondReading = tuple[int, int]
"""Line and column of words that are taken in their second reading."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Compiled:
    """The outcome: a plan, or the problems that prevent one."""

    plan: Plan | None
    problems: tuple[Problem, ...]
    readings: frozenset[SecondReading] = frozenset()
    """Words that were taken in their second reading."""
    worked: Needles | None = None
    """With problems: the garment as it is knitted, as far as it was worked."""


def compile_plan(project: Project) -> Compiled:
    """Work out every round of the garment.

    Args:
        project: The checked file.

    Returns:
        The plan of the garment as it is knitted, or every place where the arithmetic of some printed size, or
        of the blend, does not come out.
    """
    tried = _settled(project)
    knitted = tried.knitted
    problems = _problems(tried, project)
    if problems:
        return Compiled(plan=None, problems=problems, worked=knitted)
    if not knitted.drafts and knitted.ends_at is None:
        where = project.sections[0].place
        return Compiled(plan=None, problems=(where.problem("the pattern has no rounds to knit."),))
    empty = next((draft.line for draft in knitted.drafts if not draft.phrase), None)
    if empty is not None:
        where = Span(line=empty, column=1)
        return Compiled(plan=None, problems=(where.problem("no stitches are worked here."),))
    plan = finish(knitted, project, cautions_of(knitted.cautions))
    return Compiled(plan=plan, problems=(), readings=knitted.readings)


def faults_of(partial: Project) -> tuple[Problem, ...]:
    """Find what does not come out in a project of which some lines could not be read.

    Args:
        partial: As much of the project as there is (`stepper.project.reader.Reading`).

    Returns:
        The faults of the rest, in the order of the file, without any that may be due to the lines not read.
    """
    return _problems(_settled(partial), partial)


def _problems(tried: _Tried, project: Project) -> tuple[Problem, ...]:
    right = NumberRepair(project=project, findings=findings_of)
    why = tried.knitted.alterations.unmet
    return problems_of(tried.findings, tried.knitted.findings, project, right, why)


def work_as_knitted(
    project: Project,
    readings: frozenset[SecondReading],
    known: Caches | None = None,
    own: Altered | None = None,
) -> Needles:
    """Work the garment once, as knitted, to try one blend after another, without checking the printed sizes.

    Args:
        project: The checked file; its printed sizes are known to come out.
        readings: Words to take in their second reading, as `compile_plan` found.
        known: What was worked out where the same garment was worked another way.
        own: Its alterations as applied, which are the same for every size.

    Returns:
        The worked rounds, with what did not fit in `findings`.
    """
    caches = replace(known, fits=set()) if known is not None else Caches()
    return _work_garment(project, project.size, caches, readings, knitted=True, briefly=True, own=own)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Tried:
    """The garment worked in every size, with some wordings taken in their second reading."""

    knitted: Needles
    findings: tuple[Finding, ...]


def _try(project: Project, readings: frozenset[SecondReading]) -> _Tried:
    drawn: dict[tuple[object, ...], ChartRound] = {}
    knitted = _work_garment(project, project.size, Caches(drawn=drawn), readings, knitted=True)
    findings, known = list(knitted.findings), knitted.caches.alone_findings
    for size in range(len(project.sizes)) if project.alone is None else ():
        if size in known:
            findings += known[size]
        elif project.switches or size != project.size:
            findings += _work_garment(project, size, Caches(drawn=drawn), readings, knitted=False).findings
    return _Tried(knitted=knitted, findings=tuple(findings))


def _settled(project: Project) -> _Tried:
    """Work the garment, choose between the readings of ambiguous wordings by what fits, and tell both.

    Words are settled in the order of the file, the first dozen of them. The second reading is taken if it
    leaves fewer misfits; if both fit, the first stands and the knitter is told.
    """
    readings: frozenset[SecondReading] = frozenset()
    tried, told = _try(project, readings), list[Finding]()
    choices = {choice.key: choice for choice in tried.knitted.choices}
    told += [
        _untried(choice, project) for _, choice in sorted(choices.items())[_MOST_CHOICES:] if not choice.quiet
    ]
    for reading, choice in sorted(choices.items())[:_MOST_CHOICES]:
        if choice.quiet and not tried.findings:
            told += _unconfirmed(choice, tried.knitted)
            continue
        other = _try(project, readings | {reading})
        fewer = len(tried.findings) - len(other.findings)
        first, second = (_count_after(side.knitted, choice) for side in (tried, other))
        if fewer > 0:
            tried, readings = other, readings | {reading}
        taken = choice.second if fewer > 0 else choice.first
        why = ", which alone fits" if fewer else ": both fit"
        text = (
            f'"{choice.words}" can mean {choice.first}, {first}, or {choice.second}, {second}; '
            f"read as {taken}{why}."
        )
        if fewer > 0 or not choice.quiet:
            told.append(Finding(place=choice.place, message=text, size=project.size))
    tried.knitted.cautions.extend(told)
    return tried


def _unconfirmed(choice: TwoReadings, needles: Needles) -> list[Finding]:
    """Tell of the usual reading of words if they shape the piece and no printed count bears it out."""
    own = [index for index, draft in enumerate(needles.drafts) if draft.line == choice.line]
    if all(needles.drafts[index].before == needles.drafts[index].after for index in own):
        return []
    ahead = range(own[-1], len(needles.drafts))
    end = next((index for index in ahead if not needles.drafts[index].before), len(needles.drafts))
    if any(own[-1] < rounds <= end for rounds in needles.counting.confirmed):
        return []
    shown = "no count printed after it shows whether that is meant"
    text = f'"{choice.words}" is read as {choice.first}; {shown}.'
    return [Finding(place=choice.place, message=text, size=needles.size)]


def _untried(choice: TwoReadings, project: Project) -> Finding:
    """Report an ambiguous wording beyond the dozen that are tried."""
    both = f'"{choice.words}" can mean {choice.first} or {choice.second}'
    text = f"{both}; read as {choice.first}, the other not tried."
    return Finding(place=choice.place, message=text, size=project.size)


def _count_after(needles: Needles, choice: TwoReadings) -> str:
    """Say how many stitches there are after the last round of the line in one reading."""
    found = [draft.after for draft in needles.drafts if draft.line == choice.line]
    if found:
        return f"with {found[-1]} stitches after the line"
    stopped = any(finding.place.line <= choice.line for finding in needles.findings)
    return "which its stitches do not allow" if stopped else "with no row worked"


def _work_garment(
    project: Project,
    size: int,
    caches: Caches,
    readings: frozenset[SecondReading],
    *,
    knitted: bool,
    briefly: bool = False,
    own: Altered | None = None,
) -> Needles:
    """Work all sections in one size, or as they are knitted, with the switches of size."""
    checking = briefly or not knitted
    fabric = next(iter(project.fabrics.values()))
    needles = Needles(
        project=project,
        size=size,
        checking=checking,
        knitted=knitted,
        partial=_has_unread(project),
        readings=readings,
        fabric=fabric,
        section=SectionInHand(fabric=fabric),
        caches=caches,
    )
    switches = {switch.label.lower(): switch for switch in project.switches} if knitted else {}
    if knitted and own is None:
        own = apply_rules(project)
    if own is not None:
        needles.alterations.marks = own.marks
        needles.project = own.project
        for place, why in () if needles.partial else own.unfit:
            needles.report(place, why, "Name a section with such a line, or write it as - note: …")
    for chart in project.charts.values() if knitted else ():
        if chart.caution:
            needles.warn(chart.place, chart.caution)
    if knitted and project.alone is not None and len(project.sizes) > 1:
        needles.warn(
            project.alone, f"size {project.sizes[size]} alone is worked out; no other is checked or claimed."
        )
    alone = _alone_in(project, needles, readings)
    if knitted and (project.alterations or project.switches):
        needles.alterations.as_printed = alone
    course = Course(project=project, needles=needles, own=own, switches=switches, size=size, alone=alone)
    course.work_all()
    if needles.ends_at is None:
        tell_open_turn(needles)
    return needles


def _has_unread(project: Project) -> bool:
    """Return whether a line of the file was not read."""
    return any(isinstance(each, Unread) for line in project.lines for each in line.sentences)


def _alone_in(project: Project, needles: Needles, readings: frozenset[SecondReading]) -> AloneIn:
    """Return what says what each line comes to in a size alone, as the pattern prints it."""
    known, drawn = needles.caches.alone, needles.caches.drawn

    def alone(size: int) -> LinesAlone:
        if size not in known:
            printed = replace(project, switches=())
            worked = _work_garment(printed, size, Caches(drawn=drawn), readings, knitted=False)
            known[size] = lines_alone(worked.drafts)
            needles.caches.alone_findings[size] = worked.findings
        return known[size]

    return alone


def findings_of(project: Project, size: int) -> tuple[Finding, ...]:
    """Return what does not fit when the pattern is worked in one printed size (its place, from 0)."""
    return tuple(_work_garment(project, size, Caches(), frozenset(), knitted=False).findings)
