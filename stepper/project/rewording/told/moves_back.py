"""Write stitches that come back to the needles in the grammar's words, and the yarn that is joined to them. No I/O.

Common practice. What comes onto a needle from a holder, or by the name of a part, comes back. Yarn joined to what
remains takes it up, and stitches that are put on a holder just before are then the first of those. Yarn joined at an
edge without a word of stitches takes up the other side only where the same sentence goes on with it: else it may be
for a band that is picked up.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.synonym import N
from stepper.project.rewording.told.moves import Clause
from stepper.project.rewording.told.moves_held import (
    WORKS,
    Item,
    Words,
    head_before,
    name_in,
    number_in,
    side_in,
    then_space,
)
from stepper.project.rewording.told.phrases import ToldPhrase
from stepper.regex import regex

MATCHES: Final = regex(
    r"(?:then\s+)?(?:work|complete|finish|knit)(?:\s+(?:it|this\s+side|the\s+second\s+side))?\s+(?:to\s+(?:match|correspond)(?:\s+(?:with|to))?|as\s+for|the\s+same\s+as|like)(?:\s+(?:the\s+)?(?:first|other)\s+(?:side|half|shoulder))?\s*",
    re.IGNORECASE,
)
CENTRE_OFF: Final = regex(
    r"(?:bind\s+off|cast\s+off|bo)\s+(?:the\s+)?(?:cent(?:er|re)|middle|first|next)\s+(?=\d)", re.IGNORECASE
)
_PLACED: Final = regex(r"replace|place|put|slip|slide|sl|transfer|move|take|pick|return|go", re.IGNORECASE)
_BACK: Final = regex(r"return|replace|go\s+back|take\s+up|pick\s+up", re.IGNORECASE)
_NEEDLES: Final = regex(r"\b(?:one|two|three|four|five|[2-5])\s(?!\s*mm)", re.IGNORECASE)
_JOINED_AT: Final = regex(r"\b(?:neck|armhole|inner|inside|cent(?:er|re)|front)\b", re.IGNORECASE)
_ACROSS: Final = regex(
    rf"(?:(?:k|knit|work|patt|p|purl|rib)\b\.?\s*|[kp](?=\d))(?:across\s+)?(?:the\s+)?(?P<n>{N})(?:\s*(?:held\s+)?(?:sts?\b\.?|stitches))?\s+(?:left\s+)?(?:from|on|of|off)\s+(?:the\s+)?"
    r"(?:(?P<part>(?:(?:left|right)\s+)?(?:front|back|sleeve|thumb|neck)(?:\s+neck)?)\s+)?(?:st(?:itch)?[\s-]?)?(?:holder|spare\s+(?:needle|ndl)|thread|(?:waste|scrap)\s+yarn|safety[\s-]pin|pin)\s*",
    re.IGNORECASE,
)
"""What is worked across from what holds it."""
_OF_PIECE: Final = regex(
    rf"(?:(?:k|knit)\b\.?\s*|k(?=\d))(?:across\s+)?(?:the\s+)?(?P<n>{N})\s+(?:held\s+)?(?:sts?\b\.?|stitches)\s+(?:from|of|at)\s+(?:the\s+)?(?P<part>front|back)(?:\s+(?:of\s+)?(?:the\s+)?neck)?\s*",
    re.IGNORECASE,
)
_OF_NAME: Final = regex(
    r"(?:k|knit)\b\.?\s+(?:(?:a?round|across)\s+)?(?:the\s+)?(?:held\s+)?(?P<part>(?:(?:left|right)\s+)?sleeve)(?:\s+(?:sts\b\.?|stitches))?\s*",
    re.IGNORECASE,
)
"""The stitches of a sleeve that wait, between those that are picked up at the underarm."""
_PICKS: Final = regex(r"\b(?:pick(?:ing)?\s+up|pu|knit\s+up|k\.?\s+up)\b", re.IGNORECASE)
_PLAIN: Final = regex(r"(?:k|knit|p|purl|patt|work|rib)\.?(?:\s+in\s+patt(?:ern)?\.?)?\s+to\s+(?:the\s+)?end\s*", re.IGNORECASE)

_COUNTED: Final = regex(r"[\s.=;-]*\d[\d\s(),:;]*(?:sts?|stitches)\b", re.IGNORECASE)
"""The count behind a sentence."""


def write_returned(clause: Clause) -> Words | None:
    """Return stitches that come back to the needles in the grammar's words; None if they are not known."""
    needle = clause.first("needle")
    which = clause.first("held", "named", "some", "all", "rem")
    if which is None or clause.has("join", "these", "stay", "while", "holder"):
        return None
    verb = clause.first("put", "back")
    if verb is None or not _PLACED.match(verb.match.group()):
        return None
    onto = needle.match.group().lower() if needle is not None else ""
    back = _BACK.match(clause.phrases[0].match.group()) is not None
    replaced = verb.match.group().lower() == "replace"
    told = (
        which.kind in ("held", "named")
        or clause.has("from", "lying")
        or onto.startswith("back")
        or back
    )
    if not told or (_NEEDLES.search(onto) and which.kind != "held" and not (replaced or clause.has("from"))):
        return None
    size = needle.get("size") if needle is not None else ""
    words: Words = [f"change to {size} needles. Return "] if size else ["return "]
    number = number_in(which)
    words += [*then_space(number), "held "]
    part = _part_in(clause, which)
    return [*words, *then_space(part), "sts to needles"]


