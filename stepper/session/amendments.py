"""Keep what is recorded of the knitting true as work is taken back, lengthened or spaced anew. Pure.

These are the parts of what events make of the knitting (`stepper.session.events`) that take more than a line;
they know the records of the state and no event.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.under_way.absorb import Mend
from stepper.plan.under_way.lengthen import LengthCorrection
from stepper.plan.under_way.respace import Respacing
from stepper.session.state import Knitting, Position, Verified


def go_back_to(knitting: Knitting, place: Position) -> Knitting:
    """Go to a place, dropping counts and lifelines beyond it, which are no longer in the fabric."""
    verified = knitting.verified
    if verified is not None and verified.place > place:
        verified = None
    lifelines = tuple(each for each in knitting.lifelines if each <= place)
    mends = tuple(each for each in knitting.mends if not _is_ripped(each, knitting.verified, place))
    return replace(knitting, place=place, verified=verified, lifelines=lifelines, mends=mends)


def _is_ripped(mend: Mend, verified: Verified | None, place: Position) -> bool:
    """Return whether what made a count wrong is out of the fabric, ripped back to where it was right."""
    sound = verified.place if verified is not None else Position()
    return place.index < mend.origin and place <= sound


def move_mends(mends: tuple[Mend, ...], end: int, longer_by: int) -> tuple[Mend, ...]:
    """Move what comes after a stretch that became longer or shorter.

    Args:
        mends: Counts that are off.
        end: Index of the first round after the stretch, as it was before.
        longer_by: Below 0 for shorter. Unit: rounds.
    """
    return tuple(replace(each, index=each.index + longer_by * (each.index >= end)) for each in mends)


def replace_correction(
    corrections: tuple[LengthCorrection, ...], new: LengthCorrection
) -> tuple[LengthCorrection, ...]:
    """Replace a stretch's correction by a new one; they stay in the order of the stretches."""
    others = [each for each in corrections if each.stretch != new.stretch]
    return tuple(sorted([*others, new], key=lambda each: each.stretch))


def replace_respacing(respacings: tuple[Respacing, ...], new: Respacing) -> tuple[Respacing, ...]:
    """Replace a round's respacing by a new one, which becomes the last."""
    others = [each for each in respacings if (each.index, each.section) != (new.index, new.section)]
    return (*others, new)
