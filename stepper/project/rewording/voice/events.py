"""Write what is ordered for when a length is reached as work up to that length, and the order behind it. No I/O.

"When the sleeve measures 15 cm, increase 2 sts under the arm" goes on as before until then; every order that is read by itself is
read so. What is ordered meanwhile ("at the same time, when ...") is something else. Source: common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.told.phrases import ToldPhrase
from stepper.project.rewording.told.straight import measured_words
from stepper.project.rewording.told.straight_phrases import MEASURED
from stepper.regex import regex

_ACTS: Final = (
    r"(?=(?:(?:bind|cast)\s+off|bo|[kp]|[kp]\s?\d+|knit|purl|work|rib|inc(?:rease)?|dec(?:rease)?|slip|place|put|change|switch|insert|divide|begin|start|shape|"
    r"cont(?:inue)?|repeat|rep|join|pick|break|cut|mark|turn|leave|make|set|(?:on\s+)?(?:the\s+)?next\s+(?:row|rnd|round))\b)"
)
_WHEN: Final = regex(
    rf"(?:(?<=^)|(?<=[.!]))(?P<space>\s*)(?:(?:now|then)\s+)?(?:when|once|as\s+soon\s+as|after)\s+{MEASURED}\s*(?:,\s*)?(?<=[\s,]){_ACTS}",
    re.IGNORECASE,
)


def write_events(line: Reworded) -> Reworded:
    """Write the sentences of a line that begin with a length to be reached as work up to it, and their order.

    Returns:
        The line; the same if it has none.
    """
    for match in reversed(list(_WHEN.finditer(line.text))):
        until = measured_words(ToldPhrase("until", match))
        if until is None:
            continue
        order = match.end()
        words = [match["space"], "Work even ", *until, ". ", line.text[order].upper(), (order + 1, order + 1)]
        told = (match.groupdict().get(name) or "" for name in ("about", "along", "seam"))
        line = laid_anew(line, match.start(), order + 1, words)
        line = replace(line, kept=(*line.kept, *(one.strip(" ,") for one in told if one.strip(" ,"))))
    return line
