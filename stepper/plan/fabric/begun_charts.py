"""Go on with charts that rows worked beside other stitches, and have not come to the end of. No I/O."""

from __future__ import annotations

from dataclasses import replace
from math import lcm

from stepper.plan.drafts import Template
from stepper.plan.fabric.chart_rounds import rounds_of_part
from stepper.plan.state.needles import Needles
from stepper.project.stitchwork import ChartPart, Element, Several, Until, Work, every_element


def go_on_with_charts(cycle: tuple[Template, ...], needles: Needles) -> tuple[Template, ...]:
    """Return how rows go on that worked only some rows of a chart: the same, with the next row of it.

    "Set-up rnd: K4, work rnd 1 of chart rope over next 8 sts. Cont in patt as set" means round 2 next.

    Args:
        cycle: The rows that set up the pattern.
        needles: The knitting in hand.

    Returns:
        In rows the last two, else the last one; empty if no chart is worked in part.
    """
    charted = [part for template in cycle for part in chart_parts_in(template.elements)]
    parts = [part for part in charted if part.number is not None]
    rows = {part.name.lower(): rounds_of_part(part, needles) for part in parts}
    worked: dict[str, set[int | None]] = {}
    for part in parts:
        worked.setdefault(part.name.lower(), set()).add(part.number)
    if all(len(numbers) >= rows[name] for name, numbers in worked.items()):
        return ()
    period = 2 if needles.flat and len(cycle) > 1 else 1
    return tuple(replace(row, elements=tuple(map(_next, row.elements))) for row in cycle[-period:])


def rounds_of_cycle(cycle: tuple[Template, ...], needles: Needles) -> int:
    """Return after how many rounds a repeat starts over; a chart row by row takes all of its rows."""
    parts = [part for template in cycle for part in chart_parts_in(template.elements)]
    return lcm(len(cycle), *(rounds_of_part(part, needles) or 1 for part in parts if part.number is None))


def chart_parts_in(elements: tuple[Element, ...]) -> list[ChartPart]:
    """Return the charts and patterns of the page that a round works over part of its stitches, in order."""
    return [one for one in every_element(elements) if isinstance(one, ChartPart)]


def asks_pattern(elements: tuple[Element, ...]) -> bool:
    """Return whether a round goes on with the pattern somewhere."""
    for one in elements:
        if isinstance(one, Several):
            if asks_pattern(one.elements):
                return True
        elif isinstance(one, _IN_PATTERN) and one.stitch == "pattern":
            return True
    return False


_IN_PATTERN = (Until, Work)
"""Elements that may be worked in pattern; every round of every size is looked through for them."""


def _next(element: Element) -> Element:
    if isinstance(element, Several):
        return replace(element, elements=tuple(map(_next, element.elements)))
    return replace(element, number=None) if isinstance(element, ChartPart) else element
