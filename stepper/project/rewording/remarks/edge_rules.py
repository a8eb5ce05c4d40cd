"""Find how far from the edge a page says that all changes of a kind are worked: "all increases 2 sts in". No I/O.

Such a sentence works no stitch, and is for the rows below it up to the end of its section, unless a row says another place.
Only a sentence on all changes of a kind is one: "raglan decreases are worked 2 sts in from the edge" leaves those at the
neck open, and "when fewer than 8 sts remain, work the decs 1 st in" changes the place halfway. Both stay unread.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Final

from stepper.regex import regex

_NUMBERS: Final = {"one": 1, "two": 2, "three": 3, "four": 4}
_KIND: Final = r"(?:(?P<kind>inc|dec)(?:\.|s\b\.?|reases|reasings|reasing)?|(?:side\s+)?shapings?)"
_FAR: Final = r"(?P<far>\d|one|two|three|four)\s+(?:sts?|stitch(?:es)?)\s+(?:in\s+from|inside(?:\s+of)?)\s+(?:the\s+|each\s+|both\s+)?(?:side\s+)?(?:edges?|ends?)(?:\s+of\s+(?:the\s+)?rows?)?"
_RULE: Final = regex(
    rf"(?:note\s*[:-]\s*)?(?:please\s+)?(?:(?:work|make)\s+all\s+(?:the\s+)?{_KIND}\s+{_FAR}|all\s+(?:the\s+)?{_KIND.replace('kind', 'other')}\s+are\s+(?:worked|made|done)\s+{_FAR.replace('far', 'away')})(?:\s+(?:throughout|unless\s+(?:otherwise\s+)?(?:stated|told|instructed)(?:\s+otherwise)?))?",
    re.IGNORECASE,
)


def insets_in(sentences: Iterable[str]) -> dict[str, int]:
    """Return how many stitches stand outside each kind of change, `inc` or `dec`, as sentences say.

    Args:
        sentences: What is said with a line, made plain; any that is no such rule is passed over.
    """
    found: dict[str, int] = {}
    for sentence in sentences:
        match = _RULE.fullmatch(" ".join(sentence.split()).strip(" .!()"))
        if match is not None:
            word = (match["far"] or match["away"]).lower()
            kind = (match["kind"] or match["other"] or "").lower()
            found |= dict.fromkeys((kind,) if kind else ("inc", "dec"), _NUMBERS.get(word) or int(word))
    return found
