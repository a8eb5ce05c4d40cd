"""The yarn that each kind of stitch takes: loops drawn, and stitch widths it runs straight across.

A loop is the unit of plain knitting, whose length `stepper.craft.loop_length` derives from the gauge.
Anything but a plain loop is given as a range, since it depends on hands and yarn; the range is part of the
answer. No I/O.

Source, unless another is named: counted from how the stitch is made (common practice); the fractions of a
loop at either end of a range are assumptions of this project.
"""

from __future__ import annotations

import math
from functools import lru_cache
from types import MappingProxyType
from typing import Final

from stepper.craft.loop_length import DRY
from stepper.craft.stitches import Kind, stitch
from stepper.records import dataclass

Three = tuple[float, float, float]
"""Low, likely, high."""

NOTHING: Final[Three] = (0.0, 0.0, 0.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class StitchYarn:
    """The yarn that one stitch takes."""

    loops: Three = NOTHING
    """Unit: loops of plain knitting."""
    widths: Three = NOTHING
    """Unit: widths of a stitch."""


def _loops(low: float, likely: float, high: float) -> StitchYarn:
    return StitchYarn(loops=(low, likely, high))


_ONE: Final = _loops(1, 1, 1)

_TAKES: Final = MappingProxyType(
    {
        "k1b": _loops(1, 1.2, 1.5),
        "mb": _loops(5, 12, 18),  # five stitches into one, two to three rows of them, then one again
        "kfb": _loops(2, 2, 2),
        "pfb": _loops(2, 2, 2),
        "inc": _loops(2, 2, 2),
        "kfbf": _loops(3, 3, 3),
        "kyok": _loops(2.5, 3, 3),
        "yo": _loops(0.5, 1, 1),  # laid over the needle, not drawn through
        "yo2": _loops(1, 2, 2),
        "ds": _loops(0, 0.5, 1),  # slipped, the yarn pulled tight over the needle
        "w&t": StitchYarn(widths=(1, 1.5, 2)),
        "bo": _loops(1, 1, 1.5),
        "graft": _loops(0.5, 0.5, 1),  # one loop of the sewn row joins two stitches
        "draw": StitchYarn(widths=(0.3, 0.5, 1)),  # the tail runs through; it is pulled tight
        "rest": StitchYarn(),
        "hold": StitchYarn(),
        "return": StitchYarn(),
    }
)

CAST_ON: Final = StitchYarn(loops=(1, 1, 1), widths=(0, 3, 3))
"""One stitch of the cast-on that begins a piece. Low: a single loop. Source: the long tail takes three
widths besides the loops on the needle (Righetti, as cited at ehow.com 7701638)."""

STRETCHY_BIND_OFF: Final = _loops(1.5, 2, 2)
"""One stitch bound off with a yarn over before it. Source: Bestor, Cast On, Bind Off, p. 174."""

SEWN_BIND_OFF: Final = StitchYarn(widths=(3, 3, 5))
"""One stitch bound off with a sewing needle. Source: three times the edge (Zimmermann's, tutorial by A.
Rangel) to five times (the stretchy kind: Bestor, Cast On, Bind Off)."""

RIB_AT_MOST: Final = math.sqrt(16431.497 / 12068.59)
"""Most that a loop of ribbing takes, relative to a plain one of the same count over the same width.

A gauge counted on drawn-in ribbing hides half of the stitches; counted flat, as patterns print it, the plain
relation holds. Source: mill rules of 1x1 rib and plain fabric, whose ratio is that of loop length squared
(textilecalculation, Feb 2015)."""

FLOAT_SLACK: Final[Three] = (1.0, 1.05, 1.15)
"""Length of a float relative to the straight line behind the stitches. At least 1 (textilethelp.com); the
rest is an assumption of this project."""

END_MM: Final[Three] = (100.0, 150.0, 200.0)
"""An end left to weave in. Common practice: a hand's length. Unit: mm."""


@lru_cache(maxsize=1024)
def stitch_yarn(code: str) -> StitchYarn:
    """Return the yarn that one stitch of a code takes.

    Args:
        code: A code of the stitch table. A cast-on is taken as one within a piece, with loops alone.

    Raises:
        KeyError: The code is not in the table.
    """
    entry = stitch(code)
    if entry.code in _TAKES:
        return _TAKES[entry.code]
    if entry.code.startswith("sl"):
        return StitchYarn(widths=(1, 1, 1))
    if entry.kind is Kind.CABLE:
        return _cable(entry.code, entry.leaves)
    if entry.kind is Kind.OWN:
        return _own(entry.uses, entry.leaves)
    return _ONE if entry.leaves else StitchYarn()


def _own(uses: int, leaves: int) -> StitchYarn:
    """Return what stitches take of which only the number is known: as many plain loops as stitches are left.

    Low: a third of them slipped. High: half as much again, as where every fourth is worked three times.
    """
    return _loops(min(uses, leaves) * 2 / 3, leaves, max(uses, leaves) * 1.5)


def crossing_widths(crossing: int, over: int) -> float:
    """Return the most a cable crossing adds, if none of it is drawn from the stitches around it.

    Both legs of a loop that moves `over` stitches sideways run diagonally across the height of a round.

    Args:
        crossing: Stitches that move. Range: 1 and up.
        over: How many stitches they move. Range: 0 and up.

    Returns:
        Unit: widths of a stitch.

    Source: Pythagoras; the height of a round is Kw / Kc of a width (Munden 1959).
    """
    height = DRY.stitches / DRY.rounds
    return crossing * 2 * (math.hypot(height, over) - height)


def _cable(code: str, stitches: int) -> StitchYarn:
    if "/" in code:
        parts = [int(part) for part in code.split(" ")[0].split("/")]
    else:  # "c4f" says how many stitches cross, half of them over the other half
        parts = [stitches // 2, stitches - stitches // 2]
    first, last, middle = parts[0], parts[-1], sum(parts[1:-1])
    most = crossing_widths(first, last + middle) + crossing_widths(last, first + middle)
    return StitchYarn(loops=(stitches, stitches, stitches), widths=(0, most / 2, most))
