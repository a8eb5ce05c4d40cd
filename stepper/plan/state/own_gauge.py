"""Choose the gauge by which a length of garter stitch, moss or another close fabric becomes rows. No I/O.

Garter stitch takes about a third more rows to a length than stockinette on the same needle (common practice),
so that the gauge of the section gives a piece that is too short. A gauge of the file that bears the fabric's
name is used in its place; where there is none, the knitter is told.
"""

from __future__ import annotations

import re

from stepper.craft.needles import is_same_needle
from stepper.plan.state.needle_and_yarn import fabric_on
from stepper.plan.state.needles import Needles
from stepper.project.duration import Duration, UntilLength
from stepper.project.model import Fabric
from stepper.project.stitchwork import PrintedLength
from stepper.regex import regex

_CLOSE = regex(r"\b(garter|moss|seed|linen)\b", re.I)
"""Fabrics whose rows are well apart from those of stockinette."""


def gauge_for(manner: str, duration: Duration, needles: Needles) -> Fabric:
    """Return the fabric by whose rows a length is worked: the one in hand, or that of its own name.

    Args:
        manner: How the rounds are worked, as the line says.
        duration: How long.
        needles: The knitting in hand.
    """
    own, named = needles.fabric, _CLOSE.search(manner)
    if named is None or not isinstance(duration, UntilLength):
        return own
    if needles.project.spacing is None:
        return own  # without a spacing the plan is made as it was before, for a journal knitted then
    word = named.group().lower()
    if word in own.name.lower():
        return own
    fits = [
        fabric
        for name, fabric in needles.project.fabrics.items()
        if word in name.lower() and _on_needle(fabric, needles.needle_mm)
    ]
    if len(fits) == 1:
        return fits.pop()
    needles.warn(
        duration.length.place,
        f"{duration.length.printed} of {word} stitch become rows by the gauge of {own.name}: rows of {word} "
        f"stitch are usually closer. Give it a gauge of its own ({word}: ...), or measure.",
    )
    return own


def tell_other_needle(length: PrintedLength, needles: Needles) -> None:
    """Tell, once for a needle, that a length on it becomes rows by the gauge of another needle."""
    fabric, mm = needles.fabric, needles.needle_mm
    if needles.project.spacing is None or fabric.needle_mm is None or mm is None:
        return
    if is_same_needle(fabric.needle_mm, mm):
        _tell_other_fabric(length, needles, mm)
        return
    _tell_once(
        length,
        needles,
        f"lengths on {mm:g} mm needles become rows by the gauge of {fabric.name}, which is for "
        f"{fabric.needle_mm:g} mm: give {mm:g} mm a gauge of its own, or measure.",
    )


def _tell_other_fabric(length: PrintedLength, needles: Needles, mm: float) -> None:
    """Tell that the gauge of her needle is that of another fabric than the pattern has here."""
    printed = needles.alterations.printed_mm
    if printed is None or is_same_needle(printed, mm):
        return
    fabric = fabric_on(printed, needles.section.fabric, needles.project)
    if fabric.name == needles.fabric.name:
        return
    _tell_once(
        length,
        needles,
        f"the pattern has {printed:g} mm needles here; lengths on yours become rows by the gauge of "
        f"{needles.fabric.name}, which is for {mm:g} mm: if that is another fabric, measure.",
    )


def _tell_once(length: PrintedLength, needles: Needles, told: str) -> None:
    if all(told != caution.message for caution in needles.cautions):
        needles.warn(length.place, told)


def _on_needle(fabric: Fabric, needle_mm: float | None) -> bool:
    """Return whether a fabric is knitted on the needle in hand, or names none."""
    return fabric.needle_mm is None or needle_mm is None or is_same_needle(fabric.needle_mm, needle_mm)
