"""Findings of all sizes become one problem for each place."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from stepper.plan.checks.findings import cautions_of, problems_of
from stepper.plan.compile import findings_of
from stepper.plan.drafts import Finding
from stepper.project.model import Project, Switch
from stepper.project.problems import Span
from stepper.project.reader import read_project
from tests.project.samples import project

SWITCHBACK = Path(__file__).parents[2] / "fixtures" / "switchback.yaml"


def small() -> Project:
    """Return a project of three sizes."""
    found = read_project(project("Cast on 8 sts.")).project
    assert found is not None
    return found


def finding(size: int, printed: int, counted: int) -> Finding:
    """Make a count that disagrees."""
    return Finding(
        place=Span(line=3, column=5, length=3),
        message=f"the pattern prints {printed} stitches; the lines so far come to {counted}",
        size=size,
        kind="count",
        printed=printed,
        counted=counted,
    )


def test_exchanged_numbers_are_recognised() -> None:
    """Sizes 1 and 2 print each other's count."""
    problems = problems_of([finding(0, 84, 80), finding(1, 80, 84)], [], small())
    assert "exchanged" in problems[0].hint
    assert "size S: the pattern prints 84" in problems[0].message
    assert "(also size M)" in problems[0].message
    assert (problems[0].kind, problems[0].sizes) == ("count", ("S", "M"))


def test_what_does_not_fit_behind_a_switch_is_of_no_size_alone() -> None:
    """It is so in the garment that she knits, and must not be set aside as a fault of sizes that she does not."""
    switch = Switch(label="yoke", size=1, place=Span(line=4, column=1))
    over = [Finding(place=Span(line=5, column=1), message="4 are left over.", size=0, kind="left over")]
    (problem,) = problems_of(over, over, replace(small(), switches=(switch,)), unmet="Switch elsewhere.")
    assert (problem.kind, problem.sizes, problem.hint) == ("left over", (), "Switch elsewhere.")


def test_a_difference_in_every_size_points_to_an_instruction() -> None:
    """One size wrong is a misprint; all of them wrong is a line left out."""
    problems = problems_of([finding(size, 80 + size, 90 + size) for size in range(3)], [], small())
    assert "every size" in problems[0].hint


def test_the_sizes_of_the_sample_come_out_one_by_one() -> None:
    """Every printed size of it can be knitted, not only the blend."""
    garment = read_project(SWITCHBACK.read_text(encoding="utf-8")).project
    assert garment is not None
    for size in range(6):
        assert findings_of(garment, size) == ()


def test_a_caution_is_told_once() -> None:
    """However many sizes meet it."""
    caution = Finding(place=Span(line=2, column=1), message="mind this.")
    assert len(cautions_of([caution, caution])) == 1


def test_of_one_size_no_other_is_spoken_of() -> None:
    """Where a pattern has one size, "every size" and "the other sizes" would send her looking for what is not there."""
    one = read_project(project("Cast on 8 sts.", sizes="one", size="one")).project
    assert one is not None
    (problem,) = problems_of([finding(0, 84, 80)], [], one)
    assert "Compare the numbers of the line with the printed page." in problem.hint
    assert "size" not in problem.hint
    (swapped,) = problems_of([finding(0, 84, 48)], [], one)
    assert "Two digits seem to be exchanged." in swapped.hint
