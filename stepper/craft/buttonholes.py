"""Where buttonholes lie in a row: the outer ones so far from the ends, the gaps between as alike as can be.

Whole numbers in and out. No I/O.
"""

from __future__ import annotations

from typing import Final

from stepper.craft.even.spacing import gaps

USUAL_ENDS: Final = 3
"""Stitches between the outermost buttonholes and the ends of a band where nothing is said. Unit: stitches.

Source: common practice; bands are printed with two to five.
"""


def space_buttonholes(stitches: int, number: int, width: int, ends: int) -> tuple[int, ...]:
    """Return where each buttonhole of a row begins.

    Args:
        stitches: Stitches of the row. Unit: stitches.
        number: Buttonholes to place. Range: 2 and up.
        width: Stitches that each takes. Range: 1 and up.
        ends: Stitches before the first and behind the last. Range: 0 and up.

    Returns:
        Stitches before each, in working order. Shape: (number,).
        Always: the first begins behind `ends` stitches, as many lie behind the last, and the gaps between
        differ by at most one.

    Raises:
        ValueError: there is no room for a stitch between any two, or there are fewer than two.

    Source: common practice; larger gaps are mixed in evenly (`craft/even/spacing`).
    """
    between = stitches - 2 * ends - number * width
    if number < 2 or between < number - 1:
        raise ValueError(f"{number} buttonholes of {width} stitches do not fit on {stitches}.")
    places = [ends]
    for gap in gaps(between, number - 2, flat=True):
        places.append(places[-1] + width + gap)
    return tuple(places)
