"""A repeat of several rounds that its count ends early: told, since a page may mean either. No I/O."""

from __future__ import annotations

from typing import Final

from stepper.plan.drafts import Template
from stepper.plan.state.needles import Needles
from stepper.project.problems import Span

_TOLD: Final = "the repeat ends with the round that leaves this count; what follows in it"


def tell_cut_short(cycle: tuple[Template, ...], place: Span, needles: Needles, *, at: int) -> None:
    """Tell that a repeat ends with the round that leaves the count, before what is left of it.

    Args:
        cycle: The rounds that are repeated.
        place: Where the line prints the count.
        needles: The knitting in hand.
        at: How many rounds of the cycle are worked, one after the other from its first.
    """
    over = -at % len(cycle)
    if over:
        needles.warn(place, f"{_TOLD} ({over} round{'s' if over > 1 else ''}) is not worked.")


def forget_cut_short(cycle: tuple[Template, ...], needles: Needles) -> None:
    """Take back what was told if the page goes straight on with rounds of the repeat, and so says how.

    "Rep rnds 1 and 2 until 24 sts rem. Rep rnd 1 until 8 sts rem": the plain round is not meant in between.
    """
    before, _ = needles.last.repeated
    told = bool(needles.cautions) and needles.cautions[-1].message.startswith(_TOLD)
    at_once = needles.last.counted == len(needles.drafts)
    if told and at_once and len(cycle) < len(before) and all(each in before for each in cycle):
        needles.cautions.pop()
