"""Lines that work rounds of a chart, as records. Source: patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.instructions import ChartWork
from stepper.project.problems import Span
from stepper.project.reading.wording import LineReading, Words, read_line


def _read(text: str) -> LineReading:
    words = Words(sizes=1, names={"wave"})
    return read_line(text, lambda at, length: Span(line=1, column=at + 1, length=length), words)


def _chart(text: str) -> ChartWork:
    reading = _read(text)
    assert reading.line is not None, reading.problems
    (sentence,) = reading.line.sentences
    assert isinstance(sentence, ChartWork)
    return sentence


@pytest.mark.parametrize(
    ("text", "first", "last"),
    [
        ("Work chart wave.", None, None),
        ("Work round 3 of chart wave.", 3, 3),
        ("Work rounds 2-4 of chart wave.", 2, 4),
    ],
)
def test_a_line_names_its_chart_and_the_rounds_of_it(text: str, first: int | None, last: int | None) -> None:
    """All of it, one round, or some that follow one another."""
    made = _chart(text)

    assert (made.name, made.first, made.last) == ("wave", first, last)


def test_the_next_round_goes_on_where_the_chart_stands() -> None:
    """It has no number of its own."""
    assert _chart("Work next round of chart wave.").following


def test_a_number_of_rounds_is_kept_to_be_checked() -> None:
    """ "All 6 rounds" of a chart of 5 is a misprint that only the plan can see."""
    made = _chart("Work all 6 rnds of chart wave.")

    assert made.rounds is not None
    assert made.rounds.values == (6,)


def test_rounds_that_do_not_run_upwards_are_refused() -> None:
    """Nobody can tell which were meant."""
    assert any("do not run upwards" in problem.message for problem in _read("Work rounds 4-2 of chart wave.").problems)


def test_rounds_named_against_their_order_are_refused() -> None:
    """ "Rounds 3 and 1" were worked as 1 and 3 once, in silence."""
    problems = _read("Rep rounds 3 and 1 twice.").problems
    assert [problem.message for problem in problems] == ["rounds 3, 1 are not in the order of their numbers."]
