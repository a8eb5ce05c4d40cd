"""Rounds of a chart in the order in which they are knitted. No I/O.

Source of the reading: chart conventions; every row in the round, and right-side rows, from right to left;
wrong-side rows from left to right, each stitch as its opposite. Squares without a stitch are skipped.
"""

from __future__ import annotations

from stepper.plan.drafts import Template, own_words_of
from stepper.plan.fabric.columns import as_seen
from stepper.plan.model import Group, Item, Run
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.round_sources import ChartRound
from stepper.plan.stitches.run_repeats import join_runs
from stepper.project.instructions import ONLY_CHART
from stepper.project.model import Cell, Chart
from stepper.project.pattern_heads import key_called
from stepper.project.problems import Span, nearest, one_of
from stepper.project.stitchwork import ChartPart, RepeatsTold


def chart_parts(chart: Chart, number: int, *, yarn: str, wrong_side: bool) -> ChartRound:
    """Read one round of a chart as its edges and its repeat, in the order in which they are knitted."""
    cells = chart.rounds[number - 1]
    first, last = chart.edge_left, chart.width - chart.edge_right
    left, middle, right = cells[:first], cells[first:last], cells[last:]
    parts = [_runs(part, yarn, wrong_side) for part in (left, middle, right)]
    if not wrong_side:
        parts.reverse()
    return ChartRound(before=parts[0], repeat=parts[1], after=parts[2])


def _runs(cells: tuple[Cell, ...], yarn: str, wrong_side: bool) -> tuple[Run, ...]:
    runs = []
    for cell in cells if wrong_side else reversed(cells):
        if not cell.stitch:
            continue
        runs.append(Run(as_seen(cell.stitch, wrong=wrong_side), 1, cell.yarn or yarn))
    return join_runs(runs)


def charts_by_name(needles: Needles) -> dict[str, Chart]:
    """Return the charts of the garment by their names in lower case: a line may write them in any.

    A name of several words is one with hyphens in a line. The only chart of a garment needs no name.
    """
    charts = needles.project.charts
    named = {name.lower(): chart for name, chart in charts.items()}
    named.update({name.replace(" ", "-"): chart for name, chart in named.items() if " " in name})
    if len(charts) == 1:
        named.setdefault(ONLY_CHART, next(iter(charts.values())))
    return named


def chart_named(name: str, place: Span, needles: Needles) -> Chart | None:
    """Find a chart of the garment by its name, in any case; None, reported, if there is none."""
    charts = charts_by_name(needles)
    chart = charts.get(name.lower())
    if chart is None:
        needles.report(place, *no_such_chart(name, needles))
    return chart


def no_such_chart(name: str, needles: Needles) -> tuple[str, str]:
    """Return what is told of a chart that the garment has not, and a hint."""
    charts = needles.project.charts
    if name == ONLY_CHART and charts:
        return "which chart is meant is not said.", f"The charts are {one_of(charts)}."
    hint = nearest(name, charts_by_name(needles)) or f"The charts are {one_of(charts) or 'none'}."
    return f'there is no chart "{name}".', hint


CHECK_REPEATS = (
    "Hold the chart and the number of stitches against the page, or write the line without its repeats."
)
NAME_ROUND = "Name the round of the chart that comes next."


def hidden_by_own_words(key: str, needles: Needles, *, name: str = "") -> str:
    """Say why nobody can tell how a chart goes on behind a row in own words; empty if that can be told.

    Args:
        key: Of the chart or panel.
        needles: The knitting in hand.
        name: What it is called, if that is not its key.
    """
    line = 0 if key in needles.last.charts else needles.last.hidden.get(key, 0)
    return f"which round of {name or key} comes next cannot be told: {own_words_of(line)}." if line else ""


def next_chart_round(chart: Chart, needles: Needles) -> int:
    """Return the round of a chart after the one last worked, from 1; after the last comes the first."""
    return needles.last.charts.get(chart.name, 0) % len(chart.rounds) + 1


