"""Pace by kind of knitting: plain rounds go faster than rib, rib faster than two colours.

Theory of operation. Each kind is measured by itself (`stepper.craft.pace`). A kind with little data leans on
what is usual for it, adjusted to the knitter: someone who knits plain rounds a third faster than most is
assumed to knit the rest a third faster too, until it is measured. Her tempo leans on the usual one in the
same way: a doorbell in the first step of an evening says nothing of a garment. No I/O, no clock.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from enum import StrEnum
from types import MappingProxyType
from typing import Final

from stepper.craft.pace import BREAK_FACTOR, Pace, TimedStretch, measure_pace, weighted_median
from stepper.records import dataclass


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
        breaks by `BREAK_FACTOR` over a weighted median in which the usual pace stands for as many; derived
        here.
    """
    typical = _typical([pair for kind, each in stretches.items() for pair in _slownesses(kind, each)], 1.0)
    found: dict[KnittingKind, Pace] = {}
    usual = really = LEANING * 60 / USUAL_PER_MINUTE[KnittingKind.PLAIN]
    weights: dict[KnittingKind, int] = {}
    for kind, each in stretches.items():
        steady, idle = _without_breaks(kind, each, typical)
        if not steady:
            continue
        weights[kind] = sum(stretch.stitches for stretch in steady)
        pace = measure_pace(steady)
        found[kind] = Pace(
            stitches_per_minute=pace.stitches_per_minute, break_seconds=pace.break_seconds + idle
        )
        usual += weights[kind] * _usual_s(kind)
        really += pace.seconds_for(weights[kind])
    tempo = usual / really
    return PaceByKind(
        by_kind=MappingProxyType(
            {
                kind: _leaning(found.get(kind), weights.get(kind, 0), each * tempo)
                for kind, each in USUAL_PER_MINUTE.items()
            }
        ),
        tempo=tempo,
    )


def _usual_s(kind: KnittingKind) -> float:
    """Return the usual time for a stitch; an unknown kind counts as plain. Unit: s."""
    return 60 / USUAL_PER_MINUTE.get(kind, USUAL_PER_MINUTE[KnittingKind.PLAIN])


def _slownesses(kind: KnittingKind, stretches: Sequence[TimedStretch]) -> list[tuple[float, int]]:
    """Return how many times slower than usual each stretch is, with its stitches."""
    return [(each.seconds / each.stitches / _usual_s(kind), each.stitches) for each in stretches]


def _typical(slownesses: list[tuple[float, int]], usual: float) -> float:
    """Return how many times slower than usual she knits: nearly `usual` as long as little is known.

    A median, so that breaks cannot shift it. The usual pace is among its values, so that a first step with a
    break in it is known for one; and no step, however long, weighs more than a third of it.
    """
    capped = [(slowness, min(stitches, LEANING // 3)) for slowness, stitches in slownesses]
    return weighted_median([*capped, (usual, LEANING)])


def _without_breaks(
    kind: KnittingKind, stretches: Sequence[TimedStretch], typical: float
) -> tuple[list[TimedStretch], float]:
    """Leave out stretches with a break in them.

    Args:
        typical: How many times slower than usual she knits, by all she has knitted.

    Returns:
        The others, and the time in breaks. Unit: s.
    """
    own = _typical(_slownesses(kind, stretches), typical)
    most = BREAK_FACTOR * own * _usual_s(kind)
    steady = [each for each in stretches if each.seconds / each.stitches <= most]
    slow = [each for each in stretches if each.seconds / each.stitches > most]
    idle = sum(each.seconds - each.stitches * own * _usual_s(kind) for each in slow)
    return steady, idle


def _leaning(found: Pace | None, stitches: int, usual: float) -> Pace:
    if found is None:
        return Pace(stitches_per_minute=usual, break_seconds=0.0, measured=False)
    minutes = stitches / found.stitches_per_minute + LEANING / usual
    return Pace(stitches_per_minute=(stitches + LEANING) / minutes, break_seconds=found.break_seconds)
