"""End the rounds of a line where it says: "ending with a WS row", behind a number or a count. No I/O."""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.drafts import Template
from stepper.plan.fabric.established import ground
from stepper.plan.lines.cut_short import take_back_cut_short
from stepper.plan.lines.durations import numbers_of
from stepper.plan.lines.rounds import work_template
from stepper.plan.lines.shaping.edge_sides import side_ending_at
from stepper.plan.state.needles import Needles
from stepper.project.duration import Ended


def end_with(instruction: Ended, needles: Needles) -> None:
    """Check where the rounds of a line end; a repeat to a count goes on to there if no count changes."""
    if needles.counting.lost or not needles.drafts:
        return
    if instruction.side.startswith("at "):
        ends = side_ending_at(instruction.side.removeprefix("at "), instruction.place, needles)
        if not ends:
            return
        instruction = replace(instruction, side=ends)
    cycle, following = needles.last.repeated
    may_go_on = bool(cycle) and needles.last.counted == len(needles.drafts)
    before, findings = needles.count, len(needles.findings)
    for more in range(len(cycle) if may_go_on else 1):
        if _ends_so(instruction, cycle, (following + more - 1) % max(1, len(cycle)), needles):
            if may_go_on:
                take_back_cut_short(needles)
            return
        if may_go_on and more + 1 < len(cycle):
            work_template(cycle[(following + more) % len(cycle)], needles)
        if needles.count != before or len(needles.findings) > findings:
            break
    told = f"the rounds of the line end with a {needles.drafts[-1].side} row." if needles.flat else ""
    needles.report(instruction.place, told or "the rounds of the line end with another one.")


def _ends_so(instruction: Ended, cycle: tuple[Template, ...], at: int, needles: Needles) -> bool:
    """Return whether the last round is the one that a line names; `at` is its place in the repeat."""
    if instruction.number is not None:
        wanted = instruction.number.of(needles.size)
        return bool(cycle) and list(numbers_of(cycle, needles))[at] == wanted
    if instruction.side in ("k", "p") and ground(needles) not in ("plain", ""):
        return False
    return needles.flat and needles.drafts[-1].side == find_side_ended(instruction.side)


def find_side_ended(word: str) -> str:
    """Return the side that rounds end with: a knit row is a right-side row, a purl row one of the other."""
    return {"k": "RS", "p": "WS"}.get(word, word)
