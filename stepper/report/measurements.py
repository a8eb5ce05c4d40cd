"""What the garment measures, line by line, beside the wearer. Pure."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby
from typing import Protocol

from stepper.craft.fit import fit_word
from stepper.craft.gauge import Gauge
from stepper.plan.model import Item, Run
from stepper.project.model import Fabric, Project

_AROUND = ("head", "hand", "foot")
# What a piece without a yoke goes around, whichever the file measures.


class AnyRound(Protocol):
    """A round as far as measuring needs it: one of the plan, or of a blend that was tried."""

    @property
    def section(self) -> str:
        """Name of its section."""
        ...

    @property
    def before(self) -> int:
        """Stitches it begins with."""
        ...

    @property
    def after(self) -> int:
        """Stitches it ends with."""
        ...

    @property
    def label(self) -> str | None:
        """Label of the line it begins."""
        ...

    @property
    def evenly(self) -> bool:
        """Whether its changes are spread evenly."""
        ...

    @property
    def flat(self) -> bool:
        """Whether it is a row."""
        ...

    @property
    def gauge(self) -> str:
        """Name of its gauge."""
        ...

    @property
    def phrase(self) -> tuple[Item, ...]:
        """Its stitches."""
        ...


@dataclass(frozen=True, slots=True, kw_only=True)
class Measurement:
    """One measurement of the garment."""

    name: str
    needles_mm: float
    """As knitted. Unit: mm."""
    blocked_mm: float | None
    """After blocking; None if the file has no blocked gauge. Unit: mm."""
    stitches: int = 0
    """Stitches around; 0 for a length."""
    measure: str = ""
    """Name of the matching measurement of the wearer; empty for none."""
    body_mm: float | None = None
    """The wearer's measurement. Unit: mm."""

    @property
    def finished_mm(self) -> float:
        """As it is worn: blocked if that is known. Unit: mm."""
        return self.blocked_mm or self.needles_mm

    @property
    def ease_mm(self) -> float | None:
        """Finished garment less body. Unit: mm."""
        return None if self.body_mm is None else self.finished_mm - self.body_mm

    @property
    def word(self) -> str:
        """The word for its fit; empty except at the chest."""
        return fit_word(self.ease_mm) if self.measure == "bust" and self.ease_mm is not None else ""


def measure_garment(rounds: Sequence[AnyRound], project: Project) -> tuple[Measurement, ...]:
    """Measure a garment at every place that matters, as far as it has them.

    A garment that puts stitches on hold for two parts or more is measured as one worked from the neck down;
    any other goes around head, hand or foot, whichever the file measures. Sections are measured in length.
    """
    divide = find_divide(rounds)
    found = _yoke(rounds, divide, project) if divide is not None else _piece(rounds, project)
    return tuple(found)


def find_divide(rounds: Sequence[AnyRound]) -> int | None:
    """Find the round that puts the sleeves on hold; None in a garment without a yoke."""
    for index, each in enumerate(rounds):
        held = {item.yarn for item in each.phrase if isinstance(item, Run) and item.stitch == "hold"}
        if len(held) > 1:
            return index
    return None


def _yoke(rounds: Sequence[AnyRound], divide: int, project: Project) -> Iterator[Measurement]:
    first, parted = rounds[0], rounds[divide]
    yield _around("neck", first, first.after, project, "neck")
    for each in rounds[:divide]:
        if each.evenly and each.label:
            yield _around(each.label, each, each.after, project)
    yield _around("full yoke", parted, parted.before, project)
    below = rounds[divide + 1] if divide + 1 < len(rounds) else parted
    yield _around("chest", below, parted.after, project, "bust")
    lower = _lower_edge(rounds, divide)
    if lower is not None:
        yield _around("lower edge", lower, lower.after, project, "hip")
    neckband = first.section if first.section != parted.section else ""
    yield _long("yoke depth", [each for each in rounds[:divide] if each.section != neckband], project)
    for section, worked in _by_section(rounds):
        once = list({id(each): each for each in worked}.values())  # most rounds of a stretch are one record
        if any(_has(each, "return") for each in once):
            sleeve = [each for each in once if each.after and not _has(each, "return")]
            if sleeve:
                yield _around(f"{section}, upper arm", sleeve[0], sleeve[0].after, project, "upper_arm")
                yield _around(f"{section}, wrist", sleeve[-1], sleeve[-1].after, project, "wrist")
            yield _long(f"{section}, length", worked, project, "arm_length")
        elif section != parted.section:
            yield _long(f"{section}, length", worked, project)


