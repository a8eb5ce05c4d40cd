"""The yoke from above: which rounds it is made of, and how wide the neck is beside it. No I/O.

A ring is a round, the neck inside. Both the full screen and the page for print draw from these.
"""

from __future__ import annotations

from collections.abc import Sequence

from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Round
from stepper.records import dataclass

NARROWEST, WIDEST = 0.15, 0.8
"""Share of the radius that is left to the neck at least and at most, so that every ring can be seen."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Yoke:
    """A yoke as rings."""

    rounds: tuple[Round, ...]
    """From the neck outwards."""
    inner: float
    """Radius of the neck, as a share of the whole. Range: above 0, below 1."""


def yoke_of(rounds: Sequence[Round]) -> Yoke | None:
    """Find the yoke: the rounds before two groups of stitches, the sleeves, go on hold in one round.

    If none does, it is the first section, provided that it is called a yoke. None if there is no yoke, or if
    it is not worked in the round: one thumb or an instep on hold makes no yoke of a mitten or a sock.
    """
    end = next((each.index for each in rounds if _divides(each)), None)
    if end is None:
        section = rounds[0].section if rounds else ""
        if "yoke" not in section.casefold():
            return None
        end = next((each.index for each in rounds if each.section != section), len(rounds))
    chosen = tuple(each for each in rounds[:end] if each.progress and not each.flat and not _casts_on(each))
    if len(chosen) < 2:
        return None
    neck = (chosen[0].before or chosen[0].after) / max(each.after for each in chosen)
    return Yoke(rounds=chosen, inner=min(WIDEST, max(NARROWEST, neck)))


def _divides(round_: Round) -> bool:
    return len({run.yarn for run in round_.runs if run.stitch == "hold"}) > 1


def _casts_on(round_: Round) -> bool:
    return all(stitch(run.stitch).kind is Kind.EDGE for run in round_.runs)
