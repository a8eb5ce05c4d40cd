"""Find the words of an unread row without which it is read: an alternative, a reason, a wish. No I/O.

"Cont even until piece measures 11 cm, or until it reaches your fingertip" is read without its second half.
Only words that change no stitches and no rows are ever left out: what the knitter may choose instead, what
she is told beside it. They are proposed to her, never taken silently, and said at their place.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import islice
from typing import Final

from stepper.project.page.orders import has_row_head
from stepper.project.reading.wording import reads
from stepper.records import dataclass
from stepper.regex import regex

LONGEST: Final = 600
"""Most letters of a row that are looked at."""
_MOST_TRIED: Final = 12
"""Most ways to shorten a row that are tried."""
_UNSHAPED: Final = regex(r"without\s+(?:any\s+)?(?:further\s+)?shaping", re.I)
_BEGINS: Final = regex(
    r"\s*[(\[](?=[^()\[\]]*[a-z]{3})|\s*[,;]\s+(?:or|if|so|taking|being|making\s+sure|remembering|not|as"
    r"|which|where|unless|for|to\s+be|preferably|ideally|see|even\s+if|but|and\s+if|ending|without)\b"
    r"|\s+(?:or\s+(?:until|for|to|the|as|your|whatever|longer|desired)|if\s+(?:possible|necessary|needed|you|liked|preferred)"
    r"|so\s+(?:that|as)|instead\s+of|in\s+order\s+to)\b",
    re.I,
)
"""Where words begin that may be left out."""
_ENDS: Final = regex(r"\s*(?:[.;,)\]]|$)")
_WORKS: Final = regex(
    r"\b(?:[kp]\s?\d+|[kp]\d?tog\w*|ssk|ssp|yo|m1\w*|sl\s?\d*|tog|together|knit(?:ting)?|purl(?:ing)?"
    r"|(?:inc|dec)(?:reas\w*)?|(?:bind|cast)(?:ing)?\s+o(?:n|ff)|bo|co|pick\w*|join\w*|turn\w*|hold\w*|place|slip\w*"
    r"|rep(?:eat\w*)?|every|each|next|last|times|twice|once|rows?\s+\d|\d+\s*(?:sts?|stitches|rows|rnds|rounds)"
    r"|revers\w*|shap\w*|change|changing|at\s+the\s+same\s+time|mark\w*)\b",
    re.I,
)
"""Words that change what is knitted: what holds one is never left out."""
_LASTS: Final = regex(r"\b(?:until|for|to)\b|\bend(?:ing|s)?\b|\b\d", re.I)
_CHOICE: Final = regex(
    r"^\W*or\b|\bif\s+(?:possible|you|liked|preferred)\b|\bpreferably\b|\bideally\b|\bso\s+much\s+the\b", re.I
)
"""How long is worked may only be left out where it is another choice, or a wish."""
_SEEN: Final = regex(r"^\W*(?:see|as\s+(?:shown|above|below))\b", re.I)


@dataclass(frozen=True, slots=True, kw_only=True)
class Shortened:
    """A row without some of its words."""

    text: str
    """What is read."""
    left: str
    """The words left out, as printed."""


def shorten(text: str) -> Shortened | None:
    """Find the fewest words that a row is read without.

    Args:
        text: The row as printed, not read as it stands.

    Returns:
        The row without them; None if no such words are found, or they may change what is knitted.
    """
    plain = " ".join(text.split())
    if len(plain) > LONGEST:
        return None
    ways = sorted(_ways(plain), key=lambda way: len(way.left))
    return next((way for way in islice(ways, _MOST_TRIED) if reads(way.text)), None)


def _ways(plain: str) -> Iterator[Shortened]:
    """Yield the ways to leave out one stretch, or all from one place to the end."""
    for match in _BEGINS.finditer(plain):
        start = match.start()
        for end in _ENDS.finditer(plain, match.end()):
            stop = end.end() if end[0].strip() in (")", "]") else end.start()
            left = plain[start:stop].strip(" ,;()[]")
            if _may_be_left(left):
                kept = re.sub(r"\s+(?=[,.;])", "", f"{plain[:start]}{plain[stop:]}".strip())
                if kept and end[0].strip() == ",":  # the words stood between two commas
                    yield Shortened(text=f"{plain[:start]} {plain[stop:].lstrip(' ,')}", left=left)
                if kept and not has_row_head(left):
                    yield Shortened(text=kept, left=left)


def _may_be_left(left: str) -> bool:
    """Return whether some words change nothing that is knitted."""
    if _UNSHAPED.fullmatch(left):
        return True
    if _WORKS.search(left) or re.search(r"[.!?]\s+[A-Z]", left):
        return False
    if _SEEN.match(left):
        return True
    return _CHOICE.search(left) is not None or not _LASTS.search(left)
