"""Charts whose rows the page writes out: lines that call one work the rows under its name. No I/O.

"Chart A (6 sts)" above "Rnd 1: *K1 CC, k5 MC; rep from *." names a pattern like any other that a page
defines. Where no chart of that name is drawn, "Work rnds 1-5 of Chart A" means those rows.
"""

from __future__ import annotations

import re
from collections.abc import Collection
from dataclasses import replace
from typing import Any

from stepper.project.duration import Times
from stepper.project.instructions import (
    ONLY_CHART,
    ChartWork,
    Line,
    Repeated,
    Sentence,
    WorkRounds,
    is_only_said,
)
from stepper.project.model import Section
from stepper.project.nested_records import replace_nested
from stepper.project.pattern_heads import key_of
from stepper.project.stitchwork import ChartPart, Numbers
from stepper.regex import regex

_NAME = regex(
    r"^(?P<name>chart\s+[\w' -]+?|[\w' -]*?\bchart(?:\s+(?:[a-z]|\d{1,2}))?)\s*(?:[(,:].*)?$", re.I
)
"""The name in the label of the rows of a chart: "Chart A (6 sts)", "Lace Chart"."""


def chart_in_label(label: str) -> str:
    """Return the key of the chart whose rows a label heads; empty if it heads none."""
    match = _NAME.match(label.strip())
    return key_of(match["name"]) if match is not None else ""


def call_written_charts(sections: tuple[Section, ...], drawn: Collection[str]) -> tuple[Section, ...]:
    """Return sections whose lines work the rows that the page writes out for its charts.

    Args:
        sections: The sections of the file.
        drawn: The names of the charts that the file draws; a line that calls one of those means the drawing.
    """
    heads = (line.label for section in sections for line in section.lines if line.label and line.numbers)
    written = {key for label in heads if (key := chart_in_label(label))}
    if not written:
        return sections
    known = {name.lower() for name in drawn}
    made = [tuple(_called(line, written, known) for line in section.lines) for section in sections]
    made = _defined_first(made, written)
    return tuple(replace(section, lines=lines) for section, lines in zip(sections, made, strict=True))


def _defined_first(sections: list[tuple[Line, ...]], written: Collection[str]) -> list[tuple[Line, ...]]:
    """Put the rows of charts in front of all lines, where they stand behind one: pages print charts last."""
    front: list[Line] = []
    made: list[tuple[Line, ...]] = []
    for lines in sections:
        kept: list[Line] = []
        of_chart, told, last = False, False, 0
        for line in lines:
            if of_chart and is_only_said(line) and not line.label:
                kept.append(line)
                told = True  # what is told between two rounds of a chart ends it only if its numbers do
                continue
            headed = bool(line.label and line.numbers and chart_in_label(line.label) in written)
            goes_on = line.numbers[:1] == (last + 1,) if told else bool(line.numbers or line.every)
            of_chart = headed or (of_chart and goes_on and not line.label)
            told, last = False, line.numbers[-1] if line.numbers else last
            (front if of_chart else kept).append(line)
        made.append(tuple(kept))
    return [(*front, *made[0]), *made[1:]] if front else sections


def written_key(name: str, written: Collection[str], drawn: Collection[str] = ()) -> str:
    """Return the key of the written chart that a line calls by a name; empty if it means none.

    Args:
        name: As the line has it, in words joined by hyphens: `a`, `lace`, `upper-yoke`.
        written: The keys of the charts that the page writes out.
        drawn: The names of those that are drawn, in small letters.
    """
    plain = name.lower().replace("-", " ")
    if name.lower() in drawn or plain in drawn:
        return ""
    if name == ONLY_CHART:
        return next(iter(written)) if len(written) == 1 and not drawn else ""
    fits = [key for key in (f"chart {plain}", f"{plain} chart") if key in written]
    return fits[0] if len(fits) == 1 else ""


def _called(line: Line, written: Collection[str], drawn: Collection[str]) -> Line:
    """Return a line in which what works a written chart works its rows."""

    def as_rows(inner: Any) -> Any:
        if isinstance(inner, ChartWork):
            key = written_key(inner.name, written, drawn)
            return _rows_of(inner, key) if key else inner
        if isinstance(inner, ChartPart) and not inner.defined:
            key = written_key(inner.name, written, drawn)
            return replace(inner, name=key, defined=True) if key else inner
        return inner

    sentences = replace_nested(line.sentences, as_rows)
    return line if sentences is line.sentences else replace(line, sentences=sentences)


def _rows_of(chart: ChartWork, key: str) -> Sentence:
    """Return what works the rows of a written chart; the chart itself where that would say something else."""
    if chart.following or chart.whole or chart.announced or chart.total or (chart.first and not chart.last):
        return chart
    numbers = chart.numbers or (tuple(range(chart.first, (chart.last or 0) + 1)) if chart.first else ())
    once = Numbers((1,), chart.place)
    if chart.lasts is not None and not numbers:
        return WorkRounds(f"named {key}", chart.lasts, chart.place)
    lasts = chart.lasts or Times(chart.times or once, False)
    return Repeated(numbers, chart.rounds, lasts, False, chart.place, pattern=key)
