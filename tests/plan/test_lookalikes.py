"""Instructions that look alike are worked as they mean, or refused; the table with the meanings stands in `lookalikes`."""

from __future__ import annotations

import re
from itertools import groupby

from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan, Round, flatten
from stepper.project.reader import read_project
from tests.plan.lookalikes import LOOKALIKES, Lookalike
from tests.project.samples import project
from tests.tables import assert_all

NOT_READ = 46
"""Lines of the table that are refused, though they mean something, and those that must be."""
MARKS = ("pm", "sm", "rm")
ONE = ("k2tog", "p2tog", "yo2", "s2kp", "m1")
"""Stitches whose names end in a figure that is no number of times."""


def plan_of(entry: Lookalike, work: str) -> Plan | None:
    """Compile lines in the size of an entry; None if they are refused."""
    reading = read_project(project(work, sizes=entry.sizes, size=entry.size))
    if reading.problems or reading.project is None:
        return None
    made = compile_plan(reading.project)
    return None if made.problems else made.plan


def stitches_of(words: str) -> list[tuple[str, int]]:
    """Read stitches of the table, neighbours that are alike together."""
    told = []
    for word in words.split():
        found = None if word in ONE else re.fullmatch(r"(k|p|bo|co)(\d+)", word)
        told.append((found[1], int(found[2])) if found else (word.replace("_", " "), 1))
    return [(code, sum(times for _, times in alike)) for code, alike in groupby(told, key=lambda each: each[0])]


def worked_in(round_: Round) -> list[tuple[str, int]]:
    """Return the stitches that a round works, neighbours that are alike together."""
    runs = [(run.stitch, run.times) for run in flatten(round_.phrase) if run.stitch not in MARKS]
    return [(code, sum(times for _, times in alike)) for code, alike in groupby(runs, key=lambda each: each[0])]


def counts_of(words: str) -> list[int]:
    """Read the stitches after each row: `38 38*3 36`; none where the line works no row (`-`)."""
    each = [word.split("*") for word in words.split() if word != "-"]
    return [int(word[0]) for word in each for _ in range(int(word[1]) if len(word) > 1 else 1)]


def rows_worked(entry: Lookalike) -> tuple[Round, ...] | None:
    """Return the rows that the line of an entry works; None if it is refused."""
    before, plan = plan_of(entry, entry.before), plan_of(entry, entry.before + entry.line)
    assert before is not None
    return None if plan is None else plan.rounds[len(before.rounds) :]


def assert_as_meant(entry: Lookalike) -> bool:
    """Work a line, and hold its rows against what it means; it has to be refused where it means nothing.

    Returns:
        Whether it is read.
    """
    rows = rows_worked(entry)
    if rows is None:
        return False
    assert entry.means, "it has to be refused"
    assert [each.after for each in rows] in [counts_of(words) for words in entry.means.split("|")]
    for number, words in entry.rows.items():
        worked = worked_in(rows[number - 1 if number > 0 else number])
        assert worked in [stitches_of(either) for either in words.split("|")]
    if entry.yarns:
        assert "".join("M" if {run.yarn for run in each.runs} == {"MC"} else "A" for each in rows) == entry.yarns
    return True


def test_a_line_is_worked_as_it_means_or_refused() -> None:
    """A line that is read otherwise than it means is the worst there can be; one that is not read is none."""
    assert_all(assert_as_meant, LOOKALIKES, most_refused=NOT_READ)
