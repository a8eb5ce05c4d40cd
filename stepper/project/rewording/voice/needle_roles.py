"""Write needles that a page calls by their use - "ribbing needles", "main needle" - as sizes called by a word. No I/O.

Which size they are stands in the materials or the gauge of the page, and is looked up when the plan is made. Needles for ribs and
edges are the smaller of two, those of the fabric itself the larger; any other use is known only where it is named there. Source: common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.craft.needles import NEEDLE_ROLES
from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.regex import regex

_NOUN: Final = r"(?:(?:(?:circular|circ\.?|double[-\s]pointed|straight)\s+)?needles?|dpns?|circulars?)(?!\w)"
_TO: Final = r"(?:\b(?:to|with|using|on)\s+|(?:(?<=^)|(?<=[.!]\s))(?=[a-z-]+[\s-]+(?:sized?\s+)?needles?\s*[,:])|\band\s+(?=[a-z-]+[\s-]+(?:sized?\s+)?needles?\s*[,.:]))"
"""What stands before them: nothing where they begin a sentence, or stand behind the side that faces."""
_USE: Final = "|".join(f"(?P<{role}>{words})" for role, words in NEEDLE_ROLES.items())
_USED: Final = "|".join(f"(?P<{role}_2>{words})" for role, words in NEEDLE_ROLES.items())
_CALLED: Final = regex(
    rf"(?P<to>{_TO})(?:the\s+|your\s+|a\s+)?(?:(?:{_USE})(?:[\s-]+sized?)?\s+(?P<noun>{_NOUN})"
    rf"|needles?\s+(?:size\s+)?(?:used\s+)?for\s+(?:the\s+)?(?:{_USED})(?:\s+st(?:itch)?)?)"
    r"(?=\s*[.,;:]|\s+and\b|\s+(?:cast|co|knit|work|pick)\b|\s*$)",
    re.IGNORECASE,
)


def write_needle_roles(line: Reworded) -> Reworded:
    """Return a line with needles that it calls by their use as `rib-size` and `main-size` needles."""
    for match in reversed(list(_CALLED.finditer(line.text))):
        role = next(role for role in NEEDLE_ROLES if match[role] or match[f"{role}_2"])
        noun = match.span("noun") if match["noun"] else "needles"
        line = laid_anew(line, *match.span(), [match.span("to"), f"{role}-size ", noun])
    return line
