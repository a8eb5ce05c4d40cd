"""Write that the last round stops before its end in the grammar's words, told in any order. No I/O.

"Work even to 20 cm, ending 5 sts before the marker", "on the last round stop 6 sts before the marker and put the next 12 on a thread"
and "stopping the last one 4 sts short of the end" say how many stitches are left of the last round; what is ordered behind it is a
sentence of its own. Looked for only in a line that nothing else reads. Source: common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import STS, N
from stepper.regex import regex

_ROUND: Final = r"(?:rounds?|rnds?|one)\b"
_LAST: Final = rf"(?:on|in)\s+(?:the\s+)?last\s+{_ROUND}"
_BEG: Final = rf"(?:bor|(?:beg(?:inning)?|start|end)(?:(?:\s+of\s+|-of-)(?:(?:the|this|that)\s+)?(?:last\s+)?(?:{_ROUND}))?)"
SHORT: Final = (
    rf"(?:{_LAST}\s*,?\s+)?(?:stop|end|finish)(?:ping|ing)?\s+(?:(?:the\s+|this\s+)?(?:last\s+)?{_ROUND}\s+)?"
    rf"(?P<n>{N})(?:\s+{STS}\.?)?\s+(?:before|short\s+of|from)\s+(?:the\s+)?(?:{_BEG}\s+(?:marker|m)\b|{_BEG}\b|(?:marker|m)\b)(?:\s+{_LAST})?"
)
"""That a round stops so many stitches before its end."""
_STOP: Final = regex(
    rf"(?P<joint>^\s*|[.;]\s*|\s*,\s*(?:and\s+|but\s+)?|\s+(?:and|but)\s+){SHORT}"
    r"(?P<and>\s*[,;]?\s+(?:and\s+)?(?:then\s+)?(?=(?:place|put|slip|sl|hold|bind|cast|bo|leave|transfer|break|cut)\b)|(?=\s*[.;]|\s*$))",
    re.IGNORECASE,
)
_NAMES_MARKER: Final = regex(r"\b(?:marker|m|bor)\b", re.IGNORECASE)
_OFF: Final = regex(
    rf"(?:\s*[.;])?[^.;]*?\bnext\s+{N}(?:\s+{STS})?[^.;]*?(?P<off>\s*,?\s+(?:and\s+)?remov(?:e|ing)\s+(?:the\s+)?(?:{_BEG}\s+)?(?:marker|m)\b)(?=\s*[.;]|\s*$)",
    re.IGNORECASE,
)
"""Behind a stop before the marker: it goes as the stitches about it do, and the round begins where it stopped."""


def write_stops(line: Reworded) -> Reworded:
    """Write where the last round of a line stops as a sentence of its own; the same line if it does not say."""
    for match in reversed(list(_STOP.finditer(line.text))):
        off = _OFF.match(line.text, match.end()) if _NAMES_MARKER.search(match.group()) else None
        if off is not None:
            line = replace(laid_anew(line, off.start("off"), off.end("off"), []), kept=(*line.kept, off["off"].strip(" ,")))
        before = "" if not line.text[: match.start()].strip() else ". "
        order = match.end()
        behind: list[str | tuple[int, int]] = []
        end = match.end()
        if match["and"]:
            behind, end = [". ", line.text[order].upper()], order + 1
        said = match.group().removeprefix(match["joint"]).removesuffix(match["and"] or "").strip(" .,;")
        line = laid_anew(line, match.start(), end, [before, "Stop short ", match.span("n"), " sts", *behind])
        line = replace(line, kept=(*line.kept, said))
    return line
