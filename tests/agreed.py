"""What was agreed on, kept as text: a plan or a sitting is written out and compared with the file of its name.

Such a file only notices change. Whether a round is right is judged elsewhere, against counts by hand and second
reckonings; these files were read when they were written, and where one differs somebody reads the difference before
it is agreed on anew: `STEPPER_WRITE_GOLDENS=1 python -m pytest tests/plan/test_agreed_plans.py`.
"""

from __future__ import annotations

import os
from collections.abc import Iterator, Sequence
from difflib import unified_diff
from functools import lru_cache
from itertools import pairwise
from pathlib import Path

import pytest

from stepper.plan.compile import Compiled, compile_plan
from stepper.plan.model import Plan, Round, Run, Stretch
from stepper.plan.stitches.abbreviate import in_its_yarn
from stepper.project.problems import Problem
from stepper.project.reader import read_project

UPDATE = "STEPPER_WRITE_GOLDENS"
TESTS = Path(__file__).parent
FOLDERS = {
    "sample": TESTS.parent / "sample_projects",
    "fixture": TESTS / "fixtures",
    "invented": TESTS / "report" / "garments",
    "typed": TESTS / "project" / "corpus" / "garments",
    "whole": TESTS / "project" / "whole",
}
"""Where whole garments stand as project files, by what the kind is called here."""
LONGEST_CYCLE = 24
"""Rows looked through for a repeat. Unit: rows."""
MOST_SHOWN = 12
"""Lines of a difference that are shown."""


def garments() -> list[str]:
    """List the garments that are project files: kind and name."""
    return [
        f"{kind}-{path.stem}" for kind, folder in FOLDERS.items() for path in sorted(folder.glob("*.yaml"))
    ]


@lru_cache
def plan_of(garment: str) -> Plan | None:
    """Return the plan of a garment; None if it is refused."""
    kind, _, name = garment.partition("-")
    return plan_from((FOLDERS[kind] / f"{name}.yaml").read_text(encoding="utf-8"))


def plan_from(text: str) -> Plan | None:
    """Return the plan of a project file; None if it is refused."""
    project = read_project(text).project
    return None if project is None else compile_plan(project).plan


def rows_from(text: str) -> list[str]:
    """Write what becomes of a project file: what is worked, or that it is not read or refused and why."""
    reading = read_project(text)
    if reading.project is None:
        return ["not read", *map(problem_row, reading.problems)]
    return compiled_rows(compile_plan(reading.project))


def compiled_rows(made: Compiled) -> list[str]:
    """Write what becomes of a project: what is worked, or `refused` and why."""
    if made.plan is not None:
        return work_lines(made.plan)
    return ["refused", *map(problem_row, made.problems)]


def problem_row(problem: Problem) -> str:
    """Write what is told of a fault: where the caret stands, how wide, the message and the hint."""
    place = f"{problem.line}:{problem.column}+{problem.length}"
    return f"{place}: {problem.message} | {' / '.join(problem.hint.splitlines())}"


def compare(path: Path, lines: Sequence[str]) -> None:
    """Compare lines with those kept in a file, or keep them."""
    if os.environ.get(UPDATE) == "1":
        path.parent.mkdir(exist_ok=True)
        path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    agreed = path.read_text(encoding="utf-8").splitlines() if path.exists() else []
    if agreed != list(lines):
        differs = list(unified_diff(agreed, lines, "agreed", "now", lineterm="", n=0))
        head = f"{path.name} differs; if it is meant to, read it and write it anew with {UPDATE}=1:"
        pytest.fail("\n".join([head, *differs[:MOST_SHOWN]]))


def plan_lines(plan: Plan) -> list[str]:
    """Write a whole plan, each round in a row, rounds that repeat only once."""
    yarns = ", ".join(f"{key} {name}" for key, name in plan.yarns.items())
    rows = [f"{plan.title}; {plan.units}; {plan.spacing.value}; by {plan.finish_by}; {yarns}"]
    rows += [f"loop {name}: {_numbers(loop)}" for name, loop in plan.materials.loops.items()]
    rows += [f"yarn {key}: {_numbers(stock)}" for key, stock in plan.materials.stocks.items()]
    return rows + work_lines(plan)


def work_lines(plan: Plan) -> list[str]:
    """Write what is worked and told, without what stands at the head of the file."""
    rows = [f"warning, line {caution.line}: {caution.text}" for caution in plan.warnings]
    rows += [_stretch_row(stretch) for stretch in plan.stretches]
    for section in plan.sections:
        rounds = [round_ for round_ in plan.rounds if round_.section == section]
        rows.append(f"== {section}: from {rounds[0].index}, {len(rounds)} of {rounds[0].of}")
        rows += joined([row_of(round_) + _read_out(round_, plan) for round_ in rounds])
    return rows


