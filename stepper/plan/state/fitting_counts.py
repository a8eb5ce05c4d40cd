"""Counts that would fit instead, and what each costs in width. No I/O."""

from __future__ import annotations

import re

from stepper.craft.figures import format_number
from stepper.craft.gauge import Gauge, from_mm
from stepper.regex import regex

_OFFER = regex(
    r"It would fit on (?P<counts>\d+(?:(?:, | or )\d+)*) stitches(?: instead of (?P<count>\d+))?\."
)


def nearest_counts(count: int, multiple: int, plus: int = 0) -> tuple[int, ...]:
    """Return the nearest counts that are a multiple plus a number over, the smaller first.

    Args:
        count: Range: 0 and up. Unit: stitches.
        multiple: Range: 1 and up.
        plus: Stitches besides the repeats. Range: 0 and up.

    Returns:
        The count itself if it fits; otherwise the next below, if it holds a repeat, and the next above.

    Raises:
        ValueError: A number is out of range.

    Source: division with remainder.
    """
    if count < 0 or multiple < 1 or plus < 0:
        raise ValueError(
            f"a count, a multiple from 1 and stitches over it (got {count}, {multiple}, {plus})."
        )
    below = (count - plus) // multiple * multiple + plus
    if below == count and count >= multiple + plus:
        return (count,)
    return tuple(each for each in (below, below + multiple) if each >= multiple + plus)


def price_counts(hint: str, count: int, gauge: Gauge, units: str) -> str:
    """Add to a hint about counts that would fit what each of them costs.

    Args:
        hint: The hint so far; one that offers no counts is returned unchanged.
        count: Stitches on the needles now.
        gauge: That of the section; without one no width is known.
        units: `cm` or `in`.
    """
    match = _OFFER.search(hint)
    if match is None:
        return hint
    now = int(match["count"] or count)
    counts = [int(number) for number in re.findall(r"\d+", match["counts"])]
    said = "; ".join(f"{each} is {costs(each - now, gauge, units)}" for each in counts if each != now)
    return f"{hint} {said}." if said else hint


def costs(change: int, gauge: Gauge | None, units: str) -> str:
    """Say what a change of stitches costs: "6 fewer, 2.7 cm narrower around"."""
    many = f"{abs(change)} {'more' if change > 0 else 'fewer'}"
    if gauge is None:
        return many
    wide = from_mm(gauge.width_mm(abs(change)), "in" if units == "in" else "cm")
    figure = format_number(wide, 2 if units == "in" else 1)
    return f"{many}, {figure} {units} {'wider' if change > 0 else 'narrower'}"
