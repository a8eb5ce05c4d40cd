"""Lengths, weights, gauges and counted things as printed. No I/O."""

from __future__ import annotations

from stepper.craft.figures import format_number
from stepper.craft.gauge import from_mm, to_mm


def plural(count: int, one: str, many: str = "") -> str:
    """Say a count with its word: "1 round", "2 rounds"."""
    return f"{count} {one if count == 1 else many or one + 's'}"


MANY = 10_000
"""From how many stitches on they are told in thousands: beyond what is said in words, and nobody needs the
last figure."""


def many_stitches(count: int) -> str:
    """Say how many stitches a stretch of knitting has: "418 stitches", "about 14 thousand stitches"."""
    if count < MANY:
        return plural(count, "stitch", "stitches")
    return f"about {(count + 500) // 1000} thousand stitches"


def length(length_mm: float, units: str) -> str:
    """Write a length: in centimetres to the millimetre, in inches to two decimals.

    Args:
        length_mm: Unit: mm.
        units: `cm` or `in`.
    """
    if units == "in":
        return f"{format_number(from_mm(length_mm, 'in'), 2)} in"
    return f"{format_number(from_mm(length_mm, 'cm'), 1)} cm"


def weight(grams: float) -> str:
    """Say a weight to a tenth of a gram."""
    return f"{format_number(grams, 1)} g"


def gauge(rounds_per_10cm: float, units: str) -> str:
    """Write rounds over the length used for gauges in these units: 10 cm or 4 in."""
    over, factor = ("4 in", to_mm(4, "in") / 100) if units == "in" else ("10 cm", 1.0)
    figures = format_number(rounds_per_10cm * factor, 1)
    return f"{figures} {'round' if figures == '1' else 'rounds'} to {over}"
