"""Where a shaping ends that goes on to a length: "every 8th row until sleeve measures 36 cm". No I/O.

The length becomes rows by the gauge, so how often it is shaped does, too; that is told. The rows left behind
the last shaping are worked without one, as the piece has to be so long before the next line begins.
"""

from __future__ import annotations

from stepper.craft.gauge import half_up
from stepper.plan.lines.durations import nearest_rows
from stepper.plan.state.measuring_places import measured_from, without_heel, without_held
from stepper.plan.state.needles import Needles
from stepper.plan.state.own_gauge import tell_other_needle
from stepper.project.instructions import Leg


def ends_at(legs: tuple[Leg, ...], needles: Needles) -> int | None:
    """Return how many rows of the garment are worked where the last interval ends; None if it ends otherwise.

    A length that lies behind the piece, an end that no row has, and an interval behind a length are reported.
    """
    for leg in legs[:-1]:
        if leg.upto is not None:
            told = "an interval that ends at a length is read as the last of its line."
            needles.report(leg.upto.length.place, told, "Write what follows as a line of its own.")
            return None
    duration = legs[-1].upto if legs else None
    if duration is None or needles.counting.lost:
        return None
    place, found = duration.length.place, len(needles.findings)
    if duration.ending is not None or duration.ending_side not in ("", "RS", "WS"):
        told = "beside a shaping, a length ends with a right-side or a wrong-side row, or with any."
        needles.report(place, told, 'Write "ending with a WS row", or leave it out.')
        return None
    duration = without_held(without_heel(duration, needles), needles)
    origin = measured_from(duration, needles)
    exact, _ = needles.length_in_rounds(duration.length, origin=origin, blocked=duration.blocked)
    if len(needles.findings) > found:
        return None
    if half_up(exact) < 1:
        told = f"the piece measures {duration.length.printed} already, so no such row is worked."
        needles.report(place, told, "Say from where it is measured.", kind="length")
        return None
    tell_other_needle(duration.length, needles)
    rows = half_up(exact)
    if duration.ending_side and needles.flat:
        rows = nearest_rows(exact, 2, 1 if needles.side == duration.ending_side else 0)
    return len(needles.drafts) + rows


def refuse_none(leg: Leg, needles: Needles) -> None:
    """Report a shaping to a length that comes before its first row would."""
    assert leg.upto is not None
    length = leg.upto.length
    told = f"by the gauge the piece measures {length.printed} before the first such row."
    needles.report(length.place, told, "Say how often it is shaped, or work even to that length.")


def tell_how_often(legs: tuple[Leg, ...], times: int, needles: Needles) -> None:
    """Tell how often a line shapes to a length by the gauge, and what that leaves."""
    upto = legs[-1].upto
    assert upto is not None
    often = {1: "once", 2: "twice"}.get(times, f"{times} times")
    needles.warn(
        upto.length.place,
        f"by the gauge it is shaped {often} to {upto.length.printed}, which leaves {needles.count} stitches; "
        "with rows of another height it would be more or fewer.",
    )
