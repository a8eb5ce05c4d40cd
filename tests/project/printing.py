"""A project rendered as a printed pattern, as a page would show it: for pasting back."""

from __future__ import annotations

import textwrap

from stepper.project.model import Cell, Chart, Fabric, Project


def printed(project: Project, *, width: int | None = None, shout: bool = True) -> str:
    """Render a project.

    Args:
        project: What to print.
        width: Width at which lines are broken inside their sentences, as a PDF breaks them; nothing for none.
        shout: Whether headings stand in capitals.
    """
    head = (lambda words: words.upper()) if shout else (lambda words: words.title())
    rows = [project.title, "", f"Sizes: {_listed(project.sizes)}", "", head("yarn")]
    rows += [f"{key}: {yarn.name}" for key, yarn in project.yarns.items()]
    skein = next((yarn for yarn in project.yarns.values() if yarn.grams and yarn.metres), None)
    rows += [f"Skeins of {skein.grams:g} g = {skein.metres:g} m each."] if skein else []
    rows += ["", head("gauge")]
    for fabric in project.fabrics.values():
        rows += _gauge(fabric, inches=project.units == "in")
    for chart in project.charts.values():
        rows += ["", f"Chart {chart.name}", *_chart(chart)]
    for section in project.sections:
        method = f", {section.short_rows} short rows" if section.short_rows else ""
        rows += ["", f"{head(section.name)} ({section.gauge} gauge{method})"]
        for line in section.lines:
            rows += (
                textwrap.wrap(line.text, width, break_long_words=False, break_on_hyphens=False)
                if width
                else [line.text]
            )
    return "\n".join(rows) + "\n"


def _listed(names: tuple[str, ...]) -> str:
    return names[0] if len(names) == 1 else f"{names[0]} ({', '.join(names[1:])})"


def _gauge(fabric: Fabric, *, inches: bool) -> list[str]:
    over, scale = ("4 in", 1.016) if inches else ("10 cm", 1.0)
    needle = f" on {fabric.needle_mm:g} mm needles" if fabric.needle_mm else ""
    stitches, rounds = fabric.gauge.stitches * scale, fabric.gauge.rounds * scale
    rows = [f"{stitches:.6g} sts and {rounds:.6g} rnds = {over} in {fabric.name}{needle}."]
    if fabric.blocked is not None:
        stitches, rounds = fabric.blocked.stitches * scale, fabric.blocked.rounds * scale
        rows.append(f"After blocking: {stitches:.6g} sts and {rounds:.6g} rnds = {over}.")
    return rows


def _meaning(cell: Cell) -> str:
    if not cell.stitch:
        return "no stitch"
    if cell.yarn is None:
        return cell.stitch
    return cell.yarn if cell.stitch == "k" else f"{cell.yarn} {cell.stitch}"


def _chart(chart: Chart) -> list[str]:
    signs = ".aboxsv/^\\cdefghij"
    cells = list(dict.fromkeys(cell for row in chart.rounds for cell in row))
    key = dict(zip(cells, signs, strict=False))
    rows = ["; ".join(f"{key[cell]} = {_meaning(cell)}" for cell in cells)]
    if chart.edge_left or chart.edge_right:
        rows.append(f"Repeat: {chart.edge_right + 1}-{chart.width - chart.edge_left}")
    if chart.right_side_only:
        rows.append("RS rows only are drawn")
    return rows + ["".join(key[cell] for cell in row) for row in reversed(chart.rounds)]
