"""Write the turned rows of a yoke's neck in the grammar's words: told by how far they go past a marker, or past their turns. No I/O.

"K to 4 sts past the first marker, turn; DS, p past BOR to 4 sts past the next marker, turn" is a row for each turn, told in one
breath: each ends at its turn. A row that goes past the beginning of the round goes to it first, and counts markers from there.
"Do these 2 rows twice more, each time stopping 3 sts before the last DS" are pairs of rows, and so is "3 sts sooner" behind a
pair that stopped so many before it. One word that belongs to no row leaves the sentence as printed; so does a marker told by
what lies beside it, which a line alone does not know. Looked for only in a line that nothing else reads. Source: the wording of
yokes in print; common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import STS, N
from stepper.project.rewording.told.numbers import number_of
from stepper.regex import regex

_BOR: Final = r"(?:the\s+)?(?:bor|(?:beg(?:inning)?|start)\s+of\s+(?:the\s+)?(?:rnd|round)s?)(?:\s+(?:marker|m))?(?![\w-])"
_PAST: Final = r"(?:past|beyond|after)"
_MARKER: Final = r"(?:the\s+)?(?:(?P<nth>first|second|third|fourth|next|1st|2nd|3rd|4th)\s+)?(?:raglan\s+)?(?:marker|m)(?![\w-])"
_TURNED: Final = r"(?:the\s+)?(?:last|previous|prev)\s+(?P<what>ds|double\s+st(?:itch)?|turn(?:ing)?(?:\s+(?:point|place))?|wrap(?:ped\s+st(?:itch)?)?|gap)(?![\w-])"
_OVER: Final = r"(?:\s*,?\s*(?:back\s+)?(?:over|across)\s+(?:the\s+)?(?:back(?:\s+(?:piece|neck|sts))?|(?:other\s+|first\s+|second\s+|left\s+|right\s+)?sleeve(?:\s+sts)?))*"
_VERB: Final = r"(?P<verb>knit|k|purl|p|work)"
_BACK: Final = r"(?:\s+back(?=\s))?"
_TO: Final = r"(?:to|until|up\s+to)"

_ROWS: Final = tuple(
    (kind, regex(rf"(?P<ds>ds\s*,\s*)?{_VERB}{rest}", re.IGNORECASE))
    for kind, rest in (
        ("past both", rf"{_BACK}{_OVER}\s*,?\s*{_PAST}\s+{_BOR}{_OVER}\s*,?\s*(?:and\s+)?(?:on\s+)?{_TO}\s+(?P<n>{N})\s+{STS}\s+{_PAST}\s+{_MARKER}(?P<from>\s+{_PAST}\s+(?:it|{_BOR}))?"),
        ("past both", rf"{_BACK}{_OVER}\s*,?\s*{_TO}\s+(?P<n>{N})\s+{STS}\s+{_PAST}\s+{_MARKER}(?P<from>\s+{_PAST}\s+{_BOR})"),
        ("past it", rf"{_BACK}{_OVER}\s*,?\s*(?:{_TO}\s+(?P<n>{N})\s+{STS}\s+{_PAST}\s+{_BOR}|{_PAST}\s+{_BOR}\s+and\s+(?P<n2>{N})\s+{STS}\s+(?:more|further|beyond(?:\s+it)?))"),
        ("marker", rf"{_BACK}{_OVER}\s*,?\s*{_TO}\s+(?P<n>{N})\s+{STS}\s+{_PAST}\s+{_MARKER}"),
        ("turned", rf"{_BACK}{_OVER}\s*,?\s*{_TO}\s+(?P<n>{N})\s+{STS}\s+(?P<way>before|short\s+of|{_PAST})\s+{_TURNED}"),
        ("number", rf"\s*(?P<n>{N})(?:\s+{STS})?(?=\s*,?\s+(?:and\s+)?turn\b)"),
    )
)
"""How far a row goes, and that it begins with the double stitch of the turn before."""
_TURN: Final = regex(r"\s*,?\s*(?:and\s+)?turn(?:\s+(?:the\s+)?work)?(?![\w-])", re.IGNORECASE)
_JOINT: Final = regex(r"\s*[.,;]\s*(?:(?:and|then)\s+)*", re.IGNORECASE)
_AGAIN: Final = regex(
    rf"(?:rep(?:eat)?|do|work)\s+(?:(?:this|these|the|last)\s+)*(?:pair\s+of|2|two)\s+(?:short\s+)?rows\s+(?P<often>once|twice|\w+\s+times)\s+more\s*,\s*(?:(?:each|every)\s+time\s+)?(?:stopping|turning|ending)\s+(?P<n>{N})\s+{STS}\s+(?:(?P<sooner>sooner|earlier)|(?:before|short\s+of)\s+the\s+(?:last|previous)\s+(?:ds|turn))(?:\s+(?:each|every)\s+time)?",
    re.IGNORECASE,
)
_LAST: Final = regex(rf"(?P<ds>ds\s*,\s*)?(?:k|knit)\s+(?:back\s+)?to\s+{_BOR}", re.IGNORECASE)
_START: Final = regex(r"(?:^|(?<=[.!]\s))\s*(?:(?:short[-\s]rows?|sr)\s*:\s*)?(?=(?:ds\b|knit|k|purl|p|work)(?![a-z]))", re.IGNORECASE)
_NTH: Final = {"": 1, "next": 1, "first": 1, "1st": 1, "second": 2, "2nd": 2, "third": 3, "3rd": 3, "fourth": 4, "4th": 4}
_HEADED: Final = regex(r"^\s*(?:[a-z -]{1,20}\s)?(?:row|rnd|round|sr)\s*\d*\s*(?:\([rw]s\))?\s*:\s*", re.IGNORECASE)
_MOST_TIMES: Final = 12
_LEAST: Final = 2


def write_neck_turns(line: Reworded) -> Reworded:
    """Write the turned rows of a line, each as a row; the same line if it tells none that is read so."""
    head = _HEADED.match(line.text)
    if head is not None:
        found = _row(line.text, head.end())
        if found is None or found[2] == "number" or _plain(line.text, head.end(), found):
            return line
        words, end, _ = found
        return laid_anew(line, head.end(), end, [words])
    for start in _START.finditer(line.text):
        rows, end = _rows(line.text, start.end())
        if len(rows) >= _LEAST and any(kind != "number" for _, kind in rows):
            return laid_anew(line, start.end(), end, [", ".join(words for words, _ in rows)])
    return line


def _plain(text: str, at: int, found: tuple[str, int, str]) -> bool:
    """Return whether a row is printed in the grammar's own words."""
    return text[at : found[1]].lower().replace("the ", "") == found[0].lower()


