"""What the garment supplies to a written-out round: its charts, its fabric, its held stitches. No I/O."""

from __future__ import annotations

from dataclasses import replace

from stepper.craft.gauge import half_up
from stepper.plan.fabric.chart_rounds import (
    CHECK_REPEATS,
    NAME_ROUND,
    charts_by_name,
    drawn_round,
    hidden_by_own_words,
    next_chart_round,
    no_such_chart,
    repeats_disagree,
)
from stepper.plan.fabric.columns import UnknownFabricError
from stepper.plan.fabric.established import HINT, look, pattern_stands, tell_doubt
from stepper.plan.fabric.marker_sections import pair_of_markers
from stepper.plan.fabric.named_patterns import comes_on_side, shows_other_face
from stepper.plan.fabric.stretches import stretch_of
from stepper.plan.model import flatten
from stepper.plan.state.halves import half_of
from stepper.plan.state.held_below import held_in_section, held_in_sections
from stepper.plan.state.in_hand import Cell
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.phrase import work_phrase
from stepper.plan.stitches.round_sources import ChartRound, RoundSources
from stepper.plan.stitches.row_elements import MisfitError, fixed_uses
from stepper.project.pattern_heads import key_called
from stepper.project.problems import Span
from stepper.project.stitchwork import ChartPart, PickUp


def supplies_of(needles: Needles) -> RoundSources:
    """Gather what a round may ask for."""
    return RoundSources(
        chart=lambda part, room: _chart(part, room, needles),
        width=lambda part: width_of_panel(part, needles),
        look=lambda place: _look(place, needles),
        pattern_stands=lambda: pattern_stands(needles),
        stretch=lambda name, start, number, place: stretch_of(name, start, number, needles, place),
        flat=needles.flat,
        section=needles.section.name,
        copied=needles.copied,
        held=needles.held,
        held_by=held_in_section(needles),
        came_back=_came_back(needles),
        lots=lambda: held_in_sections(needles),
        half=lambda name: half_of(name, needles),
        tell=needles.warn,
        pair=lambda: _pair(needles),
        named_marker=needles.last.called.get,
        picked=lambda edge: count_picked_up(edge, needles),
        reads_second=needles.reads_second,
    )


def _came_back(needles: Needles) -> bool:
    """Return whether all that is on the needles was taken back from hold in the row before."""
    last = needles.drafts[-1] if needles.drafts else None
    return last is not None and last.codes == {"return"} and last.after == needles.count > 0


def _chart(part: ChartPart, room: int, needles: Needles) -> ChartRound:
    if part.defined:
        return _panel(part, room, needles)
    charts = charts_by_name(needles)
    chart = charts.get(part.name.lower())
    if chart is None:
        raise MisfitError(part.place, *no_such_chart(part.name, needles))
    hidden = "" if part.number else hidden_by_own_words(chart.name, needles)
    if hidden:
        raise MisfitError(part.place, hidden, NAME_ROUND)
    number = part.number or next_chart_round(chart, needles)
    if not 1 <= number <= len(chart.rounds):
        raise MisfitError(part.place, f'chart "{chart.name}" has {len(chart.rounds)} rounds, not {number}.')
    drawn = drawn_round(chart, number, needles, wrong_side=needles.wrong)
    disagreed = repeats_disagree(part.across, chart, drawn, room, needles.size)
    if disagreed:
        raise MisfitError(part.place, disagreed, CHECK_REPEATS)
    return replace(drawn, name=chart.name, number=number)


def _panel(part: ChartPart, room: int, needles: Needles) -> ChartRound:
    """Return a row of a pattern that the page defines, worked over part of the round.

    Raises:
        MisfitError: it has no such row, its row is for the other side, or it needs other than these stitches.
    """
    key = key_called(part.name, needles.patterns)
    cycle = needles.patterns.get(key, ())
    if not cycle:
        hint = f'Write its rows under its name: "{part.name.capitalize()} (10 sts)", then "Row 1: ...".'
        raise MisfitError(part.place, f'no pattern called "{part.name}" is defined on this page.', hint)
    hidden = "" if part.number else hidden_by_own_words(key, needles, name=part.name)
    if hidden:
        raise MisfitError(part.place, hidden, NAME_ROUND)
    number = _row_due(part, key, len(cycle), needles)
    if not 1 <= number <= len(cycle):
        raise MisfitError(part.place, f"{part.name} has {len(cycle)} rows, not {number}.")
    first = cycle[0].side
    if not comes_on_side(number, first, needles):
        told = f"row {number} of {part.name} is no {needles.side} row, and one comes here."
        raise MisfitError(part.place, told, "Begin with the row that is for this side.")
    other = shows_other_face(cycle, needles)
    if other and (needles.wrong or (not needles.flat and (number % 2 == 0) == (first == "RS"))):
        raise MisfitError(part.place, f"{other}.", "Write that row out as it is worked here.")
    row = cycle[number - 1]
    if row.own is not None:
        told = f"row {number} of {part.name} is in your own words, and worked over whole rows only."
        raise MisfitError(part.place, told, "Write that row out, or this one in own words too.")
    if row.yarn not in ("", needles.yarn):
        told = f"row {number} of {part.name} is in {row.yarn}, and that around it goes on in {needles.yarn}."
        raise MisfitError(part.place, told, "Write that row out, with the yarn of each stitch.")
    try:
        made = work_phrase(row.elements, count=room, size=needles.size, yarn=needles.yarn, place=part.place)
    except MisfitError as misfit:
        told = f"row {number} of {part.name} does not fit the {room} stitches it has here: {misfit}"
        raise MisfitError(part.place, told) from None
    return ChartRound(before=tuple(flatten(made.items)), repeat=(), after=(), name=key, number=number)


def _row_due(part: ChartPart, key: str, rows: int, needles: Needles) -> int:
    """Return which row of a panel comes, from 1: that of the line, or the one after the last."""
    return part.number or needles.last.charts.get(key, 0) % rows + 1


def width_of_panel(part: ChartPart, needles: Needles) -> int:
    """Return the stitches that the row of a panel has by itself; 0 for a chart, and where many counts fit."""
    key = key_called(part.name, needles.patterns)
    rows = needles.patterns.get(key, ()) if part.defined else ()
    number = _row_due(part, key, len(rows), needles) if rows else 0
    if not 1 <= number <= len(rows) or rows[number - 1].own is not None:
        return 0
    try:
        return sum(fixed_uses(element, needles.size) for element in rows[number - 1].elements)
    except MisfitError:
        return 0


def _pair(needles: Needles) -> tuple[int, ...]:
    """Return the two markers between which alone the last shaping fell, from where the row begins."""
    places = pair_of_markers(needles)
    if places is None or needles.short_rows.gap is not None:
        return ()
    if needles.wrong:
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
