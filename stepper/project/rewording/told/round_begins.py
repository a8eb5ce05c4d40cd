"""Write in the grammar's words where the rounds of a sock begin from now on. No I/O.

"Knit to the beginning of the instep; this is the new start of the round" moves the beginning, and so do the stitches of the
first needle. "The round now begins at the centre of the heel" moves nothing: the plan holds it against where the rounds
do begin. "This is the new beginning of the round", alone, is only said: a round that ended elsewhere does not fit
anyway. Source: the wording of socks in print; common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import STS
from stepper.regex import regex

_RND: Final = r"(?:rounds?|rnds?)"
_BEGIN: Final = rf"(?:(?:(?:the|your)\s+)?(?:new\s+)?(?:(?:beg(?:inning)?|start)\s+of\s+(?:the\s+|your\s+|each\s+|every\s+)?{_RND}s?|bor|{_RND}\s+(?:beg(?:inning)?|start)))"
_MIDDLE: Final = r"(?:the\s+)?(?:cent(?:er|re)|middle)\s+of\s+(?:the\s+|your\s+)?(?:heel|sole|foot|bottom\s+of\s+the\s+foot|underside)"
_INSTEP: Final = rf"(?:the\s+)?(?:(?:beg(?:inning)?|start)\s+of\s+(?:the\s+)?)?instep(?:\s+{STS})?"
_HERE: Final = rf"(?:(?:this|here|that)\s+(?:is|marks|becomes)|from\s+here\s+on\s+this\s+is)\s+(?:now\s+)?{_BEGIN}(?:\s+from\s+(?:now|here)\s+on(?:wards)?)?"
_NOW: Final = rf"(?:(?:all\s+)?(?:the\s+|your\s+)?{_RND}\s+(?:will\s+)?(?:now\s+)?(?:begins?|starts?)(?:\s+now)?|{_BEGIN}\s+is(?:\s+now)?)\s+(?:at|in|with)\s+"
_AT: Final = tuple(
    (regex(rf"\s*(?:from\s+(?:here|now)(?:\s+on)?,?\s+)?{_NOW}{place}\s*\.?\s*$", re.IGNORECASE), words)
    for place, words in ((_MIDDLE, "Begin rounds from middle of sole"), (_INSTEP, "Begin rounds from instep"))
)
_ALONE: Final = regex(rf"\s*(?P<said>{_HERE})\s*\.?\s*$", re.IGNORECASE)
_MOVED: Final = tuple(
    (regex(rf"(?:^|(?<=[.:]\s))\s*(?:k|knit)\s+(?:across\s+)?{far}\s*[;,.]\s*(?:and\s+)?(?P<said>{_HERE})(?=\s*[.;]|\s*$)", re.IGNORECASE), words)
    for far, words in (
        (rf"to\s+{_INSTEP}", "K to new beginning at instep"),
        (r"(?:on\s+)?to\s+(?:the\s+)?(?:next\s+|first\s+|underarm\s+)?(?:marker|m)", "K to marker, pm for new BOR"),
        (rf"(?:to\s+(?:the\s+)?end\s+of\s+)?(?:the\s+)?(?:{STS}\s+(?:on|of)\s+)?(?:needle\s?1|N\s?1|first\s+needle)", "K needle 1 to the new beginning"),
    )
)
_ON_TO_IT: Final = regex(
    rf"(?:^|(?<=[.:]\s))\s*(?:{_BEGIN}\s+is\s+(?:now\s+)?|(?:the\s+)?{_RND}\s+(?:now\s+)?(?:begins?|starts?)\s+(?:now\s+)?at\s+)(?P<said>(?:the\s+)?marker\s+(?:at|in|under)\s+(?:(?:the|middle|cent(?:er|re)|of|left|first)\s+)*(?:under)?arm)\s*[,;]\s*(?:so\s+)?(?:k|knit)\s+(?:on\s+)?(?:to|up\s+to|as\s+far\s+as)\s+it(?=\s*[.;]|\s*$)",
    re.IGNORECASE,
)
"""Where rounds begin, and that they are knitted on to it: the next marker. The one under the right arm may be the one behind it."""


def write_round_begins(line: Reworded) -> Reworded:
    """Write where rounds begin from a line on in the grammar's words; the same line if it does not say."""
    for place, words in _AT:
        if place.match(line.text) is not None:
            return laid_anew(line, 0, len(line.text), [words])
    for moved, words in _MOVED:
        found = moved.search(line.text)
        if found is not None:
            return laid_anew(line, found.start(), found.end(), [words])
    on = _ON_TO_IT.search(line.text)
    if on is not None:
        made = laid_anew(line, on.start(), on.end(), ["K to marker, pm for new BOR"])
        return replace(made, kept=(*made.kept, on["said"]))
    alone = _ALONE.match(line.text)
    if alone is None:
        return line
    made = laid_anew(line, 0, len(line.text), [""])
    return replace(made, kept=(*made.kept, alone["said"]))
