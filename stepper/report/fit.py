"""What the garment measures, beside the wearer, and how near each blend comes to the ease wanted. Pure."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from stepper.craft.fit import fit_word
from stepper.craft.gauge import Gauge
from stepper.plan.blend import Blend
from stepper.plan.model import Plan, Round
from stepper.project.model import Project

STANDARD_EASE_MM = 76.2
"""Ease wanted at the chest where the file says nothing: the middle of the Craft Yarn Council's standard fit,
2 to 4 in. Unit: mm."""
ARM_EASE_MM = 50.8
"""Ease wanted at the upper arm where the file says nothing: 2 in, common practice. Unit: mm."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One measurement of the garment."""

    name: str
    needles_mm: float
    """As knitted. Unit: mm."""
    blocked_mm: float | None
    """After blocking; nothing where the file gives no blocked gauge. Unit: mm."""
    measure: str = ""
    """Name of the wearer's measurement it goes with; empty for none."""
    body_mm: float | None = None
    """The wearer's measurement. Unit: mm."""

    @property
    def ease_mm(self) -> float | None:
        """Finished garment less body. Unit: mm."""
        if self.body_mm is None:
            return None
        return (self.blocked_mm or self.needles_mm) - self.body_mm

    @property
    def word(self) -> str:
        """The fit word, which is one of the chest alone."""
        return fit_word(self.ease_mm) if self.measure == "bust" and self.ease_mm is not None else ""


def lines(plan: Plan, project: Project) -> tuple[Line, ...]:
    """Measure a garment worked from the neck down, as far as it has the places; lengths of every section."""
    return tuple(_lines(plan, project))


def _lines(plan: Plan, project: Project) -> Iterator[Line]:
    divide = next((each for each in plan.rounds if _has(each, "hold")), None)
    if divide is not None:
        yield _around("neck", plan.rounds[0], plan.rounds[0].after, project, "neck")
    for each in plan.rounds:
        if each.evenly and each.label:
            yield _around(each.label, each, each.after, project)
    if divide is not None:
        yield _around("full yoke", divide, divide.before, project)
        chest = plan.rounds[divide.index + 1] if divide.index + 1 < len(plan.rounds) else divide
        yield _around("chest", chest, divide.after, project, "bust")
    for section in plan.sections:
        rounds = [each for each in plan.rounds if each.section == section]
        if any(_has(each, "return") for each in rounds):
            worked = [each for each in rounds if each.after and not _has(each, "return")]
            if worked:
                yield _around(f"{section}, upper arm", worked[0], worked[0].after, project, "upper_arm")
                yield _around(f"{section}, wrist", worked[-1], worked[-1].after, project, "wrist")
        yield _long(f"{section}, length", rounds, project)


def _around(name: str, round_: Round, stitches: int, project: Project, measure: str = "") -> Line:
    fabric = project.fabrics.get(round_.gauge)
    gauge = fabric.gauge if fabric is not None else Gauge(stitches=1, rounds=1)
    blocked = fabric.blocked.width_mm(stitches) if fabric is not None and fabric.blocked is not None else None
    body = project.body.get(measure)
    if body is None and measure == "bust":
        body = project.body.get("chest")
    return Line(
        name=name,
        needles_mm=gauge.width_mm(stitches),
        blocked_mm=blocked,
        measure=measure,
        body_mm=body,
    )


def _long(name: str, rounds: list[Round], project: Project) -> Line:
    needles = blocked = 0.0
    known = False
    for each in rounds:
        fabric = project.fabrics.get(each.gauge)
        if fabric is None or not (each.before and each.after):
            continue
        needles += fabric.gauge.round_mm
        blocked += (fabric.blocked or fabric.gauge).round_mm
        known = known or fabric.blocked is not None
    return Line(name=name, needles_mm=needles, blocked_mm=blocked if known else None)


def _has(round_: Round, code: str) -> bool:
    return any(run.stitch == code for run in round_.runs)


def off_by(found: Iterable[Line], project: Project) -> float | None:
    """Add up how far the ease is from the one wanted; nothing without body measurements. Unit: mm."""
    wanted = {"bust": STANDARD_EASE_MM, "upper_arm": ARM_EASE_MM, **project.wanted_ease}
    if "chest" in project.wanted_ease:
        wanted["bust"] = project.wanted_ease["chest"]
    off = {
        line.measure: abs(line.ease_mm - wanted[line.measure])
        for line in found
        if line.ease_mm is not None and line.measure in wanted
    }
    return sum(off.values()) if off else None


def ranked(blends: Iterable[Blend], project: Project) -> tuple[tuple[Blend, float | None], ...]:
    """Put the blends that can be knitted in order, the nearest to the ease wanted first."""
    scored = [(each, off_by(lines(each.plan, project), project)) for each in blends if each.plan is not None]
    return tuple(sorted(scored, key=lambda pair: (pair[1] is None, pair[1] or 0.0, bool(pair[0].label))))
