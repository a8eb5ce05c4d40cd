"""Needle sizes: US numbers against millimetres, and how pattern lines write them.

The metric diameter is the safe key: different makers sell different diameters under one US number (sizes.com,
tools/knitting_needles). Rows say so if printed tables disagree. No I/O.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.records import dataclass

US_SIZE: Final = r"us\s*(?:size\s*)?#?\s*\d+(?:\.\d+|\s*1/2|½)?"
"""Regular expression for a US size as pages write it: "US 5", "US size 10½". Ignore case."""
UK_SIZE: Final = r"(?:uk\s*(?:size\s*|no\.?\s*|#\s*)?|no\.?\s*)\d{1,2}(?![.\d])"
"""Regular expression for an old British size, thinner as it rises: "UK 8", "UK size 10", "No. 10"."""
BARE_SIZE: Final = r"size\s*#?\s*\d{1,2}(?:\.5|\s*1/2|½)?"
"""Regular expression for a number that does not say of which table: "size 8"."""
MM_SIZE: Final = r"\d+(?:[.,]\d+|\s*½|\s+1/2)?\s*mm"
"""Regular expression for a size in millimetres: "3.75 mm", "4½ mm", "4,5 mm"."""
SIZE: Final = (
    rf"(?:size\s+)?(?:(?:{US_SIZE}\s*/?\s*)?\(?\s*{MM_SIZE}\s*\)?(?:\s*\(\s*{US_SIZE}\s*\))?|{US_SIZE})"
)
"""Regular expression for a size by either number or both: "3.75 mm", "US 5 (3.75 mm)", "3.75 mm (US 5)"."""
NEEDLE_ROLES: Final[dict[str, str]] = {
    "rib": r"(?:rib(?:bing)?|cuffs?|hem|waistband|band|neckband|edging|border)",
    "main": r"(?:main|body|gauge|stockinette|stocking[\s-]stitch|st\.?\s?st\.?)",
    "colourwork": r"(?:colou?r\s?work|stranded|fair[\s-]isle)",
    "sleeve": r"sleeves?",
    "yoke": r"yoke",
    "lace": r"lace",
}
"""What pages call needles by for their use, each with a regular expression: "ribbing needles", "body needle".

Source: common practice.
"""
ROLE_SIZE: Final = rf"(?:{'|'.join(NEEDLE_ROLES)})-size"
"""Regular expression for needles called by a use, as lines are put: "rib-size"."""
NEEDLES: Final = (
    rf"(?:{SIZE}|{UK_SIZE}|{BARE_SIZE}|smaller|larger|{ROLE_SIZE})"
    r"\s+(?:(?:circular|double-pointed)\s+)?needles?"
)
"""Regular expression for needles as an instruction names them: "US 5 circular needle", "larger needles"."""


@dataclass(frozen=True, slots=True, kw_only=True)
class NeedleSize:
    """One row of the needle table."""

    us: str
    """The US number as printed, for example "10.5" or "000"."""
    mm: float
    """The diameter in most tables. Unit: mm."""
    also_mm: tuple[float, ...] = ()
    """Other diameters found in print under the same number. Unit: mm."""


NEEDLE_SIZES: tuple[NeedleSize, ...] = (
    NeedleSize(us="000", mm=1.5, also_mm=(1.25,)),
    NeedleSize(us="00", mm=1.75, also_mm=(1.5,)),
    NeedleSize(us="0", mm=2.0),
    NeedleSize(us="1", mm=2.25),  # one table prints 2.25 mm as US 0
    NeedleSize(us="1.5", mm=2.5),  # not in every table
    NeedleSize(us="2", mm=2.75, also_mm=(3.0,)),  # some makers sell 3 mm as US 2
    NeedleSize(us="2.5", mm=3.0),
    NeedleSize(us="3", mm=3.25),
    NeedleSize(us="4", mm=3.5),
    NeedleSize(us="5", mm=3.75),
    NeedleSize(us="6", mm=4.0),
    NeedleSize(us="7", mm=4.5),
    NeedleSize(us="8", mm=5.0),
    NeedleSize(us="9", mm=5.5),
    NeedleSize(us="10", mm=6.0),
    NeedleSize(us="10.5", mm=6.5),
    NeedleSize(us="11", mm=8.0),
    NeedleSize(us="13", mm=9.0),
    NeedleSize(us="15", mm=10.0),
    NeedleSize(us="17", mm=12.75, also_mm=(12.0,)),
    NeedleSize(us="19", mm=15.0, also_mm=(16.0,)),
    NeedleSize(us="35", mm=19.0),  # some tables also list 20 mm as US 36
    NeedleSize(us="36", mm=20.0),  # not in every table
    NeedleSize(us="50", mm=25.0),
)
"""US sizes from thin to thick. 7 mm and 7.5 mm have no US number.

Source: three published conversion tables, which agree on every row with a single diameter.
"""


UK_SIZES: Final[dict[int, float]] = {
    14: 2.0, 13: 2.25, 12: 2.75, 11: 3.0, 10: 3.25, 9: 3.75, 8: 4.0, 7: 4.5,
    6: 5.0, 5: 5.5, 4: 6.0, 3: 6.5, 2: 7.0, 1: 7.5, 0: 8.0,
}  # fmt: skip
"""Old British sizes against millimetres.

Source: common practice, the conversion tables that needles and handbooks print, from memory.
"""


def needle_from_uk(text: str) -> float | None:
    """Return the diameter of an old British size in a text; None if it names none that is listed. Unit: mm.

    Source: `UK_SIZES`.
    """
    match = re.search(UK_SIZE, text, re.I)
    return UK_SIZES.get(int(re.findall(r"\d+", match.group())[-1])) if match else None


_SAME_MM = 0.01
# Needles closer in size than this are one needle, printed in two ways.


def is_same_needle(one_mm: float, other_mm: float) -> bool:
    """Return whether two diameters are the same needle, printed in two ways.

    Args:
        one_mm: Of one. Unit: mm.
        other_mm: Of the other. Unit: mm.
    """
    return abs(one_mm - other_mm) < _SAME_MM


def needle_from_us(us: str) -> NeedleSize:
    """Find the row of a US number.

    Args:
        us: The number as printed, with or without "US"; "10 1/2" and "10½" are read as "10.5".

    Raises:
        ValueError: No table has that number.

    Source: `NEEDLE_SIZES`.
    """
    wanted = us.upper().removeprefix("US").strip().replace("½", " 1/2").replace(" 1/2", ".5").replace(" ", "")
    for size in NEEDLE_SIZES:
        if size.us == wanted:
            return size
    known = ", ".join(size.us for size in NEEDLE_SIZES)
    raise ValueError(f'there is no US needle size "{us}"; the sizes are {known}.')
