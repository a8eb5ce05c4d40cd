"""Read lengths, needle sizes and other printed measurements into millimetres. No I/O."""

from __future__ import annotations

import re

from stepper.craft.gauge import to_mm
from stepper.craft.needles import MM_SIZE, US_SIZE, NeedleSize, needle_from_uk, needle_from_us
from stepper.regex import regex

_FRACTIONS = {"¼": 0.25, "½": 0.5, "¾": 0.75, "⅛": 0.125, "⅜": 0.375, "⅝": 0.625, "⅞": 0.875}
_UNIT = regex(r'\s*(cm|mm|inches|inch|in|")\s*$', re.I)
_ONE = regex(r"(?:(\d+(?:\.\d+)?)?\s*([¼½¾⅛⅜⅝⅞])|(?:(\d+)\s+)?(\d+)/(\d+)|(\d+(?:\.\d+)?))\s*")


def read_length(text: str, *, inches: bool = False) -> tuple[tuple[float, ...], str]:
    """Read a length, or a list of lengths with one unit: `32 cm`, `10 1/2 in`, `30 (31, 32) cm`.

    Args:
        text: The value as printed.
        inches: Whether a value without a unit is in inches rather than centimetres.

    Returns:
        The lengths in mm, and what is wrong with them as a sentence (empty if nothing is).
    """
    match = _UNIT.search(text)
    word = match.group(1).lower() if match else ("in" if inches else "cm")
    body = text[: match.start()] if match else text
    values = []
    for part in re.split(r"[(\[\]),;:]+", body):
        if not part.strip():
            continue
        value = read_number(part)
        if value is None:
            return (), f'"{text.strip()}" is not a length; write it as 32 cm or 12 1/2 in.'
        values.append(to_mm(value, "mm" if word == "mm" else "cm" if word == "cm" else "in"))
    if not values:
        return (), f'"{text.strip()}" is not a length; write it as 32 cm or 12 1/2 in.'
    if any(not 0 < value <= 10_000 for value in values):
        return (), f'"{text.strip()}" is outside what a garment can measure (up to 10 m).'
    return tuple(values), ""


_TWO = regex(
    r"(?P<one>.*?(?P<unit>cm|mm|inch(?:es)?|in|\"))\s*(?:/|[(\[])\s*(?P<other>[\d¼½¾⅛⅜⅝⅞].*?(?P<also>cm|mm|inch(?:es)?|in|\"))\s*[)\]]?",
    re.I,
)
_AGREE = 0.08
"""How far one length in two units may differ: patterns round to half a centimetre and quarter inches."""


def in_one_unit(text: str, *, inches: bool) -> tuple[str, bool]:
    """Choose between the two units in which a length is printed: `6 in [15 cm]`.

    Args:
        text: The value as printed.
        inches: Whether the file is in inches.

    Returns:
        The length in the unit of the file, else the one printed first; and whether both agree.
    """
    match = _TWO.fullmatch(text.strip())
    if match is None:
        return text, True
    imperial = [not match.group(name).lower().endswith("m") for name in ("unit", "also")]
    one, other = match.group("one"), match.group("other")
    taken = other if imperial[0] != inches and imperial[1] == inches else one
    first, second = (read_length(part)[0] for part in (one, other))
    same = len(first) == len(second) and all(
        abs(a - b) <= _AGREE * max(a, b) for a, b in zip(first, second, strict=True)
    )
    return taken, same


def read_number(text: str) -> float | None:
    """Read a number with or without a fraction: `21.5`, `10 1/2`, `10½`; None if it is not one.

    `11/2` is none: no pattern prints a fraction above one, but copying a page joins "1 1/2".
    """
    plain = text.strip()
    match = _ONE.fullmatch(plain)
    if match is None:
        return None
    whole, sign, mixed, over, under, simple = match.groups()
    if sign:
        return float(whole or 0) + _FRACTIONS[sign]
    if under:
        return None if int(over) >= int(under) else float(mixed or 0) + int(over) / int(under)
    return float(simple)


def read_needle(text: str) -> float | None:
    """Read a needle size: `3.75 mm`, `4½ mm`, `US 5 (3.75 mm) needles`, `US 5`.

    Returns:
        The diameter in mm; None if none is named, it is not between 0.5 and 50 mm, or the US number has two
        diameters in print.
    """
    match = re.search(MM_SIZE, text, re.I)
    if match:
        mm = read_number(re.sub(r"\s*mm", "", match.group(), flags=re.I).replace(",", "."))
        return mm if mm is not None and 0.5 <= mm <= 50 else None
    british = needle_from_uk(text)
    if british is not None:
        return british
    row = us_number(text)
    return None if row is None or row.also_mm else row.mm


def us_number(text: str) -> NeedleSize | None:
    """Return the needle table's row for the US number in a text; None if it names no listed one."""
    match = re.search(US_SIZE, text, re.I)
    if match is None:
        return None
    try:
        return needle_from_us(re.sub(r"us\s*(?:size\s*)?#?\s*", "", match.group(), flags=re.I))
    except ValueError:
        return None
