"""Put what a clause behind a row says comes out as the count that it is. No I/O.

Theory of operation. "…, when there should be 40 sts", "…, thus having 30 sts", "when the dust settles you have 18 sts" are
counts, and checked as any other. How often a repeat stands in a row (", 8 repeats in all") is the number of its times, so that
the plan holds it against the stitches there are; sections of so many stitches are a count of them all. A condition that hangs on
a count is none: "when 40 sts are bound off". Source: the wording of patterns in print; common practice.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from stepper.project.rewording.clauses import word_classes as of
from stepper.project.rewording.clauses.clause import words_of
from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import CLOSED, STS, N
from stepper.regex import regex

_HAVE: Final = r"(?:there\s+(?:should|will|ought\s+to|must)\s+(?:now\s+|then\s+)?be|there\s+are(?:\s+now|\s+then)?|you(?:'ll|\s+will|\s+should|\s+ought\s+to|\s+must)?\s+(?:now\s+|then\s+)?have|you(?:'ll|\s+will|\s+should)\s+be\s+left\s+with)(?:\s+(?:now|then|only))?"
_LEFT: Final = r"(?:\s+(?:in\s+(?:all|total)|altogether|total|remaining|left|on\s+(?:the|your)\s+needles?|again))*"
_JOINT: Final = r"\s*[,;-]\s*(?:when|whereupon|where(?:up)?on|at\s+which\s+(?:point|stage)|by\s+which\s+time|after\s+which|thus|so|then|and|and\s+then|so\s+that)\s+"
_RESULTS: Final = tuple(
    regex(expression, re.IGNORECASE)
    for expression in (
        rf"{_JOINT}{_HAVE}\s+(?P<count>{N}\s+{STS}){_LEFT}{CLOSED}",
        rf"\s*,\s*(?:thus|thereby|so)\s+(?:having|leaving|making|giving)\s+(?P<count>{N}\s+{STS}){_LEFT}{CLOSED}",
        rf"\s*,\s*(?:to\s+give|bringing\s+the\s+(?:total|number|count)(?:\s+of\s+(?:sts|stitches))?\s+to)\s+(?P<count>{N}\s+{STS}){_LEFT}{CLOSED}",
        rf"\s*,\s*with\s+(?P<count>{N}\s+{STS})\s+(?:remaining|left|on\s+(?:the|your)\s+needles?){CLOSED}",
        rf"\s*,\s*(?:there|you)\s+(?:being|having)(?:\s+(?:then|now|thus))?\s+(?P<count>{N}\s+{STS}){_LEFT}{CLOSED}",
        rf"\s*,\s*(?:when|whereupon|after\s+which)\s+(?P<count>{N}\s+{STS})\s+(?:will|should)\s+(?:remain|be\s+left)(?:\s+on\s+(?:the|your)\s+needles?)?{CLOSED}",
    )
)
"""A count that is joined to its row by a word of time or of what follows."""
_ONCE: Final = regex(rf"(?:(?<=^)|(?<=[.;]\s))\s*(?P<once>(?:when|once|after)\s+(?P<said>[^,.;:()\d]{{3,60}}?))\s*,?\s+(?={_HAVE}\s+{N}\s+{STS}{_LEFT}{CLOSED})", re.IGNORECASE)
"""When it is counted, in words of no row."""
_AT_NO_ROW: Final = of.CRAFT | of.LIMITS | of.NUMBERS | of.STITCH_THINGS | of.GENERAL - frozenset(["done", "settles", "comes", "is", "finished"])
_TIMES: Final = r"(?:you\s+(?:will\s+|should\s+)?have(?:\s+worked)?\s+|(?:that|this)(?:'s|\s+is)\s+|=\s*)?(?P<times>" + N + r")\s+(?:rep(?:eat)?s|times(?=\s+(?:in\s+(?:all|total)|altogether)))(?:\s+(?:in\s+(?:all|total)|altogether|total|of\s+(?:the\s+)?(?:patt(?:ern)?|motif)))?"
_REPEATED: Final = regex(
    rf"(?P<rep>\brep(?:eat)?\s+from\s+\*)(?:\s+(?:to\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?(?:rnd|round|row))?|a?round|across))?\s*(?:[,(\[-]+\s*|\s+){_TIMES}\s*[)\]]?{CLOSED}",
    re.IGNORECASE,
)
"""How often a repeat stands in the row, behind the repeat: "rep from * to end (8 reps)"."""
_SECTIONS: Final = regex(
    rf"\b(?:(?:place|put|hang|set)\s+(?:an?\s+)?(?:st(?:itch)?\s+)?(?:markers?|m)|pm)\s+(?:after\s+)?every\s+(?P<each>{N})\s+(?P<sts>{STS})\s*[,(\[;-]+\s*"
    rf"(?:(?:making|giving|for|that\s+is|you\s+(?:will\s+|should\s+)?have(?:\s+made|\s+worked|\s+marked)?|=)\s*)?(?P<parts>{N})\s+(?:sections|segments|panels)(?:\s+in\s+(?:all|total))?\s*[)\]]?{CLOSED}",
    re.IGNORECASE,
)
"""How many sections markers make, all of one size."""
_ROWS_WORKED: Final = regex(
    rf"(?P<times>\b(?:{N}\s+times(?:\s+more)?|once\s+more|twice(?:\s+more)?)(?:\s+(?:in\s+(?:all|total)|altogether))?)\s*[,(-]\s*(?:that\s+is|that's|i\.e\.|=)?\s*,?\s*(?P<rows>{N}\s+(?:rows|rnds|rounds))(?:\s+(?:in\s+(?:all|total)|altogether))?\s*\)?"
    rf"(?:{CLOSED}|\s*,\s*(?=then\b|and\s+then\b))",
    re.IGNORECASE,
)
"""How many rows come of the times that they are repeated."""
_PLACING: Final = regex(
    rf"(?P<row>\b(?:knit|purl|k|p)(?:\s+(?:1|one)\s+(?:row|rnd|round)|\s+to\s+end)?)\s*(?:,\s*|,?\s+and\s+)(?:placing|place)\s+(?:an?\s+)?(?:st(?:itch)?\s+)?markers?\s+(?:after\s+)?every\s+(?P<each>{N}\s+{STS}){CLOSED}",
    re.IGNORECASE,
)
"""Markers that are placed while a row is worked."""
_SOMEWHERE: Final = regex(
    rf"\b(?:inc|dec)(?:reas(?:e|ing))?\s+{N}(?:\s+{STS})?(?P<cut>\s*,?\s+(?:somewhere|anywhere))(?=\s+(?:in|on|along|around)\s+(?:the|this|that)\b)",
    re.IGNORECASE,
)
"""That it is all one where a change falls, as it is where it is spread evenly."""
_WORDS: Final = dict(zip(("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"), range(1, 11), strict=True))


def write_results(line: Reworded) -> Reworded:
    """Return a line with the counts that clauses behind its rows give as sentences of their own."""
    for expression in _RESULTS:
        for match in reversed(list(expression.finditer(line.text))):
            if match.start():
                line = laid_anew(line, *match.span(), [". ", match.span("count")])
    for match in reversed(list(_SOMEWHERE.finditer(line.text))):
        line = laid_anew(line, *match.span("cut"), [])
    for match in reversed(list(_ROWS_WORKED.finditer(line.text))):
        if line.text[match.end() :].lstrip()[:1].isalpha():  # more rows follow, and the number is not of them all
            line = replace(laid_anew(line, match.end("times"), match.end(), [", "]), kept=(*line.kept, match["rows"]))
        else:
            line = laid_anew(line, *match.span(), [match.span("times"), ". ", match.span("rows")])
    for match in reversed(list(_PLACING.finditer(line.text))):
        line = laid_anew(line, *match.span(), [match.span("row"), ". Place marker every ", match.span("each")])
    for match in reversed(list(_ONCE.finditer(line.text))):
        if set(words_of(match["said"])) & _AT_NO_ROW:
            continue
        line = replace(laid_anew(line, *match.span(), []), kept=(*line.kept, match["once"].strip()))
    return _write_sections(_write_repeats(line))


def _write_repeats(line: Reworded) -> Reworded:
    """Put how often a repeat stands in its row as the times that it is worked."""
    for match in reversed(list(_REPEATED.finditer(line.text))):
        times = _numbers(match["times"])
        if min(times) < 2:
            continue
        line = laid_anew(line, *match.span(), [match.span("rep"), f" {_listed([one - 1 for one in times])} more times"])
    return line


def _write_sections(line: Reworded) -> Reworded:
    """Put how many sections of so many stitches there are as the count of all stitches."""
    for match in reversed(list(_SECTIONS.finditer(line.text))):
        each, parts = _numbers(match["each"]), _numbers(match["parts"])
        several = max(len(each), len(parts))
        if {len(each), len(parts)} - {1, several}:
            continue
        counts = [each[at % len(each)] * parts[at % len(parts)] for at in range(several)]
        line = laid_anew(line, *match.span(), ["place marker every ", (match.start("each"), match.end("sts")), f". {_listed(counts)} sts"])
    return line


def _numbers(words: str) -> list[int]:
    """Return a printed number, or those of a list of sizes."""
    return [int(one) for one in re.findall(r"\d+", words)] or [_WORDS[words.strip().lower()]]


def _listed(numbers: Sequence[int]) -> str:
    """Write numbers as a list of sizes."""
    first, *others = map(str, numbers)
    return f"{first} ({', '.join(others)})" if others else first
