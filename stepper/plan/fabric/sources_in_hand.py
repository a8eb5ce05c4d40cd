"""What the garment supplies to a written-out round: its charts, its fabric, its held stitches. No I/O."""

from __future__ import annotations

from dataclasses import replace

from stepper.craft.gauge import half_up
from stepper.plan.fabric.chart_rounds import drawn_round, next_chart_round
from stepper.plan.fabric.columns import UnknownFabricError
from stepper.plan.fabric.established import HINT, look, tell_doubt
from stepper.plan.fabric.marker_sections import pair_of_markers
from stepper.plan.fabric.stretches import stretch_of
from stepper.plan.state.in_hand import Cell
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.round_sources import ChartRound, RoundSources
from stepper.plan.stitches.row_elements import MisfitError
from stepper.project.problems import Span, nearest, one_of
from stepper.project.stitchwork import ChartPart, PickUp


def supplies_of(needles: Needles) -> RoundSources:
    """Gather what a round may ask for."""
    return RoundSources(
        chart=lambda part: _chart(part, needles),
        look=lambda place: _look(place, needles),
        stretch=lambda name, start, number, place: stretch_of(name, start, number, needles, place),
        flat=needles.flat,
        section=needles.section.name,
        copied=needles.copied,
        held=needles.held,
        tell=needles.warn,
        pair=lambda: _pair(needles),
        picked=lambda edge: count_picked_up(edge, needles),
        readings=needles.readings,
        choices=needles.choices,
    )


def _chart(part: ChartPart, needles: Needles) -> ChartRound:
    charts = {name.lower(): chart for name, chart in needles.project.charts.items()}
    chart = charts.get(part.name.lower())
    if chart is None:
        hint = nearest(part.name, charts) or f"The charts are {one_of(needles.project.charts) or 'none'}."
        raise MisfitError(part.place, f'there is no chart "{part.name}".', hint)
    number = part.number or next_chart_round(chart, needles)
    if not 1 <= number <= len(chart.rounds):
        raise MisfitError(part.place, f'chart "{chart.name}" has {len(chart.rounds)} rounds, not {number}.')
    wrong = needles.side == "WS" and (needles.flat or needles.short_rows.gap is not None)
    return replace(drawn_round(chart, number, needles, wrong_side=wrong), name=chart.name, number=number)


def _pair(needles: Needles) -> tuple[int, ...]:
    """Return the two markers between which alone the last shaping fell, from where the row begins."""
    places = pair_of_markers(needles)
    if places is None or needles.short_rows.gap is not None:
        return ()
    if needles.flat and needles.side == "WS":
        return tuple(needles.count - place for place in reversed(places))
    return places


def count_picked_up(edge: PickUp, needles: Needles) -> int:
    """Return the stitches picked up along an edge, in proportion to its rows, to the nearest.

    The sections that the words name are measured; without such words, every row so far.
    """
    if edge.stitches_of_edge:
        return _along_stitches(edge, needles)
    named = {draft.section for draft in needles.drafts if draft.section.lower() in edge.along}
    rows = sum(
        1
        for draft in needles.drafts
        if draft.flat and draft.height_mm and (draft.section in named or not named)
    )
    return half_up(rows * edge.stitches.of(needles.size) / max(1, edge.rows.of(needles.size)))


def _along_stitches(edge: PickUp, needles: Needles) -> int:
    """Return the stitches picked up in each stitch of the edge of the piece before."""
    cast_on = edge.along.startswith("cast")
    for draft in reversed(needles.drafts):
        if cast_on and not draft.before:
            return draft.after * edge.stitches.of(needles.size)
        if not cast_on and not draft.after:
            return draft.before * edge.stitches.of(needles.size)
    return 0


def _look(place: Span, needles: Needles) -> tuple[Cell, ...]:
    """Return how the stitches are worked to go on in pattern."""
    try:
        cells = look(needles)
        tell_doubt(needles, place)
        return cells
    except UnknownFabricError as unknown:
        raise MisfitError(place, f"nobody can tell how the pattern goes on here: {unknown}.", HINT) from None
