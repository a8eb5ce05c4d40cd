"""Say abbreviations as a knitter says them: "k2tog" is "knit two together", "sts" is "stitches". No I/O.

Stitches come from the stitch table and are in words already. This is for what the printed pattern adds in its
own words (remarks, instructions, labels), and for notes.
"""

from __future__ import annotations

import re
from types import MappingProxyType
from typing import Final

from stepper.craft.stitches import STITCHES, find_stitch
from stepper.regex import regex

WORDS: Final = MappingProxyType(
    {
        "st": "stitch", "sts": "stitches", "rnd": "round", "rnds": "rounds", "rep": "repeat",
        "reps": "repeats", "beg": "beginning", "bor": "beginning of the round", "eor": "end of the round",
        "rs": "right side", "ws": "wrong side", "patt": "pattern", "cont": "continue", "foll": "following",
        "rem": "remaining", "tog": "together", "tbl": "through the back loop", "wyib": "with yarn in back",
        "wyif": "with yarn in front", "kwise": "knitwise", "pwise": "purlwise", "psso": "pass it over",
        "dpn": "double pointed needle", "dpns": "double pointed needles", "approx": "about",
        "bor m": "marker at the beginning of the round", "st st": "stockinette stitch", "ch": "chain",
        "inc rnd": "increase round", "inc round": "increase round", "inc row": "increase row",
        "dec rnd": "decrease round", "dec round": "decrease round", "dec row": "decrease row",
    }
)  # fmt: skip
"""What printed patterns abbreviate beside their stitches, in lower case, with the words it stands for.

Source: common practice. "alt" and "pat" are left out: they are words or names as well.
"""

_IN_CAPITALS: Final = MappingProxyType({"DS": "double stitch", "BO": "bind off", "CO": "cast on"})
# What is an abbreviation in capitals only, because in small letters it is a code, a word or a name.

_NOT_ALONE: Final = frozenset(
    ("hold", "return", "rest", "turn", "bead", "graft", "draw", "co", "bo", "pu", "ds", "pm")
)
# Codes of the table that are also words, too short to tell from a name, or a time of day.

_CODES: Final = [code for code in STITCHES if len(code) > 1 and code not in _NOT_ALONE]
_EITHER: Final = "|".join(re.escape(each) for each in sorted((*_CODES, *WORDS), key=len, reverse=True))
_NO_TIME: Final = r"(?<!(?<!\w)\d )(?<!(?<!\w)\d\d )(?<!\d\.\d\d )(?<!\d:\d\d )pm"
_ALONE: Final = regex(rf"(?<![\w.&/-])(?:{_EITHER}|{_NO_TIME})(?![\w&/-])", re.IGNORECASE)
_COUNTED: Final = regex(
    r"(?<![\w.&/-])(k|p|sl ?|CO |BO )(\d{1,3})( tbl| wyi[bf])?(?![\w&/.-])", re.IGNORECASE
)


def expand_abbreviations(line: str) -> str:
    """Write out the abbreviations in a line; what might be a word or a name is left alone.

    Returns:
        The line, with figures unchanged. Always: doing it twice changes nothing more.
    """
    line = _COUNTED.sub(_counted, line)
    for capitals, said in _IN_CAPITALS.items():
        line = re.sub(rf"(?<![\w.&/-]){capitals}(?![\w&/-])", said, line)
    return _ALONE.sub(_said, line)


def _counted(match: re.Match[str]) -> str:
    """Say "k3" or "sl1 wyib"."""
    letters = match.group(1).strip()
    if letters.lower() in ("co", "bo") and not letters.isupper():
        return match.group()
    entry = find_stitch(letters.lower() + (match.group(3) or "").lower())
    if entry is None:
        return match.group()
    count = match.group(2)
    return entry.said if count == "1" else entry.counted.format(n=count)


def _said(match: re.Match[str]) -> str:
    found = match.group()
    code = " ".join(found.lower().split())
    if code not in WORDS:
        # Said without its own commas, or "slip, slip, knit, knit one" would sound like four things.
        return STITCHES[code].said.replace(",", "")
    said = WORDS[code]
    return said[:1].upper() + said[1:] if match.start() == 0 and found[:1].isupper() else said
