"""The fit report as lines of text: measurements, cautions, what can be knitted and what cannot. Pure."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from stepper.language.measures import length
from stepper.plan.blend import Blend
from stepper.project.model import Project
from stepper.report.measuring import Measurement
from stepper.report.ranking import RankedBlend, wanted_ease

IN_FULL = 10
"""How many blends are listed with all their changes; the others get one line each."""
_LEAST_MM = 1.0
# A smaller change is not listed.


def name_sizes(project: Project, trouble: str) -> str:
    """Name the sizes the file knits, or the size shown instead."""
    said = f"size {project.sizes[project.size]}"
    if trouble:
        return f"{said} alone"
    return ", then ".join(
        [said, *(f"{project.sizes[each.size]} from {each.label}" for each in project.switches)]
    )


def measurement_lines(found: Iterable[Measurement], project: Project, title: str) -> Iterator[str]:
    """Write the table of measurements."""
    yield title
    yield f"  {'':<24} {'needles':>9} {'blocked':>9} {'body':>9} {'ease':>9}"
    for line in found:
        yield _row(line, project.units)


def _row(line: Measurement, units: str) -> str:
    blocked = length(line.blocked_mm, units) if line.blocked_mm is not None else "-"
    row = f"  {line.name:<24} {length(line.needles_mm, units):>9} {blocked:>9}"
    if line.body_mm is None or line.ease_mm is None:
        return row
    row = f"{row} {length(line.body_mm, units):>9}"
    if not line.stitches:
        return row  # ease is around; lengths are only set side by side
    word = f" ({line.word})" if line.word else ""
    return f"{row} {signed_length(line.ease_mm, units):>9}{word}"


def signed_length(mm: float, units: str) -> str:
    """Return a difference with its sign: "+2 cm", "-0.5 cm"."""
    text = length(abs(mm), units)
    return f"{'-' if mm < 0 and not text.startswith('0 ') else '+'}{text}"


def workable_lines(
    found: tuple[RankedBlend, ...], project: Project, *, in_full: int = IN_FULL
) -> Iterator[str]:
    """Write what can be knitted, in its order."""
    yield f"Can be knitted, nearest first to the ease wanted ({_wanted(found, project)}):"
    for number, one in enumerate(found, start=1):
        off = f"; off by {length(one.off_mm, project.units)} in all" if one.off_mm is not None else ""
        yield f"{number:>4}. {name_blend(one.blend)}{off}"
        if number <= in_full:
            yield from (f"      {line}" for line in _details(one, project.units))


def _wanted(found: tuple[RankedBlend, ...], project: Project) -> str:
    wanted = wanted_ease(project)
    measures = (
        [line.measure for line in found[0].lines if line.ease_mm is not None and line.stitches]
        if found
        else []
    )
    said = [
        f"{name.replace('_', ' ')} {signed_length(wanted[name], project.units)}"
        for name in dict.fromkeys(measures)
        if name in wanted
    ]
    return ", ".join(said) or "no body is measured"


def _details(one: RankedBlend, units: str) -> Iterator[str]:
    alike = _each_alike(one.changes_mm)
    changes = [f"{name} {signed_length(mm, units)}" for name, mm in alike.items() if abs(mm) >= _LEAST_MM]
    yield f"compared with now: {', '.join(changes) or 'the same everywhere'}"
    if one.later:
        yield "repeats around: " + ", ".join(f"{each.name} {each.times} times" for each in one.later)


def _each_alike(changes_mm: dict[str, float]) -> dict[str, float]:
    """Put two sleeves, mittens or socks that change alike under one name, "each …"."""
    told: dict[str, float] = {}
    for name, mm in changes_mm.items():
        word, _, rest = name.partition(" ")
        other = {"left": "right", "right": "left", "first": "second", "second": "first"}.get(word)
        pair = changes_mm.get(f"{other} {rest}")
        alike = pair is not None and abs(pair - mm) < _LEAST_MM
        told.setdefault(f"each {rest}" if alike else name, mm)
    return told


def rejected_lines(found: Iterable[Blend]) -> Iterator[str]:
    """Write what cannot be knitted, and why."""
    refused = [each for each in found if not each.works]
    if not refused:
        return
    yield "Cannot be knitted:"
    for each in refused:
        yield f"  {name_blend(each)}: {each.why_not}"


def name_blend(blend: Blend) -> str:
    """Name a blend, with its round where it has one: "size 4, then 2 from Final increase (225 to 246: …)"."""
    if not blend.label:
        return f"size {blend.size}"
    head = f"size {blend.size}, then {blend.then} from {blend.label}"
    return f"{head} ({describe_spacing(blend)})" if blend.works else head


def describe_spacing(blend: Blend) -> str:
    """Describe the blended round: "225 to 246: 21 increases 10 or 11 apart"."""
    change = blend.after - blend.before
    if not change:
        return f"{blend.before} as they are"
    word = f"{'increase' if change > 0 else 'decrease'}{'' if abs(change) == 1 else 's'}"
    sizes = " or ".join(str(gap) for gap, _ in reversed(blend.gaps)) if len(blend.gaps) < 4 else ""
    apart = f" {sizes} apart" if sizes and abs(change) > 1 else ""
    return f"{blend.before} to {blend.after}: {abs(change)} {word}{apart}"
