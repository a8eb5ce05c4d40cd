"""What the plan needs to know of the materials: loops by gauge, skeins by yarn, the float limit.

Records, and how they follow from the project. No I/O.
"""

from __future__ import annotations

from dataclasses import field

from stepper.craft.loop_length import Estimate, loop_by_rule_mm, loop_by_state, loop_estimate, loop_mm
from stepper.craft.skeins import Skein, loop_mm_from_weight
from stepper.project.model import Fabric, Project, Swatch
from stepper.records import dataclass

FLOAT_MM = 25.0
"""Longest float left free if the file says nothing. Source: an inch (J. Richards, "Stranding and catching
in the back"), here as 2.5 cm. Unit: mm."""

SCALE_G = 0.5
"""Error of a kitchen scale. Common practice. Unit: g."""
HAND_VARIES = 0.03
"""How far one hand varies within one fabric. An assumption of this project."""
OTHER_FABRIC = 0.05
"""Extra uncertainty if a swatch of one fabric is used for another. An assumption of this project."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Loop:
    """One plain stitch of a fabric."""

    length: Estimate
    """Yarn in it."""
    stitch_mm: float
    """Its width. Unit: mm."""
    round_mm: float
    """Height of a round. Unit: mm."""
    needle_mm: float | None
    """Needle the gauge was knitted on. Unit: mm."""
    weighed: bool = False
    """Whether a swatch was weighed for it, rather than only counted."""
    as_knitted_mm: float = 0.0
    """Length of the loop by the gauge as knitted. Unit: mm."""
    washed_mm: float = 0.0
    """Length of the loop by the gauge after blocking, or by the only gauge.
    Unit: mm."""
    by_rule_mm: float = 0.0
    """Yarn in a stitch by the handbooks' rule of area. Unit: mm."""
    both_states: bool = False
    """Whether the file gives the gauge before and after blocking."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Stock:
    """What there is of one yarn."""

    skein: Skein
    bought: float | None
    """Skeins in the house; None if the file does not say. Unit: skeins."""

    @property
    def metres(self) -> float | None:
        """Length in the house. Unit: m."""
        return None if self.bought is None else self.bought * self.skein.metres


@dataclass(frozen=True, slots=True, kw_only=True)
class Materials:
    """The fabrics and yarns of a garment."""

    loops: dict[str, Loop] = field(default_factory=dict)
    """By the name of the gauge."""
    stocks: dict[str, Stock] = field(default_factory=dict)
    """By the key of the yarn; yarns without a skein are left out."""

    def loop(self, gauge: str) -> Loop | None:
        """Return the loop of a gauge, or of the file's first gauge if a section names none."""
        return self.loops.get(gauge) or next(iter(self.loops.values()), None)


def materials_of(project: Project) -> Materials:
    """Work out the loops of every gauge and the stock of every yarn."""
    stocks = {
        key: Stock(skein=Skein(grams=yarn.grams, metres=yarn.metres), bought=yarn.bought)
        for key, yarn in project.yarns.items()
        if yarn.grams is not None and yarn.metres is not None
    }
    return Materials(loops=_loops(project, stocks), stocks=stocks)


def float_limit(project: Project, fabric: Fabric) -> tuple[int, float]:
    """Return the longest float left free in a fabric.

    Returns:
        Stitches, and the length they stand for, 0 if the file counts stitches. Unit: stitches, mm.
    """
    if project.float_stitches is not None:
        return project.float_stitches, 0.0
    limit = project.float_mm or FLOAT_MM
    # The tiny addition makes up for binary fractions; one stitch is always left free, however wide it is.
    return max(1, int(limit / fabric.gauge.stitch_mm + 1e-9)), limit


def _loops(project: Project, stocks: dict[str, Stock]) -> dict[str, Loop]:
    measured = {
        name: _swatch_loop_mm(fabric.swatch, stocks)
        for name, fabric in project.fabrics.items()
        if fabric.swatch is not None
    }
    weighed = {name: value for name, value in measured.items() if value is not None}
    loops = {}
    for name, fabric in project.fabrics.items():
        length = loop_estimate(fabric.gauge, fabric.blocked)
        as_knitted, washed = loop_by_state(fabric.gauge, fabric.blocked)
        if weighed:
            length = _by_swatch(project, name, weighed)
        loops[name] = Loop(
            length=length,
            stitch_mm=fabric.gauge.stitch_mm,
            round_mm=fabric.gauge.round_mm,
            needle_mm=fabric.needle_mm,
            weighed=name in weighed,
            as_knitted_mm=as_knitted,
            washed_mm=washed,
            by_rule_mm=loop_by_rule_mm(fabric.gauge, fabric.blocked),
            both_states=fabric.blocked is not None,
        )
    return loops


def _swatch_loop_mm(swatch: Swatch, stocks: dict[str, Stock]) -> float | None:
    """Return the length of a loop of a weighed swatch; None if its yarn has no skein."""
    stock = stocks.get(swatch.yarn) if swatch.yarn else next(iter(stocks.values()), None)
    if stock is None:
        return None
    # Its cast-on and its bind-off take about a row each.
    loops = max(1, round(swatch.stitches * (swatch.rounds + 2)))
    return loop_mm_from_weight(swatch.grams, stock.skein, loops=loops)


def _by_swatch(project: Project, name: str, weighed: dict[str, float]) -> Estimate:
    """Take the loop from the fabric's own swatch, or scale it by how far another swatch was off."""
    own = name if name in weighed else next(iter(weighed))
    swatch = project.fabrics[own].swatch
    assert swatch is not None  # it was weighed
    likely = weighed[own]
    off = HAND_VARIES + SCALE_G / swatch.grams
    if own != name:
        likely *= loop_mm(project.fabrics[name].gauge) / loop_mm(project.fabrics[own].gauge)
        off += OTHER_FABRIC
    return Estimate(low_mm=likely * (1 - off), likely_mm=likely, high_mm=likely * (1 + off))
