"""Rounds told needle by needle, as records. Source: sock patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.instructions import Phrase
from stepper.project.laying_out import MoveOver, OverNeedles
from stepper.project.problems import Span
from stepper.project.reading.wording import LineReading, Words, read_line
from stepper.project.stitchwork import Mark


def read(text: str) -> LineReading:
    """Read a line in two sizes."""
    return read_line(text, lambda at, length: Span(line=1, column=at + 1, length=length), Words(sizes=2))


def sentences(text: str) -> tuple[object, ...]:
    """Return the sentences of a line that is read."""
    line = read(text).line
    assert line is not None
    return line.sentences


def test_a_round_is_kept_in_the_order_of_its_needles() -> None:
    """One round, whatever the order and the full stops between."""
    (row,) = sentences("Needles 1 and 3: knit. Needle 2: purl.")
    assert isinstance(row, Phrase)
    assert [element.name for element in row.elements if isinstance(element, Mark)] == ["1", "2", "3"]


def test_a_needle_names_no_line() -> None:
    """"N1:" is not what the line is called."""
    line = read("N1: Knit; N2: purl.").line
    assert line is not None
    assert line.label is None


def test_stitches_on_each_needle_may_differ_by_size() -> None:
    """As every number may."""
    *_, each = sentences("CO 24 (28) sts; 12 (14) sts on each needle.")
    assert isinstance(each, OverNeedles)
    assert each.counts[0].values == (12, 14)


def test_stitches_are_slipped_from_one_needle_to_another() -> None:
    """The first number is where they come from."""
    (move,) = sentences("Slip 7 sts from needle 2 to needle 1.")
    assert isinstance(move, MoveOver)
    assert (move.source, move.to) == (2, 1)


def test_shaping_at_the_ends_of_needles_is_written_out_and_told() -> None:
    """How far from the end is not said; one stitch in is the usual toe."""
    line = read("Dec at end of N1 and at beg of N2.").line
    assert line is not None
    assert line.assumed


@pytest.mark.parametrize("line", ["N1: Knit; N1: purl.", "Divide sts over 2 needles: 8 sts on N2, 16 sts on N1."])
def test_needles_told_twice_or_out_of_order_are_refused(line: str) -> None:
    """Which is meant is not clear."""
    assert read(line).line is None
