"""Hold what a repeat comes to in all against how often it is said: "12 times more (13 times in all)". No I/O.

A page that says a number of times twice says it so that nobody miscounts: once how often more, once how often in all.
The second is true of the first in every size or of none, so it also tells whether "12 times" were meant as more. One
that is true of neither is left as it is printed, and refused. Source: the wording of patterns in print; common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.reworded import Reworded, cut_out, laid_anew
from stepper.project.rewording.synonym import N
from stepper.regex import regex

_ALL: Final = r"(?:in\s+(?:all|total)|total|altogether)"
_OF_WHAT: Final = r"(?:(?:reps?|repeats?|repetitions)|(?:(?:inc|dec)(?:rease)?|buttonhole)\s+(?:rows|rnds|rounds))"
_TOLD: Final = regex(
    rf"\b(?P<rep>rep(?:eat)?|work|knit)\b(?P<what>[^.;:*]*?)\s+(?:(?P<another>another|an\s+additional)\s+)?(?P<times>{N})\s+"
    rf"(?:(?P<more>more)\s+times|times(?:\s+(?P<behind>more))?)"
    rf"(?P<told>\s*(?:[:;,\u2013\u2014-]+\s*|[(\[]\s*|=\s*)(?:(?:for|=|i\.?e\.?,?|that\s+is|making|so)\s+)?(?:(?:there\s+are|you\s+have)\s+)?"
    rf"(?:(?:a\s+)?total\s+of\s+(?P<of>{N})\s+(?:times|{_OF_WHAT})|(?P<all>{N})\s+(?:times|{_OF_WHAT})\s+(?:worked\s+)?{_ALL})\s*[)\]]?)(?=\s*[.,;:]|\s*$)",
    re.I,
)
_OFTEN: Final = regex(r"\b(?:times|once|twice)\b", re.I)
_FIGURE: Final = regex(r"\d+")


def write_repeats_in_all(line: Reworded) -> Reworded:
    """Take what repeats come to in all out of a line, where it is true in every size, and have it said.

    Returns:
        The line; the same if it has none. "12 times" without "more" become "12 times more" or "in total", as told.
    """
    for match in reversed(list(_TOLD.finditer(line.text))):
        told = _numbers(match["of"] or match["all"])
        times = _numbers(match["times"])
        if len(told) != len(times):
            continue
        if _OFTEN.search(match["what"]):
            continue  # "3 times, then every 2nd row 4 times (8 times in all)" counts both
        is_more = bool(match["another"] or match["more"] or match["behind"])
        if told == [number + 1 for number in times]:
            line = cut_out(line, [(*match.span("told"), match["told"].strip(" .,;:()[]=-"))])
            if not is_more:
                at = match.start("told")
                line = laid_anew(line, at, at, [" more"])
        elif told == times and not is_more:
            line = cut_out(line, [(*match.span("told"), match["told"].strip(" .,;:()[]=-"))])
            line = laid_anew(line, match.start("told"), match.start("told"), [" in total"])
    return line


def _numbers(many: str) -> list[int]:
    """Return the numbers of a list of sizes; none where it is spelt out."""
    return [int(number) for number in _FIGURE.findall(many)]
