"""A chart that a line only announces: "Begin Chart A." above "Work Rnds 1-20 of Chart A." No I/O."""

from __future__ import annotations

from dataclasses import replace

from stepper.project.duration import Times
from stepper.project.instructions import (
    ONLY_CHART,
    Assumed,
    ChartWork,
    Line,
    Needle,
    PrintedCount,
    Repeated,
    RowsCount,
    Sentence,
    WithYarn,
)
from stepper.project.nested_records import records_in
from stepper.project.stitchwork import ChartPart

_BETWEEN = Needle | WithYarn | PrintedCount | RowsCount
"""What may stand between a chart that is announced and its rows."""
_TOLD = "how many of its rows are worked is not said: all of them, once, are."


def rows_of_announced(line: Line, following: Line | None) -> tuple[Line, Line | None]:
    """Return two lines in which a chart that is begun is worked once: by the rows that are named next.

    Where none are named, the chart is worked whole, and that is told.
    """
    if not any(isinstance(one, ChartWork) and one.announced for one in line.sentences):
        return line, following
    made: list[Sentence] = []
    assumed = list(line.assumed)
    sentences = list(line.sentences)
    behind = list(following.sentences) if following is not None and following.only == line.only else []
    for at, sentence in enumerate(sentences):
        if not isinstance(sentence, ChartWork) or not sentence.announced:
            made.append(sentence)
            continue
        rest = (*sentences[at + 1 :], *behind)
        number, first = next(
            ((number, one) for number, one in enumerate(rest) if not isinstance(one, _BETWEEN)), (0, None)
        )
        named = _named(first, sentence, following if number >= len(sentences) - at - 1 else line)
        if named is None:
            made.append(replace(sentence, announced=False))
            assumed.append(Assumed(_TOLD, sentence.place))
        elif at + 1 + number < len(sentences):
            sentences[at + 1 + number] = named
        else:
            behind[number - (len(sentences) - at - 1)] = named
    line = replace(line, sentences=tuple(made), assumed=tuple(assumed))
    if following is not None and behind:
        following = replace(following, sentences=tuple(behind))
    return line, following


def _named(sentence: Sentence | None, begun: ChartWork, line: Line | None) -> Sentence | None:
    """Return a sentence that works rows of a chart just begun; None if it works none of them."""
    if sentence is None or line is None:
        return None
    if isinstance(sentence, Repeated) and not line.numbers:
        numbers, lasts = sentence.numbers, sentence.duration
        in_order = numbers and tuple(range(numbers[0], numbers[-1] + 1)) == numbers
        own = sentence.again or sentence.pattern
        if in_order and not own and isinstance(lasts, Times) and not lasts.more:
            return ChartWork(begun.name, numbers[0], numbers[-1], lasts.number, sentence.place)
        return None
    names = {
        record.name.lower()
        for record in records_in((sentence,))
        if isinstance(record, ChartWork | ChartPart) and not getattr(record, "defined", False)
    }
    return sentence if names & {begun.name.lower(), ONLY_CHART} else None
