"""Women's body sizes, as far as known: measurements of the wearer, not of the garment.

The table goes back to page 17 of the Craft Yarn Council's booklet of 2018, which was not at hand. Only the
upper bust bounds were seen, on a page that follows it; everything else is from memory. Any output that shows
a figure from here must say so. The wearer's own measurements are always better. No I/O.
"""

from __future__ import annotations

from typing import Literal

from stepper.craft.gauge import from_mm
from stepper.records import dataclass

Range = tuple[float, float]
Measure = Literal["bust", "back_waist", "arm", "upper_arm", "armhole", "waist", "hip"]


@dataclass(frozen=True, slots=True, kw_only=True)
class BodySize:
    """One size. Every range is (least, most), with the same figure twice if only one is printed. Unit: in."""

    name: str
    """As patterns print it."""
    bust: Range
    """Around the fullest part."""
    back_waist: Range
    """Nape to waist."""
    arm: Range
    """Wrist to underarm."""
    upper_arm: Range
    """Around."""
    armhole: Range
    """Depth."""
    waist: Range
    """Around."""
    hip: Range
    """Around."""


# fmt: off
BODY_SIZES: tuple[BodySize, ...] = (
    BodySize(name="XS", bust=(28, 30), back_waist=(16.5, 16.5), arm=(16.5, 16.5),
             upper_arm=(9.75, 9.75), armhole=(6, 6.5), waist=(23, 24), hip=(33, 34)),
    BodySize(name="S", bust=(32, 34), back_waist=(17, 17), arm=(17, 17),
             upper_arm=(10.25, 10.25), armhole=(6.5, 7), waist=(25, 26.5), hip=(35, 36)),
    BodySize(name="M", bust=(36, 38), back_waist=(17.25, 17.25), arm=(17, 17),
             upper_arm=(11, 11), armhole=(7, 7.5), waist=(28, 30), hip=(38, 40)),
    BodySize(name="L", bust=(40, 42), back_waist=(17.5, 17.5), arm=(17.5, 17.5),
             upper_arm=(12, 12), armhole=(7.5, 8), waist=(32, 34), hip=(42, 44)),
    BodySize(name="1X", bust=(44, 46), back_waist=(17.75, 17.75), arm=(17.5, 17.5),
             upper_arm=(13.5, 13.5), armhole=(8, 8.5), waist=(36, 38), hip=(46, 48)),
    BodySize(name="2X", bust=(48, 50), back_waist=(18, 18), arm=(18, 18),
             upper_arm=(15.5, 15.5), armhole=(8.5, 9), waist=(40, 42), hip=(52, 53)),
    BodySize(name="3X", bust=(52, 54), back_waist=(18, 18), arm=(18, 18),
             upper_arm=(17, 17), armhole=(9, 9.5), waist=(44, 45), hip=(54, 55)),
    BodySize(name="4X", bust=(56, 58), back_waist=(18.5, 18.5), arm=(18.5, 18.5),
             upper_arm=(18.5, 18.5), armhole=(9.5, 10), waist=(46, 47), hip=(56, 57)),
    BodySize(name="5X", bust=(60, 62), back_waist=(18.5, 18.5), arm=(18.5, 18.5),
             upper_arm=(19.5, 19.5), armhole=(10, 10.5), waist=(49, 50), hip=(61, 62)),
)
# fmt: on
"""From small to large. Source: see the module."""


def sizes_for_bust(bust_mm: float) -> tuple[BodySize, ...]:
    """Find the size that a bust falls into, or the two that it falls between.

    Printed sizes leave gaps of 2 in: a bust of 31 in is in none of them.

    Args:
        bust_mm: Range: above 0. Unit: mm.

    Returns:
        One size; in a gap two, the smaller first; none below the smallest or above the largest.

    Raises:
        ValueError: The measurement is not above 0.

    Source: `BODY_SIZES`.
    """
    if not bust_mm > 0:
        raise ValueError(f"the bust must be above 0 (got {bust_mm}).")
    bust = round(from_mm(bust_mm, "in"), 9)
    for size in BODY_SIZES:
        if size.bust[0] <= bust <= size.bust[1]:
            return (size,)
    below = tuple(size for size in BODY_SIZES if size.bust[1] < bust)[-1:]
    above = tuple(size for size in BODY_SIZES if size.bust[0] > bust)[:1]
    return below + above if below and above else ()
