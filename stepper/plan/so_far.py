"""Find how many stitches are on the needles where a row of the file stands. No I/O."""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.checks.other_side import is_one_sided
from stepper.plan.compile import compile_plan, faults_of, work_as_knitted
from stepper.project.draft import Pictures
from stepper.project.page.unread.kept_rows import put_rows
from stepper.project.problems import Problem, Span
from stepper.project.reader import read_project
from stepper.records import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class SoFar:
    """What is on the needles before a row."""

    stitches: int | None
    """How many, in the size that is knitted; None if it is not known, 0 if there are none."""
    flat: bool | None
    """Whether they are worked in rows; None if that is not known."""
    wrong: bool = False
    """Whether the wrong side faces the knitter."""
    held: tuple[tuple[str, int], ...] = ()
    """What waits on hold, name and stitches, the last first."""


_UNKNOWN = SoFar(stitches=None, flat=None)


def find_misfits(text: str, pictures: Pictures) -> tuple[Problem, ...]:
    """Find what does not fit in the size that is knitted; others are not worked out, which takes their time.

    Args:
        text: The whole file.
        pictures: Finds the pictures that charts name.
    """
    reading = read_project(text, pictures)
    project = reading.project or reading.partial
    if project is None:
        return reading.problems
    if project.alone is None and not project.switches:
        project = replace(project, alone=Span(line=1, column=1))
    faults = compile_plan(project).problems if reading.project is not None else faults_of(project)
    return (*reading.problems, *faults)


def finds_fault(text: str, row: int) -> bool:
    """Return whether something does not fit at a row of a file, in the size that is knitted.

    Args:
        text: The whole file.
        row: The row, from 1.
    """
    reading = read_project(text)
    project = reading.project or reading.partial
    if project is None:
        return True
    return any(each.place.line == row for each in work_as_knitted(project, frozenset()).findings)


def shapes_one_edge(text: str, rows: frozenset[int]) -> bool:
    """Return whether lines of a file shape one edge more than the other, in the size that is knitted.

    Args:
        text: The whole file.
        rows: Where the lines stand in it, from 1.
    """
    reading = read_project(text)
    project = reading.project or reading.partial
    if project is None:
        return False
    drafts = work_as_knitted(project, frozenset()).drafts
    return is_one_sided(draft for draft in drafts if draft.line in rows)


def find_so_far(text: str, first: int, last: int) -> SoFar:
    """Find what is on the needles before a row.

    A row in own words is put in its place, which is worked on any stitches, and the garment worked once.

    Args:
        text: The whole file.
        first: The row's first line in the file, from 1.
        last: Its last.
    """
    reading = read_project(put_rows(text, first, last, ["Own words: here."]))
    project = reading.project or reading.partial
    if project is None:
        return _UNKNOWN
    worked = work_as_knitted(project, frozenset())
    for draft in worked.drafts:
        if draft.line == first and draft.template is not None and draft.template.own is not None:
            wrong, held = draft.flat and draft.side == "WS", tuple(reversed(draft.held.items()))
            return SoFar(stitches=draft.before, flat=draft.flat, wrong=wrong, held=held)
    above = [draft for draft in worked.drafts if draft.line < first]
    at_once = any(each.place.line == first and each.kind == "empty" for each in worked.findings)
    if at_once and (not above or not above[-1].after):
        return SoFar(stitches=0, flat=None, held=tuple(reversed(worked.held.items())))
    return _UNKNOWN
