"""Lines in their context are worked as they mean, or refused; the table with the meanings stands in `stretches`."""

from __future__ import annotations

import textwrap
from functools import lru_cache

from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan, Round
from stepper.project.reader import read_project
from tests.plan.stretches import STRETCHES, Stretch
from tests.plan.test_lookalikes import counts_of, stitches_of, worked_in
from tests.project.samples import HEAD, project
from tests.tables import assert_all

NOT_READ = 49
"""Stretches of the table that are refused, though they mean something, and those that must be."""

HANDLED = {"co", "hold", "rest", "return", "pm", "rm"}
"""What is no row by itself: stitches cast on to begin, put on hold, or taken back."""


def file_of(entry: Stretch, work: str) -> str:
    """Write lines as a project file: one section, or one for each part that the lines name."""
    if not work.startswith("== "):
        return project(work, sizes=entry.sizes, size=entry.size)
    parts = [part.split("\n", 1) for part in work.removeprefix("== ").split("\n== ")]
    sections = "".join(f"  - name: {name}\n    work: |\n{textwrap.indent(lines, '      ')}\n" for name, lines in parts)
    return HEAD.format(sizes=entry.sizes, size=entry.size).split("sections:\n")[0] + "sections:\n" + sections


def plan_of(entry: Stretch, work: str) -> Plan | None:
    """Compile lines in the size of an entry; None if they are refused."""
    return _compiled(file_of(entry, work))


@lru_cache(maxsize=64)  # many entries have the same lines before them
def _compiled(file: str) -> Plan | None:
    reading = read_project(file)
    if reading.problems or reading.project is None:
        return None
    made = compile_plan(reading.project)
    return None if made.problems else made.plan


def plan_worked(entry: Stretch) -> tuple[Plan, tuple[Round, ...]] | None:
    """Return the plan of an entry, and the rows that its lines work; None if they are refused."""
    before = plan_of(entry, entry.before) if entry.before else None
    assert before is not None or not entry.before
    plan = plan_of(entry, entry.before + entry.lines)
    if plan is None:
        return None
    rows = plan.rounds[len(before.rounds) if before is not None else 0 :]
    return plan, tuple(each for each in rows if {run.stitch for run in each.runs} - HANDLED or each.after == each.before)


def assert_as_meant(entry: Stretch) -> bool:
    """Work a stretch, and hold its rows against what it means; it may be refused, and has to be where it means nothing.

    Returns:
        Whether it is read.
    """
    found = plan_worked(entry)
    if found is None:
        return False
    plan, rows = found
    assert entry.means, "it has to be refused"
    assert [each.after for each in rows] in [counts_of(words) for words in entry.means.split("|")]
    for number, words in entry.rows.items():
        worked = worked_in(rows[number - 1 if number > 0 else number])
        assert worked in [stitches_of(either) for either in words.split("|")]
    if entry.yarns:
        assert "".join("M" if {run.yarn for run in each.runs} == {"MC"} else "A" for each in rows) == entry.yarns
    if entry.sides:
        assert "".join(each.side[0] for each in rows) == entry.sides
    if entry.needles:
        told = [word.split("*") for word in entry.needles.split()]
        assert [each.needle_mm for each in rows] == [float(word[0]) for word in told for _ in range(int([*word, "1"][1]))]
    if entry.held:
        assert sum(plan.rounds[-1].held.values()) == int(entry.held)
    if entry.told:
        assert any(entry.told in caution.text for caution in plan.warnings)
    return True


def test_lines_are_worked_as_they_mean_or_refused() -> None:
    """A line read otherwise than it means is the worst there can be; what it means hangs on what stands before it."""
    assert_all(assert_as_meant, STRETCHES, most_refused=NOT_READ)
