"""What the garment in hand gives a written-out round: its charts, its fabric, its held stitches. No I/O."""

from __future__ import annotations

from dataclasses import replace

from stepper.craft.gauge import half_up
from stepper.craft.stitches import Kind, stitch
from stepper.plan.charting import drawn_round
from stepper.plan.cursor import MisfitError
from stepper.plan.facing import face
from stepper.plan.model import flatten
from stepper.plan.needles import Draft, Needles
from stepper.plan.supplies import ChartRound, Supplies
from stepper.project.problems import nearest, one_of
from stepper.project.stitchwork import ChartPart, PickUp


def supplies_of(needles: Needles) -> Supplies:
    """Put what a round may ask for at hand."""
    return Supplies(
        chart=lambda part: _chart(part, needles),
        look=lambda: look(needles),
        held=needles.held,
        picked=lambda edge: picked(edge, needles),
        readings=needles.readings,
        choices=needles.choices,
    )


def _chart(part: ChartPart, needles: Needles) -> ChartRound:
    charts = {name.lower(): chart for name, chart in needles.project.charts.items()}
    chart = charts.get(part.name.lower())
    if chart is None:
        hint = nearest(part.name, charts) or f"The charts are {one_of(needles.project.charts) or 'none'}."
        raise MisfitError(part.place, f'there is no chart "{part.name}".', hint)
    number = part.number or needles.chart_at.get(chart.name, 0) % len(chart.rounds) + 1
    if not 1 <= number <= len(chart.rounds):
        raise MisfitError(part.place, f'chart "{chart.name}" has {len(chart.rounds)} rounds, not {number}.')
    wrong = needles.side == "WS" and (needles.flat or needles.gap is not None)
    return replace(drawn_round(chart, number, needles, wrong_side=wrong), name=chart.name, number=number)


def picked(edge: PickUp, needles: Needles) -> int:
    """Give the stitches picked up along an edge: so many for so many of its rows, to the nearest.

    The sections that the words name are measured; without such words, every row so far.
    """
    named = {draft.section for draft in needles.drafts if draft.section.lower() in edge.along}
    rows = sum(
        1
        for draft in needles.drafts
        if draft.flat and draft.height_mm and (draft.section in named or not named)
    )
    return half_up(rows * edge.stitches.of(needles.size) / max(1, edge.rows.of(needles.size)))


def look(needles: Needles) -> str:
    """Give how the stitches look to the row that comes next: `k` or `p` for each, from where it begins.

    Knit ones look like purl from behind. What cannot be known, as after a cast-on, looks like knit.
    """
    wrong = needles.side == "WS" and (needles.flat or needles.gap is not None)
    facing = face(
        count=needles.count,
        flat=needles.flat,
        side="WS" if wrong else "RS",
        gap=needles.gap,
        turns=needles.turns,
    )
    seen = _right_side(needles.drafts[-1]) if needles.drafts else ""
    seen = seen.ljust(needles.count, "k")[: needles.count]
    if wrong:
        seen = seen[::-1].translate(_BEHIND)
    start = facing.count - facing.end if facing.around else facing.lead
    return seen[start:] + seen[:start]


_BEHIND = str.maketrans("kp", "pk")


_PURLED = ("p", "ssp", "sssp", "s2pp", "m1p", "m1lp", "m1rp")


def _right_side(draft: Draft) -> str:
    """Give how the stitches of a worked row look from the right side, from its first stitch there."""
    wrong = draft.side == "WS"
    letters = []
    for run in flatten(draft.phrase):
        entry = stitch(run.stitch)
        purl = (
            entry.code.startswith(("p", "ssp", "sssp", "s2pp", "m1p", "m1lp", "m1rp")) and run.stitch != "pu"
        )
        if entry.kind in (Kind.SHIFT, Kind.EDGE) or entry.code.startswith(("sl", "ds")):
            letters.append("k" * run.leaves)
        else:
            letters.append(("p" if purl != wrong else "k") * run.leaves)
    seen = "".join(letters)
    return seen[::-1] if wrong else seen
