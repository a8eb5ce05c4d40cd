"""A chart that is only announced. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

from stepper.project.instructions import ChartWork, Line
from stepper.project.problems import Span
from stepper.project.reading.announced import rows_of_announced
from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import Words, read_line


def line_of(text: str) -> Line:
    """Read a line."""
    line = read_line(made_plain(text), lambda offset, length: Span(line=1, column=offset + 1, length=length), Words(sizes=0)).line
    assert line is not None
    return line


def test_rows_named_next_are_those_of_the_chart_just_begun() -> None:
    """"Work Rnds 1-8." below "Begin Chart B." counts rows of the chart, and none of the section."""
    begun, rows = rows_of_announced(line_of("Begin Chart B."), line_of("Work Rnds 1-8 twice."))
    assert begun.sentences == ()
    assert rows is not None
    (work,) = rows.sentences
    assert isinstance(work, ChartWork)
    assert (work.name, work.first, work.last) == ("B", 1, 8)


def test_a_chart_begun_without_rows_is_worked_whole_and_told() -> None:
    """Nothing is left out in silence where the page says no more."""
    begun, other = rows_of_announced(line_of("Begin Chart B."), line_of("Knit 2 rounds."))
    (work,) = begun.sentences
    assert isinstance(work, ChartWork)
    assert not work.announced
    assert len(begun.assumed) == 1
    assert other == line_of("Knit 2 rounds.")


def test_rows_of_another_chart_leave_the_one_begun_as_it_is() -> None:
    """Chart C below "Begin Chart B." works no row of B."""
    begun, _ = rows_of_announced(line_of("Begin Chart B."), line_of("Work Rnds 1-8 of Chart C."))
    assert len(begun.sentences) == 1
