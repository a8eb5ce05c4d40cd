"""Put into one form how a row says that rows between two marks of the page are worked again. No I/O.

"Rep rounds between * and ** 3 more times" and "Work from * to ** 4 times in total" are `again from * to ** 3
times`. Stars inside a row of stitches are none of these marks.
"""

from __future__ import annotations

import re

from stepper.project.problems import Span
from stepper.project.reading.elements import WORDS
from stepper.project.respelt import Respelt, Row
from stepper.project.rewording.reworded import Reworded
from stepper.regex import regex

_MARK = r"[(\[]?(?P<{name}>\*{{1,4}}|\u2020{{1,2}}|\u2021|\u00a7)[)\]]?"
_NUMBERS = {word: number for number, word in enumerate(WORDS)} | {"once": 1, "twice": 2}
_N = rf"(?:\d{{1,2}}|{'|'.join(WORDS[1:])})"
_WHAT = (
    r"(?:(?:the\s+)?(?:rows?|rnds|rounds|instructions|directions|section|steps|lines|sequence)\s+)?"
    r"(?:again\s+)?"
)
_MORE = r"(?:more|further|additional|extra)"
_OFTEN = (
    rf"(?:(?P<again>(?:once\s+)?again|(?:another|(?:1|one)\s+{_MORE})\s+time|(?:1|one)\s+time\s+more)"
    rf"|(?P<others>(?:another|an?\s+{_MORE})\s+)?(?P<times>once|twice|{_N}\s+(?:{_MORE}\s+)?times?)"
    r"(?P<more>\s+more(?:\s+times?)?)?"
    r"(?P<all>\s*,?\s*(?:in\s+total|in\s+all|altogether|\(?total\)?))?|(?P<until>until\s+[^*]*))"
)
_END = r"\s*(?P<end>\.?)(?=\s*$|\s+[A-Z\d(\[])"
_BETWEEN = regex(
    rf"^\s*(?:then\s+)?(?P<verb>rep(?:eat)?|work|knit)\s+(?:again\s+)?{_WHAT}(?P<by>from|between)\s+"
    rf"{_MARK.format(name='first')}\s*(?:up\s+)?(?:to|and|through|-|\u2013)\s*{_MARK.format(name='last')}\s*,?\s*"
    rf"(?:for\s+)?(?:a\s+total\s+of\s+)?{_OFTEN}?{_END}",
    re.I,
)
_SINCE = regex(
    rf"^\s*(?:then\s+)?(?P<verb>rep(?:eat)?)\s+{_WHAT}from\s+{_MARK.format(name='first')}\s*,?\s*{_OFTEN}{_END}",
    re.I,
)
_NOTE = regex(r"\s*(?:note|own\s+words)\b", re.I)
_FURTHER = regex(rf"\b{_MORE}\b", re.I)
_TOTAL = regex(r"\ba\s+total\s+of\b", re.I)
_TAIL = regex(
    r"[;,.]\s*(?:then\s+)?"
    r"(?=rep(?:eat)?\s+(?:again\s+)?from\s+\*\s+(?:\d{1,2}|once|twice|until|another|an?)\b)",
    re.I,
)
_ROWS = regex(r"\b(?:rows?|rnds?|rounds?)\b", re.I)


def plain_reference(text: str) -> Reworded | None:
    """Return a row that works marked rows again in one form; None if it is none or how often is unclear."""
    match = _BETWEEN.match(text) or _SINCE.match(text)
    if match is None:
        return None
    groups = match.groupdict()
    if groups.get("last") is None and groups["first"] == "*" and not groups["until"]:
        return None  # read as it is: "Rep from * twice more" behind a star that begins rows
    often = _often(match)
    if often is None:
        return None
    to = f" to {groups['last']}" if groups.get("last") else ""
    words = f"again from {groups['first']}{to} {often}{groups['end']}"
    start = len(text) - len(text.lstrip())
    places = (*range(start), *([start] * len(words)), *range(match.end(), len(text) + 1))
    return Reworded(text[:start] + words + text[match.end() :], places)


def _often(match: re.Match[str]) -> str | None:
    """Return how often rows are worked once more; None if the words can be taken in two ways."""
    if match["until"]:
        return str(match["until"]).strip()
    repeats = match["verb"].lower().startswith("rep")
    if match["again"]:
        return "1 times"
    if not match["times"]:
        return "1 times" if repeats else None
    word = match["times"].lower().split()[0]
    number = _NUMBERS.get(word) or int(word)
    if match["all"] or _TOTAL.search(match.group()):
        return f"{number - 1} times" if number > 1 else None
    more = match["more"] or match["others"] or _FURTHER.search(match["times"])
    if not (repeats or more):
        return None  # "work from * to ** twice": with or without the time that is written
    return f"{number} times"


def split_reference(text: str) -> int:
    """Return where a row of rounds ends and its repeat of marked rows begins: "Knit 1 rnd; rep from * twice".

    0 where there is none: a row with a star of its own repeats its stitches.
    """
    tail = _TAIL.search(text)
    if tail is None or not _ROWS.search(text[: tail.start()]) or "*" in text[: tail.start()]:
        return 0
    return tail.end()


def take_references(rows: list[Row], respelt: Respelt) -> list[Row]:
    """Put the rows that work marked rows again into one form, each on a row of its own.

    Args:
        rows: The rows, each with its place.
        respelt: Gets the rows as they were.
    """
    made: list[Row] = []
    for text, place in rows:
        above = made[-1][0].rstrip() if made else ""
        goes_on = above.endswith((",", ";", "-", "(")) or (
            text.lstrip()[:1].islower() and not above.endswith(".")
        )
        if _NOTE.match(text) or goes_on:
            made.append((text, place))
            continue
        cut = split_reference(text)
        if cut:
            behind = Span(line=place.line, column=place.column + cut, length=len(text) - cut)
            made += [(text[:cut].rstrip(" ;,"), place), (text[cut:], behind)]
            continue
        plain = plain_reference(text)
        if plain is not None:
            respelt.put((text, place), plain)
        made.append((plain.text if plain is not None else text, place))
    return made
