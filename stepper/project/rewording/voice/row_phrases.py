"""Put how a page names a row, its change, its repeats and its edge as the grammar has it, within a sentence. No I/O.

Each function takes a line and where one of its sentences begins and ends, and returns the line with that sentence
written so; the same line if the sentence has nothing of the kind. Source: the wording of patterns in print; common
practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.craft.stitch_patterns import KNOWN, RIB
from stepper.project.rewording.openings import colon_behind_opening
from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import ROUND, STS, N
from stepper.regex import regex

SOON: Final = r"(?:now|then|next|first|again|finally|also|just|simply|here|afterwards|once\s+more)"
_EDGE: Final = regex(
    r"\b(?P<act>(?:bind|cast)\s+off)\s+(?P<what>(?:the\s+|these\s+)(?:sts|stitches|edge|hem|cuff|border|edging|collar|neckband|neckline|band|brim|rib|ribbing))(?=\s+(?:in|loosely|with\s+(?:a|the)\s+[a-z-]+\s+bind|stretchily|knitwise|purlwise)\b|\s*[.;]?\s*$)",
    re.IGNORECASE,
)


def with_whole_edge(line: Reworded, start: int, end: int) -> Reworded:
    """Write all stitches for the edge that is bound off: "bind off the hem loosely"."""
    match = _EDGE.search(line.text, start, end)
    if match is None:
        return line
    return laid_anew(line, *match.span(), [match.span("act"), " all sts"])


_TOTAL: Final = regex(
    rf"\s*(?:(?:work|knit|repeat)\s+(?P<row>this\s+{ROUND})|(?P<done>this\s+{ROUND})\s+is\s+(?:worked|knitted|repeated))\s+(?:(?P<before>a\s+total\s+of)\s+)?(?P<times>\d[\d\s(),;]*(?<=[\d)]))\s*times(?P<behind>\s+(?:in\s+(?:all|total)|altogether|total))?(?=\s*[.;]?\s*$)",
    re.IGNORECASE,
)


def with_total(line: Reworded, start: int, end: int) -> Reworded:
    """Write so many rounds in all as a repeat of the one that stands there: "work this round 12 times in all"."""
    match = _TOTAL.match(line.text, start, end)
    if match is None or not (match["before"] or match["behind"]):
        return line
    times = re.sub(r"\d+", lambda number: str(int(number.group()) - 1), match["times"])
    if re.search(r"-|\b0\b", times):
        return line
    return laid_anew(
        line, start, match.end(), [lead_space(line, start), "Repeat last round ", times, " times more"]
    )


_GOES_ON: Final = regex(
    rf"\s*(?:{SOON}\s+)*(?:(?:keep|go|carry)\s+(?:on\s+)?(?:doing|repeating|working|knitting)|continue\s+(?:repeating|to\s+repeat)|do)\s+"
    rf"(?=(?:(?:these|those)\s+(?:{N}\s+)?{ROUND}|(?:the\s+)?last\s+(?:{N}\s+)?{ROUND}|{ROUND}\s+\d))",
    re.IGNORECASE,
)


def with_repeat(line: Reworded, start: int, end: int) -> Reworded:
    """Write rows that are gone on with as a repeat: "keep doing rows 3 and 4 until …"."""
    match = _GOES_ON.match(line.text, start, end)
    if match is None or not re.search(r"\buntil\b", line.text[match.end() : end], re.IGNORECASE):
        return line
    return laid_anew(line, start, match.end(), [lead_space(line, start), "Repeat "])


_WHERE: Final = regex(
    rf"\s*,?\s*(?:where|wherein|(?:in|on|during)\s+which)\s+(?P<number>(?:\d[\d\s(),;]*(?<=[\d)])|{N}))\s+{STS}\s+are\s+(?P<done>increased|decreased)(?:\s+evenly)?(?P<spread>\s+(?:evenly\s+)?(?:spaced|distributed|spread|across|around)?)?(?=\s*[.;=]|\s*$)",
    re.IGNORECASE,
)


def with_change(line: Reworded, start: int, end: int) -> Reworded:
    """Write a change that a relative clause tells of a row: "knit 1 round where 6 sts are increased evenly"."""
    match = _WHERE.search(line.text, start, end)
    if match is None:
        return line
    verb = "increasing" if match["done"][0] in "iI" else "decreasing"
    return laid_anew(line, *match.span(), [f", {verb} ", match.span("number"), " sts evenly"])


def lead_space(line: Reworded, start: int) -> str:
    """Return the space that a sentence begins with; empty if it begins with none."""
    return " " if start < len(line.text) and line.text[start] == " " else ""


_NAMED_ROW: Final = regex(
    r"\s*(?P<name>(?:inc|dec)(?:rease)?)\s+(?:on|in)\s+(?:the\s+)?(?P<row>next\s+(?:row|rnd|round)(?:\s*\([RW]S\))?)\s*(?:as\s+follows\s*)?(?=:)|"
    r"\s*(?P<called>next\s+(?:row|rnd|round)(?:\s*\([RW]S\))?)\s*,\s*(?P<what>(?:inc|dec)(?:rease|reasing)?|buttonholes?|eyelets?|set-?up)\s*(?=:)",
    re.IGNORECASE,
)


def with_row_named(line: Reworded, start: int, end: int) -> Reworded:
    """Write what a row is for in brackets behind it: "Next round, decrease: k1, …", "Decrease on next round: …"."""
    match = _NAMED_ROW.match(line.text, start, end)
    if match is None:
        return line
    row, name = ("row", "name") if match["row"] else ("called", "what")
    pieces: list[str | tuple[int, int]] = [match.span(row), " (", match.span(name), ")"]
    return laid_anew(line, min(match.start(row), match.start(name)), match.end(), pieces)


def with_comma(line: Reworded, start: int, end: int) -> Reworded:
    """Write a comma for the colon behind what a sentence opens with: "On needle 3 mm, from RS: …"."""
    begin = start + len(line.text[start:end]) - len(line.text[start:end].lstrip())
    colon = colon_behind_opening(line.text, begin)
    return line if colon is None else laid_anew(line, colon, colon + 1, [","])


_FIRST_FABRIC: Final = regex(
    rf"\s*(?P<fabric>in\s+(?:the\s+)?(?:{RIB}|{KNOWN}|rib(?:bing)?|pattern))\s*,\s+(?P<order>(?:bind|cast)\s+off(?:\s+(?:loosely|all|the|rem\w*|sts|stitches))*)(?=\s*[.;]?\s*$)",
    re.IGNORECASE,
)


def with_fabric_behind(line: Reworded, start: int, end: int) -> Reworded:
    """Write the fabric behind the order that is worked in it: "In rib, bind off all sts"."""
    match = _FIRST_FABRIC.match(line.text, start, end)
    if match is None:
        return line
    order = match["order"]
    first = match.start("order")
    pieces = [
        lead_space(line, start),
        order[0].upper(),
        (first + 1, match.end("order")),
        " i",
        (match.start("fabric") + 1, match.end("fabric")),
    ]
    return laid_anew(line, start, match.end(), pieces)
