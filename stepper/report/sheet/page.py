"""The sheet as one self-contained page to print and tick off. Pure.

What comes from the file is escaped; the page tells the browser to let it fetch nothing and run nothing.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import assert_never

from stepper.craft.figures import format_number
from stepper.plan.model import Plan
from stepper.project.model import Project
from stepper.report.drawing.markup import figure, table, tag, text
from stepper.report.sheet.blocks import (
    Block,
    Bullets,
    Gallery,
    Grid,
    Paragraph,
    Picture,
    RoundRow,
    RoundTable,
    SheetHeading,
    TableCell,
    Terms,
    TickBox,
)
from stepper.report.sheet.contents import lay_out_sheet
from stepper.report.sheet.style import STYLE, footer_rule
from stepper.report.yarn import YarnRow

MANY = {1: 14, 2: 12}
"""Up to this many boxes for a piece fit beside the instruction, by the number of pieces. Chosen here."""

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
    head = [
        '<meta charset="utf-8">',
        '<meta name="viewport" content="width=device-width, initial-scale=1">',
        f'<meta http-equiv="Content-Security-Policy" content="{text(_SECURITY)}">',
        tag("title", text(plan.title)),
        tag("style", STYLE + footer_rule(plan.title)),
    ]
    body = tag("body", tag("main", map(_block, lay_out_sheet(plan, project, yarns))))
    return f'<!DOCTYPE html>\n<html lang="en">{tag("head", head)}{body}</html>\n'


def _block(block: Block) -> str:
    match block:
        case SheetHeading():
            note = f" {tag('small', text(block.note))}" if block.note else ""
            return tag(f"h{block.level}", text(block.text) + note, id=block.key or None)
        case Paragraph():
            return tag("p", text(block.text), class_="lead" if block.quiet else None)
        case Bullets():
            items = (tag("li", text(each)) for each in block.items)
            return tag("ul", items, class_="cautions" if block.cautions else None)
        case Terms():
            items = (
                tag("div", tag("dt", text(word)) + tag("dd", text(meant))) for word, meant in block.items
            )
            return tag("dl", items, aria_labelledby=block.key, class_="terms")
        case Grid():
            rows = ([_cell(cell) for cell in row] for row in block.rows)
            return table(map(text, block.head), rows, named=block.key, class_="figures")
        case Gallery():
            return tag("div", " ".join(map(_picture, block.pictures)), class_="gallery")
        case RoundTable():
            return _rounds(block)
        case _:
            assert_never(block)


def _cell(cell: TableCell) -> str:
    square = ""
    if cell.looks is not None:
        square = '<svg class="swatch" viewBox="0 0 14 14" aria-hidden="true"><rect x=".5" y=".5" width="13" '
        square += f'height="13" fill="{cell.looks.colour}" stroke="#8a867d"/></svg> '
    if not cell.remark:
        return square + text(cell.text)
    return tag("p", square + text(cell.text)) + tag("p", text(cell.remark), class_="remark")


def _picture(picture: Picture) -> str:
    entries = [tag("li", f"{sign.drawing} {text(sign.words)}") for sign in picture.signs]
    caption = text(picture.caption) + (tag("ul", entries, class_="legend") if entries else "")
    title = tag("h3", text(picture.title)) if picture.title else ""
    wide = f"width:{format_number(picture.wide_mm)}mm"
    kind = "picture large" if picture.beside else "picture"
    return tag("div", title + figure(picture.drawing, caption), class_=kind, style=wide)


def _rounds(block: RoundTable) -> str:
    heads = (block.word, "Instruction", "Stitches", *block.pieces)
    top = tag("thead", tag("tr", (tag("th", text(each), scope="col") for each in heads)))
    rows = "".join(_row(row, block) for row in block.rows)
    kind = "rounds pair" if len(block.pieces) > 1 else "rounds"
    return tag("table", [top, tag("tbody", rows)], aria_labelledby=block.key, class_=kind)


def _row(row: RoundRow, block: RoundTable) -> str:
    """Write a run of rounds; many boxes get a row of their own, as wide as the sheet."""
    many = len(row.boxes[0]) > MANY[len(row.boxes)]
    before = f"{row.before} → " if row.before != row.after else ""
    after = tag("b", str(row.after)) if before else str(row.after)
    cells = [
        tag("th", text(row.numbers), scope="row"),
        tag("td", _instruction(row)),
        tag("td", before + after),
        *(tag("td", "below" if many else _boxes(each, row)) for each in row.boxes),
    ]
    if not many:
        return tag("tr", cells)
    names = block.pieces if len(block.pieces) > 1 else ("",)
    below = "".join(
        (tag("p", text(name), class_="whose") if name else "") + _boxes(each, row)
        for name, each in zip(names, row.boxes, strict=True)
    )
    wide = tag("td", below, colspan=str(3 + len(row.boxes)), class_="many")
    return tag("tr", cells, class_="above") + tag("tr", wide)


def _instruction(row: RoundRow) -> Iterator[str]:
    for remark in row.remarks:
        yield tag("p", text(remark), class_="remark")
    *others, last = row.words
    label = tag("strong", text(f"{row.label}: ")) if row.label else ""
    for words in others:
        yield tag("p", label + text(words))
        label = ""
    check = f" {tag('span', text(row.check.text), class_='count')}" if row.check is not None else ""
    yield tag("p", label + text(last) + check)
    if row.altered:
        yield tag("p", text(row.altered), class_="altered")


def _boxes(boxes: Sequence[TickBox], row: RoundRow) -> str:
    blank = '<span class="blank"></span>' if row.check is not None else ""
    return tag("div", "".join(map(_box, boxes)) + blank, class_="boxes")


def _box(box: TickBox) -> str:
    named = f'<input type="checkbox" aria-label="{text(box.said)}">'
    return tag("label", [named, tag("span", str(box.number), aria_hidden="true")], class_="tick")
