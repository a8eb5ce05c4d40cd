"""Lines that work another part again, as records. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.duration import UntilCount
from stepper.project.instructions import AsPart
from stepper.project.problems import Span
from stepper.project.reading.part_references import part_named
from stepper.project.reading.wording import Words, read_line


def part(text: str) -> AsPart:
    """Read a line that is one reference."""
    reading = read_line(text, lambda at, length: Span(line=1, column=at + 1, length=length), Words(sizes=1))
    assert reading.line is not None, reading.problems
    (sentence,) = reading.line.sentences
    assert isinstance(sentence, AsPart)
    return sentence


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Work as for back.", "back"),
        ("Work as given for the back.", "back"),
        ("Same as left front.", "left front"),
        ("As right front, reversing shaping.", "right front"),
        ("Work in the same way as left sleeve.", "left sleeve"),
    ],
)
def test_a_line_names_its_part(text: str, name: str) -> None:
    """However it introduces it."""
    assert part(text).part == name


def test_a_line_says_how_far() -> None:
    """To a mark, an event, a count; and from another mark."""
    assert part("Work as for back to **.").to_mark == "**"
    assert part("Work as for back up to beg of neck shaping.").upto == "neck shaping"
    assert isinstance(part("Work as for back until 32 sts rem.").until, UntilCount)
    between = part("Work as for back from ** to ***.")
    assert (between.from_mark, between.to_mark) == ("**", "***")


def test_a_line_makes_so_many_more() -> None:
    """Make 3 is two more than the one."""
    assert part("Make 2.").times == 1
    assert part("Make 3 alike.").times == 2
    assert part("Make second sleeve same as first.").part == "sleeve"


def test_reversing_is_kept() -> None:
    """Left out, the second front would be the first again."""
    assert part("Work as for right front, reversing all shapings.").reversed_
    assert not part("Work as for right front.").reversed_
    assert part("Complete to match first side.").rest


@pytest.mark.parametrize(("words", "name"), [("work as given for the back", "back"), ("same as left sleeve", "left sleeve")])
def test_the_name_is_told_from_what_introduces_it(words: str, name: str) -> None:
    """It is looked up among the sections."""
    assert part_named(words) == name
