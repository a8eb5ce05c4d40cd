"""Write the numbers that a line spells out as digits: how often, how many rows, which section. No I/O.

"Repeat rows 3 and 4 twenty-two more times" counts, and "Section Two" is called so. Words that may count
nothing ("one of these", "the two fronts") stay. Source: common practice.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import STS
from stepper.regex import regex

_ONES: Final = (
    "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen",
    "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
)  # fmt: skip
_TENS: Final = ("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
_NUMBERS: Final = {word: number for number, word in enumerate(_ONES, start=1)} | {
    f"{tens}{joint}{one}": 10 * at + number
    for at, tens in enumerate(_TENS, start=2)
    for number, one in enumerate(("", *_ONES[:9]))
    for joint in (("-", " ") if one else ("",))
}
SMALL: Final = "|".join(_ONES[:10])
"""One to ten, spelt out."""
LARGE: Final = rf"(?:(?:{'|'.join(_TENS)})(?:[-\s](?:{'|'.join(_ONES[:9])}))?|{'|'.join(_ONES[10:])})"
"""Numbers above ten, spelt out."""
_SPELT: Final = regex(
    rf"(?<=\b(?:knit|purl)\s)(?P<worked>{LARGE})(?=\s*[,;.)*]|\s*$|\s+(?:and|then|turn)\b)"
    rf"|\b(?P<many>{LARGE})(?=\s+(?:(?:more|further|additional)\s+)?(?:times\b|{STS}|(?:rows|rnds|rounds)\b))"
    rf"|\b(?:section|part|step|stage|tier|chapter|block)\s+(?P<name>{'|'.join(_ONES[:12])})\b(?![-\s]+(?:of|sts?|stitch|side|row|rnd|round|end|more|time)\b)",
    re.IGNORECASE,
)


def write_numbers(line: Reworded) -> Reworded:
    """Return a line with the numbers it spells out as digits; the same if it has none."""
    for match in reversed(list(_SPELT.finditer(line.text))):
        group = next(name for name in ("worked", "many", "name") if match[name])
        line = laid_anew(line, *match.span(group), [digits_of(match[group])])
    return line


def number_of(word: str) -> int | None:
    """Return a number that is spelt out or in digits; None for another word."""
    digits = digits_of(word)
    return int(digits) if digits.isdecimal() else None


def digits_of(words: str) -> str:
    """Return a number spelt out as digits; anything else as it is."""
    number = _NUMBERS.get(" ".join(words.lower().split()))
    return words if number is None else str(number)
