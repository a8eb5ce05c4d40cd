"""Places up to which stitches are worked. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.problems import Span
from stepper.project.reading.goals import GOALS
from stepper.project.reading.wording import Words, read_line
from stepper.project.stitchwork import Until


def _first(words: str) -> object:
    reading = read_line(words, lambda offset, length: Span(line=1, column=offset + 1, length=length), Words(sizes=1))
    assert reading.line is not None, reading.problems
    return reading.line.sentences[0].elements[0]  # type: ignore[union-attr]


@pytest.mark.parametrize(
    ("words", "goal", "name"),
    [
        ("K to marker, sm, k to end.", "marker", ""),
        ("K to 2nd marker, sm, k to end.", "marker", "2"),
        ("K to the third marker, sm, k to end.", "marker", "3"),
        ("K to first marker, sm, k to end.", "marker", "first"),
        ("K to last marker, sm, k to end.", "marker", "last"),
        ("K to beg marker.", "marker", "end"),
        ("K to 3 sts past marker, turn.", "behind", ""),
        ("K to 2 sts before last turn, turn.", "turn", ""),
        ("P to last DS, turn.", "turn", "ds"),
        ("P to wrapped st, turn.", "turn", "wrap"),
    ],
)
def test_the_place_that_is_named_is_the_one_worked_to(words: str, goal: str, name: str) -> None:
    """At another marker than the one meant, a whole section of the round is skipped."""
    element = _first(words)
    assert isinstance(element, Until)
    assert (element.goal, element.name) == (goal, name)
    assert goal in GOALS.values()
