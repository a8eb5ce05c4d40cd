"""The manner of spacing even changes, as a project file names it."""

from __future__ import annotations

import pytest

from stepper.craft.even.manners import Manner
from stepper.project.reader import FileReading, read_project
from tests.project.samples import HEAD, project


def reading(words: str | None) -> FileReading:
    """Read a small file with a `spacing`."""
    head = HEAD if words is None else HEAD.replace("sections:", f"spacing: {words}\nsections:")
    return read_project(project("Cast on 20 sts.", head=head))


@pytest.mark.parametrize(
    ("words", "manner"),
    [
        (None, Manner.SAYABLE),
        ("sayable", Manner.SAYABLE),
        ("Evenly  mixed", Manner.MIXED),
        ("mixed", Manner.MIXED),
        ("in two runs", Manner.RUNS),
        ("runs", Manner.RUNS),
    ],
)
def test_each_manner_is_called_by_its_name(words: str | None, manner: Manner) -> None:
    """The short names are those of the commands."""
    project_ = reading(words).project
    assert project_ is not None
    assert project_.spacing is manner


def test_another_word_is_told_with_the_legal_ones() -> None:
    """At its place."""
    found = reading("randomly")
    assert found.project is None
    (problem,) = found.problems
    assert '`spacing` is "randomly"' in problem.message
    assert "in two runs" in problem.hint


def switched(words: str) -> FileReading:
    """Read a small file with a switch and an `over` beside it."""
    then = f"{{from: Inc, size: S{words}}}"
    text = project("Cast on 20 (24, 28) sts.\nInc: Increase evenly to 28 (32, 36) sts.")
    return read_project(text.replace("{size: M}", f"{{size: M, then: [{then}]}}"))


@pytest.mark.parametrize(("words", "rounds"), [("", 1), (", over: 2 rounds", 2), (", over: 3", 3), (", over: 1 row", 1)])
def test_a_change_is_spread_over_so_many_rounds(words: str, rounds: int) -> None:
    """One, if nothing is said."""
    project_ = switched(words).project
    assert project_ is not None
    assert project_.switches[0].over == rounds


@pytest.mark.parametrize("words", ["9 rounds", "0", "two thirds"])
def test_more_rounds_than_make_sense_are_refused(words: str) -> None:
    """An increase spread over nine rounds is another garment."""
    (problem,) = switched(f", over: {words}").problems
    assert f'`over` is "{words}"' in problem.message
