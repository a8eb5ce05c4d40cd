"""Find the sizes that a printed page names, in any of the ways they are listed. No I/O.

A list that may be read in two ways is settled by how many numbers the lists of the pattern have; if these do
not settle it either, no size is named.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence

from stepper.project.rewording.reword import put_words
from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.signs.list_forms import write_in_one_bracket
from stepper.project.rewording.signs.mixed_list_synonyms import MIXED_LISTS
from stepper.project.rewording.signs.size_lists import write_lists_plainly
from stepper.records import dataclass
from stepper.regex import regex

_LETTER = (
    r"(?:\d?X{0,4}[SML]|\dX|X{1,3}[- ]?(?:small|large)|(?:extra|x)[-\s]?(?:small|large)|small|medium|large)"
)
_AGE = r"(?:\s*(?:months?|mths?|mos?|years?|yrs?|y|m))?"
_ONE = (
    rf"(?:(?:women'?s|men'?s|child(?:ren)?'?s?|adults?'?s?|baby|toddler|kids?'?)\s+)?(?:{_LETTER}"
    rf"|\d{{1,3}}(?:\.\d|[½¼¾])?{_AGE}"
    r"|newborn|preemie|one(?:\s+size)?(?:\s+fits\s+(?:all|most))?|child(?:ren)?|kids?|adults?|baby|babies|toddlers?"
    r"|wom[ae]n|m[ae]n|lad(?:y|ies)|grown-?\s?ups?|teens?|teenagers?|\d{1,2}T)"
)
_SIZE = regex(rf"{_ONE}(?:\s?[-/\u2013]\s?{_ONE})?", re.I)
_RANGE = regex(rf"({_ONE})\s*(?:[-/\u2013]|\s+to\s+)\s*({_ONE})", re.I)
_CHAIN = regex(rf"{_ONE}(?:\s*[-\u2013/|·]\s*{_ONE}){{2,}}", re.I)
_SIZE_ROW = regex(
    r"^\W*(?:(?:finished|shoe|foot|garment|dress|child(?:ren)?'?s?|adult|women'?s|men'?s)\s+)?(?:sizes?"
    r"|sizing)\b(?:\s+(?:available|shown|included|range)\b)?\s*[:=.\u2013-]?\s*(\S.*)$",
    re.I,
)
_FIT_ROW = regex(
    r"\bto\s+fit\b\W*(?:(?:sizes?|bust/chest|bust|chest|head|hand|foot|waist|hips?|ages?"
    r"|shoe\s+size)\b\W*)*[^\d\n]{0,20}?"
    rf"((?:{_LETTER}\b|\d).*)$",
    re.I,
)
_BARE = regex(rf"^\W*({_LETTER}\b(?:[\s,;:/|()\[\]{{}}·\u2013-]+(?:and\s+)?{_LETTER}\b)+)\W*$", re.I)
_HEADED = regex(
    rf"^\W*(?:[a-z]+\s+){{0,2}}[(\[{{]\s*({_LETTER}\b(?:\s*[,;/|]\s*{_LETTER}\b)+)\s*[)\]}}]"
    r"\s*[:=]\s*[(\[{\d]",
    re.I,
)
"""The sizes in the bracket in front of their measures: "Mitts {S, M, L}: {7, 7¾, 8½} in around"."""
_LONGEST = 400
"""Most letters of a row that are looked at."""
_LADDER = {"XXS": 0, "XS": 1, "S": 2, "M": 3, "L": 4, "XL": 5, "XXL": 6, "2XL": 6, "3XL": 7}
_UNIT = r"(?:cms?|mm|in|ins|inch|inches|\"|\u2033|\u201d)"
_BEHIND = regex(
    rf"(?<=[)\]}}])\s*(?:{_UNIT}(?!\w)|[;.:\u2013-]|(?!{_LETTER}\b)[a-z]{{2,}}"
    rf"|,\s*(?!{_LETTER}\b|{_ONE}\b|and\b)[a-z]{{2,}}).*$", re.I
)
"""What may follow a list: its unit, the same in another unit, a remark."""
_AMID = regex(r"([)\]])\s*(?:months?|mths?|mos?|years?|yrs?)(?=\s*[(\[]?\s*\d)", re.I)
"""The unit of ages behind a bracket, where more sizes follow: "1/3 (6/9 - 12/18) months 2 years"."""
_LIST = regex(
    r"(?<![\d.½¼¾])\d+(?:\.\d+"
    r"|\s?[½¼¾])?,?(?:\s*[(\[{]\s*[\d–-][\d.½¼¾]*(?:\s*[,;:/–-]\s*[\d–-][\d.½¼¾]*)*\s*[)\]}])+"
    r"|(?<![\w.(\[–-])\d+(?:[–-]\d+){2,}(?=\s+(?:sts?|stitches|times)\b)"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class FoundSizes:
    """The sizes of a page."""

    names: tuple[str, ...] = ()
    """The names, in order; empty if the page names none, or none for sure."""
    number: int = 1
    """How many there are. Range: 1 and up, or 0 if not sure."""
    doubt: str = ""
    """Why no size is sure, as a sentence; empty if nothing is in doubt."""


def sizes_of(rows: Sequence[str]) -> FoundSizes:
    """Find the sizes of a page, checked against the lists in its lines.

    Args:
        rows: The rows of the page, each without white space at its ends.
    """
    rows = [row[:_LONGEST] for row in rows]
    counted = _lists_of(rows)
    most = max(counted.values(), default=0)
    candidates = _candidates(rows)
    for names in candidates:
        if not counted or counted[len(names)] * 2 >= most:
            return FoundSizes(names=names, number=len(names))
    by_lists = infer_sizes(rows)
    if candidates:
        shown = ", ".join(candidates[0])
        doubt = f"the text names {shown}, and its lists have {by_lists} numbers each."
        return FoundSizes(number=0, doubt=doubt)
    row = _unread_row(rows)
    if row and not counted:
        return FoundSizes(number=0, doubt=f'"{row}" may be read in more than one way.')
    top = counted.most_common(2)
    if len(top) == 2 and top[1][1] * 2 > top[0][1]:
        doubt = f"the text names none, and its lists have {top[0][0]} numbers here and {top[1][0]} there."
        return FoundSizes(number=0, doubt=doubt)
    return FoundSizes(number=by_lists)


def _candidates(rows: Sequence[str]) -> list[tuple[str, ...]]:
    """List what the size rows may mean, most likely first."""
    found: list[tuple[str, ...]] = []
    for pattern in (_SIZE_ROW, _BARE, _FIT_ROW, _HEADED):
        for at, row in enumerate(rows):
            text = row
            if re.fullmatch(r"\W*(?:finished\s+)?(?:sizes?|sizing|to\s+fit)\W*", row, re.I):
                text = f"{row.strip(' :*_#')}: {next(iter(rows[at + 1 :]), '')}"
            if re.search(r"\bto\s+fit\b[^\d]*$", text, re.I):
                text += f" {next((below for below in rows[at + 1 :] if below[:1].isdigit()), '')}"
            match = pattern.search(_closed(text, rows[at + 1 :]))
            if match:
                found += _readings(match.group(1))
        if found:
            break
    return found


def _closed(row: str, below: Sequence[str]) -> str:
    """Append the rows below to a row whose bracket they close."""
    for following in below[:2]:
        if sum(map(row.count, "([{")) <= sum(map(row.count, ")]}")) or not following:
            break
        row = f"{row} {following}"
    return row


def _readings(text: str) -> list[tuple[str, ...]]:
    """Read a list of sizes, in every way it can be read."""
    text = _AMID.sub(r"\1", text)
    text = re.split(r"\.\s|\.$", _BEHIND.sub("", text))[0]
    text = re.sub(rf"(?<=[\d½¼¾)\]}}])\s*{_UNIT}(?!\w)\.?", "", text).strip(" .:")
    bracketed = bool(re.search(r"[(\[{]", text))
    if bracketed or re.search(r"[,;:]", text):
        parts = re.split(r"[()\[\]{},;:]+|\s+and\s+|\s&\s", text)
        spaced = [re.split(r"\s+[-\u2013]\s+", part) for part in parts]  # "6/9 - 12/18 - 24" are three
        parts = [piece for pieces in spaced for piece in pieces]
        chained = [_links(part) if _CHAIN.fullmatch(part.strip()) else [part] for part in parts]
        return _named([piece for pieces in chained for piece in pieces])
    if _CHAIN.fullmatch(text):
        return _named(_links(text))
    span = _RANGE.fullmatch(text)
    if span and _LADDER.get(span.group(1).upper(), 0) - _LADDER.get(span.group(2).upper(), 1) < -1:
        return []  # "S to XL" does not say how many are between
    if span and not re.search(r"\bto\b", text):
        return [*_named([text]), *_named([span.group(1), span.group(2)])]
    words = re.split(r"\s*\|\s*|\s*·\s*|\s+", text)
    if len(words) > 1 and all(re.fullmatch(_LETTER, word, re.I) or word.isdigit() for word in words):
        return _named(words)
    return _named([text])


def _links(text: str) -> list[str]:
    return re.split(r"\s*[-\u2013/|·]\s*", text.strip())


def _named(parts: Sequence[str]) -> list[tuple[str, ...]]:
    names = tuple(" ".join(re.sub(r"^and\s+", "", part.strip(" ."), flags=re.I).split()) for part in parts)
    names = tuple(name for name in names if name)
    sound = bool(names) and all(_SIZE.fullmatch(name) for name in names)
    different = len({name.lower() for name in names}) == len(names)
    return [names] if sound and different else []


def _unread_row(rows: Sequence[str]) -> str:
    """Return a row that lists sizes in a way that cannot be read; empty if there is none."""
    for row in rows:
        match = None if "finished" in row.lower() else _SIZE_ROW.match(row)
        if match and re.match(rf"(?:{_LETTER}\b|\d)", match.group(1), re.I) and "needle" not in row.lower():
            return row
    return ""


def _lists_of(rows: Sequence[str]) -> Counter[int]:
    """Count how many numbers the lists of the rows have."""
    lengths: Counter[int] = Counter()
    for row in rows:
        if _SIZE_ROW.match(row) or _FIT_ROW.search(row):
            continue
        for found in _LIST.findall(_in_one_bracket(row)):
            lengths[len(re.findall(r"[\d½¼¾.]+|(?<=[\s(\[{,;:])[–-](?=\s*[,;:)\]}])", found))] += 1
    return lengths


def _in_one_bracket(row: str) -> str:
    """Return a row whose lists stand in one bracket each: "64 (68-72) 76 sts" is "64 (68, 72, 76) sts"."""
    line = write_lists_plainly(write_in_one_bracket(as_printed(row.replace("\u2013", "-"))))
    for other in MIXED_LISTS:
        for _ in range(row.count("(") if other.again and ")" in row else 1):
            line = put_words(line, other)
    return line.text


def infer_sizes(rows: Sequence[str]) -> int:
    """Return the commonest length of the lists of numbers, as the number of sizes; 1 without lists."""
    lengths = _lists_of(rows)
    return lengths.most_common(1)[0][0] if lengths else 1
