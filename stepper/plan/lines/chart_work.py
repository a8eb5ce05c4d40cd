"""Work a chart: some of its rounds, all of them, a number of times or to a length. No I/O."""

from __future__ import annotations

from collections.abc import Iterable

from stepper.plan.drafts import Template
from stepper.plan.fabric.chart_rounds import (
    CHECK_REPEATS,
    NAME_ROUND,
    chart_named,
    drawn_round,
    hidden_by_own_words,
    next_chart_round,
    repeats_disagree,
)
from stepper.plan.fabric.established import establish
from stepper.plan.lines.durations import last_for, work_even
from stepper.plan.lines.rounds import repeat
from stepper.plan.state.needles import Needles
from stepper.project.duration import Rounds
from stepper.project.instructions import ChartWork, WorkRounds
from stepper.project.model import Chart
from stepper.project.problems import one_of
from stepper.project.stitchwork import Numbers


def work_chart(instruction: ChartWork, needles: Needles) -> None:
    """Work rounds of a chart: all of them, some, or the one after that last worked."""
    chart = chart_named(instruction.name, instruction.place, needles)
    if chart is None:
        return
    if not needles.count and not needles.counting.lost:
        needles.miss_stitches(instruction.place)
        return
    hidden = hidden_by_own_words(chart.name, needles) if instruction.following else ""
    if hidden and not instruction.first:
        needles.miss(instruction.place, hidden, NAME_ROUND)
        return
    if instruction.total and chart.name in needles.last.charts:
        told = f'rounds of chart "{chart.name}" are worked already, and times in all are not counted for it.'
        needles.report(instruction.place, told, "Write how often it is worked from here on.")
        return
    if instruction.following and chart.name in needles.last.beside:
        _go_on_beside(instruction, chart, needles)
        return
    first = instruction.first or (next_chart_round(chart, needles) if instruction.following else 1)
    one = instruction.following and not instruction.whole
    last = instruction.last or (first if one else len(chart.rounds))
    said = instruction.rounds.of(needles.size) if instruction.rounds is not None else len(chart.rounds)
    if said != len(chart.rounds):
        needles.report(
            instruction.place, f'chart "{chart.name}" has {len(chart.rounds)} rounds; the line says {said}.'
        )
        return
    if first < 1 or last > len(chart.rounds):
        needles.report(
            instruction.place, f'chart "{chart.name}" has {len(chart.rounds)} rounds, not {max(first, last)}.'
        )
        return
    if first > last:
        told = f'round {last} of chart "{chart.name}" is worked already; round {first} comes next.'
        needles.report(instruction.place, told)
        return
    times = instruction.times.of(needles.size) if instruction.times else 1
    begun = min((*instruction.numbers, first)[0], len(chart.rounds))
    begins = drawn_round(chart, begun, needles, wrong_side=needles.wrong)
    disagreed = repeats_disagree(instruction.across, chart, begins, needles.count, needles.size)
    if disagreed:
        needles.report(instruction.place, disagreed, CHECK_REPEATS)
        return
    if instruction.numbers:
        _work_in_own_order(instruction, chart, times, needles)
        return
    cycle = _rounds(range(first, last + 1), chart, instruction, needles)
    begin = len(needles.drafts)
    if instruction.lasts is not None:
        last_for(cycle, instruction.lasts, needles, instruction.place, start=len(needles.drafts))
    else:
        repeat(cycle, times * len(cycle), needles, instruction.place)
    if times == 1 and instruction.lasts is None:  # some rounds worked once: the chart goes on after them
        whole = (*range(first, len(chart.rounds) + 1), *range(1, first))
        establish(_rounds(whole, chart, instruction, needles), needles, start=begin)
        needles.section.pattern = cycle
    else:
        establish(cycle, needles, start=begin)


def _work_in_own_order(instruction: ChartWork, chart: Chart, times: int, needles: Needles) -> None:
    """Work rounds of a chart in the order in which the line names them: "rnds 5, 4, 3 and 2 of chart A"."""
    missing = [number for number in instruction.numbers if not 1 <= number <= len(chart.rounds)]
    rounds, told = len(chart.rounds), ""
    if missing:
        told = f'chart "{chart.name}" has {rounds} rounds, and no round {one_of(map(str, missing))}.'
    elif chart.right_side_only:
        told = "that chart shows right-side rows alone, and its rows are worked in another order here."
    elif instruction.lasts is not None:
        told = "how long rows in another order go on is read in repeats alone."
    if told:
        needles.report(instruction.place, told, "Write each round by itself.")
        return
    begin = len(needles.drafts)
    cycle = _rounds(instruction.numbers, chart, instruction, needles)
    repeat(cycle, times * len(cycle), needles, instruction.place)
    establish(cycle, needles, start=begin)


def _go_on_beside(instruction: ChartWork, chart: Chart, needles: Needles) -> None:
    """Go on with a chart worked beside other stitches: they go on as they are, with its next rounds."""
    following, place = next_chart_round(chart, needles), instruction.place
    last = instruction.last or (len(chart.rounds) if instruction.whole else following)
    told = ""
    if chart.right_side_only:
        told = "that chart shows right-side rows alone, and stands beside other stitches."
    elif not following <= last <= len(chart.rounds):
        told = f'round {last} of chart "{chart.name}" does not come after round {following - 1}.'
    if told:
        needles.report(place, told, 'Write how long: "Work in pattern for 12 rows."')
        return
    lasts = Rounds(Numbers((last - following + 1,), place), False)
    work_even(WorkRounds("pattern", lasts, place), needles)
    if needles.last.charts.get(chart.name) != last:
        needles.report(place, f'round {last} of chart "{chart.name}" is not what comes last so.')


def _rounds(
    numbers: Iterable[int], chart: Chart, instruction: ChartWork, needles: Needles
) -> tuple[Template, ...]:
    """Return rounds of a chart, with the rows back between them if it shows only the right side."""
    drawn = (
        Template((), instruction.place, chart=instruction.name, chart_round=number) for number in numbers
    )
    if not chart.right_side_only:
        return tuple(drawn)
    back = needles.section.back or Template((), instruction.place, stockinette=True)
    return tuple(row for each in drawn for row in (each, back))
