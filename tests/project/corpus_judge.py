"""What the program makes of an entry of the corpus: the meaning, a plain refusal, or another meaning."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from functools import lru_cache

from stepper.plan.compile import compile_plan, findings_of
from stepper.plan.model import Plan, Round
from stepper.project.problems import Problem
from stepper.project.reader import read_project
from tests.fixtures import compile_in_size
from tests.project.corpus_entries import Entry, Row, Runs, entries, joined

HEAD = """\
title: Bramble piece
units: {units}
sizes: {sizes}
{knit}yarn:
  MC: {{name: oat, colour: "#d8ccb0"}}
  CC: {{name: moss, colour: "#4f6b3a"}}
  CC2: {{name: plum, colour: "#5a2a4a"}}
  A: {{name: rust, colour: "#9d4a26"}}
  B: {{name: navy, colour: "#20304f"}}
gauge:
  plain: {{needle: 4 mm, stitches: 20, rounds: {plain}}}
  rib: {{needle: 3.5 mm, stitches: 24, rounds: {rib}}}
charts:
  wave:
    key: {{".": MC, a: CC}}
    rows: |
      a...
      aa..
      .aa.
      ..aa
  dots:
    key: {{".": MC, a: CC}}
    rows: |
      ......
      ..a...
  rope:
    key: {{".": k, "-": p}}
    rows: |
      -..-
      -..-
      .--.
