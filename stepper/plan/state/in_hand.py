"""The parts of the knitting in hand: section, line, short rows, fabric, what is known of the count. No I/O.

Each is made afresh where it begins: a section and a line with their first round, all others with the garment.
"""

from __future__ import annotations

from dataclasses import field

from stepper.plan.drafts import Finding, Template
from stepper.plan.model import Item
from stepper.plan.state.size_alone import AloneIn, LinesAlone
from stepper.plan.stitches.phrase import WorkedPhrase
from stepper.plan.stitches.round_sources import ChartRound
from stepper.project.instructions import Buttonholes, Line
from stepper.project.model import Fabric
from stepper.project.problems import Span
from stepper.records import dataclass


@dataclass(slots=True, kw_only=True)
class SectionInHand:
    """The section being worked, and what its lines have set up so far."""

    name: str = ""
    start: int = 0
    """Index of its first draft."""
    yarn: str = ""
    """Key of its yarn, used by the rounds that name none."""
    fabric: Fabric
    """The fabric it names; on another needle the rounds may be in a different one."""
    own_yarn_again: bool = False
    """Whether another yarn was broken, so that the next round has to say that it is worked in this one."""
    rows_are_rounds: bool = False
    """Whether its page calls rounds rows: one stood right behind the cast-on that was joined."""
    ridge_told: bool = False
    """Whether it was told that a shaped row comes on the other side than its stitches are for."""
    way_told: bool = False
    """Whether it was told that rounds were taken where no line says rows or rounds."""
    label: str | None = None
    """What the next round is called; None if it has no name of its own."""
    pattern: tuple[Template, ...] = ()
    """The rounds last set up or repeated, shaping and all."""
    numbered: dict[int, Template] = field(default_factory=dict)
    """The rounds written out, by number."""
    numberings: int = 0
    """How often its rounds were numbered from 1."""
    first_side: str = ""
    """The side of round 1, if it is in rows and the page says so."""
    named: dict[str, Template] = field(default_factory=dict)
    """Rounds with a name of their own: `dec round`."""
    in_all: set[str] = field(default_factory=set)
    """Named rounds whose number of times, said next, includes the one time worked where they are written."""
    back: Template | None = None
    """What all wrong-side rows are, if a line says so for all of them."""
    back_line: Line | None = None
    """That line."""
    garter: bool = False
    """Whether plain rows are knitted on both sides."""
    defined: str = ""
    """The pattern whose rows the line before wrote out only to define it; empty if it was worked."""
    shaky: bool = False
    """Whether a line was not read, so that what seems to be missing may have been in it."""


@dataclass(slots=True, kw_only=True)
class LineInHand:
    """The line being worked."""

    number: int = 0
    """Its line in the file, from 1; 0 before the first."""
    place: Span | None = None
    start: int = 0
    """Index of its first draft."""
    side: str = ""
    """`RS` or `WS` if it is for rows of that side; else empty."""
    around: bool = False
    """Whether it calls itself a round: `Next rnd:`, `Rnd 1:`."""
    rows: bool = False
    """Whether it calls itself a row: `Next row:`, `Row 1:`."""
    headed: bool = False
    """Whether its row has a head, so that rounds counted behind it come on top: `Next rnd:`, `Dec row:`."""
    right_facing: bool = False
    """Whether it says that the right side faces the knitter: `With RS facing, rejoin yarn …`."""
    turns_back: bool = False
    """Whether the line after it is a wrong-side row."""
    named: int = -1
    """Index after the last draft of rounds that it gives in a fabric of their own: `Purl 2 rounds.`"""
    second_holds: int = 0
    """Stitches on the second needle, where the rounds have come to begin behind the first; 0 elsewhere."""


