"""Write rounds between stars as rounds and a repeat of the last of them. No I/O.

"*Knit 1 rnd, purl 1 rnd; rep from * 3 times more" stars rounds as other rows star stitches. It becomes "Knit
1 rnd. Purl 1 rnd. Rep last 2 rounds 3 times more", which is the same as long as each of its parts works a
number of rounds that is known, and all of it stands between the star and the repeat. Where a number differs
by size, or anything else stands there, the line is left as it is. Source: common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.reworded import Reworded
from stepper.regex import regex

_WORDS: Final = ("a", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")
_N: Final = rf"(?:\d{{1,2}}|{'|'.join(_WORDS)})"
_ROUND: Final = r"(?:rounds?|rnds?|rows?)"
_YARN: Final = r"(?:yarn\s+|colou?r\s+)?(?-i:MC|CC\d?|[A-Z])\b"
_FABRIC: Final = (
    r"(?:k\s?\d\s*,\s*p\s?\d\s+rib(?:bing)?|rib(?:bing)?|(?:garter|seed|moss)(?:\s+st(?:itch)?)?|st\.?\s?st"
    r"|(?:stockinette|stocking)(?:\s+st(?:itch)?)?|patt(?:ern)?)"
)
_PART: Final = regex(
    rf"(?:(?P<yarn>(?:with|in|using)\s+{_YARN})\s*,?\s+)?(?:(?P<verb>knit\b|purl\b|work\b|rib\b|k|p)\s*)?"
    rf"(?P<number>{_N})\s+{_ROUND}\b(?P<manner>\s+(?:in\s+)?{_FABRIC})?"
    rf"(?:\s+(?P<behind>(?:with|in|using)\s+{_YARN}))?",
    re.I,
)
_JOINT: Final = regex(r"\s*(?:[,;.]\s*(?:(?:and|then)\s+)*|\s(?:and\s+)?(?:then\s+)?)", re.I)
_ALL: Final = r"(?:in\s+(?:all|total)|altogether|total)"
_TIMES: Final = (
    rf"(?P<times>once(?:\s+more)?|twice(?:\s+more)?|a\s+total\s+of\s+{_N}\s+times|until\s+[^*;]*"
    rf"|(?:another\s+)?{_N}\s+(?:more\s+)?times(?:\s+more)?(?:\s+{_ALL})?)"
)
_FROM: Final = r"(?:rep(?:eat)?|work)(?:ed|ing)?\.?\s+(?:from\s+|between\s+)?"
_REPEAT: Final = regex(
    rf"\s*[;,.]?\s*(?:and\s+)?rep(?:eat)?\.?\s+(?:from\s+)?\*(?:\s*(?:to|-)\s*\*)?\s*,?\s*{_TIMES}", re.I
)
_CLOSED: Final = regex(
    rf"\s*[.;,]?\s*[*)\]]\s*,?\s*(?:{_FROM}(?:\*\s*(?:-|to|and)\s*\*|these)\s*,?\s*)?"
    rf"(?P<times>{_N}\s+times(?:\s+{_ALL})?|twice|a\s+total\s+of\s+{_N}\s+times)",
    re.I,
)
_END: Final = regex(r"\s*[.;]?\s*$|\s*[.;]\s+(?=[A-Z])")
_START: Final = regex(
    r"(?:^\s*|[.:;]\s*)[*(\[]\s*(?=(?:with|in|using|knit|purl|work|rib|[kp](?=\d|\s))\b|[kp]\d)", re.I
)
_MOST: Final = 8
"""Parts between two stars."""


def write_starred_rounds(line: Reworded) -> Reworded:
    """Write rounds between stars or brackets as rounds and a repeat.

    Returns:
        The line; the same if it has none, or none whose number is known.
    """
    if not ("*" in line.text or "(" in line.text or "[" in line.text) or not _ANY.search(line.text):
        return line
    start = _START.search(line.text)
    parts = _parts(line.text, start.end()) if start is not None else []
    if start is None or not parts:
        return line
    end = parts[-1].end()
    bracket = line.text[start.end() - 1 :].lstrip()
    starred = line.text[start.start() : start.end()].rstrip().endswith("*") or bracket.startswith("*")
    again = _REPEAT.match(line.text, end) if starred else None
    found = again or _CLOSED.match(line.text, end)
    if found is None or _END.match(line.text, found.end()) is None:
        return line
    often = found["times"].strip()
    if again is None and not re.search(r"in\s+(?:all|total)|altogether|total", often, re.I):
        often = "2 times in all" if often.lower() == "twice" else f"{often} in all"
    number = sum(_number(part) for part in parts)
    return _written(line, start, parts, f"Rep last {number} rounds {often}", found.end())


_ANY: Final = regex(rf"\b{_N}\s+{_ROUND}\b", re.I)


def _parts(text: str, at: int) -> list[re.Match[str]]:
    """Return the parts from a place on, each of which works a number of rounds."""
    parts: list[re.Match[str]] = []
    while len(parts) < _MOST:
        joint = _JOINT.match(text, at) if parts else None
        found = _PART.match(text, joint.end() if joint is not None else at)
        if found is None or not (found["verb"] or parts):
            break
        parts.append(found)
        at = found.end()
    return parts


def _number(part: re.Match[str]) -> int:
    word = part["number"].lower()
    return int(word) if word.isdigit() else max(1, _WORDS.index(word))


def _written(
    line: Reworded, start: re.Match[str], parts: list[re.Match[str]], repeat: str, end: int
) -> Reworded:
    """Return a line with its starred rounds written as sentences, each letter with its printed place."""
    text = line.text[: start.end()].rstrip().rstrip("*([")
    places = list(line.places[: len(text)])
    for part in parts:
        said = line.text[part.start() : part.end()]
        if not part["verb"]:
            verb = part.start("number") - part.start()
            said = f"{said[:verb]}work {said[verb:]}"
        said = said[0].upper() + said[1:]
        text, places = text + said + ". ", [*places, *([line.places[part.start()]] * (len(said) + 2))]
    text, places = text + repeat, [*places, *([line.places[parts[-1].end() - 1]] * len(repeat))]
    return replace(line, text=text + line.text[end:], places=(*places, *line.places[end:]))
