"""Read the parts of the outline that need more than a key and a value: charts, labels. No I/O."""

from __future__ import annotations

import re
from dataclasses import replace

from stepper.project.draft import FileDraft
from stepper.project.keys.charts import MAX_WIDTH, draw_chart, read_key
from stepper.project.keys.materials import read_amount
from stepper.project.keys.pictures import chart_of_picture
from stepper.project.model import Cell, Chart, Section, Switch
from stepper.project.problems import Problem, nearest, one_of
from stepper.project.yaml_file.fields import Fields
from stepper.project.yaml_file.source import Mapping, Scalar, block_lines


def read_chart(name: str, node: Mapping, draft: FileDraft, own: dict[str, str] | None = None) -> Chart | None:
    """Read one chart of the file: its key and drawn rows, or its picture.

    Args:
        name: What it is called.
        node: Its part of the file.
        draft: What is known of the file so far.
        own: The stitches that the page means by its own abbreviations, by these.
    """
    fields = Fields(node, f'chart "{name}"', draft.problems)
    if "picture" in fields.found:
        return _read_picture(name, fields, draft, own)
    key_node = fields.mapping("key", required=True)
    rows = fields.take("rows", required=True)
    repeat = fields.text("repeat")
    drawn = fields.text("drawn")
    fields.close()
    key: dict[str, Cell] = {}
    sound = True
    if key_node is not None:
        inner = Fields(key_node, "`key`", draft.problems)
        for sign, (where, value) in inner.found.items():
            if len(sign) != 1:
                draft.report(where.place, f'"{sign}" is not one sign.', "One sign stands for one stitch.")
                sound = False
            elif not isinstance(value, Scalar):
                draft.report(value.place, "a sign stands for a yarn or a stitch.")
                sound = False
            else:
                cell = read_key(value.text, value.place, draft.yarns, own)
                if isinstance(cell, Problem):
                    draft.problems.append(cell)
                    sound = False
                    cell = Cell("k", None)
                key[sign] = cell
    if rows is None or key_node is None:
        return None
    if not isinstance(rows, Scalar) or not rows.block:
        told = "the rows of a chart must stand in a block."
        draft.report(rows.place, told, 'Write "rows: |" and the rows below it.')
        return None
    chart, found = draw_chart(name, block_lines(rows, draft.text_lines), key, node.place)
    if sound:
        draft.problems.extend(found)
    return chart and _with_repeat(_with_drawn(chart, drawn, draft), repeat, draft)


def _read_picture(name: str, fields: Fields, draft: FileDraft, own: dict[str, str] | None) -> Chart | None:
    """Read a chart drawn as a picture, in the colours of the yarns and the key."""
    picture = fields.text("picture")
    stitches = read_amount(fields, "stitches", draft, most=MAX_WIDTH)
    key_node = fields.mapping("key")
    repeat, drawn = fields.text("repeat"), fields.text("drawn")
    fields.close()
    colours = {yarn.colour: Cell("k", key) for key, yarn in draft.yarns.items() if yarn.colour}
    inner = Fields(key_node, "`key`", draft.problems) if key_node is not None else None
    sound = True
    for sign, (where, value) in (inner.found if inner is not None else {}).items():
        cell = read_key(value.text, value.place, draft.yarns, own) if isinstance(value, Scalar) else None
        if not re.fullmatch(r"#[0-9a-fA-F]{6}", sign) or cell is None:
            hint = 'Write it as "#ece6d8": A, the colour in quotes.'
            draft.report(where.place, f'"{sign}" is not a colour.', hint)
            sound = False
        elif isinstance(cell, Problem):
            draft.problems.append(cell)
            sound = False
        else:
            colours[sign.lower()] = cell
    if picture is None or not sound:
        return None
    find = draft.pictures
    found = find(picture.text.strip()) if find is not None else "no picture can be read here."
    if isinstance(found, str):
        hint = "A picture is a PNG file beside the project file."
        draft.report(picture.place, found, hint)
        return None
    wide = int(stitches) if stitches is not None else None
    chart, problems = chart_of_picture(name, found, colours, picture.place, stitches=wide)
    draft.problems.extend(problems)
    return chart and _with_repeat(_with_drawn(chart, drawn, draft), repeat, draft)


def _with_repeat(chart: Chart, node: Scalar | None, draft: FileDraft) -> Chart:
    """Mark the edges: the squares outside `repeat: 5-12`, counted from the right as they are knitted."""
    if node is None:
        return chart
    match = re.fullmatch(r"(\d{1,4})\s*[-\u2013\u2014]\s*(\d{1,4})", node.text.strip())
    first, last = (int(match.group(1)), int(match.group(2))) if match else (0, 0)
    if not 1 <= first <= last <= chart.width:
        told = f'"{node.text}" is not a stretch of the {chart.width} squares of chart "{chart.name}".'
        draft.report(node.place, told, "Number the squares from the right: repeat: 3-10.")
        return chart
    return replace(chart, edge_right=first - 1, edge_left=chart.width - last)


def _with_drawn(chart: Chart, node: Scalar | None, draft: FileDraft) -> Chart:
    """Read which rows are drawn: `all rows`, or `RS rows` if the others are worked back plain."""
    if node is None:
        return chart
    word = node.text.strip().lower().removesuffix(" rows").removesuffix(" only")
    if word not in ("rs", "all"):
        draft.report(node.place, f'`drawn` is "{node.text}".', "Write RS rows, or all rows.")
    return replace(chart, right_side_only=word == "rs")


def check_labels(sections: tuple[Section, ...], switches: tuple[Switch, ...], draft: FileDraft) -> None:
    """Report switches at missing lines, and labels that a switch cannot tell apart."""
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
            draft.report(switch.place, f'there is no line labelled "{switch.label}".', hint)
        elif len(found) > 1:
            told = f'"{switch.label}" labels {len(found)} lines ({one_of(str(line) for line in found)}).'
            draft.report(switch.place, told, "Give the line of the switch a label of its own.")
