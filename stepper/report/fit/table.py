"""A table of what can be knitted: a row for each blend, nearest first, with the present choice. Pure."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from stepper.language.measures import length
from stepper.project.model import Project
from stepper.records import dataclass
from stepper.report.fit.lines import WIDE, signed_length
from stepper.report.fit.ranking import RankedBlend, Wish, find_wishes, measured_eases
from stepper.report.measure.measuring import Measurement

ROWS = 10
"""Most rows the table has unless all are asked for."""
COLUMNS = 3
"""Most measurements that get a column of their own."""
_CELLS = {"cm": 9, "in": 10}
# Width of a column by unit: inches are given in hundredths.
_ROUND, _NUMBER, _MOST_NAME = 11, 7, 34
_HEADS = {"upper_arm": "arm", "foot_length": "length", "arm_length": "length", "back_length": "length"}
# Shorter words for the columns.
_WIDTHS = ("chest", "neck", "full yoke")
# What is shown, as widths, if no body is measured.


@dataclass(frozen=True, slots=True, kw_only=True)
class PresentChoice:
    """What the file knits now."""

    name: str
    lines: tuple[Measurement, ...]
    blend: RankedBlend | None
    """Its entry among what can be knitted; None if it is not one of these, as with two switches."""


def table_lines(
    found: Sequence[RankedBlend], project: Project, present: PresentChoice, *, most: int | None = ROWS
) -> Iterator[str]:
    """Write the table.

    Args:
        found: What can be knitted, in its order.
        project: The checked file.
        present: What is knitted now; it always has a row, marked ">".
        most: How many rows at most; None for all.
    """
    wishes = _columns(found, find_wishes(project))
    yield from _heading(wishes, project.units)
    numbered = [*enumerate(found, start=1)]
    shown = numbered if most is None else numbered[:most]
    place = next((pair for pair in numbered if pair[1] is present.blend), None)
    apart = present.blend is None
    if most is not None and len(shown) == most and (apart or (place is not None and place not in shown)):
        shown = shown[:-1]
    if place is not None and place not in shown:
        shown = [*shown, place]
    names = _names(wishes, found)
    cell = _CELLS[project.units]
    heads = [_HEADS.get(name, name)[: cell - 1] for name in names] + (["off by"] if wishes else [])
    cells = "".join(f"{head:>{cell}}" for head in heads)
    round_ = _ROUND if any(one.blend.label for _, one in shown) else 0
    wide = min(WIDE - _NUMBER - round_ - len(cells), _MOST_NAME)
    yield f"{'':<{_NUMBER}}{'size':<{wide}}{'round' if round_ else '':<{round_}}{cells}".rstrip()
    for number, one in shown:
        mark = ">" if one is present.blend else " "
        blend = one.blend
        spacing = f"{blend.before}-{blend.after}" if blend.label else ""
        name = f"{blend.size}, then {blend.then}: {blend.label}" if blend.label else blend.size
        eases = _cells(one.lines, one.off_mm, wishes, names, project.units)
        yield f"{mark}{number:>4}. {_cut(name, wide)}{spacing:<{round_}}{eases}".rstrip()
    if apart:
        eases = _cells(present.lines, None, wishes, names, project.units)
        yield f">{'':>4}  {_cut(present.name.removeprefix('size '), wide)}{'':<{round_}}{eases}".rstrip()
    left = len(found) - len(shown) + (0 if place is None or place in shown else 1)
    if left:
        yield f"{'':<{_NUMBER}}… and {left} more: --all lists them."


def _columns(found: Sequence[RankedBlend], wishes: Sequence[Wish]) -> tuple[Wish, ...]:
    """Choose the columns: the measurements that decide the order and that the garment has."""
    has = {line.measure for one in found[:1] for line in one.lines}
    return tuple(each for each in wishes if each.measure in has)


def _names(wishes: Sequence[Wish], found: Sequence[RankedBlend]) -> list[str]:
    if wishes:
        return [each.measure for each in wishes[:COLUMNS]]
    return [line.name for one in found[:1] for line in one.lines if line.name in _WIDTHS][:COLUMNS]


def _heading(wishes: Sequence[Wish], units: str) -> Iterator[str]:
    said = [
        f"{each.measure.replace('_', ' ')} {signed_length(each.ease_mm, units)}"
        f"{' assumed' if each.assumed else ''}"
        for each in wishes
    ]
    if not said:
        yield "Can be knitted (no body is measured, so nothing is nearer than the rest):"
        return
    yield f"Can be knitted, nearest first to the ease wanted ({', '.join(said)}):"
    if any(each.assumed for each in wishes):
        yield "Assumed: the usual ease, as the file asks for none there (`wanted_ease`)."


def _cells(
    lines: Sequence[Measurement],
    off_mm: float | None,
    wishes: Sequence[Wish],
    names: Sequence[str],
    units: str,
) -> str:
    """Return the eases wanted, or widths if none are wanted, each in its column."""
    eases = measured_eases(lines)
    if wishes:
        said = [signed_length(eases[name], units) if name in eases else "-" for name in names]
        said.append(length(off_mm, units) if off_mm is not None else "-")
    else:
        widths = {line.name: line for line in lines}
        said = [length(widths[name].finished_mm, units) if name in widths else "-" for name in names]
    return "".join(f"{each:>{_CELLS[units]}}" for each in said)


def _cut(name: str, wide: int) -> str:
    """Return a name in its column, cut and marked if it is too long."""
    return f"{name:<{wide}}" if len(name) < wide else f"{name[: wide - 2]}… "
