"""A repeat of several rounds that its count ends early: told, since a page may mean either. No I/O."""

from __future__ import annotations

from stepper.plan.drafts import Template
from stepper.plan.lines.rounds import work_template
from stepper.plan.state.needles import Needles
from stepper.project.problems import Span


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
        rest = f"what follows in it ({over} round{'s' if over > 1 else ''}) is not worked."
        needles.warn(place, f"the repeat ends with the round that leaves this count; {rest}", "cut short")


def work_what_was_cut_short(needles: Needles) -> bool:
    """Work the rest of a repeat that its count ended early, if the line in hand is for the side behind it.

    "Rep rows 3 and 4 until there are 137 sts. Next row (RS): Knit." names the side that comes behind row 4;
    two right-side rows in turn nobody can knit.

    Returns:
        Whether there was such a rest, of an odd number of rows that shape nothing.
    """
    cycle, at = needles.last.repeated
    rest = cycle[at:] if at else ()
    if not _is_told(needles) or needles.last.counted != len(needles.drafts) or len(rest) % 2 == 0:
        return False
    section = needles.drafts[needles.section.start :]
    worked = {draft.template: draft for draft in section if draft.template in rest}
    if any(row not in worked or worked[row].before != worked[row].after for row in rest):
        return False
    place = needles.cautions.pop().place
    for row in rest:
        work_template(row, needles)
    rows = f"{len(rest)} row{'s' if len(rest) > 1 else ''}"
    needles.warn(place, f"the repeat goes on behind this count for {rows}, to the side of the next line.")
    return True


def forget_cut_short(cycle: tuple[Template, ...], needles: Needles) -> None:
    """Take back what was told if the page goes straight on with rounds of the repeat, and so says how.

    "Rep rnds 1 and 2 until 24 sts rem. Rep rnd 1 until 8 sts rem": the plain round is not meant in between.
    """
    before, _ = needles.last.repeated
    at_once = needles.last.counted == len(needles.drafts)
    if at_once and len(cycle) < len(before) and all(each in before for each in cycle):
        take_back_cut_short(needles)


def take_back_cut_short(needles: Needles) -> None:
    """Take back what was told of the repeat last worked, if it was: the page says itself where that ends."""
    if _is_told(needles):
        needles.cautions.pop()


def _is_told(needles: Needles) -> bool:
    return bool(needles.cautions) and needles.cautions[-1].kind == "cut short"
