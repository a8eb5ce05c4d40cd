"""Records of the parts of a printed round: numbers, lengths, stitches, marks and turns.

The sentences built from them are in `stepper.project.instructions`.
"""

from __future__ import annotations

from collections.abc import Iterator

from stepper.project.problems import Span
from stepper.records import dataclass


@dataclass(frozen=True, slots=True)
class Numbers:
    """A number as printed: one for all sizes, or one for each."""

    values: tuple[int, ...]
    place: Span

    def of(self, size: int) -> int:
        """Return the number for a size (its index in the list, from 0)."""
        return self.values[size] if len(self.values) > 1 else self.values[0]


@dataclass(frozen=True, slots=True)
class PrintedLength:
    """A length as printed: one for all sizes, or one for each. Unit: mm."""

    values: tuple[float, ...]
    place: Span
    printed: str
    """As written in the file, unit included."""
    own: str = ""
    """Name of the length that the knitter gives, where the page leaves it to her (`foot`, `total body to
    underarm`; `piece` for the section); `values` is then what comes on top of it, below 0 for less."""

    def of(self, size: int) -> float:
        """Return the length for a size. Unit: mm."""
        return self.values[size] if len(self.values) > 1 else self.values[0]


# --- inside a round -----------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Work:
    """A stitch worked a number of times: `k34 (36, 40)`, `k2tog`."""

    stitch: str
    times: Numbers
    yarn: str | None
    place: Span
    ribbed: bool = False
    """`pattern`: whether the words say that the fabric is a rib."""
    fabric: str = ""
    """`k`: the fabric that the stretch is worked in, `garter`, `stockinette`, `reverse`, `seed`, `moss` or
    `opposite`; empty for none."""
    patterned: bool = False
    """`pattern`: whether the words call it one ("patt 10"), so that one must have been set up."""


@dataclass(frozen=True, slots=True)
class Until:
    """A stitch worked up to a place: `k to last 3 sts`, `k to 1 st before marker`, `k to end`."""

    stitch: str
    goal: str
    """`end`, `marker`, `behind` (`short` stitches past it), `last`, `centre` (so many middle stitches),
    `before centre` (so many before the middle one), `turn` (the nearest turn of a short row) or `past` (so
    many past it)."""
    short: Numbers | None
    """Stitches left before the goal (`behind`, `past`: beyond it); None for none."""
    yarn: str | None
    place: Span
    name: str = ""
    """`marker`: `first`, `2` (the second), `last`, `end`, the kind (`gusset`, `side`) or the `neck` edge
    between two sides worked at once, if the line says so;
    `turn`: `ds` or `wrap` if it names that stitch; `end`: `across` if the line says no more than that."""
    ribbed: bool = False
    """`pattern`: whether the words say that the fabric is a rib."""
    fabric: str = ""
    """`k`: the fabric that the stretch is worked in, as in `Work.fabric`."""
    patterned: bool = False
    """`pattern`: as in `Work.patterned`."""


@dataclass(frozen=True, slots=True)
class Several:
    """A group worked several times: `(k1, yo) 3 times`, `*k2, p2; rep from * to end`."""

    elements: tuple[Element, ...]
    times: Numbers | None
    """How often in all; None if it is worked up to a place."""
    goal: str
    """`times`, `end`, `last`, `marker`, `markers` (once for every marker left), `rest` (as often as leaves
    room for what follows), `fit` (as often as the whole group fits) or `around` (`k8, k2tog around`: all of
    it to the end, or only its last stitch)."""
    short: Numbers | None
    place: Span
    reading: int = 0
    """How many fewer times it is worked in the other reading of the words; 0 if there is only one."""
    name: str = ""
    """`marker`: `last` or `end` if the line says so; `markers`: `both` where there are two in all, of which
    the beginning of the round may be one."""


