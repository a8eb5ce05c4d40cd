"""Read the head of a line that is for some sizes: "XS and S only:", "For the two larger sizes, ". No I/O.

Theory of operation. Every page says it its own way, but the parts are the same: words that lead in, the
names of sizes, "size" or "only" on either side of them, a sign behind. So the words in front of each sign are
tried: without those that lead in and mark, they must be the names of sizes and nothing else. A head that is
marked by none of the words is one only before a colon, and only where its names cannot be something else: a
number, or one letter, is as soon a row or a yarn.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.sizes import (
    HEAD_OF_SIZES,
    PEOPLE_HEAD,
    find_size,
    more_behind,
    names_people,
    size_called,
    sizes_called,
    sizes_in_prose,
)
from stepper.records import dataclass
from stepper.regex import regex

_SIZES_ONLY: Final = regex(
    r"^\s*(?:for\s+)?sizes?\s+(?!\d+\s+needles?\b)([^:]{1,60}?)(?:\s+only\s*[:-]|\s*:)\s*(?=\S)|^\s*(?:for\s+)?([^:.,]{1,30}?)(?:\s+sizes?)?\s+only\s*:"
    r"\s*(?=\S)"
    r"|^\s*only\s+(?:for\s+)?(?:the\s+)?sizes?\s+([^:.]{1,60}?)\s*:\s*(?=\S)",
    re.I,
)
_WORKED: Final = (
    r"(?-i:(?=[(*\[]|[KkPp]\s?\d|(?:K|P|Knit|Purl|Rib|Work|Cast|Bind|Inc|Dec|Sl|Slip"
    r"|knit|purl|rib|work|cast|bind|inc|dec|slip)\b))"
)
"""How what is worked begins behind a dash: "Small - Knit 4 rounds"."""
_SIGN: Final = regex(rf"\s*(?P<sign>:|,|\s[\u2013\u2014-]|(?<=\w)[\u2014-]{_WORKED})\s*(?=\S)")
_BEHIND_DASH: Final = regex(rf"\s*{_WORKED}")
_ROW: Final = regex(
    r"\s*(?:(?:next|first|last|set-?\s?up|inc(?:rease)?|dec(?:rease)?|foll(?:owing)?)\s+)*(?:row|rnd|round)"
    r"(?:\s+\d{1,3})?(?:\s*[(]\s*(?:rs|ws|(?:right|wrong)\s+side)\s*[)])?(?P<colon>\s*:\s*(?=\S))?",
    re.I,
)
"""The head of a row in front of its sizes: "Next row: Size S: Knit", "Next row (size S only): Knit"."""
_IN_BRACKETS: Final = regex(r"\s*[(\[]\s*(?:(?:for|in|on)\s+)?(?P<names>[^()\[\]:*=]{1,60}?)\s*[)\]]")
_IN_BRACKETS_BEHIND: Final = regex(
    r"(?P<worked>(?:(?!\b(?:and|then)\b)[^.!?:;,()\[\]*])+?)\s*[(\[]\s*(?:(?:for|in|on)\s+)?"
    r"(?P<names>[^()\[\]:*=]{1,60}?\bonly)\s*[)\]]\s*\.?\s*",
    re.I,
)
"""Behind one thing that is worked: "Knit 1 round (size S only)."."""
_ALL_IN_BRACKETS: Final = regex(r"\s*[(\[](?P<inner>[^()\[\]]+)[)\]]\s*\.?\s*")
_LEAD: Final = regex(
    r"\s*(?:(?:(?P<marked>for|in|only|on(?=\s+sizes?\b))|if\s+(?:you(?:\s+are|['\u2019]re)\s+)?(?:mak|knitt|work)ing|when\s+(?:mak|knitt|work)ing)\s+)*"
    r"(?P<not>not\s+(?:for|in)\s+)?(?P<names>.+?)\s*$",
    re.I,
)
_SPELT: Final = regex(
    r"(?:(?:extra|x)[-\s])?(?:small|medium|large)"
    r"|\d{1,2}(?:-\d{1,2})?[-\s]*(?:years?|yrs?|months?|mths?)\.?",
    re.I,
)
"""What nothing but a size is called, be it by its letter in the list: "Medium", "4-year"."""
_HOW_MANY: Final = regex(r"^\s*\d+\s+sizes\b", re.I)
"""So many sizes, which are not called by that number: "2 sizes only"."""
_MARKS: Final = regex(r"\b(?:sizes?|only)\b", re.I)
_OTHERS: Final = regex(r"(?:all\s+|the\s+)*(?:other|remaining|rest\s+of\s+the)s?", re.I)
_ALL_BUT: Final = regex(
    r"all(?:\s+the)?\s+(?:but|except(?:\s+for)?|other\s+than)\s+(?:the\s+)?(?P<but>.+)", re.I
)
_TO_BE_WORKED: Final = regex(r"(?-i:(?=[a-z(*]))")
_RELATIVE: Final = regex(
    r"\b(?:smallest|largest|biggest|smaller|larger|bigger"
    r"|(?:and|&)\s+(?:up(?:wards?)?|above|over|below|down|under))$",
    re.I,
)
"""What only sizes are: "the two largest", "L and up"."""
_FARTHEST: Final = 90
"""Letters in front of the sign, at most."""
_CUT: Final = regex(
    r"(?<=[.!)])\s+(?=(?:(?:for|in)\s+)?(?:the\s+)?(?:all\s+other\s+)?(?:sizes?\s+(?!\d+\s+needles?\b)[\dA-Z][^:.;*]{0,40}|[^:.;*]{1,30}\s+sizes?|[^:.;*]{1,30}\s+only)\s*:\s*\S)",
    re.I,
)
"""Before a further head of sizes in the same row."""
_FURTHER: Final = regex(r"(?<=[.!)])\s+(?=\S)")


@dataclass(frozen=True, slots=True, kw_only=True)
class SizeHead:
    """The head of a line that is for some sizes."""

    places: tuple[int, ...] = ()
    """Their indices, from 0; empty if they are not known."""
    end: int
    """Offset of the text behind the head, from 0."""
    missing: str = ""
    """The first name that no size has; empty if all are found."""
    named_at: tuple[int, int] = (0, 0)
    """Offset and length of the names."""
    others: bool = False
    """Whether it is for those that the lines right above do not name: "All other sizes:"."""
    row: int = 0
    """Offset of the end of the head of the row that stands in front of the sizes, from 0; 0 without one."""
    stop: int | None = None
    """Offset of the end of what is worked, from 0, where a bracket closes it; else None."""


def size_head(plain: str, size_names: tuple[str, ...]) -> SizeHead | None:
    """Return the head of a line that is for some sizes; None if the line is for all of them.

    Args:
        plain: The line, made plain.
        size_names: The sizes of the pattern.
    """
    if not size_names:
        return None
    if _ALL_IN_BRACKETS.fullmatch(plain):
        return _closed_in(plain, size_names)
    for sign in _SIGN.finditer(plain, 0, _FARTHEST):
        if found := _before(plain[: sign.start()], sign, size_names):
            return found
    return _bracketed(plain, size_names) or _behind_row(plain, size_names) or _named(plain, size_names)


def _closed_in(plain: str, size_names: tuple[str, ...]) -> SizeHead | None:
    """Return the sizes of a line that stands whole in brackets: "[Size L only: Knit 1 round.]"."""
    whole = _ALL_IN_BRACKETS.fullmatch(plain)
    head = size_head(whole["inner"], size_names) if whole is not None else None
    if whole is None or head is None or head.stop is not None or more_behind(whole["inner"], head.end):
        return None
    if ":" not in whole["inner"][: head.end]:
        return None  # "(Size 1, you just knit.)" tells of the row before it
    at, (named, long) = whole.start("inner"), head.named_at
    stop = at + len(whole["inner"].rstrip())
    return replace(head, end=at + head.end, named_at=(at + named, long), stop=stop) if not head.row else None


def _bracketed(plain: str, size_names: tuple[str, ...]) -> SizeHead | None:
    """Return the sizes in brackets in front, or behind the head of a row: "Next row (size S only): Knit."."""
    row = _ROW.match(plain)
    start = row.end() if row is not None and row["colon"] is None else 0
    found = _IN_BRACKETS.match(plain, start)
    places = _marked(found["names"], size_names) if found is not None else ()
    if found is not None and places and not more_behind(plain, found.end()):
        return SizeHead(
            places=places, end=found.end(), named_at=(found.start("names"), len(found["names"])), row=start
        )
    behind = _IN_BRACKETS_BEHIND.fullmatch(plain)
    places = _marked(behind["names"], size_names) if behind is not None else ()
    if behind is None or not places:
        return None
    named_at = behind.start("names"), len(behind["names"])
    return SizeHead(places=places, end=0, named_at=named_at, stop=behind.end("worked"))


def _marked(names: str, size_names: tuple[str, ...]) -> tuple[int, ...]:
    """Return the indices of sizes that "size" or "only" marks; none if they are something else, or all."""
    if not _MARKS.search(names) or _HOW_MANY.search(names):
        return ()
    found, missing = sizes_called(" ".join(_MARKS.sub(" ", names).split()), size_names)
    return () if missing or len(found) == len(size_names) else found


def _behind_row(plain: str, size_names: tuple[str, ...]) -> SizeHead | None:
    """Return the sizes behind the head of a row: "Next row: Small - (k3, inc) 12 times."."""
    row = _ROW.match(plain)
    if row is None or row["colon"] is None:
        return None
    behind = plain[row.end() :]
    for sign in _SIGN.finditer(behind, 0, _FARTHEST):
        head = _before(behind[: sign.start()], sign, size_names)
        if head is not None and not head.others and not more_behind(behind, head.end):
            at, long = head.named_at
            return replace(head, end=row.end() + head.end, named_at=(row.end() + at, long), row=row.end())
    return None


def _before(words: str, sign: re.Match[str], size_names: tuple[str, ...]) -> SizeHead | None:
    """Return the head that some words are, if they are one as a whole; None if not."""
    lead = _LEAD.fullmatch(words)
    if lead is None or re.search(r"[.;*=]", words):
        return None
    marked = bool(_MARKS.search(words) or lead["marked"] or lead["not"])
    names = " ".join(_MARKS.sub(" ", lead["names"]).split())
    behind = sign.string, sign.end()
    dashed = sign["sign"].strip() in ("-", "\u2013", "\u2014") and _BEHIND_DASH.match(*behind)
    closed = sign["sign"] == ":" or (dashed and not more_behind(*behind)) or (
        marked and _TO_BE_WORKED.match(*behind) and (sign["sign"] != "," or not more_behind(*behind))
    )
    if not closed or not names or (len(names) == 1 and lead["marked"] and not _MARKS.search(words)):
        return None  # "In M, knit 2 rounds": M may be a yarn
    if marked and _OTHERS.fullmatch(names):
        return SizeHead(end=sign.end(), others=True)
    but = _ALL_BUT.fullmatch(names)
    found, missing = sizes_called(but["but"] if but else names, size_names)
    if missing or not found or not (marked or but or _is_plain(names, size_names)):
        return None
    if but or lead["not"]:
        found = tuple(size for size in range(len(size_names)) if size not in found)
    if len(found) in (0, len(size_names)):
        return None
    return SizeHead(places=found, end=sign.end(), named_at=(lead.start("names"), len(lead["names"])))


def _is_plain(names: str, size_names: tuple[str, ...]) -> bool:
    """Return whether names that nothing marks are those of sizes, as no row, step or yarn is called."""
    if _RELATIVE.search(names):
        return True
    parts = re.split(r"\s*(?:[,&/]|\band\b)\s*", names)
    known = all(
        find_size(part, size_names) is not None
        or (_SPELT.fullmatch(part) is not None and size_called(part, size_names) is not None)
        for part in parts
    )
    single = len(parts) == 1 and (len(names) < 2 or names.lower() in ("one", "two", "three", "four", "five"))
    return known and not single and not all(re.fullmatch(r"[\d\W]+", part) for part in parts)


def _named(plain: str, size_names: tuple[str, ...]) -> SizeHead | None:
    """Return the head of a line that is marked as one for sizes, whether those are known or not."""
    found = sizes_in_prose(plain) or _SIZES_ONLY.match(plain) or HEAD_OF_SIZES.match(plain)
    people = PEOPLE_HEAD.match(plain) if found is None else None
    if people is not None and names_people(people.group(1)):
        places, missing = sizes_called(people.group(1), size_names)
        found = people if places and not missing else None
    if found is None:
        return None
    group = found.lastindex or 1
    if len(found.group(group)) == 1 and not _MARKS.search(found.group()):
        return None  # "In M, knit 2 rounds": M may be a yarn
    places, missing = sizes_called(found.group(group), size_names)
    at = found.start(group), len(found.group(group))
    return SizeHead(
        places=places,
        end=found.end(),
        missing=missing or "" if places else missing or found.group(group),
        named_at=at,
    )


def cut_at_sizes(text: str, size_names: tuple[str, ...] = ()) -> list[tuple[int, int]]:
    """Return the stretches of a row that holds several heads of sizes; one stretch if it holds at most one.

    "Size S: Knit 1 rnd. Size M: Knit 2 rnds." is two lines, each for its own size.

    Args:
        text: The row.
        size_names: The sizes of the pattern, whose names alone may head a stretch: "Small - Knit."
    """
    heads = [
        match
        for match in _FURTHER.finditer(text)
        if not _is_open(text[: match.start()])
        and (_CUT.match(text, match.start()) or _heads_sizes(text[match.end() :], size_names))
    ]
    starts = [0, *(match.end() for match in heads)]
    return list(zip(starts, [*(match.start() for match in heads), len(text)], strict=True))


def _heads_sizes(text: str, size_names: tuple[str, ...]) -> bool:
    """Return whether a text begins with the names of sizes and a sign."""
    signs = _SIGN.finditer(text, 0, _FARTHEST)
    return any(sign["sign"] != "," and _names_alone(text[: sign.start()], size_names) for sign in signs)


def _names_alone(words: str, size_names: tuple[str, ...]) -> bool:
    """Return whether words are the names of sizes, with or without what marks them, and nothing else."""
    names = " ".join(_MARKS.sub(" ", words).split())
    if not size_names or not names or len(names) > 40:
        return False
    found, missing = sizes_called(names, size_names)
    return bool(found) and not missing and (bool(_MARKS.search(words)) or _is_plain(names, size_names))


def _is_open(text: str) -> bool:
    """Return whether a bracket is open at the end of a text."""
    return text.count("(") > text.count(")") or text.count("[") > text.count("]")
