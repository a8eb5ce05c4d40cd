"""Tell which rib stands under the stitches, where a line says "in rib" and no more. No I/O."""

from __future__ import annotations

from stepper.plan.drafts import DraftRound, Template
from stepper.plan.fabric.columns import UnknownFabricError
from stepper.plan.fabric.established import columns_of, ground
from stepper.plan.model import flatten
from stepper.plan.state.measuring_places import is_rib
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.rib_cells import has_plain_stretch


def rib_stands(needles: Needles) -> bool:
    """Return whether the stitches on the needles may be meant by "in rib"; where none can tell, they may."""
    if ground(needles) in ("plain", "garter"):
        return False
    try:
        columns, _ = columns_of(needles)
    except UnknownFabricError:
        return True
    # Every stitch of moss stitch is knit and purl in turn, and so none is of a rib.
    steady = any(len(set(column)) == 1 for column in columns)
    return steady and not has_plain_stretch(column[0][0] for column in columns)


_PLAIN = frozenset({"k"})


def rib_below(needles: Needles) -> Template | None:
    """Return the round of a rib that goes on over the plain one a yarn is begun with; None if there is none.

    "With B, knit 1 rnd, then 1 rnd in rib", in the round: a plain round begins the new colour, so that no
    purls of two colours show, and the rib goes on over it. Behind other plain rounds it is not said which
    stitches are knitted. Source: common practice.
    """
    here = needles.drafts[needles.section.start :]
    if needles.flat or len(here) < _ROUNDS or here[-1].codes != _PLAIN:
        return None
    below, plain = here[-_ROUNDS:]
    same = {below.before, below.after, plain.after, needles.count}
    new_yarn = len({_yarns(below), _yarns(plain)}) == _ROUNDS
    return below.template if is_rib(below) and len(same) == 1 and new_yarn else None


_ROUNDS = 2
"""One of the rib, and the plain one over it."""


def _yarns(draft: DraftRound) -> frozenset[str]:
    return frozenset(run.yarn for run in flatten(draft.phrase) if run.uses)
