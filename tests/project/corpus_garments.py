"""Whole garments as typed, judged line by line against counts worked out by hand.

Beside each file of `tests/project/corpus/garments/` stands a table: the row of the file, the stitches on the needles
after it in every size, and where they follow from the page its rows, the rows of its section and the stitches held.
A row that is refused is put into the plainest words, which the table has too, so that the rows after it are judged.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache

from stepper.plan.compile import compile_plan, faults_of
from stepper.plan.model import Plan, Round
from stepper.project.problems import Problem
from stepper.project.reader import read_project
from tests.fixtures import compile_in_size
from tests.project.corpus_entries import CORPUS
from tests.project.corpus_judge import runs_of

GARMENTS = CORPUS / "garments"


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """What the program says to a garment."""

    refused: tuple[int, ...]
    """Rows of the file, as typed, with a problem, from 1."""
    judged: tuple[int, ...]
    """Rows of the table that were worked and checked, those put into plain words left out."""
    wrong: tuple[str, ...]
    """What differs from the table."""
    stopped: str = ""
    """What ended the judging before the last row, if anything."""


def names() -> list[str]:
    """List the garments."""
    return sorted(path.stem for path in GARMENTS.glob("*.yaml"))


def table(name: str) -> dict[int, dict[str, list[str]]]:
    """Read the counts of a garment: row, then `after`, `rows`, `total`, `held` and `runs`, one for each size."""
    found: dict[int, dict[str, list[str]]] = {}
    for line in _lines(name):
        row, colon, rest = line.partition(":")
        if colon and row.isdecimal():
            words = ["after", *rest.split()]
            pairs = zip(words[::2], words[1::2], strict=True)
            found[int(row)] = {key: value.split("/") for key, value in pairs}
    return found


def plain_words(name: str) -> dict[int, tuple[int, str]]:
    """Read the plainest words of a garment: row, then the row whose refusal calls for them, and the words."""
    found = {}
    for line in _lines(name):
        match = re.match(r"(\d+)>(\d*) (.*)", line)
        if match:
            found[int(match[1])] = (int(match[2] or match[1]), match[3])
    return found


def _lines(name: str) -> list[str]:
    rows = (GARMENTS / f"{name}.txt").read_text(encoding="utf-8").splitlines()
    return [row for row in rows if row and not row.startswith("#")]


def work_rows(text: str) -> list[int]:
    """List the rows of a file that are lines of the pattern."""
    begins = _begins(text)
    rows = enumerate(text.splitlines(), 1)
    return [number for number, row in rows if number > begins and re.match(r"      \S", row)]


def _begins(text: str) -> int:
    return text.splitlines().index("sections:") + 1


@lru_cache(maxsize=16)
def told(name: str) -> Told:
    """Work a garment in every size, with plain words in place of the rows that are refused, and check it."""
    typed = (GARMENTS / f"{name}.yaml").read_text(encoding="utf-8")
    problems = problems_of(typed)
    refused = tuple(sorted({problem.line for problem in problems}))
    text, mended, stopped = _mended(name, _without_blend(typed))
    judged, wrong = [], []
    for row, expected in table(name).items() if not stopped else ():
        if row not in mended:
            judged.append(row)
        for size, plan in enumerate(_plans(text)):
            where = f"row {row}{' in plain words' * (row in mended)}, size {size + 1}"
            wrong += [f"{where}: {fault}" for fault in _faults(plan, row, expected, size, text)]
    return Told(refused=refused, judged=tuple(judged), wrong=tuple(wrong), stopped=stopped)


def _without_blend(text: str) -> str:
    """Take the switch of size out, row for row: the sizes are judged as printed."""
    rows = text.splitlines()
    return "\n".join("" if row == "  then:" or row.startswith("    - {from:") else row for row in rows) + "\n"


def _mended(name: str, text: str) -> tuple[str, set[int], str]:
    """Put plain words in place of refused rows until the file is accepted; say what stops that, if anything."""
    plain = plain_words(name)
    mended: set[int] = set()
    while problems := problems_of(text):
        calls = {problem.line for problem in problems}
        new = {row for row, (called, _) in plain.items() if called in calls} - mended
        if not new:
            return text, mended, "; ".join(f"row {p.line}: {p.message}" for p in problems)
        mended |= new
        rows = text.splitlines()
        for row in new:
            indent = re.match(r" {0,6}", rows[row - 1])
            rows[row - 1] = (indent.group() if indent else "") + plain[row][1]
        text = "\n".join(rows) + "\n"
    return text, mended, ""


@lru_cache(maxsize=64)
def problems_of(text: str) -> tuple[Problem, ...]:
    """List the problems of a file."""
    reading = read_project(text)
    problems = list(reading.problems)
    if reading.project is not None:
        problems += compile_plan(reading.project).problems
    elif reading.partial is not None:
        problems += faults_of(reading.partial)
    return tuple(problems)


@lru_cache(maxsize=16)
def _plans(text: str) -> tuple[Plan, ...]:
    """Work a file that is accepted, in every size."""
    project = read_project(text).project
    assert project is not None
    plans = [compile_in_size(project, size).plan for size in range(len(project.sizes))]
    return tuple(plan for plan in plans if plan is not None)


def _faults(plan: Plan, row: int, expected: dict[str, list[str]], size: int, text: str) -> list[str]:
    """Compare one row of the table with the rounds that come from it.

    A round of a row under a heading may bear the heading's row; a copied part is judged by its end.
    """
    section = _section_of(text, row)
    ours = [round_ for round_ in plan.rounds if round_.section == section]
    lines = {round_.line for round_ in ours}
    line = row if row in lines else row - 1 if text.splitlines()[row - 2].endswith(":") else 0
    mine = [round_ for round_ in ours if round_.line == line] or ours[-1:]
    if not mine:
        return ["no rounds are worked"]
    so_far = [round_ for round_ in ours if round_.index <= mine[-1].index]
    found = {
        "after": str(mine[-1].after),
        "rows": str(len(mine)),
        "total": str(sum(not _casts_on(round_) for round_ in so_far)),
        "held": str(sum(mine[-1].held.values())),
        "runs": "_".join(
            code + (str(times) if len(code) == 1 else "") for code, times, _ in runs_of(mine[-1])
        ),
    }
    return [
        f"{key} is {found[key]}, by hand {value}"
        for key, values in expected.items()
        if (value := _in_size(key, values, size)) and found[key] != value
    ]


def _in_size(key: str, values: list[str], size: int) -> str:
    """Take the value of one size; one alone stands for all, but stitches written out are those of the first size."""
    if len(values) > 1:
        return values[size]
    return values[0] if key != "runs" or size == 0 else ""


def _section_of(text: str, row: int) -> str:
    named = [line for line in text.splitlines()[:row] if line.startswith("  - name: ")]
    return named[-1].removeprefix("  - name: ")


def _casts_on(round_: Round) -> bool:
    return all(run.stitch == "co" for run in round_.runs)
