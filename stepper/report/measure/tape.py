"""The tape measure: widths from stitches and lengths from rounds, each at the gauge of its own fabric.
Pure."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from stepper.craft.gauge import Gauge
from stepper.plan.model import Run
from stepper.project.model import Project
from stepper.report.measure.fabrics import Fabrics
from stepper.report.measure.measuring import AnyRound, Measurement, body_of

LEFT_SHARE = 0.1
"""A round that leaves at most this share of its stitches unworked counts as whole: it closes short rows and
begins a stitch or two away from the beginning of the round. Chosen here."""


class Tape:
    """Measures rounds of one garment."""

    def __init__(self, project: Project) -> None:
        self.project = project
        self.fabrics = Fabrics(project)

    def around(self, name: str, round_: AnyRound, stitches: int, measure: str = "") -> Measurement:
        """Measure stitches side by side.

        Args:
            name: Of the measurement.
            round_: The round they are in.
            stitches: How many.
            measure: The part of the wearer they go around; empty for none.
        """
        fabric = self.fabrics.of(round_)
        gauge = fabric.gauge if fabric is not None else Gauge(stitches=1, rounds=1)
        blocked = fabric.blocked if fabric is not None else None
        return Measurement(
            name=name,
            needles_mm=gauge.width_mm(stitches),
            blocked_mm=blocked.width_mm(stitches) if blocked is not None else None,
            stitches=stitches,
            measure=measure,
            body_mm=body_of(self.project, measure),
        )

    def side_by_side(self, name: str, parts: Sequence[Measurement], measure: str = "") -> Measurement:
        """Add up measurements of pieces that are worn side by side."""
        blocked = any(each.blocked_mm is not None for each in parts)
        return Measurement(
            name=name,
            needles_mm=sum(each.needles_mm for each in parts),
            blocked_mm=sum(each.finished_mm for each in parts) if blocked else None,
            stitches=sum(each.stitches for each in parts),
            measure=measure,
            body_mm=body_of(self.project, measure),
        )

    def long(self, name: str, rounds: Sequence[AnyRound], measure: str = "") -> Measurement:
        """Add up the heights of rounds worked all the way around, leaving out short rows and edges."""
        whole = {id(each): is_whole(each) for each in {id(each): each for each in rounds}.values()}
        return self.tall(name, [each for each in rounds if whole[id(each)]], measure)

    def tall(
        self, name: str, rounds: Sequence[AnyRound], measure: str = "", *, share: float = 1
    ) -> Measurement:
        """Add up the heights of all these rounds, or a share of that sum."""
        alike = Counter(map(id, rounds))  # most rounds of a stretch share one record
        times: Counter[str] = Counter()
        for each in {id(each): each for each in rounds}.values():
            fabric = self.fabrics.of(each)
            if fabric is not None:
                times[fabric.name] += alike[id(each)]
        needles = blocked = 0.0
        known = False
        for key, worked in times.items():
            fabric = self.project.fabrics[key]
            needles += worked * share * fabric.gauge.round_mm
            blocked += worked * share * (fabric.blocked or fabric.gauge).round_mm
            known = known or fabric.blocked is not None
        return Measurement(
            name=name,
            needles_mm=needles,
            blocked_mm=blocked if known else None,
            measure=measure,
            body_mm=body_of(self.project, measure),
        )

    def round_mm(self, round_: AnyRound) -> float:
        """Return the finished height of a round; 0 without a gauge. Unit: mm."""
        fabric = self.fabrics.of(round_)
        return (fabric.blocked or fabric.gauge).round_mm if fabric is not None else 0.0


def is_whole(round_: AnyRound) -> bool:
    """Return whether a round adds to the length: worked all the way around, and not a first or last edge."""
    return bool(round_.before and round_.after) and count_unworked(round_) <= LEFT_SHARE * round_.before


def count_unworked(round_: AnyRound) -> int:
    """Return how many stitches a round leaves unworked. Unit: stitches."""
    return sum(item.times for item in round_.phrase if isinstance(item, Run) and item.stitch == "rest")