@dataclass(slots=True, kw_only=True)
class ShortRows:
    """Turns before the end of a row, and how they are worked."""

    gap: int | None = None
    """Where the last row was turned before its end, from the right side; None after a whole row."""
    turns: tuple[int, ...] = ()
    """Turns not worked past yet, from the right side."""
    back: set[int] = field(default_factory=set)
    """Identities of the rows of a ring that were worked back from a turn, on the wrong side."""
    slipped: bool = False
    """Whether the row after the last turn began with a slipped stitch: such a heel closes its own gaps."""
    method: str = ""
    """How they are turned: `german`, `wrap` or `plain`; empty if the pattern does not say."""
    turned_at: Span | None = None
    """Where a turn of unknown method stands, until that is told."""
    told: bool = False
    """Whether the method taken for such turns was told."""


@dataclass(slots=True, kw_only=True)
class Counting:
    """What is known of the count."""

    confirmed: list[int] = field(default_factory=list)
    """After how many rounds a printed count was met."""
    lost: bool = False
    """Whether it is not known: a line was not read or did not fit, and no printed count came since."""
    unread: bool = False
    """Whether any line so far was not read."""
    off: int = 0
    """How far the printed count last told is above that of the lines; a count as far off is no new fault."""


@dataclass(slots=True, kw_only=True)
class Alterations:
    """What differs from the printed pattern in the rounds now worked, in the knitter's words."""

    line: tuple[str, ...] = ()
    """What differs in the line in hand."""
    section: tuple[str, ...] = ()
    """What differs in the whole section."""
    needle: tuple[str, ...] = ()
    """The rule by which the needle in hand is the knitter's own; empty for the printed one."""
    printed_mm: float | None = None
    """The needle that a line prints where she has another or keeps hers; None for none. Unit: mm."""
    marks: dict[int, tuple[str, ...]] = field(default_factory=dict)
    """Line of the file to what is altered in it."""
    reshape: bool = False
    """Whether the line in hand may decrease where it says increase, and the other way round."""
    over: int = 1
    """Rounds over which the line in hand spreads its change."""
    as_printed: AloneIn | None = None
    """Returns what the lines come to as printed in a size; None where nothing is altered."""
    blended: AloneIn | None = None
    """Returns what the lines come to in a size alone, once the size was switched; None before that."""
    unmet: str = ""
    """Why the line of the last switch cannot bring the stitches to those of its size; empty if it can."""


@dataclass(slots=True, kw_only=True)
class LastWorked:
    """What was last worked of rounds that come again."""

    written: tuple[tuple[Template, ...], int] = ((), 0)
    """The numbered rounds last written out, and how many drafts there were after them."""
    repeated: tuple[tuple[Template, ...], int] = ((), 0)
    """The rounds last repeated and which of them comes next, from 0."""
    counted: int = 0
    """Index after the last draft that a repeat "until 48 sts rem" came to; 0 for none."""
    charts: dict[str, int] = field(default_factory=dict)
    """Round of each chart last worked, from 1."""
    beside: set[str] = field(default_factory=set)
    """Charts last worked over a part of the round, beside other stitches."""
    called: dict[str, tuple[int, int]] = field(default_factory=dict)
    """Which marker, from 1, of how many was placed by a name ("pm for side"), in the row that placed them."""
    plain_change: Span | None = None
    """Where the last round was changed evenly and knitted, over a pattern, and the line did not say how."""
    apart: int = 0
    """Index after the draft that set stitches aside for rows over the others; 0 for none."""
    yarn_named: int = -1
    """How many drafts there were when a line last took up or cut a yarn by its name."""
    yarn_taken: int = -1
    """How many drafts there were when a line last took up a yarn by its name."""
    own: dict[tuple[int, int], int] = field(default_factory=dict)
    """Stitches that each row in own words with a count began with where it was first worked, by its line and
    column."""
    hidden: dict[str, int] = field(default_factory=dict)
    """Line of the row in own words behind which nobody can tell which round of a chart comes next, by its
    name."""
    markers_lost: int = 0
    """Line of the row in own words behind which nobody can tell where the markers are; 0 for none."""
    measured: int = 0
    """Draft from which a line says that the piece is measured onwards; 0 if none does."""
    marked: int = 0
    """Index after the draft into which marks to measure from were last hung; 0 for none."""
    buttonholes: Buttonholes | None = None
    """The buttonholes last laid into rows; None for none."""
    unholed: bool = False
    """Whether the part in hand is worked again without its buttonholes."""


