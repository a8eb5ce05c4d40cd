"""What stands on the sheet beside the needles, in its order, from the plan as knitted. Pure.

Everything on it comes from the same plan as the session. The sheet can stand alone: yarns are named as the
lines name them, every abbreviation is explained, a blend of sizes is told in words, and each count has its
length.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from stepper.craft.rows import row_word
from stepper.language.measures import plural
from stepper.language.places import on_day, sentence_case
from stepper.plan.model import Plan
from stepper.plan.yoke import yoke_of
from stepper.project.model import Project
from stepper.report.measure.roles import assign_roles
from stepper.report.sheet.abbreviations import list_abbreviations
from stepper.report.sheet.blocks import (
    Block,
    Bullets,
    Gallery,
    Paragraph,
    Picture,
    RoundTable,
    SheetHeading,
    Terms,
)
from stepper.report.sheet.chart_parts import ASIDE, cut_chart, name_part, square_mm
from stepper.report.sheet.charts import draw_chart, list_signs
from stepper.report.sheet.figures import lay_out_gauge, lay_out_measurements, lay_out_yarn
from stepper.report.sheet.looks import YarnLooks, assign_looks
from stepper.report.sheet.rounds import lay_out_rounds
from stepper.report.sheet.yoke_rings import draw_yoke_rings
from stepper.report.yarn import YarnRow

_YOKE_MM = 80.0
# Width of the yoke from above. Chosen here: a round of sixty is then half a millimetre wide, and can be told.


def lay_out_sheet(plan: Plan, project: Project, yarns: Sequence[YarnRow]) -> tuple[Block, ...]:
    """Lay out the sheet.

    Args:
        plan: The plan as knitted.
        project: The checked file.
        yarns: How much of each yarn it takes.
    """
    looks = assign_looks(
        project, (run.yarn for each in plan.rounds for run in each.runs if run.yarn in plan.yarns)
    )
    rounds = tuple(lay_out_rounds(plan, project))
    return (
        *_opening(plan, project),
        *lay_out_measurements(plan, project),
        *lay_out_gauge(project),
        *lay_out_yarn(yarns, project, looks),
        *_alterations(project),
        *_abbreviations(plan, rounds),
        *_drawings(plan, project, looks),
        SheetHeading(level=2, text="Rounds"),
        Paragraph(text=_HOW_TO_READ, quiet=True),
        *rounds,
    )


_HOW_CHARTS_ARE_READ = (
    "Charts are read from the bottom up and from right to left; in rows, wrong-side rows from left to right."
)
_HOW_TO_READ = (
    "A box for each round. Beside a count stands the length from the beginning of the section, on the "
    "needles; write on the line what you counted."
)


def _opening(plan: Plan, project: Project) -> Iterator[Block]:
    yield SheetHeading(level=1, text=plan.title)
    yield Paragraph(text=tell_sizes(plan, project))
    total = sum(each.progress for each in plan.rounds)
    said = f"{plural(len(plan.rounds), 'round')}, {total} stitches."
    if plan.finish_by is not None:
        said += f" To be done by{on_day(plan.finish_by).removeprefix(' on')} {plan.finish_by[:4]}."
    yield Paragraph(text=said, quiet=True)
    cautions = tuple(dict.fromkeys(sentence_case(caution.text) for caution in plan.warnings))
    if cautions:
        yield Bullets(items=cautions, cautions=True)


def tell_sizes(plan: Plan, project: Project) -> str:
    """Say in words which size is knitted, and where it goes over into another.

    A round that is worked out anew between two sizes is told with its stitches.
    """
    names = project.sizes
    if not project.switches:
        return f"Size {names[project.size]}." if len(names) > 1 else "One size."
    said = f"A blend of sizes: size {names[project.size]} from the beginning"
    for switch in project.switches:
        first = next((each for each in plan.rounds if each.label == switch.label), None)
        said += f"; from “{switch.label}”"
        if first is not None:
            word = row_word(first.flat)
            said += f" ({first.section}, {word} {first.number})"
        said += f" size {names[switch.size]}"
        if first is not None and first.before != first.after:
            said += f", so this {word} goes from {first.before} to {first.after} stitches"
    return f"{said}."


def _alterations(project: Project) -> Iterator[Block]:
    yield SheetHeading(level=2, text="Alterations")
    if project.alterations:
        yield Bullets(items=tuple(rule.text for rule in project.alterations))
    else:
        yield Paragraph(text="None: knitted as printed.")


def _abbreviations(plan: Plan, rounds: Sequence[Block]) -> Iterator[Block]:
    found = list_abbreviations(plan, _texts(rounds))
    if found:
        yield SheetHeading(level=2, text="Abbreviations", key="abbreviations")
        yield Terms(key="abbreviations", items=found)


def _texts(rounds: Sequence[Block]) -> Iterator[str]:
    """Yield what the rounds say in the words of a pattern."""
    for block in rounds:
        if isinstance(block, RoundTable):
            for row in block.rows:
                yield from (row.numbers, *row.remarks, row.label, *row.words, row.altered)


def _drawings(plan: Plan, project: Project, looks: dict[str, YarnLooks]) -> Iterator[Block]:
    """Show the yoke from above and the charts that are knitted."""
    yoke, charts = tuple(_yoke(plan, looks)), tuple(_charts(plan, project, looks))
    if not yoke and not charts:
        return
    title = "Yoke and charts" if yoke and charts else "Charts" if charts else "Yoke"
    yield SheetHeading(level=2, text=title)
    if charts:
        yield Paragraph(text=_HOW_CHARTS_ARE_READ, quiet=True)
    yield Gallery(pictures=(*yoke, *charts))


def _yoke(plan: Plan, looks: dict[str, YarnLooks]) -> Iterator[Picture]:
    yoke, found = yoke_of(plan.rounds), assign_roles(plan.rounds).yoke
    if yoke is None or found is None or found.upward:
        return
    used = dict.fromkeys(run.yarn for each in yoke.rounds for run in each.runs if run.yarn in looks)
    yarns = ", ".join(_striped(looks[key]) for key in used)
    caption = (
        f"Neck inside; the round begins at the top, at the centre back, and goes clockwise. Yarns: {yarns}."
    )
    drawing = draw_yoke_rings(yoke, looks, plan.title)
    yield Picture(
        drawing=drawing, wide_mm=_YOKE_MM, beside=True, title="The yoke from above", caption=caption
    )


def _striped(looks: YarnLooks) -> str:
    stripes = f" (with {plural(looks.stripes, 'line')} along it)" if looks.stripes else ""
    return f"{looks.named}{stripes}"


def _charts(plan: Plan, project: Project, looks: dict[str, YarnLooks]) -> Iterator[Picture]:
    """Show the charts that are knitted; one that is too large for the sheet in parts."""
    used = plan.charts
    ground = next(iter(looks), "")
    for chart in project.charts.values():
        if chart.name not in used:
            continue
        parts = cut_chart(chart)
        signs = tuple(list_signs(chart, looks, ground))
        for part in parts:
            title = f"Chart {chart.name}"
            yield Picture(
                drawing=draw_chart(chart, looks, ground, part),
                wide_mm=square_mm(part) * (part.right - part.left + ASIDE),
                title=title if len(parts) == 1 else f"{title}, {name_part(chart, part)}",
                signs=signs,
            )
