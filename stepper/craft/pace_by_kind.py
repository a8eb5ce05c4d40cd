"""Pace by kind of knitting: plain rounds go faster than rib, rib faster than two colours.

Theory of operation. Each kind is measured by itself (`stepper.craft.pace`). A kind with little data leans on
what is usual for it, adjusted to the knitter: someone who knits plain rounds a third faster than most is
assumed to knit the rest a third faster too, until it is measured. No I/O, no clock.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType
from typing import Final

from stepper.craft.pace import Pace, TimedStretch, measure_pace


class KnittingKind(StrEnum):
    """A kind of knitting, for its pace."""

    PLAIN = "plain"
    RIB = "rib"
    TEXTURE = "texture"
    COLOURWORK = "colourwork"
    """Two yarns or more in a round."""
    EDGE = "edge"
    """Casting on, binding off."""
    UNKNOWN = ""
    """Where an old journal does not tell."""


USUAL_PER_MINUTE: Final[Mapping[KnittingKind, float]] = MappingProxyType(
    {
        KnittingKind.PLAIN: 30.0,
        KnittingKind.RIB: 25.0,
        KnittingKind.TEXTURE: 22.0,
        KnittingKind.COLOURWORK: 20.0,
        KnittingKind.EDGE: 20.0,
    }
)
"""Paces before anything is measured. Source: the usual range of 20 to 45, about 30, slower for rib and
colourwork, is common practice; the individual figures are assumptions of this project. Unit: stitches per
minute."""

LEANING: Final = 300
"""Stitches measured in a kind before its own pace outweighs the usual one. This project's choice."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PaceByKind:
    """How fast she knits, kind by kind."""

    by_kind: Mapping[KnittingKind, Pace]
    """Pace of every kind of `USUAL_PER_MINUTE`; one that was not measured says so."""
    tempo: float
    """How many times faster than usual she knits. Range: above 0."""

    @property
    def measured(self) -> bool:
        """Whether any kind was measured."""
        return any(pace.measured for pace in self.by_kind.values())

    def of(self, kind: KnittingKind) -> Pace:
        """Return the pace of a kind; an unknown kind has the pace of a plain round."""
        return self.by_kind.get(kind) or self.by_kind[KnittingKind.PLAIN]

    def seconds_for(self, work: Mapping[KnittingKind, float]) -> float:
        """Return the knitting time of stitches by their kind, breaks left out. Unit: s.

        Raises:
            ValueError: A count is below 0.
        """
        return sum(self.of(kind).seconds_for(stitches) for kind, stitches in work.items())


def measure_pace_by_kind(stretches: Mapping[KnittingKind, Sequence[TimedStretch]]) -> PaceByKind:
    """Measure the pace of each kind.

    Args:
        stretches: By kind; a kind that is not in `USUAL_PER_MINUTE` counts towards her tempo as plain.

    Returns:
        A pace for every kind. Always: between what was measured and what is usual at her tempo.

    Source: a mean of measured and usual time for a stitch, the usual one weighted as `LEANING` stitches;
        derived here.
    """
    found = {kind: measure_pace(each) for kind, each in stretches.items() if each}
    weights = {kind: sum(stretch.stitches for stretch in stretches[kind]) for kind in found}
    usual = sum(
        weights[kind] / USUAL_PER_MINUTE.get(kind, USUAL_PER_MINUTE[KnittingKind.PLAIN]) for kind in found
    )
    really = sum(weights[kind] / pace.stitches_per_minute for kind, pace in found.items())
    tempo = usual / really if found else 1.0
    return PaceByKind(
        by_kind=MappingProxyType(
            {
                kind: _leaning(found.get(kind), weights.get(kind, 0), each * tempo)
                for kind, each in USUAL_PER_MINUTE.items()
            }
        ),
        tempo=tempo,
    )


def _leaning(found: Pace | None, stitches: int, usual: float) -> Pace:
    if found is None:
        return Pace(stitches_per_minute=usual, break_seconds=0.0, measured=False)
    minutes = stitches / found.stitches_per_minute + LEANING / usual
    return Pace(stitches_per_minute=(stitches + LEANING) / minutes, break_seconds=found.break_seconds)
