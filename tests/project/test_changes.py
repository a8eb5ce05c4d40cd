"""One key, word or number of a legal file changed: the same plan, another legal plan, or an error where it was.

What is promised of every such change:

* never a traceback: a plan that keeps every invariant, or at least one problem;
* no problem stands on a row before the one touched, save where that row names what was touched (a switch of
  size, an alteration), is the head of the same numbered rounds, begins the part that now lacks a key, or is the
  other round of a chart of two. Problems behind it are what follows from it: a count printed further on, a repeat
  that no longer divides.
"""

from __future__ import annotations

import re
from dataclasses import replace

from hypothesis import HealthCheck, given, note, settings

from stepper.plan.compile import compile_plan, faults_of
from stepper.project.problems import Problem, render_problems
from stepper.project.reader import read_project
from tests.invariants import broken_invariants
from tests.project.changes import Changed, changed_files, legal_files

_NUMBERED = re.compile(r"\s*(?:short\s+)?(?:rnds?|rounds?|rows?|all|next)\b[^:]*:", re.I)
_NAMING = re.compile(r"\s*(?:- \{from|then|knit:|size:|alterations:|- (?!name))")


def first_row(text: str, row: int) -> int:
    """Return the first row of the numbered rounds that a row belongs to; the row itself where it is none."""
    rows = text.split("\n")
    while row > 1 and _NUMBERED.match(rows[row - 1]) and _NUMBERED.match(rows[row - 2]):
        row -= 1
    return row


def names_it(text: str, problem: Problem) -> bool:
    """Say whether a problem stands where other parts of the file are named: switches, alterations."""
    return bool(_NAMING.match(text.split("\n")[problem.line - 1]))


@given(changed_files())
@settings(max_examples=120, deadline=None, suppress_health_check=list(HealthCheck))
def test_one_change_gives_a_plan_or_an_error_where_it_was(changed: Changed) -> None:
    """A slip while typing is told where it was made, and nothing falls over."""
    note(f"row {changed.row}: {changed.said}")
    reading = read_project(changed.text)
    if reading.project is None:
        faults = faults_of(reading.partial) if reading.partial is not None else ()
        problems = (*reading.problems, *faults)
        assert render_problems(problems, changed.text, "a.yaml")
    else:
        compiled = compile_plan(reading.project)
        if compiled.plan is not None:
            assert broken_invariants(compiled.plan) == ()
            return
        problems = compiled.problems
    assert problems
    earliest = first_row(changed.text, changed.row)
    early = [
        problem for problem in problems if problem.line < earliest and not names_it(changed.text, problem)
    ]
    early = [problem for problem in early if "has no `" not in problem.message]
    if "squares; round 1 has" in "".join(problem.message for problem in early):
        early = []  # of a chart of two rounds nobody knows which is drawn wrong
    note(render_problems(early, changed.text, "early"))
    assert early == []


def spread(text: str) -> str:
    """Double the spaces between the words of every pattern line; whatever else the file holds stays."""
    rows, inside = [], False
    for row in text.split("\n"):
        if re.match(r"\s+(?:- )?\w+:", row):
            inside = row.strip() == "work: |"
        rows.append(re.sub(r"(?<=\S) (?=\S)", "  ", row) if inside else row)
    return "\n".join(rows)


@given(legal_files())
@settings(max_examples=60, deadline=None, suppress_health_check=list(HealthCheck))
def test_a_change_of_white_space_alone_gives_the_same_plan(text: str) -> None:
    """The words count, not how far they stand apart."""
    wide = spread(text)
    assert wide != text
    one, other = (read_project(each).project for each in (text, wide))
    assert one is not None
    assert other is not None

    narrow_plan, wide_plan = compile_plan(one).plan, compile_plan(other).plan

    assert (narrow_plan is None) == (wide_plan is None)
    if narrow_plan is not None and wide_plan is not None:
        assert [replace(round_, remarks=()) for round_ in narrow_plan.rounds] == [
            replace(round_, remarks=()) for round_ in wide_plan.rounds
        ]