sections:
"""
"""The piece all entries are about: 3 rounds to the centimetre or 7 to the inch, in rib 4 and 8."""

NAMES = ("S", "M", "L", "XL", "2XL", "3XL")


@dataclass(frozen=True, slots=True)
class Verdict:
    """What became of an entry."""

    outcome: str
    """`read`, `refused`, `misread`: accepted with another meaning, `untold`: an assumption in silence, `crashed`."""
    why: str


def text_of(lines: list[str], sizes: int, units: str, own: tuple[str, ...] = ()) -> tuple[str, list[int]]:
    """Write lines as a project file.

    Returns:
        The text, and for each line the row of the file it stands on, from 1.
    """
    listed = "one" if sizes == 1 else f"{NAMES[0]} ({', '.join(NAMES[1:sizes])})"
    knit = "" if sizes == 1 else "knit: {size: S}\n"
    rounds = (30, 40) if units == "cm" else (28, 32)
    rows = HEAD.format(units=units, sizes=listed, knit=knit, plain=rounds[0], rib=rounds[1]).splitlines()
    rows[-1:-1] = ["lengths:", *(f"  {length}" for length in own)] if own else []
    places = []
    if not lines or not lines[0].startswith("=="):
        rows += ["  - name: piece", "    gauge: plain", "    work: |"]
    for line in lines:
        section = re.fullmatch(r"== ([^\[]+?)(?: \[(\w+)\])?", line)
        if section:
            rows += [f"  - name: {section[1]}", f"    gauge: {section[2] or 'plain'}", "    work: |"]
        else:
            rows.append(f"      {line}")
        places.append(len(rows))
    return "\n".join(rows) + "\n", places


@lru_cache(maxsize=4096)
def worked(text: str, sizes: int) -> tuple[tuple[Plan, ...], tuple[Problem, ...]]:
    """Work a file out as knitted in each of its sizes, or give what is wrong with it."""
    reading = read_project(text)
    if reading.project is None:
        return (), reading.problems
    plans = []
    for size in range(sizes):
        # Worked as the first, all sizes are checked.
        compiled = compile_in_size(reading.project, size) if size else compile_plan(replace(reading.project, size=0))
        if compiled.plan is None:
            return (), compiled.problems
        plans.append(compiled.plan)
    return tuple(plans), ()


def context_plans(entry: Entry) -> tuple[Plan, ...]:
    """Work out the lines before the sentence; none where there are none."""
    if not entry.before:
        return ()
    text, _ = text_of(entry.before, entry.sizes, entry.units)
    plans, problems = worked(text, entry.sizes)
    assert plans, f"{entry.place}: the lines before it are not read: {problems}"
    return plans


@lru_cache(maxsize=4096)
def verdict(name: str) -> Verdict:
    """Say what the program makes of an entry."""
    return judge(entries()[name])


def judge(entry: Entry) -> Verdict:
    """Say what the program makes of an entry, be it of the corpus or made of one."""
    contexts = context_plans(entry)
    lines = entry.before + entry.printed + entry.after
    text, places = text_of(lines, entry.sizes, entry.units, entry.own)
    try:
        plans, problems = worked(text, entry.sizes)
    except Exception as error:  # whatever it is, the knitter would see a traceback
        return Verdict("crashed", repr(error))
    if not plans:
        return _refusal(entry, problems, places[len(entry.before)])
    if entry.refused:
        return Verdict("misread", f"accepted as {_told_of(plans[0].rounds[_start(contexts, 0) :])}")
    for size, plan in enumerate(plans):
        start = _start(contexts, size)
        before = [_counted(round_) for round_ in plan.rounds[:start]]
        if contexts and before != [_counted(round_) for round_ in contexts[size].rounds]:
            return Verdict("misread", "the rounds before it become others")
        rounds = plan.rounds[start:]
        if not any(same_rows(rows, rounds) for rows in entry.rows(size)):
            return Verdict("misread", f"size {size + 1}: {_told_of(rounds)}")
        said = [caution.text for caution in plan.warnings]
        said += [remark for round_ in plan.rounds for remark in round_.remarks]
        if entry.told and not any(re.search(entry.told, text, re.I) for text in said):
            return Verdict("untold", f'nothing told matches "{entry.told}": {said}')
        if entry.kept and not any(re.search(entry.kept, text, re.I) for text in said):
            return Verdict("untold", f'"{entry.kept}" is not kept: {said}')
    return Verdict("read", "")


def _start(contexts: tuple[Plan, ...], size: int) -> int:
    return len(contexts[size].rounds) if contexts else 0


def _counted(round_: Round) -> tuple[int, Runs]:
    return round_.after, runs_of(round_)


def _refusal(entry: Entry, problems: tuple[Problem, ...], first: int) -> Verdict:
    """Judge a refusal: its problems have words and places, one of them in the sentence, whose first row is given."""
    plain = problems and all(problem.message and problem.column >= 1 for problem in problems)
    if not plain or not any(problem.line >= first for problem in problems):
        return Verdict("misread", f"refused at another place: {problems}")
    return Verdict("read" if entry.refused else "refused", problems[0].message)


_COUNT_BEHIND = re.compile(
    r"(?:[.–=:] |[(\[])(\d+)(?: [(\[][\d, ]+[)\]])? (?:\w+ )?(?:sts|stitches)\b[^.*]*[.)\]]*$"
)
"""A count that ends a printed line: "… to end. 39 (43, 47) sts.", "… (22 sts between markers)"."""


def accepted_with_another_count(name: str) -> list[str]:
    """Change each count behind a line of an entry that is read by one; list the lines accepted all the same."""
    entry = entries()[name]
    accepted = []
    for at, line in enumerate(entry.printed) if verdict(name).outcome == "read" and not entry.refused else ():
        found = _COUNT_BEHIND.search(line)
        if found is None:
            continue
        start, end = found.span(1)
        other = f"{line[:start]}{int(line[start:end]) + 1}{line[end:]}"
        lines = [*entry.before, *entry.printed[:at], other, *entry.printed[at + 1 :], *entry.after]
        project = read_project(text_of(lines, entry.sizes, entry.units, entry.own)[0]).project
        if project is not None and not any(findings_of(project, size) for size in range(entry.sizes)):
            accepted.append(other)
    return accepted


def runs_of(round_: Round) -> Runs:
    """Lay the stitches of a round out as those of the corpus are."""
    return joined((run.stitch, run.times, run.yarn) for run in round_.runs)


def same_rows(rows: list[Row], rounds: tuple[Round, ...]) -> bool:
    """Say whether rounds are the rows expected, one for one."""
    return len(rows) == len(rounds) and all(map(same_row, rows, rounds))


def same_row(row: Row, round_: Round) -> bool:
    """Say whether a round is the row expected, in all that the row names."""
    runs = runs_of(round_)
    yarns = {yarn for _, _, yarn in runs if yarn}
    return (
        row.after == round_.after
        and row.runs in (None, runs)
        and row.side in ("", round_.side)
        and row.held in (None, sum(round_.held.values()))
        and row.needle_mm in (None, round_.needle_mm)
        and (not row.yarn or yarns == {row.yarn})
    )


def _told_of(rounds: tuple[Round, ...]) -> str:
    """Write rounds in the notation of the corpus, equal neighbours once, the first dozen of them."""
    made: list[list[object]] = []
    for round_ in rounds:
        worked_ = ((code, times, "" if yarn == "MC" else yarn) for code, times, yarn in runs_of(round_))
        runs = " ".join(f"{code}{times}:{yarn}".rstrip(":") for code, times, yarn in worked_)
        line = f"{round_.side + ' ' if round_.flat else ''}{runs} -> {round_.after}"
        if made and made[-1][1] == line:
            made[-1][0] = int(str(made[-1][0])) + 1
        else:
            made.append([1, line])
    shown = "; ".join(f"{times}x {line}" for times, line in made[:12])
    return f"{len(rounds)} rounds: {shown or 'nothing'}"
