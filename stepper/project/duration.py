"""Records of how long something is worked: rounds, a length, repeats, until a count is reached."""

from __future__ import annotations

from stepper.project.problems import Span
from stepper.project.stitchwork import Numbers, PrintedLength
from stepper.records import dataclass


@dataclass(frozen=True, slots=True)
class Rounds:
    """A duration in rounds."""

    number: Numbers
    more: bool
    """Whether they are added to those already worked."""
    total: bool = False
    """Whether the words say "in all", so that the same rounds worked just before count."""


@dataclass(frozen=True, slots=True)
class UntilLength:
    """A duration by length."""

    length: PrintedLength
    measured: bool
    """Whether the whole piece is measured (`until piece measures`) or only what is worked now (`for`)."""
    start: str
    """Where measuring begins: `section`, `cast-on`, `divide` (the round that put stitches on hold), `picked
    up`, `marked`, `heel` (the back of it), `foot` (the heel or the toe, whichever it begins with), `piece`
    (all of it), `armhole edge` (where an armhole begins, or the piece where none does yet), or `beg` or `end`
    and what begins or ends: `end rib`, `beg armhole`."""
    blocked: bool
    """Whether the length is after blocking."""
    ending: int | None = None
    """Round of the repeat to end with, if the line names one."""
    ending_side: str = ""
    """`RS` or `WS` row to end with, or `k` or `p` for a knit or a purl row, or `at neck` for the edge to end
    at, if the line names one."""
    of: str = ""
    """What is measured, in the line's words: `piece`, `hand`; empty where it says from where."""


@dataclass(frozen=True, slots=True)
class Times:
    """A duration in repeats."""

    number: Numbers
    more: bool
    total: bool = False
    """Whether the times already worked count: `a total of 5 times`."""


@dataclass(frozen=True, slots=True)
class UntilCount:
    """A duration by the number of stitches left: `until 48 sts rem`."""

    number: Numbers


@dataclass(frozen=True, slots=True)
class UntilBetween:
    """A duration by the stitches between markers or wraps: `until there are 12 sts between markers`."""

    number: Numbers
    wraps: bool = False
    """Whether they lie between the last wraps of short rows: `until 10 sts rem unwrapped in center`."""
    kind: str = ""
    """`gusset` or `thumb` if the line says which two markers, where there may be others."""
    needle: int = 0
    """The needle of a sock whose stitches they are, from 1: `until 28 sts remain on N2`; 0 for none."""


@dataclass(frozen=True, slots=True)
class UntilAllWorked:
    """A duration by short rows: until no stitch waits beyond their turns, as at the turn of a heel."""

    place: Span
    left: Numbers | None = None
    """Stitches that wait at each side then; None for none."""


@dataclass(frozen=True, slots=True)
class UntilRows:
    """A duration by the total rows of the piece: `until 40 rows have been worked in all`."""

    number: Numbers
    in_all: bool
    """Whether the rows before the line count."""


@dataclass(frozen=True, slots=True)
class UntilLike:
    """A duration matching another part: `until front measures same as back to armhole`."""

    part: str
    """Name of the section, in lower case."""
    upto: str
    """Where in that part the length ends: `armhole`, `shoulder`."""
    place: Span
    fewer: Numbers | None = None
    """Rows by which the piece stays shorter, if it does: `… less 15 rows`."""


@dataclass(frozen=True, slots=True)
class Paced:
    """How fast the rounds of the line grow or shrink: `inc 2 sts every other rnd`, said beside them."""

    direction: int
    """+1 for an increase, -1 for a decrease."""
    number: Numbers
    every: Numbers
    place: Span


@dataclass(frozen=True, slots=True)
class Ended:
    """Where the rounds before it end: `ending with a WS row`."""

    side: str
    """`RS` or `WS`, or `k` or `p` for a knit or a purl row, or `at neck` for an edge; empty if the line
    names a round by number."""
    number: Numbers | None
    place: Span


Duration = Rounds | UntilLength | Times | UntilCount | UntilLike | UntilBetween | UntilRows | UntilAllWorked
