"""The parts of a printed round, once read: numbers, lengths, stitches, marks and turns as records.

The sentences made of them are in `stepper.project.instructions`.
"""

from __future__ import annotations

from dataclasses import dataclass

from stepper.project.problems import Span


@dataclass(frozen=True, slots=True)
class Numbers:
    """A number as printed: one for all sizes, or one for each."""

    values: tuple[int, ...]
    place: Span

    def of(self, size: int) -> int:
        """Return the number of a size (its place in the list, from 0)."""
        return self.values[size] if len(self.values) > 1 else self.values[0]


@dataclass(frozen=True, slots=True)
class Length:
    """A length as printed: one for all sizes, or one for each. Unit: mm."""

    values: tuple[float, ...]
    place: Span
    printed: str
    """As it stands in the file, unit included."""

    def of(self, size: int) -> float:
        """Return the length of a size. Unit: mm."""
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


@dataclass(frozen=True, slots=True)
class Until:
    """A stitch worked up to a place: `k to last 3 sts`, `k to 1 st before marker`, `k to end`."""

    stitch: str
    goal: str
    """`end`, `marker`, `behind` (so many past it), `last`, `centre` (the so many middle stitches),
    `before centre` (so many before the middle one), `turn` (the nearest turn of a short row) or `past` (so
    many past it)."""
    short: Numbers | None
    """Stitches left before the goal (`past`: worked beyond it); nothing for none."""
    yarn: str | None
    place: Span
    name: str = ""
    """`marker`: `first`, `2` (the second), `last`, `end` or the kind (`gusset`, `side`) where the line says
    so; `turn`: `ds` or `wrap` where it names that stitch."""
    ribbed: bool = False
    """`pattern`: whether the words say that the fabric is a rib."""


@dataclass(frozen=True, slots=True)
class Several:
    """A group worked several times: `(k1, yo) 3 times`, `*k2, p2; rep from * to end`."""

    elements: tuple[Element, ...]
    times: Numbers | None
    """How often in all; None if it is worked up to a place."""
    goal: str
    """`times`, `end`, `last`, `marker`, `markers` (once for every marker left), `rest` (as often as leaves
    room for what follows), `fit` (as often as it fits in whole) or `around` (`k8, k2tog around`: all of it to
    the end, or only its last stitch)."""
    short: Numbers | None
    place: Span
    reading: int = 0
    """How often less it is worked in the other reading of the words; 0 where they have but one."""
    name: str = ""
    """`marker`: `last` or `end` where the line says so."""


@dataclass(frozen=True, slots=True)
class Mark:
    """A marker placed, slipped or removed: `pm`, `sm`, `rm`; or where a needle of a sock begins: `needle`."""

    stitch: str
    name: str
    """Of a `needle` its number, `each`, or `rest` for those that are not named."""
    place: Span


@dataclass(frozen=True, slots=True)
class Hold:
    """Stitches put on hold for a part of the garment."""

    times: Numbers | None
    """How many; nothing for all that are left."""
    name: str
    place: Span


@dataclass(frozen=True, slots=True)
class TurnHere:
    """A turn in the middle of a row, the rest left unworked."""

    method: str
    """`german`, `wrap`, `plain` or empty for the section's own."""
    place: Span
    left: Numbers | None = None
    """Stitches left unworked, where the line says how many."""


@dataclass(frozen=True, slots=True)
class ChartPart:
    """A chart worked over a part of the round: `chart fern to last 3 sts`, `chart fern over 20 sts`."""

    name: str
    number: int | None
    """Round of the chart, from 1; nothing for the one after that last worked."""
    over: Numbers | None
    """Stitches it is worked over, where the line gives them."""
    goal: str
    """`end`, `last` or `marker` where it is worked up to a place, else empty."""
    short: Numbers | None
    place: Span


@dataclass(frozen=True, slots=True)
class PickUp:
    """Stitches picked up along rows: `pick up and knit 3 sts for every 4 rows along the left front edge`."""

    stitches: Numbers
    rows: Numbers
    along: str
    """The words that say where; sections named in them are measured, else all rows so far."""
    place: Span
    stitches_of_edge: bool = False
    """Whether it goes by the stitches of the cast-on or bound-off edge rather than by rows."""


@dataclass(frozen=True, slots=True)
class Spread:
    """Stitches made or lost evenly over a part of the row: `inc 6 sts evenly over next 30 sts`."""

    change: int
    """+1 for an increase, -1 for a decrease."""
    by: Numbers
    over: Numbers
    place: Span


@dataclass(frozen=True, slots=True)
class Across:
    """Held stitches worked on to the needles in the middle of a round: `k across left sleeve sts`."""

    name: str
    """Empty where the line does not say which, as only one part is on hold."""
    place: Span
    number: Numbers | None = None
    """How many they are, where the line says so."""
    stitch: str = "k"
    """`k`, `p` or `pattern` (as they look): how they are worked."""


Element = Work | Until | Several | Mark | Hold | TurnHere | ChartPart | PickUp | Across | Spread
