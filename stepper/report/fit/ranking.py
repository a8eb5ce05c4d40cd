"""How close each blend comes to the ease wanted, and what else counts for or against it. Pure."""

from __future__ import annotations

from collections.abc import Iterable

from stepper.plan.blend import Blend
from stepper.plan.model import Group, Run
from stepper.project.model import Project
from stepper.records import dataclass
from stepper.report.measure.measurements import measure_garment
from stepper.report.measure.measuring import Measurement, body_of

WANTED_MM = {"bust": 76.2, "upper_arm": 50.8, "neck": 50.8, "head": -50.8, "hand": 0.0, "foot": -25.4}
"""Ease wanted if the file says nothing. At the chest, the middle of the Craft Yarn Council's standard fit, 2
to 4 in; at upper arm and neck 2 in; a hat 2 in and a sock 1 in narrower than head and foot, a mitten as wide
as the hand: common practice without a published figure. Unit: mm."""


def wanted_ease(project: Project) -> dict[str, float]:
    """Return the ease wanted at each measurement: the file's, or else the usual one. Unit: mm."""
    wanted = {**WANTED_MM, **project.wanted_ease}
    if "chest" in project.wanted_ease:
        wanted["bust"] = project.wanted_ease["chest"]
    return wanted


@dataclass(frozen=True, slots=True, kw_only=True)
class Wish:
    """The ease wanted at one measurement of the wearer."""

    measure: str
    ease_mm: float
    """Unit: mm."""
    assumed: bool
    """Whether this is the usual ease, because the file does not ask for one."""


def find_wishes(project: Project) -> tuple[Wish, ...]:
    """List what decides the order: the eases she asked for, or else what she measured, at the usual ease.

    A measurement she did not give is never listed, even if a table of sizes has a value for it.
    """
    wanted = wanted_ease(project)
    asked = {"bust" if name == "chest" else name for name in project.wanted_ease}
    given = [name for name in wanted if body_of(project, name) is not None]
    wishes = [Wish(measure=name, ease_mm=wanted[name], assumed=name not in asked) for name in given]
    return tuple(each for each in wishes if not each.assumed) or tuple(wishes)


def find_other_wishes(project: Project) -> tuple[Wish, ...]:
    """List what decides between equals: what she measured without asking for an ease, at the usual ease."""
    first = {each.measure for each in find_wishes(project)}
    return tuple(
        Wish(measure=name, ease_mm=ease, assumed=True)
        for name, ease in WANTED_MM.items()
        if name not in first and body_of(project, name) is not None
    )


def measured_eases(found: Iterable[Measurement]) -> dict[str, float]:
    """Return the ease at each measurement she gave, at the widest place if there are several. Unit: mm."""
    widest: dict[str, float] = {}
    for line in found:
        if line.ease_mm is not None and line.compared and not line.from_table:
            widest[line.measure] = max(line.ease_mm, widest.get(line.measure, line.ease_mm))
    return widest


def miss_of_ease(found: Iterable[Measurement], project: Project) -> float | None:
    """Add up how far each ease is from the ease wanted; None without body measurements. Unit: mm."""
    return _miss(measured_eases(found), find_wishes(project))


def _miss(eases: dict[str, float], wishes: Iterable[Wish]) -> float | None:
    misses = [abs(eases[each.measure] - each.ease_mm) for each in wishes if each.measure in eases]
    return sum(misses) if misses else None


