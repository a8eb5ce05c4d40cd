"""Go on with charts that rows worked beside other stitches, and have not come to the end of. No I/O."""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.drafts import Template
from stepper.plan.state.needles import Needles
from stepper.project.stitchwork import ChartPart, Element, Several


def go_on_with_charts(cycle: tuple[Template, ...], needles: Needles) -> tuple[Template, ...]:
    """Return how rows go on that worked only some rows of a chart: the same, with the next row of it.

    "Set-up rnd: K4, work rnd 1 of chart rope over next 8 sts. Cont in patt as set" means round 2 next.

    Args:
        cycle: The rows that set up the pattern.
        needles: The knitting in hand.

    Returns:
        In rows the last two, else the last one; empty if no chart is worked in part.
    """
    parts = [part for template in cycle for part in _parts(template.elements) if part.number is not None]
    rows = {name.lower(): len(chart.rounds) for name, chart in needles.project.charts.items()}
    worked: dict[str, set[int]] = {}
    for part in parts:
        worked.setdefault(part.name.lower(), set()).add(part.number or 0)
    if all(len(numbers) >= rows.get(name, 0) for name, numbers in worked.items()):
        return ()
    period = 2 if needles.flat and len(cycle) > 1 else 1
    return tuple(replace(row, elements=tuple(map(_next, row.elements))) for row in cycle[-period:])


def _parts(elements: tuple[Element, ...]) -> list[ChartPart]:
    found: list[ChartPart] = []
    for element in elements:
        if isinstance(element, Several):
            found += _parts(element.elements)
        elif isinstance(element, ChartPart):
            found.append(element)
    return found


def _next(element: Element) -> Element:
    if isinstance(element, Several):
        return replace(element, elements=tuple(map(_next, element.elements)))
    return replace(element, number=None) if isinstance(element, ChartPart) else element
