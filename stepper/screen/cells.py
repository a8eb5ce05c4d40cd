"""A round as the squares of a chart: one square for each stitch on the right needle. No I/O.

Squares are in the order in which a chart is read, from its right edge, as the fabric looks from the right
side: a wrong-side row is reversed, and its purls are drawn as the knits they are on the right side.

Source of the signs: chart symbols of the Craft Yarn Council, where a keyboard's characters look like them
(purl a dash, yarn over a circle, decreases by their lean), from memory; the rest chosen here.
"""

from __future__ import annotations

from functools import lru_cache
from types import MappingProxyType
from typing import Final, NamedTuple

from stepper.craft.stitches import Kind, Stitch, stitch
from stepper.plan.model import Group, Round, Run
from stepper.records import dataclass
from stepper.screen.course import SummedPlan
from stepper.screen.drawing.rows import Styled
from stepper.screen.drawing.style import Badge, Terminal, paint_badge
from stepper.screen.yarns import Yarns
from stepper.session.counting.tally import markers_in


class Square(NamedTuple):
    """One stitch. A tuple, because thousands are looked up at every key and a tuple is found the quickest."""

    sign: str
    """The sign of the stitch; empty for a plain knit stitch, which shows its yarn instead."""
    yarn: str
    """Key of its yarn."""


_SIGNS: Final = MappingProxyType(
    {
        "k": "",
        "p": "-",
        "yo": "o",
        "yo2": "o",
        "mb": "*",
        "ds": "d",
        "co": "c",
        "bo": "b",
        "pu": "u",
        "graft": "g",
        "hold": "=",
        "return": "=",
        "rest": "=",
    }
)
_LEFT_LEANING: Final = frozenset(("ssk", "ssp", "skp", "sssk", "sssp"))
_CENTRED: Final = frozenset(("sk2p", "s2kp", "s2pp"))

CAUGHT: Final = "~"
"""Sign of a stitch behind which a float is caught."""
MARKER: Final = "|"
"""Sign of a marker."""

LEGEND: Final = (
    ("-", "purl"),
    ("+", "increase"),
    ("o", "yarn over"),
    ("/", "decrease leaning right"),
    ("\\", "decrease leaning left"),
    ("^", "centred decrease"),
    ("v", "slip"),
    ("t", "through the back loop"),
    ("x", "cable"),
    ("=", "held"),
    ("?", "as its own words say"),
    ("c", "cast on"),
    ("b", "bind off"),
    (CAUGHT, "float caught behind it"),
    (MARKER, "marker"),
)
"""Signs and what they stand for, for the knitter."""


def sign_of(entry: Stitch) -> str:
    """Return the sign of a stitch. Always: at most one letter; empty for a knit stitch alone."""
    if entry.code in _SIGNS:
        return _SIGNS[entry.code]
    if entry.kind is Kind.OWN:
        return "?"
    if entry.kind is Kind.INCREASE:
        return "+"
    if entry.kind is Kind.DECREASE:
        if entry.code in _CENTRED:
            return "^"
        return "\\" if entry.code in _LEFT_LEANING or entry.code.endswith("tbl") else "/"
    if entry.kind is Kind.CABLE:
        return "x"
    if entry.code.startswith("sl"):
        return "v"
    return "t" if entry.code.endswith("tbl") else entry.code[0]


def draw_squares(round_: Round) -> tuple[Square, ...]:
    """Draw a round as squares, from the right edge of the chart.

    Always: as many squares as `round_.progress`.
    """
    return _squares(round_.runs, is_turned(round_))


@lru_cache(maxsize=128)
def _squares(runs: tuple[Run, ...], turned: bool) -> tuple[Square, ...]:
    """Draw some runs; cached, because the rounds in sight are redrawn at every key."""
    found: list[Square] = []
    for run in runs:
        entry = stitch(run.stitch)
        if entry.progress:
            found += [_square(entry.code, run.yarn, turned)] * (entry.progress * run.times)
    return tuple(reversed(found)) if turned else tuple(found)


@lru_cache(maxsize=1024)
def _square(code: str, yarn: str, turned: bool) -> Square:
    entry = stitch(code)
    seen = stitch(entry.wrong_side) if turned and entry.wrong_side else entry
    return Square(sign_of(seen), yarn)


def is_turned(round_: Round) -> bool:
    """Return whether a row is worked from left to right on the chart."""
    return round_.flat and round_.side == "WS"


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartRow:
    """A round as it lies in the chart, whatever is worked of it; places from 0 at the right edge."""

    squares: tuple[Square, ...]
    turned: bool
    """Whether it is worked from left to right on the chart."""
    caught: frozenset[int]
    """The squares behind which a float is caught."""
    marked: frozenset[int]
    """The squares with a marker at their left edge."""


@lru_cache(maxsize=512)
def chart_row(course: SummedPlan, index: int) -> ChartRow:
    """Lay a round out as it lies in the chart; once, since the rounds in sight are redrawn at every key."""
    round_ = course.rounds[index]
    total, turned = course.stitches_in(index), is_turned(round_)
    return ChartRow(
        squares=draw_squares(round_),
        turned=turned,
        caught=list_catches(round_),
        marked=frozenset((total - mark if turned else mark) - 1 for mark in markers_in(round_)),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class SquareLook:
    """How a square looks besides its stitch."""

    worked: bool = False
    """Dimmed: what is bright is still to be worked, on every page."""
    in_hand: bool = False
    """Whether it is the next stitch to be worked."""
    caught: bool = False
    """Whether a float is caught behind it."""
    marker: bool = False
    """Whether there is a marker at its left edge."""


def draw_square(square: Square, yarns: Yarns, terminal: Terminal, columns: int, look: SquareLook) -> Styled:
    """Return a square as letters.

    Args:
        square: The stitch.
        yarns: They give its colour and sign.
        terminal: The terminal to draw on.
        columns: How wide a square is; one column has room for a single sign. Range: 1 and up. Unit: columns.
        look: How it looks besides.
    """
    sign = square.sign or yarns.of(square.yarn).sign
    paint = yarns.paint(square.yarn, terminal.depth, dim=look.worked, bold=not look.worked)
    if look.in_hand:
        paint = paint_badge(Badge.ASKS, terminal.depth)
    extra = MARKER if look.marker else CAUGHT if look.caught else ""
    if columns == 1:
        return Styled(CAUGHT if look.caught else sign, paint)
    return Styled(extra + sign.rjust(columns - len(extra)), paint)


def list_catches(round_: Round) -> frozenset[int]:
    """List the squares behind which a float is caught, from 0 at the right edge of the chart."""
    if not round_.caught:
        return frozenset()
    last, turned = round_.progress - 1, is_turned(round_)
    places = (place - 1 for _, each in round_.caught for place in each)
    return frozenset(last - place if turned else place for place in places)


def repetition_at(round_: Round, stitches: int) -> tuple[int, int] | None:
    """Return which repetition of a repeat a place is in, from 1, and of how many; None between repeats."""
    place = 0
    for item in round_.phrase:
        if isinstance(item, Group) and item.times > 1 and place <= stitches < place + item.progress:
            return (stitches - place) // (item.progress // item.times) + 1, item.times
        place += item.progress
    return None