def _part_in(clause: Clause, which: ToldPhrase) -> tuple[int, int] | None:
    """Return where a clause names the part that stitches are of: by them, or by what holds them."""
    for phrase in (which, clause.first("from"), clause.first("lying")):
        for name in ("part", "of"):
            if phrase is not None and phrase.get(name):
                return phrase.match.span(name)
    return None


def write_gone_back(items: list[Item], at: int, facing: str) -> Words | None:
    """Return stitches that the work returns to and yarn is joined to next: "return to the other sts, rejoin yarn"."""
    clause, behind = items[at].clause, items[at + 1].clause if at + 1 < len(items) else None
    if clause is None or behind is None or not behind.has("join") or not behind.only("join", "at", "facing", "adverb", "to"):
        return None
    which = clause.first("rem", "held", "named", "some")
    side = facing or side_in(clause) or side_in(behind)
    lead: Words = [f"with {side} facing, "] if side else []
    if which is None:
        return [*lead, "take up remaining sts"] if clause.has("set") else None
    number = number_in(which)
    if which.kind == "rem":
        return [*lead, "take up ", *then_space(number), "remaining sts"]
    if which.kind == "some" and not clause.has("lying"):
        return None
    return [*lead, "return ", *then_space(number), "held ", *then_space(_part_in(clause, which)), "sts to needles"]


def write_joined(text: str, items: list[Item], at: int, facing: str) -> Words | None:
    """Return yarn that is joined to stitches as what is taken up or comes back; None if it is not known."""
    clause = items[at].clause
    if clause is None or clause.has("put", "putting", "stay", "holder", "is", "needle"):
        return None
    side = facing or side_in(clause)
    lead: Words = [f"with {side} facing, "] if side else []
    which = clause.first("rem", "held", "named", "some", "all")
    if clause.has("set") and which is None:
        return [*lead, "take up remaining sts"]
    if which is None:
        place = clause.first("at")
        behind = items[at + 1] if at + 1 < len(items) else None
        goes_on = behind is not None and WORKS.search(text, behind.start, behind.end) is not None
        picks = _PICKS.search(text, items[at].end) is not None
        if not side or place is None or not goes_on or picks or not _JOINED_AT.search(place.match.group()):
            return None
        return [*lead, "take up remaining sts"]
    number = number_in(which)
    if which.kind == "rem" and not clause.has("lying", "from"):
        return [*lead, "take up ", *then_space(number), "remaining sts"]
    if which.kind in ("some", "all") and not clause.has("lying", "from"):
        return None
    part = _part_in(clause, which)
    return [*lead, "return ", *then_space(number), "held ", *then_space(part), "sts to needles"]


def write_taken_up(
    text: str, items: list[Item], at: int, start: int, stop: int, facing: str
) -> tuple[Words, int, bool] | None:
    """Return stitches that wait before yarn is joined to those behind them: the first of what is taken up."""
    if any(one.clause is None for one in items[:at]) or at + 1 >= len(items) or head_before(text, start):
        return None
    clause = items[at].clause
    used, side = at + 1, facing
    if clause is None or not clause.has("holder") or not clause.has("put") or clause.has("needle", "join", "at"):
        return None
    side = side or side_in(clause)
    which = clause.first("next", "middle", "some", "one")
    number = number_in(which) if which is not None else None
    if which is None or (number is None and which.kind != "one"):
        return None
    behind = items[used].clause
    if behind is not None and behind.only("facing"):
        side, used = side or side_in(behind), used + 1
        behind = items[used].clause if used < len(items) else None
    if behind is None or not behind.has("join") or behind.has("put", "held", "named", "lying", "from", "some"):
        return None
    rem = behind.first("rem")
    if rem is None and not (behind.first("at", "set")):
        return None
    side = side or side_in(behind)
    used += 1
    if used >= len(items):
        return None
    told = number_in(rem) if rem is not None else None
    lead = f"with {side} facing, " if side else ""
    many: Words = ["1"] if number is None else [number]
    words: Words = [f"{lead}take up remaining sts. Hold ", *many, " sts", *name_in(clause, which)]
    if told is None:
        return words, used, False
    if used + 1 != len(items) or not _PLAIN.fullmatch(text, items[used].start, stop):
        return (words, used, False) if _COUNTED.match(text, stop) else None  # the count behind tells as much
    return [*words, ", ", (items[used].start, stop), ". ", told, " sts"], used + 1, False


def write_across(
    text: str, items: list[Item], at: int, start: int, stop: int
) -> tuple[Words, int, bool] | None:
    """Return stitches worked from what holds them in the grammar's words; None if they are not told so."""
    item = items[at]
    match = _ACROSS.fullmatch(text, item.start, item.end)
    if match is None and _PICKS.search(text, start, stop):
        match = _OF_PIECE.fullmatch(text, item.start, item.end)
    named = _OF_NAME.fullmatch(text, item.start, item.end) if match is None else None
    if named is not None and _PICKS.search(text, start, stop):
        return ["k across held ", named.span("part"), " sts"], at + 1, False
    if match is None or (at + 1 < len(items) and text[items[at + 1].start :].lower().startswith("mark ")):
        return None
    lead = {"p": "p", "w": "work"}.get(match.group()[0].lower(), "k") if not match.group().lower().startswith("patt") else "work"
    part: Words = [match.span("part"), " "] if match["part"] else []
    return [f"{lead} across ", match.span("n"), " held ", *part, "sts"], at + 1, False
