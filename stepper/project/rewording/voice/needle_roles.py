"""Write needles that a page calls by their use - "ribbing needles", "main needle" - as sizes called by a word. No I/O.

Which size they are stands in the materials or the gauge of the page, and is looked up when the plan is made. Needles
for ribs and edges are one of the two, those of the fabric itself the other; any other use, a sleeve or a pattern in
colours, may be worked on either, and is not read. Source: common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.craft.needles import MAIN_ROLE, RIB_ROLE
from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.regex import regex

_NOUN: Final = r"(?:(?:(?:circular|circ\.?|double[-\s]pointed|straight)\s+)?needles?|dpns?|circulars?)(?!\w)"
_TO: Final = r"\b(?:to|with|using|on)\s+"
_CALLED: Final = regex(
    rf"(?:(?P<to>{_TO})(?:the\s+|your\s+|a\s+)?(?:(?P<rib>{RIB_ROLE})|{MAIN_ROLE})(?:[\s-]+sized?)?\s+(?P<noun>{_NOUN})"
    rf"|(?P<go>{_TO})(?:the\s+|your\s+)?needles?\s+(?:size\s+)?(?:used\s+)?for\s+(?:the\s+)?(?:(?P<ribbed>{RIB_ROLE})|{MAIN_ROLE})(?:\s+st(?:itch)?)?)(?=\s*[.,;:]|\s+and\b|\s+(?:cast|co|knit|work|pick)\b|\s*$)",
    re.IGNORECASE,
)


def write_needle_roles(line: Reworded) -> Reworded:
    """Return a line with needles that it calls by their use as `rib-size` and `main-size` needles."""
    for match in reversed(list(_CALLED.finditer(line.text))):
        to = match.span("to" if match["to"] else "go")
        word = "rib-size " if match["rib"] or match["ribbed"] else "main-size "
        noun = match.span("noun") if match["noun"] else "needles"
        line = laid_anew(line, *match.span(), [to, word, noun])
    return line
