"""The parts of the knitting in hand: section, line, short rows, fabric, what is known of the count. No I/O.

Each is created where it begins: a section and a line with their first round, everything else with the
garment.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from stepper.plan.drafts import Template
from stepper.plan.model import Item
from stepper.plan.phrase import WorkedPhrase
from stepper.plan.round_sources import ChartRound
from stepper.plan.size_alone import AloneIn, LinesAlone
from stepper.project.instructions import Line
from stepper.project.problems import Span


@dataclass(slots=True, kw_only=True)
class SectionInHand:
    """The section that is worked, and what its lines have set up so far."""

    name: str = ""
    start: int = 0
    """Index of its first draft."""
    yarn: str = ""
    """Key of its yarn, used by rounds that name none."""
    own_yarn_again: bool = False
    """Whether another yarn was broken, so that the next round has to say that it is worked in this one."""
    label: str | None = None
    """What the next round is called; None if it has no name of its own."""
    pattern: tuple[Template, ...] = ()
    """The rounds last set up or repeated, including shaping."""
    numbered: dict[int, Template] = field(default_factory=dict)
    """The rounds written out, by number."""
    named: dict[str, Template] = field(default_factory=dict)
    """Rounds with a name of their own: `dec round`."""
    in_all: set[str] = field(default_factory=set)
    """Named rounds whose times, said next, include the one time they were worked where written."""
    back: Template | None = None
    """What all wrong-side rows are, if a line says so for all of them."""
    back_line: Line | None = None
    """That line."""
    garter: bool = False
    """Whether plain rows are knitted on both sides."""
    shaky: bool = False
    """Whether a line was not read, so that what seems to be missing may have been in it."""


@dataclass(slots=True, kw_only=True)
class LineInHand:
    """The line that is worked."""

    number: int = 0
    """Its line number in the file, from 1; 0 before the first."""
    place: Span | None = None
    start: int = 0
    """Index of its first draft."""
    side: str = ""
    """`RS` or `WS` if it is for rows of that side."""
    around: bool = False
    """Whether it calls itself a round: `Next rnd:`, `Rnd 1:`."""


@dataclass(slots=True, kw_only=True)
class ShortRows:
    """Turns before the end of a row, and how they are worked."""

    gap: int | None = None
    """Where the last row was turned before its end, from the right side; None after a whole row."""
    turns: tuple[int, ...] = ()
    """Turns not yet worked past, from the right side."""
    slipped: bool = False
    """Whether the row after the last turn began with a slipped stitch: such a heel closes its own gaps."""
    method: str = ""
    """How they are turned: `german`, `wrap` or `plain`; empty if the pattern does not say."""
    turned_at: Span | None = None
    """Place of a turn without a stated method, until the knitter is told."""
    told: bool = False
    """Whether the knitter has been told the method taken for such turns."""


@dataclass(slots=True, kw_only=True)
class Counting:
    """What is known of the count."""

    lost: bool = False
    """Whether it is unknown: a line was not read or did not fit, and no printed count has followed."""
    unread: bool = False
    """Whether any line so far was not read."""
    off: int = 0
    """By how much the last printed count exceeds the lines; a count that is off by the same is not a new
    fault."""


@dataclass(slots=True, kw_only=True)
class Alterations:
    """How the rounds being worked differ from the printed pattern, in the knitter's words."""

    line: tuple[str, ...] = ()
    """For the current line."""
    section: tuple[str, ...] = ()
    """For the whole section."""
    needle: tuple[str, ...] = ()
    """The rule that makes the current needle the knitter's own; empty for the printed one."""
    marks: dict[int, tuple[str, ...]] = field(default_factory=dict)
    """Line of the file to what is altered in it."""
    reshape: bool = False
    """Whether the current line may decrease where it says increase, and vice versa."""
    over: int = 1
    """Rounds over which the line in hand spreads its change."""
    blended: AloneIn | None = None
    """Says what the lines come to in a size alone, once the size was switched; None before that."""
    unmet: str = ""
    """Why the line of the last switch cannot bring the stitches to those of its size; empty where it can."""


@dataclass(slots=True, kw_only=True)
class LastWorked:
    """The rounds last worked that may come again."""

    written: tuple[tuple[Template, ...], int] = ((), 0)
    """The numbered rounds last written out, and the number of drafts at their end."""
    repeated: tuple[tuple[Template, ...], int] = ((), 0)
    """The rounds last repeated and which of them comes next, from 0."""
    charts: dict[str, int] = field(default_factory=dict)
    """Round of each chart last worked, from 1."""
    marked: int = 0
    """Index behind the draft into which marks were last hung to measure from; 0 for none."""


@dataclass(slots=True, kw_only=True)
class Caches:
    """Rounds already worked out, so that the same round is worked out only once."""

    rounds: dict[tuple[object, ...], tuple[Template, WorkedPhrase]] = field(default_factory=dict)
    """By their template and the stitches they met; the template is kept alive."""
    charted: dict[tuple[object, ...], tuple[Item, ...]] = field(default_factory=dict)
    """Chart rounds laid out over the stitches they met."""
    drawn: dict[tuple[object, ...], ChartRound] = field(default_factory=dict)
    """Chart rounds read, by chart, round, yarn and side; shared by all sizes."""
    alone: dict[int, LinesAlone] = field(default_factory=dict)
    """What the lines come to in each size alone, by its place; shared by all ways to blend."""
    fits: set[int] = field(default_factory=set)
    """Rounds that were worked, by the identity of their template."""


Cell = tuple[str, str]
"""What a column is on one row, from the right side: a stitch, and a yarn, or none for the current one."""
Column = tuple[Cell, ...]
"""What a stitch of the fabric is on each row of the repeat, in order."""


@dataclass(slots=True, kw_only=True)
class Established:
    """The pattern last set up, and what became of it (`stepper.plan.established`)."""

    cycle: tuple[Template, ...] = ()
    """Its rounds as they can be worked again; empty if they cannot, because they shape."""
    rounds: int = 1
    """How many rounds it repeats."""
    start: int
    """Index of the first draft worked of it."""
    end: int
    """Index after the last draft worked of it in order."""
    columns: list[Column] | None = None
    """Columns from the right side; None if not yet asked for or unknown."""
    phase: int = 0
    """Cell of the columns that the next row works."""
    reached: int = 0
    """Index after the last draft that the columns were carried through."""
    since: int = 0
    """Rows worked after `end`."""
    shaped: bool = False
    """Whether a row after `end` changed the stitches."""
    spread: bool = False
    """Whether the last change was spread over the round, so that the pattern can only start over."""
    name: str = ""
    """The manner it was called by, if called by a name; otherwise empty."""
    why: str = ""
    """Why the columns are unknown; empty if they are known."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Kept:
    """The fabric of stitches put on hold, worked out only if they come back and it is asked for."""

    established: Established
    """As it was before the row that put them on hold."""
    row: int
    """Index of that row's draft."""
    places: tuple[int, ...]
    """Their places before it, from the right side."""
