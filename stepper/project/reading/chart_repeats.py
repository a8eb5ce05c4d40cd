"""Keep how often a chart is said to stand across a row, to be held against its stitches. No I/O.

The stitches of a row say themselves how often the chart goes into them, so "repeating the 4 sts 5 times" is
taken off the line and said with it. Its numbers go with the chart: where they are others than the chart and
the row have, one of the two is wrong, and the line is refused. Source: common practice.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from stepper.project.instructions import ChartWork, Phrase, Sentence
from stepper.project.problems import Span
from stepper.project.rewording.synonym import STS, N
from stepper.project.rewording.told.numbers import digits_of
from stepper.project.stitchwork import ChartPart, Numbers, RepeatsTold
from stepper.regex import regex

_ACROSS: Final = regex(
    rf"(?:(?:work|repeat)ing\s+(?=(?:the|each|it|\d)\b)|which\s+(?:goes|comes|is\s+(?:worked|repeated))\s+|(?={N}\s+times\s+(?:a?round|across)\b)).*",
    re.I | re.S,
)
_WIDTH: Final = regex(rf"\b(\d+)[-\s]*{STS}", re.I)
_TIMES: Final = regex(rf"({N})\s+times\b", re.I)


def with_repeats_told(
    sentences: tuple[Sentence, ...], said: Sequence[str], sizes: int
) -> tuple[Sentence, ...]:
    """Return the sentences of a line with what is said of its chart's repeats put to the chart.

    Args:
        sentences: As read.
        said: The words that were taken off the line.
        sizes: How many sizes the garment has.

    Returns:
        The same sentences, where nothing is said, or it is not clear of which chart.
    """
    told = next((words for words in said if _ACROSS.fullmatch(words)), "")
    charts = [one for one in sentences if isinstance(one, ChartWork) or _part_of(one) is not None]
    if not told or len(charts) != 1:
        return sentences
    chart = charts[0]
    part = chart if isinstance(chart, ChartWork) else _part_of(chart)
    assert part is not None
    width, times = _WIDTH.search(told), _TIMES.search(told)
    across = RepeatsTold(
        width=int(width[1]) if width else None,
        times=_numbers(times[1], part.place, sizes) if times else None,
    )
    return tuple(_put(one, across) if one is chart else one for one in sentences)


def _part_of(sentence: Sentence) -> ChartPart | None:
    """Return the chart of a row, if it works one and no more."""
    if not isinstance(sentence, Phrase):
        return None
    parts = [element for element in sentence.elements if isinstance(element, ChartPart)]
    return parts[0] if len(parts) == 1 else None


def _put(sentence: Sentence, across: RepeatsTold) -> Sentence:
    if isinstance(sentence, ChartWork):
        return replace(sentence, across=across)
    assert isinstance(sentence, Phrase)
    elements = tuple(
        replace(one, across=across) if isinstance(one, ChartPart) else one for one in sentence.elements
    )
    return replace(sentence, elements=elements)


def _numbers(words: str, place: Span, sizes: int) -> Numbers | None:
    """Return a printed number, or a list of as many as there are sizes; None for another."""
    values = tuple(map(int, re.findall(r"\d+", words))) or (int(digits_of(words)),)
    return Numbers(values, place) if len(values) in (1, sizes) else None
