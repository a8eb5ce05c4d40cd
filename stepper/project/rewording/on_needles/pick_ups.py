"""Write each stretch of an edge along which stitches are picked up as a picking up of its own. No I/O.

"Pick up and knit 32 sts along back neck, 22 sts down left front neck and 16 sts along front neck" says once
what is done, and then for each stretch how many and where. Where is only said, in words of which each is
known to name a place; a stretch without a place, or with other words, stays as printed. Source: common
practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.rewording.openings import PLACE
from stepper.project.rewording.reworded import Reworded
from stepper.project.rewording.synonym import N
from stepper.regex import regex

_SPOT: Final = (
    rf"(?:{PLACE}|sts|stitches|cast|bound|on|off|bo|co|line|cent(?:er|re)d?|remaining|rem|each|steek|sloped|straight|curve|curved|"
    r"half|hem|ribbing|marker|point|row|rows|vertical|diagonal|start|vee|v-neck|v)"
)
_WHERE: Final = (
    rf"(?:evenly\s+)?(?:spaced\s+)?(?!(?:across|from|on|over)\s+(?:the\s+)?(?:left\s+|right\s+|second\s+|first\s+)?(?:sleeve|body)\b)"
    rf"(?:along|from|down|up|across|around|round|over|in|on|at|between|into|to)(?:\s+(?:to|from|along))?(?:\s+{_SPOT})+(?:\s+to(?:\s+{_SPOT})+)?"
)
_STITCHES: Final = r"(?:sts?|stitch(?:es)?)"
_FIRST: Final = regex(
    rf"\b(?:(?:pick\s+up|pu)\s*(?:and|&)\s*(?:knit|k\b\.?|k(?=\d))|puk)\s*(?:the\s+)?{N}(?:\s+{_STITCHES})?(?P<where>\s+{_WHERE})?(?=\s*[,;.]|\s+and\b|\s*$)",
    re.I,
)
_NEXT: Final = regex(
    rf"(?P<joint>\s*[,;]\s*(?:and\s+)?(?:then\s+)?|\s+and\s+(?:then\s+)?)(?P<mark>(?:pm|place\s+(?:a\s+)?marker)(?:\s+for\s+[a-z][a-z ]{{1,20}}?)?(?:\s*,\s*(?:and\s+)?|\s+and\s+))?"
    rf"(?:then\s+)?(?:another\s+)?(?P<number>{N})(?:\s+more)?(?:\s+{_STITCHES}|(?=\s+(?:across|along|down|up)\s))(?:(?P<where>\s+(?:{_WHERE}|across\s+(?:the\s+)?(?:(?:left|right|other|second|first)\s+)?sleeve))(?=\s*[,;.(]|\s+[-–—]|\s+and\b|\s*$)|(?=\s+and\s+{N}\s+{_STITCHES}\s+(?:along|down|up|across|around)\b))",
    re.I,
)

_SLEEVE: Final = regex(r"\bacross\s+(?:the\s+)?(?:\w+\s+)?sleeve$", re.I)
_ALL_ROUND: Final = regex(r"^(?!.*\bunderarm)(?=.*\bback\b)(?=.*\bfront\b)", re.I)
"""A neck that is picked up all round, over the tops of the sleeves too."""


def write_pick_ups(line: Reworded) -> Reworded:
    """Write a picking up in several stretches as one behind the other, the places said with the line.

    Returns:
        The line; the same if it has no second stretch.
    """
    text, places, kept, done = "", list[int](), list(line.kept), 0
    for first in _FIRST.finditer(line.text):
        at = first.end()
        while (match := _NEXT.match(line.text, at)) is not None:
            if _SLEEVE.search(match["where"] or "") and not _ALL_ROUND.search(line.text):
                break  # at an underarm they may be the stitches on hold, which are knitted
            if at == first.end() and first["where"]:
                text += line.text[done : first.start("where")]
                places += line.places[done : first.start("where")]
                kept.append(first["where"].strip())
                done = first.end()
            mark = match["mark"] or ""
            words = f", {mark}pick up and knit {match['number']} sts"
            text += line.text[done : match.start()] + words
            places += [*line.places[done : match.start()], *([line.places[match.start("number")]] * len(words))]
            kept += [match["where"].strip()] if match["where"] else []
            done = at = match.end()
    if not done:
        return line
    return replace(line, text=text + line.text[done:], places=(*places, *line.places[done:]), kept=tuple(kept))
