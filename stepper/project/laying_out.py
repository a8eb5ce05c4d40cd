"""Records of what is laid out without working a stitch: markers, marks to measure from, needles."""

from __future__ import annotations

from stepper.project.problems import Span
from stepper.project.stitchwork import Numbers
from stepper.records import dataclass


@dataclass(frozen=True, slots=True)
class MarkEvery:
    """Place a marker every so many stitches."""

    every: Numbers
    place: Span


@dataclass(frozen=True, slots=True)
class MarkAfter:
    """Markers placed without working a stitch: `Place markers in turn after 16, 20 and 32 sts`."""

    counts: tuple[Numbers, ...]
    """Stitches from the beginning to the first marker, from there to the next, and so on."""
    ends: bool
    """Whether the one number there is counts from each end: `Place a marker 40 sts in from each side`."""
    place: Span


@dataclass(frozen=True, slots=True)
class MarkRow:
    """A mark placed in the row just worked, to measure from: `place markers at each end of last row`."""

    text: str
    place: Span
    onwards: bool = False
    """Whether all lengths of the piece count from it: `the piece is now measured from here`."""


@dataclass(frozen=True, slots=True)
class SetApart:
    """Rows over a part of the stitches, while the others wait on hold: `Work in rows over next 32 sts`."""

    number: Numbers | None
    """The stitches that are worked on, from where the row begins; None if only the others are counted, or if
    neither is: a gap parts them then."""
    others: Numbers | None
    name: str
    """The part the others are held for; empty if the line does not say."""
    held: bool
    """Whether the line says that the others go on hold."""
    heel: bool
    """Whether the rows are those of a heel, so that the others are the instep."""
    place: Span
    needle: int = 0
    """The needle they lie on, from 1; 0 if the line does not say."""


@dataclass(frozen=True, slots=True)
class OnlyOn:
    """One part of a piece that was divided is gone on with: `Go on over back sts only`."""

    part: str
    """`front`, `back`, `left front` or `right front`."""
    place: Span


@dataclass(frozen=True, slots=True)
class BeginFurther:
    """Stitches knitted once more to where the rounds begin from now on: `K10, pm for new BOR`."""

    number: Numbers | None
    """None for those on the first needle: `Knit the sts from N1 onto N4`."""
    place: Span
    instep: bool = False
    """Whether they are those before the instep: `Knit to the instep; this is the new start of the round`."""


@dataclass(frozen=True, slots=True)
class OverNeedles:
    """Stitches of a round laid over several needles, as for a sock."""

    needles: Numbers | None
    """How many needles; None if only the stitches on each are given."""
    counts: tuple[Numbers, ...]
    """Stitches on each needle in order; a single number if all are alike; none if divided evenly."""
    place: Span
    counted: bool = False
    """Whether they are only counted where they lie: `56 sts rem: 28 on needle 1, 28 on needle 2`."""


@dataclass(frozen=True, slots=True)
class InstepOn:
    """Which needles of a sock hold its instep; the others hold its sole: `Instep on needle 1`."""

    needles: tuple[int, ...]
    """Their numbers, from 1."""
    place: Span


@dataclass(frozen=True, slots=True)
class BeginsAt:
    """Where the rounds of a sock are said to begin: `The round now begins at the centre of the heel`."""

    instep: bool
    """Whether at the instep; in the middle of the sole otherwise."""
    place: Span


@dataclass(frozen=True, slots=True)
class MoveOver:
    """Stitches slipped from one needle to its neighbour: `Slip 7 sts from needle 2 to needle 1`."""

    number: Numbers
    source: int
    """Needle they come from, from 1."""
    to: int
    place: Span
