"""Write stitches that a colour round counts by their colour alone as stitches that are knitted. No I/O.

"Rnd 2: *1 CC1, 5 MC; rep from * around" is a row of a colour chart in words. Such stitches are knitted: it
is read so in a round, in a row called a right-side one and behind a star without a head. In any other row
the stitches may be purled, and beside a stitch of its own a count may be something else; both stay as
printed, and are refused. Source: common practice of stranded colour knitting.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.reworded import Reworded
from stepper.regex import regex

_YARN: Final = r"(?-i:MC\d?|CC\d?|C\d|BC|PC|DC|[A-H]|[YZ])"
_LISTED: Final = r"\d+(?:\s*\([\d\s,]+\))?"
_BEFORE: Final = r"(?:(?<=^)|(?<=[*:,;(\[])|(?<=[*:,;(\[]\s)|(?<=\bthen\s)|(?<=\bend\s)|(?<=\band\s))"
_COUNT: Final = regex(
    rf"{_BEFORE}(?P<number>{_LISTED})\s?(?:(?:sts?|stitch(?:es)?)\s+)?(?:(?:in|with)\s+)?(?P<yarn>{_YARN})(?:\s+(?:sts?|stitch(?:es)?))?"
    rf"(?=\s*[,;.*)\]]|\s+(?:and|then|rep(?:eat)?)\b|\s*$)",
    re.I,
)
_CHART: Final = r"(?:(?:[a-z][a-z' -]*\s)?chart\b[^:*]{0,48}:\s*)?"
"""The name of a chart that is told in words, in front of its first round."""
_HEAD: Final = regex(
    rf"^\s*{_CHART}(?:(?:next\s+)?(?:rnds?|rounds?)\b[^:*]{{0,24}}|(?:next\s+)?(?:rows?)\b[^:*]{{0,16}}(?:\(\s*rs\s*\)|\brs\b)[^:*]{{0,12}}|"
    r"(?:[a-z]+[\s-]){0,3}(?:rnd|round)(?:\s+\d+)?):\s*|^\s*(?=\*)",
    re.I,
)
_ALONE: Final = regex(
    rf"^\s*{_CHART}(?:next\s+)?(?:rnds?|rounds?)\b[\d\s,&-]*(?:(?:and|to)\s+\d+\s*)?:\s*(?:all\s+)?(?P<yarn>{_YARN})(?:\s+only)?(?=\s*\.?\s*$)", re.I
)
"""A round of one colour: "Rnds 10 and 11: MC"."""
_OPEN_STAR: Final = regex(r"^[^*]*\*[^*.]*?(?=\s*\.?\s*$)")
_STITCHES: Final = regex(r"(?<![\w-])(?:[kp]\s?\d|knit|purl|sl|m1\w*|k2tog|ssk|yo|ws|wrong)(?![\w-])", re.I)


def write_colour_counts(line: Reworded) -> Reworded:
    """Write each count of a colour as stitches knitted in it: "5 MC" as "k5 in MC".

    Returns:
        The line; the same if it is no row of counts of colours alone.
    """
    alone = _ALONE.match(line.text)
    if alone is not None:
        return _put(line, [(alone.start("yarn"), alone.end("yarn"), f"with {alone['yarn']}, knit")])
    head = _HEAD.match(line.text)
    if head is None or _STITCHES.search(line.text):
        return line
    found = [match for match in _COUNT.finditer(line.text) if match.start() >= head.end() or head.end() == 0]
    if len(found) < 2:
        return line
    made = [(match.start(), match.end(), f"k{match['number']} in {match['yarn']}") for match in found]
    star = _OPEN_STAR.match(line.text)
    if star is not None and not re.search(r"\brep", line.text, re.I):
        made.append((star.end(), star.end(), "; rep from * to end"))
    return _put(line, made)


def _put(line: Reworded, made: list[tuple[int, int, str]]) -> Reworded:
    """Put words in place of stretches of a line, each with the place of its first letter."""
    text, places, done = "", list[int](), 0
    for start, end, words in made:
        text += line.text[done:start] + words
        places += [*line.places[done:start], *([line.places[start]] * len(words))]
        done = end
    return replace(line, text=text + line.text[done:], places=(*places, *line.places[done:]))
