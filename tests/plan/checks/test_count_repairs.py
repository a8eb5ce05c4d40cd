from __future__ import annotations

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.plan.compile import compile_plan
from stepper.project.problems import Problem
from stepper.project.reader import read_project
from tests.project.samples import project


def faults(work: str, *, sizes: str = "one", size: str = "one") -> tuple[Problem, ...]:
    """Read and compile a text; give what does not come out."""
    found = read_project(project(work, sizes=sizes, size=size)).project
    assert found is not None
    return compile_plan(found).problems


@pytest.mark.parametrize(
    ("work", "told"),
    [
        ("Cast on 20 sts.\nK8, cast on 3, k to end. 24 sts.", "4 instead of 3 (column 19)"),
        ("Cast on 20 sts.\nIncrease evenly to 25 sts. 26 sts.", "26 instead of 25 (column 26)"),
        ("Cast on 20 sts.\nKnit 2 rows. 22 sts.", "22 instead of 20 (line 18, column 15)"),
    ],
)
def test_the_number_that_would_bring_it_right_is_told(work: str, told: str) -> None:
    """With its place, so that she can look at the printed page there."""
    (problem,) = faults(work)
    assert told in problem.hint


def test_of_a_list_the_number_of_the_size_is_told() -> None:
    """The other sizes come out."""
    (problem,) = faults(
        "Cast on 20 (24, 28) sts.\nK8, cast on 2 (2, 3), k to end. 22 (26, 30) sts.",
        sizes="S (M, L)",
        size="M",
    )
    assert '2 instead of 3 in "2 (2, 3)" (column 19)' in problem.hint


@pytest.mark.parametrize(("size", "hint"), [("S", '1 instead of 2 in "2 (3)" (column 16)'), ("M", '2 instead of 3 in "2 (3)" (column 16)')])
def test_of_two_sizes_the_number_of_each_is_its_own(size: str, hint: str) -> None:
    """Where the other one's were told she would look at a number that is right."""
    printed = {"S": "7 (7)", "M": "6 (8)"}[size]
    (problem,) = faults(f"Cast on 8 (10) sts.\nDecrease 2 (3) sts evenly. {printed} sts.", sizes="S (M)", size=size)
    assert hint in problem.hint


def test_where_no_number_brings_it_right_none_is_told() -> None:
    """A guess that does not come out teaches nothing."""
    (problem,) = faults("Cast on 20 sts.\n*K2tog; rep from * to end. 11 sts.")
    assert "instead of 20" not in problem.hint or "22 instead of 20" in problem.hint


@given(st.integers(8, 60), st.integers(1, 9), st.integers(1, 5), st.integers(-4, 4).filter(bool))
@settings(max_examples=40, deadline=None)
def test_what_is_told_does_bring_it_right(count: int, more: int, times: int, off: int) -> None:
    """Put in the number that is told, and the file is sound."""
    lines = [f"Cast on {count} sts.", "Join in the round.", f"Increase {times} sts evenly.", "Knit 3 rnds."]
    lines += [f"K1, cast on {more}, k to end. {count + times + more + off} sts."]
    work = "\n".join(lines)
    (problem,) = faults(work)
    rows = project(work, sizes="one", size="one").splitlines()
    found = re.findall(r"(\d+) instead of (\d+) \((?:line (\d+), )?column (\d+)\)", problem.hint)
    assert found
    for new, old, line, column in found:
        row, at = int(line or problem.line) - 1, int(column) - 1
        mended = rows[row][:at] + re.sub(rf"^{old}", new, rows[row][at:])
        read = read_project("\n".join([*rows[:row], mended, *rows[row + 1 :]]) + "\n").project
        assert read is not None
        assert compile_plan(read).problems == ()


def test_a_file_full_of_faults_is_answered_within_the_trials() -> None:
    """The search for numbers ends; the faults are all told."""
    lines = ["Cast on 20 sts."] + [f"K1, cast on {n}, k to end. {100 * n} sts." for n in range(1, 30)]
    assert len(faults("\n".join(lines))) >= 20
