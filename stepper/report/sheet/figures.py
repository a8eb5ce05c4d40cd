"""The figures of the sheet: the pieces with their measurements, the gauges, the yarn; in the units of the
file. Pure."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from stepper.craft.figures import format_number
from stepper.craft.needles import NEEDLE_SIZES, is_same_needle
from stepper.craft.skeins import OUNCE_G, YARD_M
from stepper.language.measures import gauge, length
from stepper.language.places import sentence_case
from stepper.plan.model import Plan
from stepper.project.model import Fabric, Project
from stepper.report.fit.lines import signed_length
from stepper.report.measure.measurements import measure_fully
from stepper.report.measure.measuring import Measurement
from stepper.report.sheet.blocks import Block, Gallery, Grid, Paragraph, Picture, SheetHeading, TableCell
from stepper.report.sheet.looks import YarnLooks
from stepper.report.sheet.pairs import join_words
from stepper.report.sheet.pieces import lay_out_pieces
from stepper.report.sheet.schematic import draw_schematic
from stepper.report.yarn import YarnRow

_NONE = TableCell(text="–")


def lay_out_measurements(plan: Plan, project: Project) -> Iterator[Block]:
    """Lay out the schematic and the table of what the garment measures, beside the wearer."""
    found = lay_out_pieces(plan, project)
    yield SheetHeading(level=2, text="Finished measurements", key="measurements")
    if found:
        drawing = draw_schematic(found, title=plan.title, units=plan.units)
        caption = "Laid flat, to scale. What is worked in the round is measured all around."
        yield Gallery(pictures=(Picture(drawing=drawing, wide_mm=184.0, caption=caption),))
    whole = measure_fully(plan.rounds, project)
    worn = any(line.body_mm is not None for line in whole.lines)
    blocked = any(line.blocked_mm is not None for line in whole.lines)
    head = (
        "Where",
        "On the needles",
        *(("Blocked",) if blocked else ()),
        *(("Wearer", "Ease") if worn else ()),
    )
    if whole.lines:
        rows = _merge_alike([tuple(_measured(line, plan.units, worn, blocked)) for line in whole.lines])
        yield Grid(key="measurements", head=head, rows=rows)
    for said in whole.left_out:
        yield Paragraph(text=said, quiet=True)


def _merge_alike(rows: Sequence[tuple[TableCell, ...]]) -> tuple[tuple[TableCell, ...], ...]:
    """Write rows of two like pieces with the same figures as one: "Left / right sleeve, length"."""
    merged: list[tuple[TableCell, ...]] = []
    for row in rows:
        for place, other in enumerate(merged):
            joined = join_words(other[0].text, row[0].text)
            if joined is not None and joined != row[0].text and other[1:] == row[1:]:
                merged[place] = (TableCell(text=joined), *row[1:])
                break
        else:
            merged.append(row)
    return tuple(merged)


def _measured(line: Measurement, units: str, worn: bool, blocked: bool) -> Iterator[TableCell]:
    yield TableCell(text=sentence_case(line.name))
    yield TableCell(text=length(line.needles_mm, units))
    if blocked:
        yield TableCell(text=length(line.blocked_mm, units)) if line.blocked_mm is not None else _NONE
    if worn:
        yield TableCell(text=length(line.body_mm, units)) if line.body_mm is not None else _NONE
        eased = line.ease_mm is not None and line.stitches
        yield TableCell(text=signed_length(line.ease_mm or 0.0, units)) if eased else _NONE


def lay_out_gauge(project: Project) -> Iterator[Block]:
    """Lay out the gauge of every fabric, with its needle."""
    yield SheetHeading(level=3, text="Gauge", key="gauge")
    blocked = any(fabric.blocked is not None for fabric in project.fabrics.values())
    rows = tuple(
        (
            TableCell(text=sentence_case(fabric.name)),
            TableCell(text=name_needle(fabric.needle_mm, project.units)),
            *(TableCell(text=each) for each in _gauges(fabric, project.units, blocked)),
        )
        for fabric in project.fabrics.values()
    )
    head = ("Fabric", "Needle", "On the needles", *(("Blocked",) if blocked else ()))
    yield Grid(key="gauge", head=head, rows=rows)


def name_needle(needle_mm: float | None, units: str) -> str:
    """Name a needle: by its diameter, and in inches by its US number too if it has one."""
    if needle_mm is None:
        return "–"
    us = next((each.us for each in NEEDLE_SIZES if is_same_needle(each.mm, needle_mm)), None)
    metric = f"{needle_mm:g} mm"
    return f"US {us} ({metric})" if us is not None and units == "in" else metric


def _gauges(fabric: Fabric, units: str, blocked: bool) -> Iterator[str]:
    over = 101.6 if units == "in" else 100.0
    for each in (fabric.gauge, fabric.blocked) if blocked else (fabric.gauge,):
        if each is None:
            yield "–"
            continue
        yield f"{over / each.width_mm(1):.4g} sts, {gauge(100 / each.round_mm, units)}"


def lay_out_yarn(yarns: Sequence[YarnRow], project: Project, looks: dict[str, YarnLooks]) -> Iterator[Block]:
    """Lay out how much of each yarn it takes and what to buy."""
    if not yarns:
        return
    yield SheetHeading(level=2, text="Yarn", key="yarn")
    inches = project.units == "in"
    head = (
        "Yarn",
        "Yards" if inches else "Metres",
        "Ounces" if inches else "Grams",
        "To buy",
        "In the house",
    )
    yield Grid(key="yarn", head=head, rows=tuple(tuple(_yarn(row, looks, inches)) for row in yarns))
    yield Paragraph(
        text="What is likely, and from how little to how much it may be; the skeins last even then, and hold "
        "at least 15 % over what is likely, for a swatch and to spare.",
        quiet=True,
    )


def _yarn(row: YarnRow, looks: dict[str, YarnLooks], inches: bool) -> Iterator[TableCell]:
    shade = looks.get(row.key)
    few = "a few yards: a remnant will do" if inches else "a few metres: a remnant will do"
    name = shade.named if shade is not None else row.name
    yield TableCell(text=name, looks=shade, remark=few if row.few else "")
    amount = row.quantity
    unit_m = YARD_M if inches else 1.0
    yield TableCell(text=_range(amount.likely_m / unit_m, amount.low_m / unit_m, amount.high_m / unit_m))
    if amount.likely_g is None or amount.low_g is None or amount.high_g is None:
        yield _NONE
    else:
        unit_g, digits = (OUNCE_G, 1) if inches else (1.0, 0)
        yield TableCell(
            text=_range(amount.likely_g / unit_g, amount.low_g / unit_g, amount.high_g / unit_g, digits)
        )
    own = next((each for each in row.buying if each.own), None)
    if own is None:
        yield _NONE
    else:
        skein = f"{format_number(own.grams / OUNCE_G, 2)} oz" if inches else f"{own.grams:.0f} g"
        yield TableCell(text=f"{own.skeins} of {skein}")
    yield TableCell(text=f"{row.bought:g}") if row.bought is not None else _NONE


def _range(likely: float, low: float, high: float, digits: int = 0) -> str:
    return f"{likely:.{digits}f} ({low:.{digits}f}–{high:.{digits}f})"
