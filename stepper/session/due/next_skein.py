"""Another skein of the same yarn, ready before the one in hand ends. Pure.

By the label and what the rounds take, or by the ball she weighed last. Rounds are named as about, since
neither a label nor a hand is exact; a yarn whose skein the file does not describe is never spoken of.
"""

from __future__ import annotations

from collections.abc import Iterator

from stepper.plan.model import Plan
from stepper.plan.yarn.skein_ends import SkeinEnd, find_skein_ends
from stepper.records import dataclass
from stepper.session.effects import Effect
from stepper.session.state import Knitting, Position

SKEIN_ROUNDS = 2
"""Rounds before a skein may end that the next is named. Chosen here: as for other things to fetch."""


@dataclass(frozen=True, slots=True, kw_only=True)
class GetSkein(Effect):
    """Say that a skein comes to its end."""

    end: SkeinEnd
    here: int
    """The round that begins now."""


def find_ends_ahead(plan: Plan, knitting: Knitting) -> tuple[SkeinEnd, ...]:
    """Return where the skeins of all yarns end, in the order of the rounds."""
    weighed = {each.yarn: each.weighing for each in knitting.balls}
    found = [end for yarn in plan.yarns for end in find_skein_ends(plan, yarn, weighed.get(yarn))]
    return tuple(sorted(found, key=lambda end: end.likely))


def tell_skeins(plan: Plan, knitting: Knitting, origin: Position, place: Position) -> Iterator[GetSkein]:
    """Tell which skeins may end in the rounds that came into sight when the knitting moved on.

    Args:
        plan: The plan as knitted.
        knitting: As it stands now; its weighings count.
        origin: Where it stood.
        place: Where it stands now, in a later round.
    """
    for end in find_ends_ahead(plan, knitting):
        new = origin.index + SKEIN_ROUNDS < end.soonest <= place.index + SKEIN_ROUNDS
        if new and end.likely >= place.index:
            yield GetSkein(end=end, here=place.index)
