"""Parts of the outline that need more than a key and a value: charts, labels. No I/O."""

from __future__ import annotations

import re
from collections.abc import Mapping as Table
from dataclasses import replace

from stepper.project.charts import draw_chart, read_key
from stepper.project.fields import Fields
from stepper.project.model import Cell, Chart, Section, Switch
from stepper.project.problems import Problem, nearest, one_of
from stepper.project.source import Mapping, Scalar, block_lines


def read_chart(
    name: str, node: Mapping, yarns: Table[str, object], text_lines: list[str], problems: list[Problem]
) -> Chart | None:
    """Read one chart of the file: its key and its drawn rows."""
    fields = Fields(node, f'chart "{name}"', problems)
    key_node = fields.mapping("key", required=True)
    rows = fields.take("rows", required=True)
    repeat = fields.text("repeat")
    drawn = fields.text("drawn")
    fields.close()
    key: dict[str, Cell] = {}
    sound = True
    if key_node is not None:
        inner = Fields(key_node, "`key`", problems)
        for sign, (where, value) in inner.found.items():
            if len(sign) != 1:
                problems.append(
                    where.place.problem(f'"{sign}" is not one sign.', "One sign stands for one stitch.")
                )
                sound = False
            elif not isinstance(value, Scalar):
                problems.append(value.place.problem("a sign stands for a yarn or a stitch."))
                sound = False
            else:
                cell = read_key(value.text, value.place, yarns)
                if isinstance(cell, Problem):
                    problems.append(cell)
                    sound = False
                    cell = Cell("k", None)
                key[sign] = cell
    if rows is None or key_node is None:
        return None
    if not isinstance(rows, Scalar) or not rows.block:
        problems.append(
            rows.place.problem(
                "the rows of a chart must stand in a block.", 'Write "rows: |" and the rows below it.'
            )
        )
        return None
    chart, found = draw_chart(name, block_lines(rows, text_lines), key, node.place)
    if sound:
        problems.extend(found)
    return chart and _with_repeat(_with_drawn(chart, drawn, problems), repeat, problems)


def _with_repeat(chart: Chart, node: Scalar | None, problems: list[Problem]) -> Chart:
    """Take off the edges: the squares outside `repeat: 5-12`, counted from the right as they are knitted."""
    if node is None:
        return chart
    match = re.fullmatch(r"(\d{1,4})\s*[-\u2013\u2014]\s*(\d{1,4})", node.text.strip())
    first, last = (int(match.group(1)), int(match.group(2))) if match else (0, 0)
    if not 1 <= first <= last <= chart.width:
        problems.append(
            node.place.problem(
                f'"{node.text}" is not a stretch of the {chart.width} squares of chart "{chart.name}".',
                "Number the squares from the right: repeat: 3-10.",
            )
        )
        return chart
    return replace(chart, edge_right=first - 1, edge_left=chart.width - last)


def _with_drawn(chart: Chart, node: Scalar | None, problems: list[Problem]) -> Chart:
    """Read which rows are drawn: `all rows`, or `RS rows` where the others are worked back plain."""
    if node is None:
        return chart
    word = node.text.strip().lower().removesuffix(" rows").removesuffix(" only")
    if word not in ("rs", "all"):
        problems.append(node.place.problem(f'`drawn` is "{node.text}".', "Write RS rows, or all rows."))
    return replace(chart, right_side_only=word == "rs")


def check_labels(
    sections: tuple[Section, ...], switches: tuple[Switch, ...], problems: list[Problem]
) -> None:
    """Report switches at lines that are not there, and labels that a switch cannot tell apart."""
    labels: dict[str, list[int]] = {}
    names: dict[str, str] = {}
    for section in sections:
        for line in section.lines:
            if line.label:
                labels.setdefault(line.label.lower(), []).append(line.place.line)
                names[line.label.lower()] = line.label
    for switch in switches:
        found = labels.get(switch.label.lower(), [])
        if not found and sections:
            hint = nearest(switch.label, names.values()) or (
                f"The labelled lines are {one_of(names.values())}." if names else "No line has a label."
            )
            problems.append(switch.place.problem(f'there is no line labelled "{switch.label}".', hint))
        elif len(found) > 1:
            problems.append(
                switch.place.problem(
                    f'"{switch.label}" labels {len(found)} lines ({one_of(str(line) for line in found)}).',
                    "Give the line of the switch a label of its own.",
                )
            )