@dataclass(frozen=True, slots=True)
class Mark:
    """A marker placed, slipped or removed: `pm`, `sm`, `rm`; or the start of a sock needle: `needle`; or
    where two sides that are worked at once part: `join 2nd ball`, `other ball`."""

    stitch: str
    name: str
    """`needle`: its number, `each`, `rest` for those not named, or a half of the foot: `instep`, `sole`."""
    place: Span


@dataclass(frozen=True, slots=True)
class Hold:
    """Stitches put on hold for a part of the garment."""

    times: Numbers | None
    """How many; None for all that are left, or up to a marker."""
    name: str
    place: Span
    to_marker: bool = False
    """Whether they reach to the next marker."""
    rest: bool = False
    """Whether they are called the remaining ones, so that no others may be left."""
    worked: bool = False
    """Whether the row has just worked them: `K8, place these sts on hold, bind off 12, k to end`."""


@dataclass(frozen=True, slots=True)
class TurnHere:
    """A turn in the middle of a row, leaving the rest unworked."""

    method: str
    """`german`, `wrap`, `plain` or empty for the section's own."""
    place: Span
    left: Numbers | None = None
    """Stitches left unworked, if the line says how many."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RepeatsTold:
    """How a line says that a chart is repeated across its row: `repeating the 4 sts 5 times`."""

    width: int | None
    """Stitches of one repeat; None if the words do not say."""
    times: Numbers | None
    """How often it stands across the row; None if the words do not say."""


@dataclass(frozen=True, slots=True)
class ChartPart:
    """A chart worked over part of the round: `chart fern to last 3 sts`, `chart fern over 20 sts`.

    Or a row of a pattern that the page defines: `row 1 of cable panel over 10 sts`.
    """

    name: str
    number: int | None
    """Round of the chart, from 1; None for the next one."""
    over: Numbers | None
    """Stitches it is worked over, if the line gives them."""
    goal: str
    """`end`, `last` or `marker` if it is worked up to a place, `fill` if the stitches behind it take theirs
    from the end of the row or from a marker, else empty."""
    short: Numbers | None
    place: Span
    defined: bool = False
    """Whether it is a pattern whose rows the page writes out, and no chart."""
    across: RepeatsTold | None = None
    """What the line says of its repeats besides, to be held against chart and stitches."""


@dataclass(frozen=True, slots=True)
class PickUp:
    """Stitches picked up along rows: `pick up and knit 3 sts for every 4 rows along the left front edge`."""

    stitches: Numbers
    rows: Numbers
    along: str
    """The words that say where; sections they name are measured, else all rows so far."""
    place: Span
    stitches_of_edge: bool = False
    """Whether it counts the stitches of the cast-on or bound-off edge rather than rows."""


@dataclass(frozen=True, slots=True)
class Spread:
    """Stitches made or lost evenly over part of the row: `inc 6 sts evenly over next 30 sts`."""

    change: int
    """+1 for an increase, -1 for a decrease."""
    by: Numbers
    over: Numbers | None
    """The stitches they are spread over; None if the words say how many are left behind them."""
    place: Span
    short: Numbers | None = None
    """Stitches left at the end of the row (`evenly to last 5 sts`); None if `over` says how far it is."""
    stitch: str = ""
    """`k` or `p` if the words say how the others are worked; empty for as the fabric has them."""
    worked_in: str = ""
    """The stitch in which the page makes such a change (`inc = kfb`); empty for the usual one."""


@dataclass(frozen=True, slots=True)
class Across:
    """Held stitches worked back onto the needles within a round: `k across left sleeve sts`."""

    name: str
    """Empty if the line does not say which, as only one part is on hold."""
    place: Span
    number: Numbers | None = None
    """How many there are, if the line says so."""
    stitch: str = "k"
    """How they are worked: `k`, `p` or `pattern` (as they appear)."""


Element = Work | Until | Several | Mark | Hold | TurnHere | ChartPart | PickUp | Across | Spread


def every_element(elements: tuple[Element, ...]) -> Iterator[Element]:
    """Yield the elements of a round as written, a group before what is inside it."""
    for element in elements:
        yield element
        if isinstance(element, Several):
            yield from every_element(element.elements)