def _piece(rounds: Sequence[AnyRound], project: Project) -> Iterator[Measurement]:
    """Measure a hat, mitten or sock around each section, at the width it keeps longest, and in length."""
    measure = next((name for name in _AROUND if name in project.body), "")
    named = any(measure in section for section, _ in _by_section(rounds))
    for section, worked in _by_section(rounds):
        counts = Counter(each.after for each in worked if each.after == each.before and each.after)
        if all(each.flat for each in worked if each.after and each.before):
            widest = max(worked, key=lambda each: each.after)
            yield _around(f"{section}, width", widest, widest.after, project)
        elif counts:
            stitches, _ = counts.most_common(1)[0]
            here = next(each for each in worked if each.after == stitches == each.before)
            fits = measure if measure == "head" or measure in section or not named else ""
            yield _around(f"{section}, around", here, stitches, project, fits)
        yield _long(f"{section}, length", worked, project)


def _by_section(rounds: Sequence[AnyRound]) -> list[tuple[str, list[AnyRound]]]:
    return [(name, list(worked)) for name, worked in groupby(rounds, key=lambda each: each.section)]


def _lower_edge(rounds: Sequence[AnyRound], divide: int) -> AnyRound | None:
    """Return the last round of the body before it is bound off."""
    last = None
    for each in rounds[divide + 1 :]:
        if not each.before or not each.after:
            break
        last = each
    return last


def _around(name: str, round_: AnyRound, stitches: int, project: Project, measure: str = "") -> Measurement:
    fabric = project.fabrics.get(round_.gauge)
    gauge = fabric.gauge if fabric is not None else Gauge(stitches=1, rounds=1)
    blocked = fabric.blocked.width_mm(stitches) if fabric is not None and fabric.blocked is not None else None
    return Measurement(
        name=name,
        needles_mm=gauge.width_mm(stitches),
        blocked_mm=blocked,
        stitches=stitches,
        measure=measure,
        body_mm=_body(project, measure),
    )


def _body(project: Project, measure: str) -> float | None:
    if measure == "bust":
        return project.body.get("bust", project.body.get("chest"))
    return project.body.get(measure)


def _long(name: str, rounds: Sequence[AnyRound], project: Project, measure: str = "") -> Measurement:
    """Add up the heights of rounds worked all the way around; short rows and edges add nothing."""
    times_worked = Counter(map(id, rounds))
    heights: Counter[str] = Counter()
    for each in {id(each): each for each in rounds}.values():
        if _whole(each):
            heights[each.gauge] += times_worked[id(each)]
    needles = blocked = 0.0
    known = False
    for gauge, times in heights.items():
        fabric: Fabric | None = project.fabrics.get(gauge)
        if fabric is None:
            continue
        needles += times * fabric.gauge.round_mm
        blocked += times * (fabric.blocked or fabric.gauge).round_mm
        known = known or fabric.blocked is not None
    return Measurement(
        name=name,
        needles_mm=needles,
        blocked_mm=blocked if known else None,
        measure=measure,
        body_mm=_body(project, measure),
    )


def _whole(round_: AnyRound) -> bool:
    if not (round_.before and round_.after):
        return False
    return not any(isinstance(item, Run) and item.stitch == "rest" for item in round_.phrase)


def _has(round_: AnyRound, code: str) -> bool:
    return any(isinstance(item, Run) and item.stitch == code for item in round_.phrase)
