"""The fit report as lines of text: measurements, cautions, what can be knitted and what cannot. Pure."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from stepper.language.measures import length
from stepper.plan.blend import Blend
from stepper.project.model import Project
from stepper.report.fit.ranking import RankedBlend
from stepper.report.measure.measuring import Measurement
from stepper.report.measure.table_sizes import name_table

WIDE = 80
"""Greatest width of every line. Unit: columns."""
_LEAST_MM = 1.0
# A smaller change is not listed.
_LEAST_NAME, _COLUMN = 24, 9


def name_sizes(project: Project, trouble: str) -> str:
    """Name the sizes the file knits, or the size shown instead."""
    said = f"size {project.sizes[project.size]}"
    if trouble:
        return f"{said} alone"
    return ", then ".join(
        [said, *(f"{project.sizes[each.size]} from {each.label}" for each in project.switches)]
    )


def measurement_lines(found: Sequence[Measurement], project: Project, title: str) -> Iterator[str]:
    """Write the table of measurements."""
    yield title
    wide = max((len(line.name) for line in found), default=0)
    wide = min(max(wide, _LEAST_NAME), WIDE - 2 - 4 * (_COLUMN + 1))
    yield f"  {'':<{wide}} {'needles':>9} {'blocked':>9} {'body':>9} {'ease':>9}"
    for line in found:
        yield from _row(line, project.units, wide)
    if any(line.from_table for line in found):
        yield f"  {name_table(project)}"


def _row(line: Measurement, units: str, wide: int) -> Iterator[str]:
    """Write a measurement; a name too long for its column stands on a line of its own."""
    name = line.name
    if len(name) > wide:
        yield f"  {name}"
        name = ""
    blocked = length(line.blocked_mm, units) if line.blocked_mm is not None else "-"
    row = f"  {name:<{wide}} {length(line.needles_mm, units):>9} {blocked:>9}"
    if line.body_mm is None or line.ease_mm is None:
        yield row
        return
    body = length(line.body_mm, units) + ("*" if line.from_table else "")
    row = f"{row} {body:>9}"
    if not line.compared:
        yield row  # ease is around; most lengths are only set side by side
        return
    word = f" ({line.word})" if line.word else ""
    row = f"{row} {signed_length(line.ease_mm, units):>9}"
    if len(row) + len(word) <= WIDE:
        yield row + word
    else:
        yield row
        yield f"{word:>{WIDE}}"


def signed_length(mm: float, units: str) -> str:
    """Return a difference with its sign: "+2 cm", "-0.5 cm"."""
    text = length(abs(mm), units)
    return f"{'-' if mm < 0 and not text.startswith('0 ') else '+'}{text}"


def detail_lines(one: RankedBlend, units: str) -> Iterator[str]:
    """Write what a blend changes compared with what is knitted now, and which repeats still divide evenly."""
    alike = _each_alike(one.changes_mm)
    changes = [f"{name} {signed_length(mm, units)}" for name, mm in alike.items() if abs(mm) >= _LEAST_MM]
    yield f"compared with now: {', '.join(changes) or 'the same everywhere'}"
    if one.later:
        yield "repeats around: " + ", ".join(f"{each.name} {each.times} times" for each in one.later)


def _each_alike(changes_mm: dict[str, float]) -> dict[str, float]:
    """Merge two sleeves, mittens or socks that change alike under one name, "each …"."""
    told: dict[str, float] = {}
    for name, mm in changes_mm.items():
        word, _, rest = name.partition(" ")
        other = {"left": "right", "right": "left", "first": "second", "second": "first"}.get(word)
        pair = changes_mm.get(f"{other} {rest}")
        alike = pair is not None and abs(pair - mm) < _LEAST_MM
        told.setdefault(f"each {rest}" if alike else name, mm)
    return told


def rejected_lines(found: Iterable[Blend], *, most: int | None = None, first: str = "") -> Iterator[str]:
    """Write which blends cannot be knitted, and why.

    Args:
        found: As tried.
        most: How many at most; None for all.
        first: Name of the size whose blends come first.
    """
    refused = [each for each in found if not each.works]
    if not refused:
        return
    yield "Cannot be knitted:"
    refused.sort(key=lambda each: each.size != first)
    told = refused if most is None else refused[:most]
    for each in told:
        yield f"  {name_blend(each)}: {each.why_not}"
    if len(told) < len(refused):
        yield f"  … and {len(refused) - len(told)} more: --all lists them."


def name_blend(blend: Blend) -> str:
    """Name a blend, with its round if it has one: "size 4, then 2 from Final increase (225 to 246: …)"."""
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
