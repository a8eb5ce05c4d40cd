"""What kind of knitting a round is, for the pace: the kinds of `stepper.craft.pace_by_kind`. No I/O."""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache

from stepper.craft.pace_by_kind import KnittingKind
from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Round, Run

TEXTURE_SHARE = 0.1
"""From this share of stitches other than knit and purl, a round is slow. This project's choice."""
RIB_SHARE = 0.2
"""From this share of the rarer of knit and purl, a round is rib. This project's choice."""

_KNITS = frozenset({"k", "k tbl"})
_PURLS = frozenset({"p", "p tbl"})


def kind_of(round_: Round) -> KnittingKind:
    """Return what kind of knitting a round is; never `UNKNOWN`."""
    return _kind(round_.runs)


@lru_cache(maxsize=1024)
def _kind(runs: tuple[Run, ...]) -> KnittingKind:
    worked = [run for run in runs if run.progress and stitch(run.stitch).kind is not Kind.SHIFT]
    total = sum(run.progress for run in worked)
    made = [run for run in worked if stitch(run.stitch).kind is not Kind.EDGE]
    if 2 * _sum(made) < total:
        return KnittingKind.EDGE
    if len({run.yarn for run in made}) > 1:
        return KnittingKind.COLOURWORK
    knits = _sum(run for run in made if run.stitch in _KNITS)
    purls = _sum(run for run in made if run.stitch in _PURLS)
    if total - knits - purls > TEXTURE_SHARE * total:
        return KnittingKind.TEXTURE
    return KnittingKind.RIB if min(knits, purls) > RIB_SHARE * total else KnittingKind.PLAIN


def _sum(runs: Iterable[Run]) -> int:
    return sum(run.progress for run in runs)
