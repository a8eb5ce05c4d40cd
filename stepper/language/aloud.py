"""Turn a printed line into one that every voice says alike: figures and units become words.

What the hands do is printed in words ("knit eleven"), what is counted or located in figures ("round 30 of
37"): short and exact for a screen reader and on a braille display. Voices differ in how they read figures, so
before a line is said its figures become words too. No I/O.
"""

from __future__ import annotations

import re
from decimal import Decimal
from fractions import Fraction
from itertools import pairwise

from stepper.language.abbreviations import expand_abbreviations
from stepper.language.numbers import LARGEST, decimal, spoken_decimal, words
from stepper.regex import regex

_UNITS = {
    "mm": ("millimetre", "millimetres"),
    "cm": ("centimetre", "centimetres"),
    "in": ("inch", "inches"),
    "g": ("gram", "grams"),
}
# A figure by itself: "k2tog" and "2027-02-14" are left as they are. "4 in" means inches at the end of a
# phrase, as in "to 4 in." and "4 in to reach", but not in "4 in the yoke".
_INCHES = r"in(?! (?!(?:to|across|around|by)\b)\w)"
_FIGURE = regex(rf"(?<![\w.,/-])(\d+(?:\.\d+)?)(?: (mm|cm|g|{_INCHES})\b)?(?![\w/]|-\d|[.,]\d)")


_PARTS = "½⅓⅔¼¾⅛⅜⅝⅞"
_FRACTION = regex(
    rf"(?<![\w.,/-])(\d+[- ]?[{_PARTS}]|[{_PARTS}]|\d+[- ]\d/\d|\d/\d)"
    rf"(?: (mm|cm|g|{_INCHES})\b)?(?![\w/]|-\d)"
)


def spell_out(line: str) -> str:
    """Return a line with its abbreviations, figures and units in words.

    "32.5 cm" is "thirty two point five centimetres", "10½" "ten and a half", "k2tog" "knit two together".
    """
    line = _without_inch_signs(expand_abbreviations(line))
    return _FIGURE.sub(_said, _FRACTION.sub(_part_said, line))


def _without_inch_signs(line: str) -> str:
    """Write out the signs for inches: those behind a figure that end nothing quoted."""
    first, *others = line.split('"')
    said, quoted = first, False
    for before, after in pairwise((first, *others)):
        if quoted or before[-1:] not in tuple(f"0123456789{_PARTS}"):
            quoted = not quoted
            said = f'{said}"{after}'
        else:
            said = f"{said} inches{after}"
    return said


def _part_said(match: re.Match[str]) -> str:
    """Say a number with a fraction: "10½ in" is "ten and a half inches", "½ in" "a half of an inch"."""
    value = decimal(match.group(1).replace("-", " "))
    if value is None or value.denominator not in _PART_NAMES or value > LARGEST:
        return match.group()
    whole, part = divmod(value, 1)
    said = _named_part(part)
    if whole:
        said = f"{words(int(whole))} and {said}"
    unit = match.group(2)
    if unit is None:
        return said
    one, many = _UNITS[unit]
    article = "an" if one.startswith("i") else "a"
    return f"{said} {many}" if whole else f"{said} of {article} {one}"


_PART_NAMES = {2: "half", 3: "third", 4: "quarter", 8: "eighth"}


def _named_part(part: Fraction) -> str:
    name = _PART_NAMES[part.denominator]
    if part.numerator == 1:
        return f"an {name}" if name.startswith("e") else f"a {name}"
    return f"{words(part.numerator)} {name}s"


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