def rounds_of_part(part: ChartPart, needles: Needles) -> int:
    """Return how many rounds the chart, or the page's own pattern, of a part of a round has; 0 if unknown."""
    if part.defined:
        return len(needles.patterns.get(key_called(part.name, needles.patterns), ()))
    chart = charts_by_name(needles).get(part.name.lower())
    return len(chart.rounds) if chart is not None else 0


def chart_round(template: Template, needles: Needles) -> None:
    """Work one round of a chart, as many repeats of it as the stitches hold."""
    chart = chart_named(template.chart, template.place, needles)
    if chart is None:
        return
    if template.chart_round > len(chart.rounds):
        needles.report(
            template.place,
            f'chart "{chart.name}" has {len(chart.rounds)} rounds, not {template.chart_round}.',
        )
        return
    if needles.short_rows.gap is not None:
        told = "a chart over whole rounds begins in the middle of a short row here: that is not read."
        needles.miss(template.place, told, "End the round first.")
        return
    hidden = "" if template.chart_round else hidden_by_own_words(chart.name, needles)
    if hidden:
        needles.miss(template.place, hidden, NAME_ROUND)
        return
    number = template.chart_round or next_chart_round(chart, needles)
    wrong = needles.wrong
    key = (chart.name, number, needles.yarn, wrong, needles.count)
    drawn = drawn_round(chart, number, needles, wrong_side=wrong)
    if not drawn.fits(needles.count):
        _misfit(template, chart, drawn, needles, number)
        return
    times = drawn.times(needles.count)
    after = sum(run.leaves for run in drawn.before + drawn.after)
    after += times * sum(run.leaves for run in drawn.repeat)
    repeats = (Group(drawn.repeat, times, chart.name),) if times else ()
    phrase: tuple[Item, ...] = (*drawn.before, *repeats, *drawn.after)
    phrase = needles.caches.charted.setdefault(key, phrase)
    needles.last.charts[chart.name] = number
    needles.last.beside.discard(chart.name)
    needles.emit(phrase, after, chart=chart.name, chart_round=number, template=template)


def drawn_round(chart: Chart, number: int, needles: Needles, *, wrong_side: bool) -> ChartRound:
    """Read one round of a chart of this garment, once for all sizes."""
    key = (chart.name, number, needles.yarn, wrong_side)
    drawn = needles.caches.drawn.get(key)
    if drawn is None:
        drawn = chart_parts(chart, number, yarn=needles.yarn, wrong_side=wrong_side)
        needles.caches.drawn[key] = drawn
    return drawn


def repeats_disagree(
    told: RepeatsTold | None, chart: Chart, drawn: ChartRound, room: int, size: int
) -> str:
    """Say what a line tells otherwise of a chart's repeats than chart and stitches have; empty if nothing.

    Args:
        told: What the line tells.
        chart: The chart.
        drawn: Its round that is worked.
        room: Stitches that it is worked over.
        size: Index of the size, from 0.
    """
    if told is None or not drawn.fits(room):
        return ""
    squares = chart.width - chart.edge_left - chart.edge_right
    widths = (squares, drawn.uses, sum(run.leaves for run in drawn.repeat))
    if told.width is not None and told.width not in widths:
        return (
            f'the line says that {told.width} stitches of chart "{chart.name}" are repeated, and its repeat '
            f"has {drawn.uses}."
        )
    fits = drawn.times(room)
    times = told.times.of(size) if told.times is not None else fits
    if times != fits:
        return (
            f'the line says that chart "{chart.name}" stands {times} times across, and it goes {fits} times '
            f"into the {room} stitches it has."
        )
    return ""


def _misfit(template: Template, chart: Chart, drawn: ChartRound, needles: Needles, number: int) -> None:
    edges = f" besides {drawn.edges} for its edges" if drawn.edges else ""
    fits = drawn.times(needles.count)
    over = needles.count - drawn.edges - fits * drawn.uses
    left = f": {fits} repeats leave {over} over" if over > 0 else ""
    needles.report(
        template.place,
        f'round {number} of chart "{chart.name}" has {drawn.uses} stitches{edges} and does not '
        f"divide {needles.count}{left}.",
        f"It would fit on {one_of(map(str, drawn.near(needles.count)))} stitches.",
    )