@dataclass(frozen=True, slots=True, kw_only=True)
class LaterRepeat:
    """A chart or rib worked after the switch that still fits the stitches evenly."""

    name: str
    stitches: int
    """Of one repeat. Unit: stitches."""
    times: int
    """Repeats around."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RankedBlend:
    """A blend that can be knitted, with its measurements."""

    blend: Blend
    lines: tuple[Measurement, ...]
    changes_mm: dict[str, float]
    """How much wider or longer each measurement is than in the garment as filed, by name, if both have it.
    The ease changes by as much. Unit: mm."""
    off_mm: float | None
    """How far the eases are from those wanted, in total; None without body measurements. Unit: mm."""
    later: tuple[LaterRepeat, ...]
    further_mm: float
    """The same for what she measured without asking for an ease; it decides between equals. Unit: mm."""
    crowded: float
    """How much denser its changes are than in any printed size; 0 if no denser. Unit: changes per stitch."""


def rank_blends(
    blends: Iterable[Blend], project: Project, now: Iterable[Measurement]
) -> tuple[RankedBlend, ...]:
    """Put the blends that can be knitted in order, the one nearest to the ease wanted first.

    Among equals, those without a switch come first, then those nearer to the usual ease at her other
    measurements, then those whose blended round is most like a printed one.

    Args:
        blends: As tried.
        project: The checked file.
        now: The garment as the file knits it.
    """
    works = [each for each in blends if each.works]
    rates = _printed_rates(works)
    standing = {line.name: line.finished_mm for line in now}
    found = [_ranked(each, project, standing, rates) for each in works]
    return tuple(sorted(found, key=_rank))


def find_present(project: Project, found: Iterable[RankedBlend], *, alone: bool) -> RankedBlend | None:
    """Find what the file knits; None if it switches more than once, which no blend of two sizes is.

    Args:
        project: The checked file.
        found: What can be knitted.
        alone: Whether its size is shown without any switch.
    """
    switches = () if alone else project.switches
    if len(switches) > 1:
        return None
    size = project.sizes[project.size]
    then = project.sizes[switches[0].size] if switches else size
    label = switches[0].label.lower() if switches and then != size else ""
    for one in found:
        if (one.blend.size, one.blend.then, one.blend.label.lower()) == (size, then, label):
            return one
    return None


def find_nearest(project: Project, found: Iterable[RankedBlend]) -> RankedBlend | None:
    """Find the blend most like what the file asks for: by sizes first, then by the line of the switch.

    Args:
        project: The checked file, with its size and its first switch.
        found: What can be knitted.
    """
    order = {size: place for place, size in enumerate(project.sizes)}
    switch = project.switches[0] if project.switches else None
    then = switch.size if switch is not None else project.size
    label = switch.label.lower() if switch is not None else ""

    def far(one: RankedBlend) -> tuple[int, bool, int]:
        begun, ended = order[one.blend.size] - project.size, order[one.blend.then] - then
        return abs(begun) + abs(ended), one.blend.label.lower() != label, abs(begun)

    return min(found, key=far, default=None)


def _rank(one: RankedBlend) -> tuple[bool, float, bool, float, float]:
    off = round(one.off_mm or 0, 3)
    return one.off_mm is None, off, bool(one.blend.label), round(one.further_mm, 3), one.crowded


def _ranked(
    blend: Blend, project: Project, standing: dict[str, float], rates: dict[str, tuple[float, float]]
) -> RankedBlend:
    measured = measure_garment(blend.rounds, project)
    changes = {
        line.name: line.finished_mm - standing[line.name] for line in measured if line.name in standing
    }
    low, high = rates.get(blend.label, (0.0, 0.0))
    rate = (blend.after - blend.before) / blend.before if blend.before else 0.0
    return RankedBlend(
        blend=blend,
        lines=measured,
        changes_mm=changes,
        off_mm=miss_of_ease(measured, project),
        later=_later(blend),
        further_mm=_miss(measured_eases(measured), find_other_wishes(project)) or 0.0,
        crowded=max(0.0, low - rate, rate - high) if blend.label else 0.0,
    )


def _printed_rates(blends: Iterable[Blend]) -> dict[str, tuple[float, float]]:
    """Return the smallest and largest rate at which the printed sizes grow at each labelled line."""
    rates: dict[str, list[float]] = {}
    for blend in blends:
        if blend.label:
            continue
        for each in blend.rounds:
            if each.label and each.evenly and each.before:
                rates.setdefault(each.label, []).append((each.after - each.before) / each.before)
    return {label: (min(found), max(found)) for label, found in rates.items()}


def _later(blend: Blend) -> tuple[LaterRepeat, ...]:
    """List the charts and ribs after the switch, once for each number of repeats."""
    if not blend.label:
        return ()
    found: dict[LaterRepeat, None] = {}
    phrases = {id(each.phrase): each.phrase for each in blend.rounds[blend.at + 1 :]}  # most rounds share one
    for phrase in phrases.values():
        groups = [item for item in phrase if isinstance(item, Group)]
        for group in groups:
            name = f"chart {group.name}" if group.name else _rib(group)
            if name:
                found[LaterRepeat(name=name, stitches=group.uses // group.times, times=group.times)] = None
    return tuple(found)


def _rib(group: Group) -> str:
    """Return the name of a rib by its stitches; empty for any other repeat."""
    runs = [item for item in group.items if isinstance(item, Run)]
    if len(runs) != len(group.items) or {run.stitch for run in runs} != {"k", "p"}:
        return ""
    return f"{', '.join(f'{run.stitch}{run.times}' for run in runs)} rib"
