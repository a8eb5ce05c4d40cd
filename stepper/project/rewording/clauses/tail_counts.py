"""Counts that a row or an order ends with, in words of their own: "which leaves 54", "and you're at 66". No I/O.

Theory of operation. Such a tail is a joint, a phrase that says that a number is what is there now, and the number,
with or without "sts". It is written as the count that it is, which the plan compares. "Until you have 54 sts" is no
tail: the joint is a comma, a dash, a colon or "and". A number without "sts" is one only where nothing else is
counted so: "which makes 6" may be rounds. Source: common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import STS, N
from stepper.project.rewording.told.rows import write_rows
from stepper.regex import regex

_NOW: Final = r"(?:\s+(?:now|still|then|again|only|just))*"
_TO: Final = r"(?:\s+(?:back|up|down))*\s+(?:to|at|with)"
_YOU: Final = r"(?:you|we)"
_LEAVES: Final = (
    rf"(?:(?:which|that|this)\s+(?:will\s+)?(?:leaves?|gives?|brings?|takes?)(?:\s+(?:you|us|it))?(?:{_TO})?|leaving(?:\s+(?:you|us))?(?:\s+with)?"
    rf"|{_YOU}(?:'re|\s+are){_NOW}{_TO}|{_YOU}(?:'ll|\s+will){_NOW}\s+(?:be\s+left\s+with|end\s+up\s+with|be{_TO}))"
)
_HAVE: Final = (
    rf"(?:(?:so\s+)?{_YOU}(?:'ll|\s+will|\s+should)?{_NOW}\s+have|{_YOU}(?:'ve|\s+have){_NOW}\s+got|(?:so\s+)?there\s+(?:are|will\s+be|should\s+be)|(?:which|that|this|it)\s+(?:makes|comes\s+to)|giving(?:\s+you)?|making)"
)
_FULL: Final = r"(?:\s+(?:a\s+total\s+of|the\s+full|exactly|only|now))?"
_LEFT: Final = r"(?:\s+(?:rem(?:ain(?:ing)?)?|(?:are\s+)?left|(?:are\s+)?on\s+(?:the|your)\s+needles?|in\s+(?:all|total)|altogether))*"
_TAIL: Final = regex(
    rf"(?:(?:(?<=around)|(?<=round)|(?<=[*)\]]))\s*:\s*(?P<c>{N})(?:\s+{STS})?|(?<=[*)\]])\s+(?P<k>{N})\s+{STS}|(?<=[\w)\]*])\s*(?:(?:[,;:]|\s-+)\s*(?:and\s+|so\s+)?|\s+and\s+|\s+(?=which\b))(?:{_LEAVES}{_FULL}\s+(?P<n>{N})(?:\s+{STS})?|{_HAVE}{_FULL}\s+(?P<m>{N})\s+{STS})){_LEFT}\s*\)?(?=\s*[.;!]|\s*$)",
    re.IGNORECASE,
)


def write_tail_counts(line: Reworded) -> Reworded:
    """Write a count that an order ends with as a sentence of its own.

    Returns:
        The line; the same if it has none.
    """
    found = _TAIL.search(line.text)
    while found is not None:
        group = next(name for name, number in found.groupdict().items() if number)
        line = laid_anew(line, found.start(), found.end(), [". ", found.span(group), " sts"])
        found = _TAIL.search(line.text, found.start() + 2)
    return line


def write_counted_rows(line: Reworded) -> Reworded:
    """Write the rows of a line stitch by stitch, and the counts that they end with as sentences of their own."""
    counted = write_tail_counts(line)
    made = write_rows(counted)
    return made if made.text != counted.text else write_rows(line)
