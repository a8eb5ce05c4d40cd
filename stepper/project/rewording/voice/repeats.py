"""Write a repeat between stars or brackets as the grammar has it, whatever words say how far it goes. No I/O.

"*k2, p2* - repeat between the stars all the way around", "[k2, p2] all the way round" and "repeat *k1, p1* to the
end" are one thing: the stretch is repeated to the end of the row. "*k3, p3* - 10 times" has a dash before the
number of times. What is repeated "10 times" behind the word "repeat" may have been worked once before, and stays
as it is printed. Source: the wording of patterns in print; common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import LONG, ROUND, STS, N
from stepper.regex import regex

_STRETCH: Final = r"(?:\*\s*(?P<stars>(?:(?!\brep(?:eat)?\b)[^*]){2,160}?)\s*[,;]?\s*\*|\[(?P<square>[^\[\]*]{2,120})\]|\((?P<round>(?=[kp]\s?\d)[^()*]{2,120})\))"
_BETWEEN: Final = (
    r"(?:rep(?:eat)?(?:ing)?\.?\s*(?:the\s+(?:stretch|part|section|sts|stitches)\s+)?"
    r"(?:from\s+(?:star|asterisk|\*)\s+to\s+(?:star|asterisk|\*)|between\s+(?:the\s+)?(?:(?:two\s+)?(?:stars|asterisks|\*{1,2}s?)(?:\s+and\s+\*)?)|"
    r"(?:from\s+)?\*\s*-\s*\*|(?:this|these|from\s+(?:the\s+)?(?:star|asterisk))(?:\s+(?:sts|stitches))?)?)"
)
_TO_END: Final = r"(?:(?:all\s+the\s+way\s+|all\s+)?(?:a?round|across)(?:\s+(?:the\s+)?(?:row|rnd|round))?|(?:to|until)\s+(?:the\s+)?(?:very\s+)?end(?:\s+of\s+(?:the\s+)?(?:row|rnd|round))?|the\s+(?:round|row)\s+out)"
_END: Final = r"(?=\s*[.;!]|\s*$|\s*,\s*\d)"
_ROUND_AND_ROUND: Final = regex(
    rf"(?P<lead>rep(?:eat)?\s+(?=[*\[(]))?{_STRETCH}\s*(?:[,;:.-]\s*)*(?:{_BETWEEN}\s*[,-]?\s*)?(?<![a-z]){_TO_END}{_END}",
    re.IGNORECASE,
)
_BETWEEN_OPEN: Final = regex(
    rf"\*\s*(?P<stars>(?:(?!\brep(?:eat)?\b)[^*]){{2,160}}?)\s*[,;]\s*rep(?:eat)?\s+(?:between|from)\s+(?:the\s+)?\*s?\s+{_TO_END}{_END}",
    re.IGNORECASE,
)
_AGAIN: Final = regex(
    rf"{_STRETCH}\s*(?:[,;:.-]\s*)*rep(?:eat)?\s+(?:from\s+(?:star|\*)\s+to\s+(?:star|\*)|(?:from\s+)?\*\s*-\s*\*)(?=\s*[.;]|\s*$)".replace(
        r"|\[(?P<square>[^\[\]*]{2,120})\]", ""
    ),
    re.IGNORECASE,
)
_TIMES: Final = regex(
    rf"\*\s*(?P<stars>[^*]{{2,160}}?)\s*[,;]?\s*\*\s*[,:-]\s*(?P<times>{N}\s*times|twice)\b", re.IGNORECASE
)


def write_repeats(line: Reworded) -> Reworded:
    """Return a line with repeats to the end, and so many times, as the grammar has them."""
    for match in reversed(list(_ROUND_AND_ROUND.finditer(line.text))):
        kind = next(name for name in ("stars", "square", "round") if match[name])
        line = laid_anew(line, *match.span(), ["*", match.span(kind), "; rep from * to end"])
    for match in reversed(list(_BETWEEN_OPEN.finditer(line.text))):
        line = laid_anew(line, *match.span(), ["*", match.span("stars"), "; rep from * to end"])
    for match in reversed(list(_AGAIN.finditer(line.text))):
        line = laid_anew(line, *match.span(), ["*", match.span("stars"), "; rep from *"])
    for match in reversed(list(_TIMES.finditer(line.text))):
        if line.text.count("*") == 2:
            line = laid_anew(line, *match.span(), ["(", match.span("stars"), ") ", match.span("times")])
    for match in reversed(list(_SUMMED.finditer(line.text))):
        if line.text.count("*") == 2:
            line = laid_anew(line, *match.span(), ["; rep from *. "])
    for match in reversed(list(_SO_LONG.finditer(line.text))):
        line = laid_anew(line, *match.span(), [". Work for ", match.span("long")])
    return line


_SUMMED: Final = regex(rf"\s*\*\s*=\s*(?=\d[\d\s(),;]*(?:{STS})\s*\.?\s*$)", re.IGNORECASE)
"""The end of a stretch between stars with a count behind it, which shows that it goes to the end: "*knit 3, M1* = 96 sts"."""
_SO_LONG: Final = regex(
    rf"(?<=rep from \* to end)\s*(?:,\s*(?:for\s+)?|\s+for\s+|\s+-\s+)(?P<long>{N}\s+{ROUND}|{LONG})(?=\s*[.;]|\s*$)",
    re.IGNORECASE,
)
"""How long a repeat is worked, behind it: "(k1, p1) around, 8 rounds"."""
