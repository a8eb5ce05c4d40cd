"""Write how far from the edge a shaping lies, told amid it, behind it. No I/O.

"Inc 1 st each side (2 sts in from edge) of next row, then every 8th row 6 times more" and "dec 1 st, 3 sts in from
each edge, every RS row" tell it where the printer had room; the grammar reads it last: "..., working incs 2 sts in
from edge". Looked for only in a line that nothing else reads. Source: the print of patterns, US and UK; common
practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import STS, N
from stepper.regex import regex

_EDGE: Final = r"(?:(?:the|each|both|either|outer|side|same)\s+)*(?:edges?|ends?|sides?)(?:\s+of\s+(?:the\s+)?(?:rows?|work))?"
_INSET: Final = regex(
    rf"\s*[,;]?\s*(?P<open>[(\[])?\s*(?:(?:worked|working|made|making|placed|placing)\s+(?:(?:it|them|these|this|each|(?:the\s+)?(?:inc|dec)(?:rease)?s)\s+)?)?"
    rf"(?P<n>{N})\s+{STS}\s+(?:in|inside|away)\s+from\s+{_EDGE}\s*(?(open)[)\]]|)\s*,?(?=\s|$|[.;:=-])",
    re.I,
)
_SHAPES: Final = regex(r"(?:^|[.:]\s+|\band\s+|,\s+)(?P<dir>inc|dec)(?:reas(?:e|ing))?\.?\s+(?:1|one)\s+(?:st|stitch)\b", re.I)
_AT_ENDS: Final = regex(r"\b(?:each|both|either)\s+(?:ends?|sides?|edges?)\b|\b(?:neck|armhole|front|side)\s+edge\b", re.I)
_BOTH: Final = regex(r"\b(?:each|both|either)\b", re.I)
_END: Final = regex(rf"\s*(?:(?:[-\u2013\u2014=:]+|\(=?)\s*(?P<count>(?:{N})\s*{STS}[^.)]*)\)?)?(?=\.\s|\.?$)", re.I)
_SENTENCE_END: Final = regex(r"\.(?=\s+[A-Z]|\s*$)")


def write_insets(line: Reworded) -> Reworded:
    """Write how far from the edge shapings lie behind the shapings.

    Returns:
        The line; the same if it tells of none, or tells it behind them already.
    """
    text = line.text
    found = _INSET.search(text) if "from" in text else None
    if found is None:
        return line
    begins = [each for each in _SHAPES.finditer(text, 0, found.start()) if not _SENTENCE_END.search(text, each.end(), found.start())]
    end = next((each for at in range(found.end(), len(text) + 1) if (each := _END.match(text, at)) is not None), None)
    if not begins or end is None:
        return line
    shaping = text[begins[-1].start() : end.start()]
    ends = _AT_ENDS.search(shaping.replace(found[0], " "))
    if "working" in shaping.replace(found[0], " ") or _INSET.search(text, found.end(), end.start()) is not None:
        return line
    where = "" if ends is not None else " at each end"
    if where and not _BOTH.search(found[0]):
        return line
    told = f", working {begins[-1]['dir'].lower()}s {found['n']} sts in from edge"
    count = (". ", end.span("count")) if end["count"] else ()
    line = laid_anew(line, *end.span(), (told, *count))
    return laid_anew(line, *found.span(), (where,) if where or text[found.end() : found.end() + 1] != " " else ())
