"""Plans for tests, written as a knitter would jot them: "k5 m1 (k11 m1)x15 k6".

A round is written in the notation of `phrase`: stitches with a number, repeats in brackets with `xN`, a yarn
after a colon. Counts follow from the stitch table, so a plan made here cannot disagree with itself.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import cache
from itertools import groupby

from stepper.craft.stitches import Kind, find_stitch, stitch
from stepper.plan.model import Checkpoint, Group, Item, Plan, Round, Run, Stretch, flatten
from stepper.plan.under_way.lengthen import renumber_rounds

_TOKEN = re.compile(r"\(|\)x\d+|[^\s()]+")


def phrase(text: str, yarn: str = "MC") -> tuple[Item, ...]:
    """Read a round: `k5 k2tog:A (k11 m1)x15 hold46:left_sleeve`; an underscore stands for a space."""
    stack: list[list[Item]] = [[]]
    for token in _TOKEN.findall(text):
        if token == "(":
            stack.append([])
        elif token.startswith(")x"):
            items = tuple(stack.pop())
            stack[-1].append(Group(items, int(token[2:])))
        else:
            stack[-1].append(_run(token, yarn))
    assert len(stack) == 1, text
    return tuple(stack[0])


def _run(token: str, yarn: str) -> Run:
    code, _, named = token.partition(":")
    code = code.replace("_", " ")
    named = named.replace("_", " ") or yarn
    if find_stitch(code) is not None:
        return Run(code, 1, named)
    match = re.fullmatch(r"(.*?)(\d+)", code)
    assert match is not None, token
    assert find_stitch(match.group(1)) is not None, token
    return Run(match.group(1), int(match.group(2)), named)


@dataclass
class _Notes:
    """What is said about a round besides its stitches."""

    label: str | None = None
    checkpoint: str | None = None
    remarks: tuple[str, ...] = ()
    markers: tuple[int, ...] = ()
    flat: bool = False
    side: str = "RS"
    chart: tuple[str, int] | None = None
    needle_mm: float | None = None


def plan(
    *sections: tuple[str, Iterable[str | tuple[str, dict[str, object]]]],
    title: str = "Test piece",
    stretches: tuple[Stretch, ...] = (),
    units: str = "cm",
    yarns: dict[str, str] | None = None,
) -> Plan:
    """Make a plan of sections; a round is its text, or its text and a dict of notes."""
    rounds: list[Round] = []
    count = 0
    for name, lines in sections:
        for line in lines:
            text, notes = (line, {}) if isinstance(line, str) else line
            rounds.append(_round(name, text, _Notes(**notes), count))  # type: ignore[arg-type] # notation
            count = rounds[-1].after
    return Plan(
        title=title,
        rounds=renumber_rounds(tuple(rounds)),
        stretches=stretches,
        units=units,
        yarns=yarns if yarns is not None else {"MC": "chalk", "A": "pine", "B": "ember"},
    )


def _round(section: str, text: str, notes: _Notes, before: int) -> Round:
    items = phrase(text)
    runs = tuple(
        Run(code, sum(run.times for run in same), yarn)
        for (code, yarn), same in groupby(flatten(items), key=lambda run: (run.stitch, run.yarn))
    )
    after = before + sum(run.leaves - run.uses for run in runs)
    used, shaping = 0, list[int]()
    for run in runs:
        entry = stitch(run.stitch)
        if entry.kind in (Kind.INCREASE, Kind.DECREASE):
            shaping += [used + entry.uses * at for at in range(run.times)]
        used += entry.uses * run.times
    assert used == before, f"{text!r} uses {used} of {before}"
    checkpoint = None if notes.checkpoint is None else Checkpoint(expect=after, reason=notes.checkpoint)
    return Round(
        index=0, section=section, number=1, of=1, label=notes.label, size="2", needle_mm=notes.needle_mm,
        flat=notes.flat, side=notes.side, before=before, after=after, held={}, phrase=items, runs=runs,
        shaping=tuple(shaping), floats=(), instruction=text, checkpoint=checkpoint, remarks=notes.remarks,
        chart=notes.chart[0] if notes.chart else None, chart_round=notes.chart[1] if notes.chart else None,
        markers=notes.markers,
    )  # fmt: skip


@cache
def final_increase() -> Plan:
    """Make the scenario's heart: 225 to 246 stitches, 15 gaps of 11 and 6 of 10, then a chart and the
    division."""
    gaps = "k5 m1 (k11 m1)x8 k10 m1 (k11 m1)x3 k10 m1 (k11 m1)x3 k10 m1 k10 m1 k10 m1 k10 m1 k6"
    cairn = ["(k2 k2:B k2)x41", "(k1 k4:B k1)x41", "k246:B"]
    return plan(
        ("neckband", ["co225", ("k225", {"remarks": ("Change to 3.75 mm needles",)})]),
        (
            "yoke",
            [
                "k225",
                (gaps, {"label": "Final increase", "checkpoint": "after the increases"}),
                *[(line, {"chart": ("cairn", at + 1)}) for at, line in enumerate(cairn)],
                (
                    "k43 hold54:left_sleeve co9 k81 hold54:right_sleeve co9 k14",
                    {"label": "Divide", "checkpoint": "after the division"},
                ),
            ],
        ),
        ("body", ["k156"] * 10 + ["(k2 p2)x39"] * 4 + ["bo156"]),
        title="Switchback pullover",
        stretches=(Stretch(first=8, last=17, origin=8, target_mm=100.0, rounds_per_10cm=10.0),),
    )


def with_stretch(base: Plan, **changes: object) -> Plan:
    """Change fields of a plan's first stretch."""
    first = replace(base.stretches[0], **changes)  # type: ignore[arg-type] # test notation
    return replace(base, stretches=(first, *base.stretches[1:]))