def _read_out(round_: Round, plan: Plan) -> str:
    """Write how a round is read out with its yarn, where that is not how it is written."""
    said = in_its_yarn(round_, plan.rounds[round_.index - 1] if round_.index else None, plan)
    return f" | in its yarn: {said}" if said != round_.instruction else ""


def joined(rows: Sequence[str]) -> list[str]:
    """Write rows that repeat once, with how often."""
    made: list[str] = []
    for times, block in blocks(rows):
        made += [f"{times:3}x {row}" if not i and times > 1 else f"     {row}" for i, row in enumerate(block)]
        if times > 1 and len(block) > 1:
            made[-1] += f"  <{len(block)}"
    return made


def blocks(rows: Sequence[str]) -> Iterator[tuple[int, Sequence[str]]]:
    """Yield what stands in a row again and again once, with how often; what does not, one at a time."""
    at = 0
    while at < len(rows):
        size, times = max(_repeats(rows, at), key=lambda found: (found[0] * (found[1] - 1), -found[0]))
        yield times, rows[at : at + size]
        at += size * times


def _repeats(rows: Sequence[str], at: int) -> Iterator[tuple[int, int]]:
    """Yield how many rows from here are repeated, and how often they stand here."""
    for size in range(1, min(LONGEST_CYCLE, len(rows) - at) + 1):
        block, times = rows[at : at + size], 1
        while rows[at + size * times : at + size * (times + 1)] == block:
            times += 1
        if size == 1 or times > 1:
            yield size, times


def row_of(round_: Round) -> str:
    """Write a round with all that is known of it, but for its number: that follows from its place."""
    ready = round_.checkpoint
    parts = {
        "says": round_.instruction,
        "flat": _laid_flat(round_.runs),
        "changes at": _gaps(round_.shaping),
        "held": " ".join(f"{name} {count}" for name, count in round_.held.items()),
        "markers": " ".join(map(str, round_.markers)),
        "floats": " ".join(f"{yarn} {most}" for yarn, most in round_.floats),
        "caught": " ".join(f"{yarn} {places}" for yarn, places in round_.caught),
        "chart": f"{round_.chart} {round_.chart_round}" if round_.chart else "",
        "evenly": "yes" if round_.evenly else "",
        "own": round_.words,
        "label": round_.label or "",
        "count": f"{ready.expect} {ready.reason}" if ready else "",
        "told": " / ".join(round_.remarks),
        "altered": " / ".join(round_.altered),
    }
    needle = "" if round_.needle_mm is None else f" {round_.needle_mm:g} mm"
    side = round_.side if round_.flat else "round" + round_.side.removeprefix("RS")
    head = f"{round_.before}-{round_.after} {side}{needle} {round_.gauge} {round_.size} l{round_.line}"
    return head + "".join(f" | {name}: {part}" for name, part in parts.items() if part)


def _laid_flat(runs: Sequence[Run]) -> str:
    """Write stitches laid flat, those that repeat in brackets, a yarn where it is not the first one's."""
    first = runs[0].yarn
    words = [f"{run.stitch} {run.times}" + f":{run.yarn}" * (run.yarn != first) for run in runs]
    if len(words) == 1 and runs[0].stitch in ("k", "p", "co", "bo"):
        return "" if first == "MC" else f":{first}"
    found = [f"{times}({', '.join(block)})" if times > 1 else block[0] for times, block in blocks(words)]
    return (f":{first} " if first != "MC" else "") + ", ".join(found)


def _gaps(places: Sequence[int]) -> str:
    """Write places as the first one and the steps to the next."""
    steps = [f"+{after - before}" for before, after in pairwise(places)]
    found = [f"{times}({' '.join(block)})" if times > 1 else block[0] for times, block in blocks(steps)]
    return " ".join([*map(str, places[:1]), *found])


def _stretch_row(stretch: Stretch) -> str:
    return (
        f"stretch {stretch.first}-{stretch.last} from {stretch.origin}: {stretch.target_mm:.6g} mm"
        f" at {stretch.rounds_per_10cm:.6g}, cycle {stretch.cycle}"
    )


def _numbers(record: object) -> str:
    """Write a record in its fields' order, with six digits a number: the last ones are the machine's."""
    fields = getattr(record, "__slots__", ())
    if not fields:
        return f"{record:.6g}" if isinstance(record, float) else str(record)
    return "(" + " ".join(_numbers(getattr(record, name)) for name in fields) + ")"