def _rows(text: str, at: int) -> tuple[list[tuple[str, str]], int]:
    """Take rows apart that follow each other in one breath.

    Returns:
        The words and the kind of each, and where the last one that is read ends.
    """
    rows: list[tuple[str, str]] = []
    end = at
    while True:
        again = _AGAIN.match(text, at) if len(rows) >= _LEAST else None
        last = _LAST.match(text, at) if rows else None
        if again is not None:
            more = _sooner(again, rows)
            if not more:
                return rows, end
            rows += more
            end = again.end()
        elif last is not None:
            return [*rows, ("DS, k to BOR" if last["ds"] else "k to BOR", "last")], last.end()
        else:
            found = _row(text, at)
            if found is None:
                return rows, end
            rows.append((found[0], found[2]))
            end = found[1]
        joint = _JOINT.match(text, end)
        if joint is None:
            return rows, end
        at = joint.end()


def _row(text: str, at: int) -> tuple[str, int, str] | None:
    """Return a row with its turn in the grammar's words, where it ends, and how it is told; None if there is none."""
    for kind, form in _ROWS:
        match = form.match(text, at)
        turn = _TURN.match(text, match.end()) if match is not None else None
        if match is None or turn is None:
            continue
        words = _written(kind, match)
        if words is None:
            return None
        return f"{'DS, ' if match['ds'] else ''}{words}, turn", turn.end(), kind
    return None


def _written(kind: str, match: re.Match[str]) -> str | None:
    """Write how far a row goes; None where it may count markers from either end."""
    groups = match.groupdict()
    verb, number = match["verb"].lower(), groups.get("n") or groups.get("n2") or ""
    if kind == "number":
        return f"{verb} {number}"
    if kind == "turned":
        way = "before" if groups["way"].lower() in ("before", "short of") else "past"
        what = "DS" if groups["what"].lower().startswith(("ds", "double")) else "turn"
        return f"{verb} to {number} sts {way} last {what}"
    if kind == "past it":
        return f"{verb} to BOR, sm, {verb} {number}"
    nth = (groups["nth"] or "").lower()
    if kind == "marker":
        return f"{verb} to {number} sts past {nth + ' ' if nth else ''}marker"
    if not groups["from"] and nth not in ("", "next"):
        return None  # those before the beginning of the round may be counted too
    passed = f"{verb} to marker, sm, " * (_NTH[nth] - 1)
    return f"{verb} to BOR, sm, {passed}{verb} to {number} sts past marker"


def _sooner(again: re.Match[str], rows: list[tuple[str, str]]) -> list[tuple[str, str]]:
    """Return the pairs of rows that stop so many stitches before the last turns; none if the last two are no such pair."""
    often = again["often"].lower()
    times = {"once": 1, "twice": 2}.get(often) or number_of(often.split()[0]) or 0
    first, second = (words for words, _ in rows[-_LEAST:])
    if again["sooner"] and any(f"to {again['n']} sts before last" not in words for words in (first, second)):
        return []  # a turn so many stitches sooner lies one further out than one so many before its double stitch
    verbs = [words.removeprefix("DS, ").split()[0][0] for words in (first, second)]
    if not 0 < times <= _MOST_TIMES or verbs[0] == verbs[1] or "w" in verbs:
        return []
    begins = "DS, " if second.startswith("DS, ") else ""
    what = "DS" if begins else "turn"
    pair = [(f"{begins}{verb} to {again['n']} sts before last {what}, turn", "turned") for verb in verbs]
    return pair * times
