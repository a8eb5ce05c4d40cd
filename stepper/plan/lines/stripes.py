"""Rounds in stripes: one yarn after the other over the same fabric. No I/O."""

from __future__ import annotations

from dataclasses import replace
from itertools import cycle as over_and_over
from itertools import islice
from math import lcm

from stepper.plan.drafts import Template
from stepper.plan.fabric.established import as_it_looks, even
from stepper.plan.lines.durations import cycle_of, last_for
from stepper.plan.state.needles import MOST_ROUNDS, Needles
from stepper.project.instructions import Striped, WorkRounds
from stepper.project.problems import nearest, one_of


def work_stripes(instruction: Striped, needles: Needles) -> None:
    """Work rounds of a fabric in stripes, each of so many rounds in its yarn, for a duration."""
    if needles.count == 0:
        needles.miss_stitches(instruction.place)
        return
    yarns = yarns_of(instruction, needles)
    rounds = _fabric(instruction, needles)
    if rounds is None or len(yarns) < sum(number for number, _ in instruction.stripes):
        needles.lose()
        return
    striped = tuple(
        replace(row, yarn=yarn)
        for row, yarn in islice(
            zip(over_and_over(rounds), over_and_over(yarns), strict=False), lcm(len(rounds), len(yarns))
        )
    )
    last_for(striped, instruction.duration, needles, instruction.place, start=len(needles.drafts))


def _fabric(instruction: Striped, needles: Needles) -> tuple[Template, ...] | None:
    """Return the rounds of the fabric, the one that comes next first; None, reported, if there are none."""
    if instruction.manner == "pattern" and needles.section.pattern:
        going = even(needles, instruction.place)
        if going is None:
            return None
        rounds, first = going
        rounds = as_it_looks(rounds, needles, instruction.place)
        return (*rounds[first % len(rounds) :], *rounds[: first % len(rounds)])
    return cycle_of(WorkRounds(instruction.manner, instruction.duration, instruction.place), needles)


def yarns_of(instruction: Striped, needles: Needles) -> list[str]:
    """Return the yarn of every round of the stripes; fewer, reported, where the file has not all of them."""
    keys = {key.lower(): key for key in needles.project.yarns}
    found: list[str] = []
    for number, name in instruction.stripes:
        key = keys.get(name.lower())
        if key is None:
            hint = nearest(name, keys.values()) or f"The yarns are {one_of(keys.values())}."
            needles.report(instruction.place, f'there is no yarn "{name}".', hint)
            continue
        if number > MOST_ROUNDS:
            needles.report(instruction.place, f"a stripe of more than {MOST_ROUNDS} rounds is no stripe.")
            continue
        found += [key] * number
    return found
