"""Turn a printed line into one every voice says alike: figures and units become words.

What the hands do is printed in words ("knit eleven"), what is counted or located in figures ("round 30 of
37"): short and exact for a screen reader and on a braille line. Voices differ in how they read figures, so
before a line is said its figures become words too. No I/O.
"""

from __future__ import annotations

import re
from decimal import Decimal

from stepper.language.numbers import LARGEST, spoken_decimal, words

_UNITS = {
    "mm": ("millimetre", "millimetres"),
    "cm": ("centimetre", "centimetres"),
    "in": ("inch", "inches"),
    "g": ("gram", "grams"),
}
# A figure by itself: "k2tog" and "2027-02-14" are left as they are. "4 in" is inches at the end of what is
# said, as in "to 4 in." and "4 in to reach", and not in "4 in the yoke".
_FIGURE = re.compile(r"(?<![\w.,/-])(\d+(?:\.\d+)?)(?: (mm|cm|g|in(?! (?!to\b)\w))\b)?(?![\w/]|-\d|[.,]\d)")


def aloud(line: str) -> str:
    """Say a line's figures and units in words: "32.5 cm" is "thirty two point five centimetres"."""
    return _FIGURE.sub(_said, line)


def _said(match: re.Match[str]) -> str:
    figure, unit = match.group(1), match.group(2)
    if Decimal(figure) > LARGEST:
        said = figure
    else:
        said = spoken_decimal(Decimal(figure)) if "." in figure else words(int(figure))
    if unit is None:
        return said
    one, many = _UNITS[unit]
    return f"{said} {one if figure == '1' else many}"
