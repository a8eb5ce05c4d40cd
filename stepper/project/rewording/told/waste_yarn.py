"""Write stitches knitted with waste yarn and slipped back as they are knitted then: an opening for a thumb or a heel. No I/O.

"K2, knit next 8 sts with waste yarn, slip these 8 sts back to left needle, knit to end": the waste yarn is drawn out later, and
the stitches lie on the left needle again. Where they are "knitted again" at once they are worked here, else by what
follows. All of it is said with the line. Without the words that they go back nothing is taken out. Source: mittens and
socks in print; common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import STS, N
from stepper.regex import regex

_YARN: Final = r"(?:yarn|wool|thread|cotton)"
_WASTE: Final = rf"(?:an?\s+|the\s+|your\s+)?(?:(?:length|piece|strand|bit)\s+of\s+)?(?:(?:smooth|short|different|contrast(?:ing)?|other[-\s]colou?red|waste|scrap)\s+)*(?<=[a-z]\s)(?:colou?red\s+)?{_YARN}\b"
_WITH: Final = r"(?:with|using|in|onto)"
_THESE: Final = r"(?:these|them|those|the\s+same)"
_PART: Final = r"(?:(?:heel|thumb|palm|waste\s+yarn|scrap)\s+)?"
_KNITTED: Final = rf"(?:k|knit|work)\s*(?:across\s+|over\s+)?(?:the\s+)?(?:(?:next|first|last|foll(?:owing)?|these)\s+)?(?P<n>{N})\s*{_PART}(?:{STS})?"
_J: Final = r"\s*[,;.]?\s*(?:(?:and|then|now)\s+)*"
_BACK: Final = rf"(?:slip|sl|place|return|put|move|transfer)\s+(?:{_THESE}\s*(?P<these>\d[\d\s(),]*)?{_PART}(?:{STS})?|the\s+(?P<the>\d[\d\s(),]*)?{_PART}{STS})\s*(?:back\s+)?(?:on\s+to|onto|to|on)\s+(?:the\s+|your\s+)?(?:left|lh|l\.h\.)(?:[-\s]?hand)?\s+needle"
_MAIN: Final = r"(?:the\s+|your\s+)?(?:(?:main|working|original|pattern)\s+(?:yarns?|wool|colou?r)|(?-i:MC|CC))"
_AGAIN: Final = rf"(?P<again>{_J}(?:{_WITH}\s+{_MAIN}\s*,?\s*)?(?:k|knit|work)\s+(?:over\s+)?{_THESE}(?:\s+(?P<them>\d[\d\s(),]*))?(?:\s*{STS})?(?:\s+again)?(?P<patt>\s+in\s+patt(?:ern)?)?(?:\s+again)?(?:\s+{_WITH}\s+{_MAIN})?(?=\s*[,.;]|\s*$))?"
_OPENINGS: Final = tuple(
    regex(rf"\b{knitted}{_J}{_BACK}{_AGAIN}", re.IGNORECASE)
    for knitted in (rf"{_KNITTED}\s+{_WITH}\s+{_WASTE}", rf"(?:{_WITH}\s+{_WASTE}\s*,?\s*){_KNITTED}")
)
_ON: Final = regex(rf"{_J}(?=[kpw])", re.IGNORECASE)


def write_waste_yarn(line: Reworded) -> Reworded:
    """Write stitches worked with waste yarn as they are worked then; the same line if it has none."""
    for opening in _OPENINGS:
        found = opening.search(line.text)
        if found is None:
            continue
        on = _ON.match(line.text, found.end())
        if (not found["again"] and on is None) or _goes_back_otherwise(found):
            return line
        end = found.end() if found["again"] or on is None else on.end()
        words = ["work " if found["patt"] else "k", found.span("n"), " sts in pattern" if found["patt"] else ""]
        made = laid_anew(line, found.start(), end, words if found["again"] else [""])
        return replace(made, kept=(*made.kept, found.group().strip(" ,.;")))
    return line


def _goes_back_otherwise(found: re.Match[str]) -> bool:
    """Return whether another number of stitches is slipped back, or knitted again, than is knitted with waste yarn."""
    told = [re.findall(r"\d+", found[name]) for name in ("these", "the", "them") if found[name]]
    return any(number != re.findall(r"\d+", found["n"]) for number in told)
