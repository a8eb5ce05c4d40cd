"""A part worked again whose yarn is not cut: "Knit the second leg alike, but do not cut the yarn." No I/O.

The order to cut it stands in the lines that are worked again. The line that calls them takes it away, for the
knitting goes on with that yarn. Source: common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.plan.state.needles import Needles
from stepper.project.instructions import AsPart, BreakYarn, Line, Remark
from stepper.project.model import Section
from stepper.project.rewording.synonym import CUT_YARN
from stepper.regex import regex

_UNCUT: Final = regex(rf"(?:but\s+)?(?:do\s+not|don't)\s+{CUT_YARN}(?:\s+this\s+time)?\W*", re.I)
_CUT: Final = regex(rf"(?:then\s+)?{CUT_YARN}", re.I)


def said_at_once(line: Line) -> tuple[str, ...]:
    """Return the words said with a line that works a part again; at its end is told that yarn is not cut."""
    if not any(isinstance(one, AsPart) and _leaves_uncut(one) for one in line.sentences):
        return line.said
    return tuple(words for words in line.said if not _UNCUT.fullmatch(words))


def with_yarn_uncut(lines: tuple[Line, ...], instruction: AsPart, needles: Needles) -> tuple[Line, ...]:
    """Return lines that are worked again without their last cut of the yarn in hand, if the caller says so.

    Args:
        lines: The lines of the part.
        instruction: What works them again.
        needles: The knitting in hand.

    Returns:
        The lines, with "do not cut yarn" where it was cut, or at their end if it is not; the same if the line
        that has the instruction says nothing of it.
    """
    caller = _line_of(instruction, needles.project.sections)
    words = next((words for words in caller.said if _UNCUT.fullmatch(words)), "") if caller else ""
    if caller is None or not words or not lines or not _leaves_uncut(instruction):
        return lines
    told = Remark(words, instruction.place)
    for at in range(len(lines) - 1, -1, -1):
        line = lines[at]
        said = tuple(each for each in line.said if not _CUT.match(each))
        cuts = [number for number, one in enumerate(line.sentences) if _cuts(one)]
        if not cuts and said == line.said:
            continue
        where = cuts[-1] if cuts else len(line.sentences)
        sentences = (*line.sentences[:where], told, *line.sentences[where + 1 :])
        return *lines[:at], replace(line, sentences=sentences, said=said), *lines[at + 1 :]
    return *lines[:-1], replace(lines[-1], sentences=(*lines[-1].sentences, told))


def _leaves_uncut(instruction: AsPart) -> bool:
    """Return whether a line works a part again line by line, up to its end."""
    own_lines = bool(instruction.from_mark) and not instruction.part
    return not (own_lines or instruction.rest or instruction.reversed_ or instruction.shaped)


def _cuts(sentence: object) -> bool:
    if isinstance(sentence, Remark):
        return bool(_CUT.match(sentence.text))
    return isinstance(sentence, BreakYarn) and not sentence.yarn


def _line_of(instruction: AsPart, sections: tuple[Section, ...]) -> Line | None:
    return next((line for one in sections for line in one.lines if instruction in line.sentences), None)
