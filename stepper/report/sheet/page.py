"""The plan for paper: one self-contained page to print and tick off. Pure.

Everything on it comes from the same plan as the session. What comes from the file is escaped; the page tells
the browser to let it fetch nothing and run nothing.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from stepper.craft.skeins import YARD_M
from stepper.language.measures import gauge, length, plural
from stepper.language.places import on_day, sentence_case
from stepper.plan.model import Plan
from stepper.plan.yoke import yoke_of
from stepper.project.model import Fabric, Project
from stepper.report.drawing.markup import figure, table, tag, text
from stepper.report.fit.lines import signed_length
from stepper.report.measure.measurements import measure_fully
from stepper.report.measure.measuring import Measurement
from stepper.report.measure.roles import assign_roles
from stepper.report.sheet.charts import draw_chart, list_signs
from stepper.report.sheet.looks import YarnLooks, assign_looks
from stepper.report.sheet.pieces import lay_out_pieces
from stepper.report.sheet.rounds import write_rounds
from stepper.report.sheet.schematic import draw_schematic
from stepper.report.sheet.style import STYLE, footer_rule
from stepper.report.sheet.yoke_rings import draw_yoke_rings
from stepper.report.yarn import Quantity, YarnRow

_SECURITY = "default-src 'none'; style-src 'unsafe-inline'"


def write_page(plan: Plan, project: Project, yarns: Sequence[YarnRow]) -> str:
    """Write the page.

    Args:
        plan: The plan as knitted.
        project: The checked file.
        yarns: How much of each yarn it takes.

    Returns:
        A complete HTML document.
    """
    drawn = assign_looks(
        project, (run.yarn for each in plan.rounds for run in each.runs if run.yarn in plan.yarns)
    )
    head = [
        '<meta charset="utf-8">',
        '<meta name="viewport" content="width=device-width, initial-scale=1">',
        f'<meta http-equiv="Content-Security-Policy" content="{text(_SECURITY)}">',
        tag("title", text(plan.title)),
        tag("style", STYLE + footer_rule(plan.title)),
    ]
    main = [
        tag("header", _opening(plan, project)),
        *_measurements(plan, project),
        *_yarn(yarns, project, drawn),
        *_yoke(plan, drawn),
        *_charts(project, drawn),
        *_alterations(project),
        *_counts(plan),
        tag("h2", "Rounds", class_="fresh"),
        *write_rounds(plan),
    ]
    body = tag("main", main)
    return f'<!DOCTYPE html>\n<html lang="en">{tag("head", head)}{tag("body", body)}</html>\n'


def _opening(plan: Plan, project: Project) -> Iterator[str]:
    yield tag("h1", text(plan.title))
    sizes = f"Size {project.sizes[project.size]}"
    for switch in project.switches:
        sizes += f", size {project.sizes[switch.size]} from {switch.label}"
    total = sum(each.progress for each in plan.rounds)
    yield tag("p", text(f"{sizes}. {plural(len(plan.rounds), 'round')}, {total} stitches."), class_="lead")
    if plan.finish_by is not None:
        due = f"To be done by{on_day(plan.finish_by).removeprefix(' on')} {plan.finish_by[:4]}."
        yield tag("p", text(due), class_="lead")
    cautions = dict.fromkeys(sentence_case(caution.text) for caution in plan.warnings)
    if cautions:
        yield tag("ul", (tag("li", text(each)) for each in cautions), class_="cautions")


def _measurements(plan: Plan, project: Project) -> Iterator[str]:
    found = lay_out_pieces(plan, project)
    yield tag("h2", "Finished measurements", id="measurements")
    if found:
        drawing = draw_schematic(found, title=plan.title, units=plan.units)
        yield figure(drawing, "Laid flat, to scale. What is worked in the round is measured all around.")
    whole = measure_fully(plan.rounds, project)
    measured = whole.lines
    worn = any(line.body_mm is not None for line in measured)
    head = ["Where", "On the needles", "Blocked", *(("Wearer", "Ease") if worn else ())]
    if measured:
        rows = (_measured(line, plan.units, worn=worn) for line in measured)
        yield table(head, rows, named="measurements", class_="figures")
    for said in whole.left_out:
        yield tag("p", text(said), class_="lead")
    yield tag("h3", "Gauge", id="gauge")
    yield table(
        ("Fabric", "Needle", "On the needles", "Blocked"),
        (_gauge(fabric, plan.units) for fabric in project.fabrics.values()),
        named="gauge",
        class_="figures",
    )


def _measured(line: Measurement, units: str, *, worn: bool) -> Iterator[str]:
    yield text(sentence_case(line.name))
    yield text(length(line.needles_mm, units))
    yield text(length(line.blocked_mm, units)) if line.blocked_mm is not None else "–"
    if worn:
        yield text(length(line.body_mm, units)) if line.body_mm is not None else "–"
        eased = line.ease_mm is not None and line.stitches
        yield text(signed_length(line.ease_mm or 0.0, units)) if eased else "–"


def _gauge(fabric: Fabric, units: str) -> Iterator[str]:
    yield text(sentence_case(fabric.name))
    yield f"{fabric.needle_mm:g} mm" if fabric.needle_mm is not None else "–"
    over = 101.6 if units == "in" else 100.0
    for each in (fabric.gauge, fabric.blocked):
        if each is None:
            yield "–"
            continue
        stitches = f"{over / each.width_mm(1):.4g} sts"
        yield text(f"{stitches}, {gauge(100 / each.round_mm, units)}")


def _yarn(yarns: Sequence[YarnRow], project: Project, drawn: dict[str, YarnLooks]) -> Iterator[str]:
    if not yarns:
        return
    yield tag("h2", "Yarn", id="yarn")
    length, unit_m = ("Yards", YARD_M) if project.units == "in" else ("Metres", 1.0)
    head = ("Yarn", length, "Grams", "Skeins to buy", "In the house")
    rows = (_yarn_row(row, drawn, unit_m) for row in yarns)
    yield table(head, rows, named="yarn", class_="figures")
    yield tag(
        "p",
        "What is likely, and from how little to how much it may be; the skeins last even then, and hold at "
        "least 15 % over what is likely, for a swatch and to spare.",
        class_="lead",
    )


def _yarn_row(row: YarnRow, drawn: dict[str, YarnLooks], unit_m: float) -> Iterator[str]:
    shade = drawn.get(row.key)
    letter = f" ({shade.letter})" if shade is not None and shade.letter else ""
    square = ""
    if shade is not None:
        square = '<svg class="swatch" viewBox="0 0 14 14" aria-hidden="true"><rect x=".5" y=".5" width="13" '
        square += f'height="13" fill="{shade.colour}" stroke="#8a867d"/></svg> '
    few = tag("p", "a few metres: a remnant will do", class_="remark") if row.few else ""
    yield tag("p", square + text(f"{row.name}{letter}")) + few
    amount = row.quantity
    likely, low, high = (each / unit_m for each in (amount.likely_m, amount.low_m, amount.high_m))
    yield f"{likely:.0f} ({low:.0f}–{high:.0f})"
    yield _grams(amount)
    own = next((each for each in row.buying if each.own), None)
    yield f"{own.skeins} of {own.grams:.0f} g" if own is not None else "–"
    yield f"{row.bought:g}" if row.bought is not None else "–"


def _grams(amount: Quantity) -> str:
    if amount.likely_g is None or amount.low_g is None or amount.high_g is None:
        return "–"
    return f"{amount.likely_g:.0f} ({amount.low_g:.0f}–{amount.high_g:.0f})"


def _yoke(plan: Plan, drawn: dict[str, YarnLooks]) -> Iterator[str]:
    yoke, found = yoke_of(plan.rounds), assign_roles(plan.rounds).yoke
    if yoke is None or found is None or found.upward:
        return
    yield tag("h2", "The yoke from above")
    caption = "Neck inside; the round begins at the top, at the centre back, and goes clockwise."
    used = dict.fromkeys(run.yarn for each in yoke.rounds for run in each.runs if run.yarn in drawn)
    names = [_named(drawn[key]) for key in used]
    yield figure(draw_yoke_rings(yoke, drawn, plan.title), text(f"{caption} Yarns: {', '.join(names)}."))


def _named(shade: YarnLooks) -> str:
    stripes = f" (with {plural(shade.stripes, 'line')} along it)" if shade.stripes else ""
    return f"{shade.name}{stripes}"


def _charts(project: Project, drawn: dict[str, YarnLooks]) -> Iterator[str]:
    if not project.charts:
        return
    yield tag("h2", "Charts")
    yield tag(
        "p",
        "Read from the bottom up and from right to left; in rows, wrong-side rows from left to right.",
        class_="lead",
    )
    ground = next(iter(drawn), "")
    for chart in project.charts.values():
        yield tag("h3", text(sentence_case(chart.name)))
        entries = [tag("li", f"{square} {text(words)}") for square, words in list_signs(chart, drawn, ground)]
        drawing = draw_chart(chart, drawn, ground)
        yield figure(drawing, tag("ul", entries, class_="legend"))


def _alterations(project: Project) -> Iterator[str]:
    yield tag("h2", "Alterations")
    if not project.alterations:
        yield tag("p", "None: knitted as printed.")
        return
    yield tag("ul", (tag("li", text(rule.text)) for rule in project.alterations))


def _counts(plan: Plan) -> Iterator[str]:
    counted = [(each, each.checkpoint) for each in plan.rounds if each.checkpoint is not None]
    if not counted:
        return
    yield tag("h2", "Counts", id="counts")
    rows = (
        (
            text(f"{sentence_case(each.section)}, {'row' if each.flat else 'round'} {each.number}"),
            text(sentence_case(due.reason)),
            str(due.expect),
            "",
        )
        for each, due in counted
    )
    yield table(
        ("Count at the end of", "Why here", "Stitches", "Counted"), rows, named="counts", class_="counts"
    )
