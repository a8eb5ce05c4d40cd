"""Rounds worked once or over and over: written out, plain, or from a chart. No I/O."""

from __future__ import annotations

from dataclasses import replace

from stepper.craft.stitches import STITCHES
from stepper.plan.model import Group, Item, Run
from stepper.plan.needles import Needles, Template
from stepper.plan.phrase import MisfitError, Worked, work_phrase
from stepper.project.instructions import Until
from stepper.project.model import Chart
from stepper.project.problems import Place

MOST_ROUNDS = 20_000
"""More rounds than any garment has; a larger number is a slip of the pen."""


def work_template(template: Template, needles: Needles, **told: object) -> None:
    """Work one round of a pattern once."""
    if template.chart:
        chart_round(template, needles)
        return
    try:
        worked = _worked(template, needles)
    except MisfitError as misfit:
        needles.report(misfit.place, misfit.message, misfit.hint)
        return
    for name, number in worked.held:
        needles.held[name] = needles.held.get(name, 0) + number
    needles.markers = worked.markers
    needles.emit(worked.items, worked.after, template=template, divide=bool(worked.held), **told)


def _worked(template: Template, needles: Needles) -> Worked:
    """Work out a round, once for the same stitches: most rounds of a garment repeat the one before."""
    purl = template.stockinette and needles.flat and needles.side == "WS"
    key = (id(template), needles.count, needles.size, needles.yarn, needles.markers, purl)
    known = needles.known.get(key)
    if known is not None:
        return known[1]
    elements = template.elements
    if template.stockinette:
        elements = (Until("p" if purl else "k", "end", None, None, template.place),)
    worked = work_phrase(
        elements,
        count=needles.count,
        size=needles.size,
        yarn=needles.yarn,
        markers=needles.markers,
        place=template.place,
    )
    worked = replace(worked, items=_altered_items(worked.items, needles))
    needles.known[key] = (template, worked)
    return worked


def _altered_items(items: tuple[Item, ...], needles: Needles) -> tuple[Item, ...]:
    """Leave out bobbles where the knitter does."""
    if not any(alteration.kind == "no bobbles" for alteration in needles.project.alterations):
        return items

    def without(item: Item) -> Item:
        if isinstance(item, Group):
            return Group(tuple(without(inner) for inner in item.items), item.times, item.name)
        return Run("k", item.times, item.yarn) if item.stitch == "mb" else item

    return tuple(without(item) for item in items)


def repeat(
    templates: tuple[Template, ...], rounds: int, needles: Needles, place: Place, *, start: int = 0
) -> None:
    """Work a cycle of rounds for a number of rounds, beginning with one of the cycle (from 0)."""
    if rounds > MOST_ROUNDS:
        needles.report(place, f"{rounds} rounds are more than any garment has.", kind="length")
        return
    before = len(needles.findings)
    for number in range(rounds):
        work_template(templates[(start + number) % len(templates)], needles)
        if len(needles.findings) > before:
            return
        if number == 1 and len(templates) == 1 and _changes_nothing(needles):
            # The rest are the same round: one draft stands for all of them, which is most of a garment.
            needles.drafts.extend([needles.drafts[-1]] * (rounds - 2))
            return


def _changes_nothing(needles: Needles) -> bool:
    """Say whether the round last worked leaves everything as it met it."""
    draft = needles.drafts[-1]
    same = draft.before == draft.after and not draft.divide and draft.markers == needles.drafts[-2].markers
    return same and not draft.flat


def chart_round(template: Template, needles: Needles) -> None:
    """Work one round of a chart, as many repeats of it as the stitches hold."""
    chart = needles.project.charts[template.chart]
    wrong = needles.flat and needles.side == "WS"
    phrase_key = (chart.name, template.chart_round, needles.yarn, wrong, needles.count)
    runs = chart_runs(chart, template.chart_round, yarn=needles.yarn, wrong_side=wrong)
    uses = sum(run.uses for run in runs)
    if uses == 0 or needles.count % uses:
        fits, over = divmod(needles.count, uses or 1)
        hint = f"It would fit on {fits * uses} or {(fits + 1) * uses} stitches."
        needles.report(
            template.place,
            f'round {template.chart_round} of chart "{chart.name}" has {uses} stitches and does not divide '
            f"{needles.count}: {fits} repeats leave {over} over.",
            hint,
        )
        return
    times = needles.count // uses
    after = times * sum(run.leaves for run in runs)
    phrase = needles.charted.setdefault(phrase_key, (Group(runs, times, chart.name),))
    needles.emit(phrase, after, chart=chart.name, chart_round=template.chart_round, template=template)


def chart_runs(chart: Chart, number: int, *, yarn: str, wrong_side: bool) -> tuple[Run, ...]:
    """Read one round of a chart in the order in which it is knitted.

    Args:
        chart: The chart.
        number: Round of the chart, from 1 at the bottom.
        yarn: The yarn in hand, for squares that name none.
        wrong_side: Whether it is worked from the wrong side, left to right, each stitch as its opposite.
    """
    cells = chart.rounds[number - 1] if wrong_side else tuple(reversed(chart.rounds[number - 1]))
    runs: list[Run] = []
    for cell in cells:
        if not cell.stitch:
            continue
        code = (
            STITCHES[cell.stitch].wrong_side or cell.stitch
            if wrong_side and cell.stitch in STITCHES
            else cell.stitch
        )
        key = cell.yarn or yarn
        if runs and runs[-1].stitch == code and runs[-1].yarn == key:
            runs[-1] = Run(code, runs[-1].times + 1, key)
        else:
            runs.append(Run(code, 1, key))
    return tuple(runs)
