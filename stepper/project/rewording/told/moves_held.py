"""Write stitches that wait in the grammar's words: which they are, and what they wait for. No I/O.

Common practice. "The next 26" are those the row comes to, "the last 42" those it has left, and held against them;
"these" are the row's own where it works before them, and behind a finished row all that are on the needles. What
only stays or remains may lie on the needle; what waits does not. A part told by its name without its number reaches
to the marker. Stitches told by a place that nobody can find in the row are left as printed.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.synonym import N
from stepper.project.rewording.told.moves import Clause
from stepper.project.rewording.told.phrases import ToldPhrase
from stepper.records import dataclass
from stepper.regex import regex

Words = list[str | tuple[int, int]]
UNDER_THE_ROW: Final = "\0"
"""Before words that belong to the row told in the sentence before."""
WHOLE: Final = "place all sts on a holder"
WORKS: Final = regex(
    r"\b(?:k|p|knit|purl|work|patt|rib|cast\s+on|co|bind\s+off|cast\s+off|bo|sl)\b|\b[kp]\s?\d", re.IGNORECASE
)
_PART_ROW: Final = regex(
    rf"(?:\b(?:k|knit|p|purl|work|patt|rib)\.?\s*(?:the\s+)?(?:last\s+|remaining\s+|first\s+)?{N}(?:\s+sts?)?(?:\s*,?\s*(?:and\s+)?turn(?:\s+(?:the\s+)?work)?)?|\bto\s+(?:the\s+)?(?:(?:next|first|second|left|right|side)\s+)*(?:marker|m))\s*$",
    re.IGNORECASE,
)
"""The end of a row that has not come to its end."""
_TURNS: Final = regex(r"\bturn(?:\s+(?:the\s+)?work)?$", re.IGNORECASE)
_ENDED: Final = regex(r"\bto\s+(?:the\s+)?end(?:\s+of\s+(?:the\s+)?(?:row|rnd|round))?\s*[,;]?\s*(?:and\s+)?(?:then\s+)?$", re.IGNORECASE)
_ONLY: Final = regex(r"\b(?:only|alone)\b", re.IGNORECASE)
_WHICH: Final = ("these", "one", "next", "last", "middle", "rem", "named", "held", "between", "some", "all")
_OTHERS: Final = regex(r"\b(?:others?|again|back)\b", re.IGNORECASE)
_RESTS: Final = regex(r"\b(?:rests?|waits?|break|nap|held)\b", re.IGNORECASE)
"""What stitches do that wait, wherever they lie; what stays or remains may lie on the needle."""


@dataclass(frozen=True, slots=True)
class Item:
    """One clause of a sentence, and what joins it to the one before."""

    start: int
    end: int
    clause: Clause | None
    """The clause, if all of its words are of phrases about stitches that are moved."""


def number_in(phrase: ToldPhrase) -> tuple[int, int] | None:
    """Return where a phrase has its number; None if it has none."""
    for name in ("n", "n2"):
        if phrase.get(name):
            return phrase.match.span(name)
    return None


def then_space(part: tuple[int, int] | None) -> Words:
    """Return a stretch of the line and a space; nothing for none."""
    return [] if part is None else [part, " "]


def name_in(clause: Clause, which: ToldPhrase) -> Words:
    """Return the words for what stitches wait for; none if it is not told."""
    for phrase, groups in ((which, ("part", "of")), (clause.first("for"), ("use",))):
        for name in groups:
            if phrase is not None and phrase.get(name):
                return [" for ", phrase.match.span(name)]
    return []


def is_hold(clause: Clause, *, listed: bool) -> bool:
    """Return whether a clause says that stitches wait."""
    if clause.has("needle", "join", "from", "lying", "set", "to", "at", "is", "back", "facing"):
        return False
    if not clause.has("put", "putting", "stay"):
        return listed and clause.has("holder") and clause.has(*_WHICH)
    stays = clause.first("stay")
    if stays is not None and not clause.has("put", "putting"):
        rests = _RESTS.search(stays.match.group()) is not None
        return clause.has("rem", "next", "last", "these", "middle") and (clause.has("holder") or rests)
    return clause.has("holder") or _rests(clause)


def _rests(clause: Clause) -> bool:
    """Return whether a clause lets stitches rest: "let the sleeve sts rest"."""
    return [phrase.kind for phrase in clause.phrases if phrase.kind in ("put", "stay")] == ["put", "stay"]


def _is_listed(items: list[Item], at: int) -> bool:
    """Return whether a clause stands in a list whose first one says that stitches are put on hold."""
    for item in reversed(items[:at]):
        if item.clause is None or not is_hold(item.clause, listed=True):
            return False
        if is_hold(item.clause, listed=False):
            return True
    return False


def write_held(text: str, items: list[Item], at: int, start: int) -> Words | None:
    """Return what waits in the grammar's words; None if it is not known which stitches it is."""
    clause = items[at].clause
    listed = _is_listed(items, at)
    if clause is None or not is_hold(clause, listed=listed):
        return None
    if clause.has("putting") and _ONLY.search(text, start, items[at].start):
        return None  # the words before it say with which stitches the work goes on
    if listed and not clause.has("holder") and clause.has("these"):
        return []  # said of the same stitches once more
    whiches = [phrase for phrase in clause.phrases if phrase.kind in _WHICH]
    in_row = head_before(text, start) or any(one.clause is None and WORKS.search(text, one.start, one.end) for one in items[:at])
    if len(whiches) != 1:
        return None
    (which,) = whiches
    number, name = number_in(which), name_in(clause, which)
    ended = _ENDED.search(text[start : items[at].start]) is not None
    if which.kind == "these" or (which.kind == "last" and ended):
        worked = not (at or in_row) and partial_before(text, start) is not None
        if worked and not _TURNS.search(text[:start].rstrip(" .")):
            return [UNDER_THE_ROW, "hold these ", *then_space(number), "sts", *name]
        if in_row:
            return ["hold these ", *then_space(number), "sts", *name]
        return [number, " sts. Hold all sts", *name] if number else ["hold all sts", *name]
    if which.kind == "some" and clause.has("putting"):
        return None  # "bind off 7 sts, leaving 22 sts on a holder": the next of the row, or all that it has left
    if which.kind in ("next", "some") or (which.kind == "named" and number is not None):
        return None if number is None else ["hold ", number, " sts", *name]
    if which.kind == "middle":
        among = (in_row or listed) and at + 1 < len(items)
        return ["hold ", number, " sts", *name] if among and number else None
    if which.kind == "between":
        return ["hold to next marker", *name] if in_row else None
    if which.kind == "last":
        if number is None:
            return None
        return [f"hold {'rem' if in_row or listed else 'last'} ", number, " sts", *name]
    if which.kind == "rem":
        joined: Words = [UNDER_THE_ROW] if at == 0 and not in_row and partial_before(text, start) is not None else []
        if not (at or in_row or joined) and _OTHERS.search(text, items[at].start, items[at].end):
            return None  # than which stitches they are others, no row in front of them says
        return [*joined, "hold rem ", number, " sts", *name] if number else [*joined, "hold all sts", *name]
    if which.kind == "one":
        among = at + 1 < len(items) or in_row
        return ["hold 1 st", *name] if among else None
    if which.kind in ("named", "all"):
        if (which.kind == "all" and in_row) or (which.kind == "named" and clause.has("while")):
            return None
        # The stitches of a shoulder are all that are left when it is told so; of which is not.
        if which.get("part").lower().endswith("shoulder") or not name:
            return [WHOLE]
        return ["hold all sts", *name]
    return None


def head_before(text: str, start: int) -> bool:
    """Return whether a sentence has the name of a row before it."""
    return re.search(r"(?:row|rnd|round)[^:]*:\s*$|[.]\s*[-\u2013\u2014]+\s*$", text[:start], re.IGNORECASE) is not None


def partial_before(text: str, start: int) -> int | None:
    """Return where the row before a sentence ends, if it stops before its end; None if it does not."""
    before = text[:start].rstrip()
    if not before.endswith("."):
        return None
    return len(before) - 1 if _PART_ROW.search(before[:-1]) else None


def side_in(clause: Clause) -> str:
    """Return the side a clause says, `RS` or `WS`; empty if none."""
    phrase = clause.first("facing")
    return "" if phrase is None else "WS" if phrase.get("side").lower().startswith("w") else "RS"
