"""Write a row that is knitted across several pieces as one across each of them. No I/O.

"Knit across left sleeve, front, right sleeve, back" says once what is done, and then the pieces in their order, some with
their stitches, some without. Each is written by itself, "k across left sleeve sts"; whether it waits or lies on the needle
is for the plan to say. Only a list with a sleeve in it is one: elsewhere "front" and "back" may be anything. Looked for only in
a line that nothing else reads. Source: the wording of patterns in print, US and UK; common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.craft.needles import SIZE
from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import STS, N
from stepper.regex import regex

_PIECE: Final = r"(?:(?:the|a)\s+)*(?:one\s+)?(?P<piece>(?:(?:left|right|first|second|other|1st|2nd|back|front)\s+)?(?:sleeve|front|back|body))"
_SAID: Final = r"(?:\s+(?:of|from|for)\s+(?:the\s+)?(?:body|needle|holder|waste\s+yarn|scrap\s+yarn))?"
_ITEM: Final = regex(
    rf"(?:(?:the|all|held|live)\s+)*(?:(?P<number>{N})\s+)?(?:held\s+)?(?:{STS}\s+(?:of|from|for|on)\s+{_PIECE}(?:\s+{STS})?|{_PIECE.replace('?P<piece>', '?P<own>')}(?:'s)?(?:\s+{STS})?{_SAID})(?=\s*[,;.:(=]|\s*[\u2013\u2014]|\s*-+\s*\d|\s+and\b|\s+then\b|\s*$)",
    re.I,
)
_VERB: Final = regex(
    r"(?:(?<=^)|(?<=[,:.;]\s)|(?<=\band\s)|(?<=\bthen\s))(?P<verb>knit|k|work|purl|p)(?=[\s\d])\s*(?:across\s+)?",
    re.I,
)
_MARK: Final = r"(?:pm|place\s+(?:a\s+)?(?:raglan\s+)?marker)"
_JOINT: Final = regex(
    rf"\s*(?:[,;]\s*(?:and\s+)?(?:then\s+)?|\band\s+(?:then\s+)?|\bthen\s+)(?:(?P<mark>{_MARK})(?:\s*,\s*(?:and\s+)?(?:then\s+)?|\s+and\s+(?:then\s+)?))?(?:(?:knit|k|work|purl|p)(?=[\s\d])\s*)?(?:across\s+)?",
    re.I,
)
_SUM: Final = regex(
    rf"\s*(?:[:=]|[\u2013\u2014]|-+)\s*(?P<count>{N}\s+{STS})"
    r"(?:\s+(?:in\s+(?:all|total)|altogether|total|(?:now\s+)?(?:all\s+)?on\s+(?:the\s+|one\s+)(?:long\s+)?(?:circular\s+)?needle))*\s*\.?\s*$",
    re.I,
)
"""The stitches of all pieces together, behind the list."""
_LAST_MARK: Final = regex(
    r"\s*[,;]\s*(?:and\s+)?(?:pm|place\s+(?:an?\s+)?(?:(?:different|contrasting|differently|another|unique|new|colou?r(?:ed)?)[\s-]+)*marker)\s+(?:for|at|to\s+mark)\s+(?:the\s+)?(?:bor|(?:beg(?:inning)?|start)\s+of\s+(?:the\s+)?(?:rnd|round))(?![\w-])",
    re.I,
)
"""A marker where the round ends, which is its beginning."""
_WITH: Final = regex(
    rf"with\s+(?:the\s+)?(?P<size>{SIZE}|smaller|larger)\s+(?:\d+\s*(?:cm|in\.?|inch|\"|'')\s*)?(?:long\s+)?(?:circ(?:ular)?s?(?:\s+needles?)?|needles?)(?:\s+and\s+(?:the\s+)?(?P<said>(?:yarn|wool)\s+(?:still\s+)?attached\s+to\s+(?:the\s+)?(?:body|back|front|sleeve)))?\s*,\s*$",
    re.I,
)
"""The needle and the yarn with which the pieces are joined, before them."""
_LEAST: Final = 2
"""One piece is read by itself."""


def write_join_lists(line: Reworded) -> Reworded:
    """Write each piece that a row is worked across by itself, where they are told in a list.

    Returns:
        The line; the same if it has no such list.
    """
    for verb in _VERB.finditer(line.text):
        found = _pieces(line.text, verb.end())
        if found is None:
            continue
        pieces, end = found
        lead = {"w": "work", "p": "p"}.get(verb["verb"][0].lower(), "k")
        words = ", ".join(f"{mark}{lead} across {number}held {piece} sts" for mark, number, piece in pieces)
        last = _LAST_MARK.match(line.text, end)
        if last is not None:
            words, end = f"{words}, pm for BOR", last.end()
        total = _SUM.match(line.text, end)
        if total is not None:
            words, end = f"{words}. {total['count']}.", total.end()
        head = _WITH.search(line.text[: verb.start()])
        if head is None:
            return laid_anew(line, verb.start(), end, [words])
        made = laid_anew(line, head.start(), end, ["with ", head.span("size"), " needles, ", words])
        return replace(made, kept=(*made.kept, head["said"])) if head["said"] else made
    return line


def _pieces(text: str, at: int) -> tuple[list[tuple[str, str, str]], int] | None:
    """Return the marker before each piece, its stitches and its name, and where the list ends; None if it is none."""
    pieces: list[tuple[str, str, str]] = []
    mark = ""
    while (match := _ITEM.match(text, at)) is not None:
        name = " ".join((match["piece"] or match["own"]).lower().split())
        pieces.append((mark, f"{match['number']} " if match["number"] else "", name))
        end = match.end()
        joint = _JOINT.match(text, end)
        if joint is None:
            break
        at, mark = joint.end(), "pm, " if joint["mark"] else ""
    told = {name for _, _, name in pieces}
    if (
        len(pieces) < _LEAST
        or not any("sleeve" in name for name in told)
        or not told & {"front", "back", "body"}
    ):
        return None
    return pieces, end