@dataclass(slots=True, kw_only=True)
class Caches:
    """Rounds worked out before, so that each is worked out only once."""

    rounds: dict[tuple[object, ...], tuple[Template, WorkedPhrase]] = field(default_factory=dict)
    """By their template and the stitches they met; the template is kept alive."""
    charted: dict[tuple[object, ...], tuple[Item, ...]] = field(default_factory=dict)
    """Chart rounds laid out over the stitches they met."""
    drawn: dict[tuple[object, ...], ChartRound] = field(default_factory=dict)
    """Chart rounds read, by chart, round, yarn and side; shared by all sizes."""
    alone: dict[int, LinesAlone] = field(default_factory=dict)
    """What the lines come to in each size alone, by its place; shared by all ways to blend."""
    alone_findings: dict[int, list[Finding]] = field(default_factory=dict)
    """What does not fit in those sizes, so that none is worked once more to be checked."""
    fits: set[int] = field(default_factory=set)
    """Rounds that were worked, by the identity of their template."""


Cell = tuple[str, str]
"""What a column is on one row, from the right side: a stitch, and a yarn (empty for the one in hand)."""
Column = tuple[Cell, ...]
"""What a stitch of the fabric is on each row of the repeat, in order."""


@dataclass(frozen=True, slots=True)
class Opening:
    """Stitches bound off within a row, between others."""

    at: int
    """Stitches before it on the needle, from the right side."""
    columns: tuple[Column, ...]
    """What they were, from the right side."""


@dataclass(slots=True, kw_only=True)
class Established:
    """The pattern last set up, and what became of it (`stepper.plan.fabric.established`)."""

    cycle: tuple[Template, ...] = ()
    """Its rounds as they are worked when begun again; empty if they shape and so cannot be."""
    rounds: int = 1
    """How many rounds it repeats."""
    start: int
    """Index of its first draft."""
    end: int
    """Index after its last draft that was worked in its order."""
    columns: list[Column] | None = None
    """Columns from the right side; None if nobody has asked yet, or they cannot be told."""
    phase: int = 0
    """Cell of the columns that the next row works."""
    openings: tuple[Opening, ...] = ()
    """What the last row bound off between its other stitches."""
    reached: int = 0
    """Index after the last draft that the columns were carried through."""
    since: int = 0
    """Rows worked from `end` on."""
    shaped: bool = False
    """Whether a row from `end` on changed the stitches."""
    spread: bool = False
    """Whether the last change was spread over the round, so that the pattern can only begin again."""
    name: str = ""
    """Manner in which it was called, if it was called by a name; else empty."""
    why: str = ""
    """Why the columns cannot be told; empty if they can."""
    doubt: str = ""
    """What was assumed to tell them, until the knitter is told."""
    own: int = 0
    """Line of the row in own words that it holds, so that its columns cannot be told; 0 for none."""
    hers: bool = False
    """Whether it goes on in those words row by row, whatever is shaped: all its columns are the knitter's."""
    hers_told: bool = False
    """Whether she was told so."""
    lace: int = 0
    """Line of the first row of a lace that goes on so, as it is printed; 0 for own words."""
    plain_since: int = 0
    """Line that shaped the pattern knitting every stitch, so that it cannot be told; 0 for none."""
    one_yarn_since: int = 0
    """Line that took up or cut a yarn by its name behind a pattern in two, which ends there; 0 for none."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HeldFabric:
    """The fabric of stitches put on hold, told only if they come back and somebody asks."""

    established: Established
    """As it stood before the row that put them on hold."""
    row: int
    """Index of that row's draft."""
    places: tuple[int, ...]
    """Their places before it, from the right side."""
