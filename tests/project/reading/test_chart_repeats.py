"""What a line says of its chart's repeats across goes with the chart."""

from __future__ import annotations

from stepper.project.instructions import ChartWork, Phrase
from stepper.project.reader import read_project
from stepper.project.stitchwork import ChartPart, RepeatsTold
from tests.project.samples import project


def told(line: str) -> RepeatsTold | None:
    """Return what is kept of a chart's repeats."""
    read = read_project(project(f"Cast on 8 sts.\nJoin in the round.\n{line}\n")).project
    assert read is not None
    sentence = read.sections[0].lines[2].sentences[0]
    if isinstance(sentence, Phrase):
        return next(one for one in sentence.elements if isinstance(one, ChartPart)).across
    assert isinstance(sentence, ChartWork)
    return sentence.across


def test_the_width_and_the_times_are_kept() -> None:
    """Either may be missing, and numbers may be words."""
    both = told("Work the chart, repeating the 4 sts two times.")
    assert both is not None
    assert (both.width, both.times and both.times.values) == (4, (2,))
    width = told("Work the chart, repeating the 4 sts across.")
    assert width is not None
    assert (width.width, width.times) == (4, None)
    beside = told("Next rnd: Work rnd 1 of chart peak 8 times around.")
    assert beside is not None
    assert (beside.width, beside.times and beside.times.values) == (None, (8,))


def test_a_chart_of_which_nothing_is_said_is_worked_as_often_as_it_goes() -> None:
    """Rounds upwards are no repeats across."""
    assert told("Work chart peak 3 times.") is None
