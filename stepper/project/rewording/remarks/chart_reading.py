"""Tell how a chart is read where it is read as charts are: from right to left, from the bottom up. No I/O.

Theory of operation. Such a sentence is made of a few phrases: that charts, or all their rounds, are read; in which
direction; and how often the repeat comes around. The directions are those that the program reads a chart in; "from left to
right" and "from the top down" are no phrase, so that a page that means them keeps its mark. "Work the chart" orders, and is
none either. Source: chart conventions, common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.regex import regex

_L: Final = r"(?:\d[\d\s()\[\]{},:/-]*|two|three|four|five|six|seven|eight|nine|ten|twelve)"
_ROUNDS: Final = r"(?:(?:all|every|each|the)\s+)?(?:(?:the\s+)?charts?(?:\s+[a-d])?(?:\s+(?:rounds?|rnds?))?|(?:rounds?|rnds?)(?:\s+(?:of|in|on)\s+the\s+charts?)?)"
_READ: Final = rf"(?:read\s+{_ROUNDS}|{_ROUNDS}\s+(?:is|are)\s+(?:always\s+|all\s+)?read)"
_WAY: Final = r"(?:from\s+)?(?:the\s+)?(?:right\s+to\s+(?:the\s+)?left|bottom\s+(?:(?:right\s+)?(?:corner\s+)?up(?:wards)?|to\s+(?:the\s+)?top))"
_EACH: Final = r"(?:(?:on|in)\s+(?:every|each|all)\s+(?:rounds?|rnds?))"
_OFTEN: Final = rf"(?:work|knit|repeat)(?:ing)?\s+(?:the\s+)?(?:{_L}[-\s]*(?:sts?|stitch(?:es)?)(?:\s+(?:repeat|pattern))?|repeat)\s+(?:{_L}\s*times|twice)(?:\s+(?:around|across|(?:in|on)\s+(?:each|every|the)\s+(?:round|rnd)))?"
_READING: Final = regex(rf"{_READ}(?:\s*,?\s*(?:and\s+)?(?:{_WAY}|{_EACH}))+(?:\s*,?\s*(?:and\s+)?{_OFTEN})?", re.I)

_BY_TURNS: Final = r"(?!.*\b(?:rs|ws|right[-\s]side|wrong[-\s]side|odd|even|(?:knit|purl)\s+(?:rows?|side)|left[-\s]hand(?:ed|ers?))\b)"
"""A direction for some rows, or for some knitters, is that of a chart read by turns."""
_SHOWN: Final = r"(?:(?:is|are|be)\s+(?:always\s+|all\s+)?)?(?:reads?|begins?|starts?|worked|followed|runs?|written)"
_FROM_LEFT: Final = r"(?:left\s+to\s+(?:the\s+)?right|(?:the\s+|its\s+)?(?:upper|top)\s+left|(?:the\s+)?top\s+(?:down\w*|to\s+(?:the\s+)?bottom)|(?:at|from)\s+the\s+top\b)"
_WRITTEN: Final = r"(?:lines?|written\s+(?:rows?|rnds?|rounds?|instructions?)|(?:colou?r\s+)?(?:rows?|rounds?|rnds?)\s+(?:is|are)\s+(?:given|written)|text|tables?|lists?|letters|(?:colou?r\s+)?sequences?)"
_OTHER_WAY: Final = regex(
    rf"^{_BY_TURNS}(?=.*\b(?:charts?|grids?|reads?)\b).*\b{_SHOWN}\b[^.]*\b{_FROM_LEFT}\b"
    rf"|^{_BY_TURNS}(?!.*\bcharts?\b(?!\s*\.?$))(?=.*\b{_SHOWN}\b).*\b{_WRITTEN}\b[^.]*\bright\s+to\s+(?:the\s+)?left\b",
    re.I,
)
"""A chart that is read otherwise in all its rounds, or printed words that are not read as they stand."""


def reads_otherwise(sentence: str) -> bool:
    """Return whether a sentence says that a chart is read from the left or the top, or a line from its end.

    The program works a line in the order of its words: one "read from right to left" would come out mirrored.
    """
    return _OTHER_WAY.search(sentence) is not None


def tells_reading(sentence: str) -> bool:
    """Return whether a sentence only says that a chart is read as charts are.

    Args:
        sentence: One sentence, made plain, without its full stop.
    """
    return _READING.fullmatch(sentence) is not None
