"""The rows with which charts and panels go on that were worked only in part beside other stitches. No I/O.

What is shaped beside a panel before it was worked once through has its columns all the same: the page shows
its rows.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import replace
from math import lcm

from stepper.plan.drafts import DraftRound, Template
from stepper.plan.fabric.begun_charts import asks_pattern, chart_parts_in
from stepper.plan.fabric.chart_rounds import charts_by_name, drawn_round, rounds_of_part
from stepper.plan.model import flatten, other_side
from stepper.plan.state.in_hand import Established
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.phrase import work_phrase
from stepper.plan.stitches.round_sources import ChartRound, RoundSources
from stepper.plan.stitches.row_elements import MisfitError
from stepper.plan.stitches.row_facing import face, mirror_places
from stepper.project.pattern_heads import key_called
from stepper.project.stitchwork import ChartPart

_MOST = 240
"""Rows on which several panels come together that are worked out. Unit: rows."""


def rows_ahead(known: Established, needles: Needles) -> list[DraftRound]:
    """Return the rows after the last of a pattern, as they would be worked, until its panels come together.

    Returns:
        As many rows as the pattern with its charts repeats over; none where nobody can tell them.
    """
    last, cycle = needles.drafts[known.end - 1], known.cycle
    parts = [part for template in cycle for part in chart_parts_in(template.elements)]
    lengths = [rounds_of_part(part, needles) for part in parts]
    if not parts or not all(lengths) or (last.flat and len(cycle) % 2):
        return []
    reached = {_key(part, needles): _reached(part, known, needles) for part in parts}
    since = needles.drafts[known.end :]
    if not all(_works(draft, key, needles) for draft in since for key in reached):
        return []  # a row since was worked over a panel in other stitches, perhaps
    period = lcm(len(cycle), *lengths)
    if not all(reached.values()) or period > _MOST:
        return []
    ahead: list[DraftRound] = []
    side = last.side
    for more in range(1, period + 1):
        side = other_side(side) if last.flat else side
        template = cycle[(known.end - known.start + more - 1) % len(cycle)]
        numbers = {key: at + more for key, at in reached.items()}
        try:
            ahead.append(_as_worked(template, last, side, numbers, needles))
        except MisfitError:
            return []
    return ahead if all(draft.before == draft.after for draft in ahead) else []


def count_on_beside(template: Template, named: Collection[str], needles: Needles) -> None:
    """Count the row just worked "in pattern" for the charts and panels that the pattern holds.

    Args:
        template: The row.
        named: Keys of the charts whose row it named itself.
        needles: The knitting in hand.
    """
    if not asks_pattern(template.elements):
        return
    parts = {
        _key(part, needles): part
        for row in needles.established.cycle
        for part in chart_parts_in(row.elements)
    }
    for key, part in parts.items():
        rows = rounds_of_part(part, needles)
        if rows and key not in named and key in needles.last.charts:
            needles.last.charts[key] = needles.last.charts[key] % rows + 1


def _reached(part: ChartPart, known: Established, needles: Needles) -> int:
    """Return the row of a panel that the last row of the pattern worked; 0 if that is not known."""
    key = _key(part, needles)
    number, rows = needles.last.charts.get(key, 0), rounds_of_part(part, needles)
    since = sum(_works(draft, key, needles) for draft in needles.drafts[known.end :])
    return (number - 1 - since) % rows + 1 if number else 0


def _works(draft: DraftRound, key: str, needles: Needles) -> bool:
    """Return whether a row worked a row of a panel, by its name or in pattern."""
    if draft.template is None:
        return False
    named = any(_key(part, needles) == key for part in chart_parts_in(draft.template.elements))
    return named or asks_pattern(draft.template.elements)


def _key(part: ChartPart, needles: Needles) -> str:
    """Return what the rows of a chart or panel are counted under."""
    if part.defined:
        return key_called(part.name, needles.patterns)
    chart = charts_by_name(needles).get(part.name.lower())
    return chart.name if chart is not None else ""


def _as_worked(
    template: Template, last: DraftRound, side: str, numbers: dict[str, int], needles: Needles
) -> DraftRound:
    count, wrong = last.after, last.flat and side == "WS"
    markers = mirror_places(last.markers, count) if last.side == "WS" else last.markers

    def row_of(part: ChartPart, room: int) -> ChartRound:
        key = _key(part, needles)
        number = (numbers[key] - 1) % rounds_of_part(part, needles) + 1
        if not part.defined:
            chart = charts_by_name(needles)[part.name.lower()]
            return replace(drawn_round(chart, number, needles, wrong_side=wrong), name=key, number=number)
        row = needles.patterns[key][number - 1]
        made = work_phrase(row.elements, count=room, size=needles.size, yarn=needles.yarn, place=part.place)
        return ChartRound(before=tuple(flatten(made.items)), repeat=(), after=(), name=key, number=number)

    made = work_phrase(
        template.elements,
        count=count,
        size=needles.size,
        yarn=needles.yarn,
        place=template.place,
        facing=face(count=count, flat=last.flat, side=side if last.flat else "RS", markers=tuple(markers)),
        supplies=RoundSources(chart=row_of, flat=last.flat, section=last.section, held=needles.held),
    )
    shown = mirror_places(tuple(markers), count) if side == "WS" else markers
    return replace(last, phrase=made.items, before=count, after=made.after, side=side, markers=shown)
