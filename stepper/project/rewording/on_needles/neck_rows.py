"""Write a row around a neck or an armhole, stitches that wait and edges by turns, as one part behind the other. No I/O.

"K 34 back neck, 12 left saddle, pick up and k 11 down left front neck, k 20 from holder, 11 up right front neck, 12
right saddle" says a verb once for several parts. A part that lies on a holder is knitted across, one along an edge
picked up: what has no verb is picked up where it says along which edge by a word of direction ("11 up right front
neck"), and knitted across where it is called by its name alone ("12 right saddle"). Only a row that has both, and all
of whose parts are read so, is written anew. A number at the end that comes to all of them is a count. Looked for only
in a line that nothing else reads. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final, NamedTuple

from stepper.project.reading.elements import WORDS
from stepper.project.rewording.asides import instructs
from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import N
from stepper.regex import regex

_STS: Final = r"(?:sts?\b\.?(?=\W|$)|stitch(?:es)?\b)"
_PICK: Final = (
    r"(?:pick(?:ing)?\s+up|pu|take\s+up|(?:knit|k)\s+up)(?:\s*(?:and|&)\s*(?:knit\b|k\b\.?|k(?=\s?\d)))?"
)
_ACROSS: Final = r"(?:(?:knit|k|work|rib|patt)\b\.?(?:\s+across)?|(?:k|knit)(?=\d))"
_THREAD: Final = (
    r"(?:from|off|on)\s+(?:the\s+|an?\s+|its\s+)?(?:(?:st(?:itch)?|safety|spare|waste|scrap)[\s-]?)*"
    r"(?:holders?|threads?|pins?|strings?|yarn|wool|needle|hold)\b"
)
_PART: Final = (
    r"(?:(?:the|of|from|at|left|right|cent(?:er|re)|front|back|neck|sleeve|saddle|shoulder|underarm|band|button|buttonhole|strap|side|body)\b\s*){1,6}"
)
_EDGE: Final = (
    r"(?:evenly\s+)?(?:along|down|up|across|around|round|over|in|at|between|into|to|through|under|below|from\s+(?:the\s+)?(?:cast|edge|side|base|corner|seam))\b"
    r"(?:(?!\s(?:and|then|plus)\s+(?:then\s+)?(?:the\s+same|same|as\s+many|pick|pu\b|k\b|knit|work|rib|(?:one|two|three|four|five|six|seven|eight|nine|ten)\b))"
    r"[^,;.:()=+\d\u2013\u2014*\[\]])*"
)
_ITEM: Final = regex(
    rf"(?:(?P<pick>{_PICK})\s+|(?P<across>{_ACROSS})\s*)?(?:the\s+)?(?:(?P<number>{N})|(?P<same>(?:the\s+)?same(?:\s+number)?)\b)?(?:\s*(?P<held>held\s+)?{_STS})?\s*"
    rf"(?:(?P<thread>(?P<named>{_PART})?(?:{_STS}\s*)?(?:at\s+(?:the\s+)?\w+\s+)?(?:(?P<later>{N})\s*)?{_THREAD}(?:\s+(?:at|of)\s+(?:the\s+)?(?P<of>{_PART}))?)|(?P<edge>{_EDGE})|(?P<part>{_PART})(?:{_STS})?)?"
    rf"\s*(?:[(,]\s*(?P<mark>mark(?:ing)?\s+(?:it|this(?:\s+one)?|the\s+{_STS})))?!?\)?",
    re.I,
)
_JOINT: Final = regex(r"\s*(?:[,;+]\s*(?:and\s+)?(?:then\s+)?|\band\s+(?:then\s+)?|\bthen\s+|\bplus\s+)", re.I)
_END: Final = regex(r"\s*(?=\.(?:\s+(?!(?-i:[a-z]))|\s*$)|$|[:=\u2013\u2014]|-\s*\d)")
_TOTAL: Final = regex(rf"(?P<total>{N})(?:\s*{_STS})?(?:\s+(?:in\s+all|altogether|in\s+total|total))?(?=\s*(?:\.(?!\s*(?-i:[a-z]))|$))", re.I)
_LEAD: Final = regex(
    rf"(?:^|(?<=[.:,]\s)|(?<=needle\s)|(?<=needles\s)|\bto\s+|\band\s+)(?=(?:{_PICK}|{_ACROSS})\s*(?:the\s+)?(?:{N}|sts|[a-z]))",
    re.I,
)


class _Part(NamedTuple):
    words: str
    kept: str
    held: bool
    number: str


def write_neck_rows(line: Reworded) -> Reworded:
    """Write the parts of rows around an edge, some of which wait on a holder.

    Returns:
        The line; the same if it has no such row, or one with words that are not known.
    """
    if not _PICKS.search(line.text):
        return line
    for lead in _LEAD.finditer(line.text):
        found = _parts(line.text, lead.end())
        if found is None:
            continue
        parts, end, total = found
        words = ", ".join(part.words for part in parts)
        if line.text[lead.end()].isupper():
            words = words[0].upper() + words[1:]
        written = laid_anew(line, lead.end(), end, (f"{words}{f'. {total} sts' if total else ''}",))
        return replace(written, kept=(*written.kept, *(part.kept for part in parts if part.kept)))
    return line


def _parts(text: str, at: int) -> tuple[list[_Part], int, str] | None:
    """Return the parts of a row, where it ends, and the count behind it; None if it is no such row."""
    parts: list[_Part] = []
    while True:
        total = _TOTAL.match(text, at) if len(parts) > 1 else None
        if total is not None:
            if not _may_be_all(total["total"], parts):
                return None
            return (parts, total.end(), total["total"]) if _has_both(parts) else None
        match = _ITEM.match(text, at)
        part = _part(match, parts) if match is not None and match.end() > at else None
        if match is None or part is None:
            return None
        parts.append(part)
        end = at + len(text[at : match.end()].rstrip())
        if _END.match(text, end):
            return (parts, end, "") if _has_both(parts) else None
        joint = _JOINT.match(text, end)
        if joint is None:
            return None
        at = joint.end()


def _part(match: re.Match[str], before: list[_Part]) -> _Part | None:
    """Return one part of a row; None if it is not clear whether it waits or is picked up."""
    if match["number"] and match["later"]:
        return None
    number = match["number"] or match["later"] or ""
    if match["same"]:
        number = next((part.number for part in reversed(before) if not part.held), "")
        if not number:
            return None
    told = " ".join((match["edge"] or match["part"] or match["named"] or match["of"] or "").split())
    verb = match["pick"] or match["across"]
    along = _ALONG.match(match["edge"] or "")
    if match["pick"] or (match["across"] and number and along) or (not verb and match["edge"] and any(not part.held for part in before)):
        if not number or match["thread"] or match["part"] or match["held"] or instructs(_AGAIN.sub(" ", told)) is not None:
            return None
        marked = match["mark"]
        if marked and number.lower() not in ("1", "one"):
            return None
        words = f"{'pm for marked st, ' if marked else ''}pick up and knit {number} sts"
        return _Part(words, told, False, number)
    if match["edge"] or match["mark"] or not (match["thread"] or match["part"] or match["held"]):
        return None
    name = re.sub(r"\b(?:the|of|from|at)\b", " ", told, flags=re.I).strip()
    if not (name or match["thread"] or match["held"]):
        return None
    if not verb and not (match["thread"] or match["held"] or (before and number)):
        return None
    how = "work" if (match["across"] or "").lower().startswith(("rib", "patt", "work")) else "k"
    return _Part(" ".join(f"{how} across {number} held {name} sts".split()), "", True, number)


_PICKS: Final = regex(r"\bup\b|\bpu\b", re.I)
_AGAIN: Final = regex(r"\bagain\b|\bround\b|\bone\s+(?:side|edge)\b", re.I)
"""Words of a place that may tell how often, or what is worked, elsewhere."""
_ALONG: Final = regex(r"(?:evenly\s+)?(?:up|down|along)\b", re.I)
"""How stitches are knitted up where the verb alone would knit what is there: "k 40 up right front"."""


def _has_both(parts: list[_Part]) -> bool:
    """Return whether some parts wait and others are picked up."""
    return len({part.held for part in parts}) == 2


def _numbers(told: str) -> list[int]:
    digits = [int(one) for one in re.findall(r"\d+", told)]
    return digits or [WORDS.index(told.lower()) if told.lower() in WORDS else 0]


def _may_be_all(total: str, parts: list[_Part]) -> bool:
    """Return whether a number may be that of all stitches: it is no less than the parts whose number is told."""
    known = [_numbers(part.number) for part in parts if part.number]
    return all(min(_numbers(total)) >= max(one) for one in known)
