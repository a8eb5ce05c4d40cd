"""Records of the instructions that a pattern line gives, numbers still one for each size.

The wording (`stepper.project.reading.wording`) makes them; the plan (`stepper.plan.compile`) works them.
Nothing here knows how many stitches are on the needles.

It is longer than other modules: one union holds all of these records, and the plan matches on it.
"""

from __future__ import annotations

from typing import Final

from stepper.project.duration import Duration, Ended, Paced, UntilCount, UntilLength, UntilLike, UntilRows
from stepper.project.laying_out import (
    BeginFurther,
    BeginsAt,
    InstepOn,
    MarkAfter,
    MarkEvery,
    MarkRow,
    MoveOver,
    OnlyOn,
    OverNeedles,
    SetApart,
)
from stepper.project.problems import Span
from stepper.project.stitchwork import Element, Hold, Numbers, PrintedLength, RepeatsTold, Work
from stepper.project.stripes.striping import StripesCalled
from stepper.records import dataclass


@dataclass(frozen=True, slots=True)
class Phrase:
    """One round written out stitch by stitch."""

    elements: tuple[Element, ...]
    place: Span
    note: str = ""
    """Words of the line that change no stitch, to be said with it."""


@dataclass(frozen=True, slots=True)
class WorkRounds:
    """Plain or patterned rounds for a duration: `Knit 2 rounds`, `Work for 3 cm`, `Work 4 rounds`."""

    manner: str
    """`k`, `p`, `garter`, `stockinette`, `rib`, `rib 2 2` (a rib by its stitches), `named seed stitch` (a
    pattern by its
    name) or `pattern` (the round last worked, or as established, without shaping)."""
    duration: Duration
    place: Span
    bare: bool = False
    """Whether the line does not say how, as in `Work 4 rounds`."""
    once: bool = False
    """Whether the line gives neither rows nor a length: `Work in stockinette`."""
    as_set: bool = False
    """Whether it says that its fabric is already established: `in seed st as established`."""
    even: bool = False
    """Whether it says only that nothing is shaped: `even`, `straight`."""
    first: Numbers | None = None
    """Row of the pattern to begin with, if the line says so."""
    edges: tuple[Numbers, str] | None = None
    """Stitches at each edge worked in another manner, and that manner (`keeping 3 sts at each edge
    in garter`)."""
    but_last: bool = False
    """Whether the last round is worked differently, as the line says next (`rib 6 rows, inc 8 sts evenly
    in last row`)."""


@dataclass(frozen=True, slots=True)
class Forms:
    """Rounds just worked that the page calls a pattern: `These 2 rows form rib.`"""

    rounds: Numbers | None
    """How many of the latest rounds; None for those just written out."""
    name: str
    """What they are called."""
    place: Span
    numbers: tuple[int, ...] = ()
    """Their printed numbers, if the line names them so."""


@dataclass(frozen=True, slots=True)
class Striped:
    """Rounds in one yarn after the other: `work 12 rounds in stripes of 4 rnds A, 2 rnds B`."""

    manner: str
    """As in `WorkRounds`."""
    duration: Duration
    stripes: tuple[tuple[int, str], ...]
    """Rounds and yarn of each stripe, in order."""
    place: Span


@dataclass(frozen=True, slots=True)
class Repeated:
    """Numbered rounds worked again: `Rep rnds 1-2 5 times`; without numbers, the last few rounds."""

    numbers: tuple[int, ...]
    last: Numbers | None
    """How many of the last rounds; if neither this nor numbers, those just written out (`these rows`)."""
    duration: Duration
    again: bool
    """Whether the line says repeat (on top of once) rather than work (in all)."""
    place: Span
    implied: bool = False
    """Whether the line does not say how often: then once more, or until the rows it is for are filled."""
    line: bool = False
    """Whether it says only "repeat", meaning the rounds of its own line, or those just written out."""
    but_last: bool = False
    """Whether the last round is left for the next sentence: `..., dec 2 sts evenly across last row`."""
    side: str = ""
    """`RS` or `WS` if only the one of the last two rows on that side is meant; empty for no side."""
    label: str = ""
    """Name of the one round that is meant; empty if it is called by number or as the last."""
    pattern: str = ""
    """Name of the pattern whose rounds the numbers, or the count, are of; empty for rounds of the section."""
    short: bool = False
    """Whether the last ones are the last short rows, whatever was worked since."""
    onwards: bool = False
    """Whether the rounds of a pattern are meant from the one numbered to its last."""


@dataclass(frozen=True, slots=True)
class Evenly:
    """An increase or decrease spread evenly over the round."""

    direction: int
    """+1 for an increase, -1 for a decrease."""
    to: Numbers | None
    """Stitches to reach, or None if the change itself is given."""
    by: Numbers | None
    place: Span
    stitch: str = ""
    """`k` or `p` if the line says how it is worked (`Purl 1 row, increasing evenly`), `pattern` if the fabric
    continues (`rib 6 rows, inc 8 sts evenly in last row`), else empty."""
    fabric: str = ""
    """The fabric that the line names for the round, as in `WorkRounds.manner`; empty if it names none."""
    worked_in: str = ""
    """The stitch in which the page makes such a change (`inc = kfb`); empty for the usual one."""

    @property
    def word(self) -> str:
        """What the line does: `increase` or `decrease`."""
        return "increase" if self.direction == 1 else "decrease"


ONLY_CHART: Final = "chart"
"""The name of a chart that a line calls by none: "work rows 1-8 of the chart"."""


@dataclass(frozen=True, slots=True)
class ChartWork:
    """Rounds of a chart."""

    name: str
    first: int | None
    last: int | None
    times: Numbers | None
    place: Span
    lasts: Duration | None = None
    """How long it is worked, if the line gives rounds, a length or a count instead of repeats."""
    following: bool = False
    """Whether only the next round is worked: `work next rnd of chart fern`."""
    whole: bool = False
    """Whether it continues from there to its last round: `until all 4 rnds are complete`."""
    rounds: Numbers | None = None
    """How many rounds it has, if the line says so."""
    total: bool = False
    """Whether the times are all there are, and not those from here on: `4 times in all`."""
    announced: bool = False
    """Whether it is only said to begin; which of its rounds are worked is said next."""
    numbers: tuple[int, ...] = ()
    """Its rounds, where they are not worked upwards one after the other: `rnds 5, 4 and 3 of chart A`."""
    across: RepeatsTold | None = None
    """What the line says of its repeats across a row, to be held against chart and stitches."""


@dataclass(frozen=True, slots=True)
class Leg:
    """One part of shaping at intervals: every so many rounds, so many times."""

    every: Numbers
    times: Numbers | None
    """How often; None if it goes on to a count."""
    more: bool
    side: str = ""
    """`RS` or `WS` if the words name it (`every RS row`), else empty."""
    until: Numbers | None = None
    """Stitches at which it ends (`until 38 sts rem`); None if the words say how often."""
    length: PrintedLength | None = None
    """How far apart, if the words give a length instead of rows (`every 2 cm`)."""
    between: bool = False
    """Whether `until` counts the stitches between two markers, not all."""
    each: bool = False
    """Whether the words name each row (`every row`, `next 3 rows`), and not only how often (`3 times`)."""
    total: bool = False
    """Whether the times are all there are, and not those from here on: `a total of 6 times`."""
    upto: UntilLength | None = None
    """Length at which it ends (`until sleeve measures 36 cm`), if the words give one instead of a number."""
    worked: bool = False
    """Whether the words name the side by how its rows are worked: `every k row` of stockinette."""


@dataclass(frozen=True, slots=True)
class AtIntervals:
    """A named round worked every so many rounds: `Work dec round every 8th round 6 times`."""

    label: str
    legs: tuple[Leg, ...]
    again: bool
    place: Span
    round: Phrase | None = None
    """The round itself, if the line writes it out (`inc 1 st at each end of every 4th row`)."""
    first: Numbers | None = None
    """Extra row on which it is worked, counted from here: 1 in `on next and every 4th row`."""
    after: UntilLength | UntilCount | None = None
    """Length, or stitches left, at which it begins, alongside another shaping."""
    narrow: Phrase | None = None
    """The round shaped at its very edges, for the last stitches of a point: only where the line does not say
    how far in from the edge it is worked."""


@dataclass(frozen=True, slots=True)
class EdgeShaping:
    """Stitches changed at one edge of a piece: `bind off 2 sts at neck edge every other row twice`."""

    stitch: str
    """`dec`, `inc`, `bo` or `co`."""
    number: Numbers
    edge: str
    """`neck`, `armhole`, `front` or `side`."""
    legs: tuple[Leg, ...]
    place: Span
    inset: int = 1
    """Stitches between the edge and the change."""
    first: Numbers | None = None
    """Row on which it is worked in addition to the legs, counted from here."""
    as_before: bool = False
    """Whether it is worked as the rows before it show at that edge, instead of `inset` stitches in."""


@dataclass(frozen=True, slots=True)
class BothSides:
    """Two sides of a neck worked at once from here on, each from its own ball of yarn."""

    place: Span


@dataclass(frozen=True, slots=True)
class Together:
    """Shapings that run side by side: `…, at the same time work neck dec row every 4th row 5 times`."""

    parts: tuple[AtIntervals, ...]
    place: Span
    base: WorkRounds | Striped | None = None
    """Rounds beside which all of them run, where the line says so: `Knit 12 rounds, at the same time …`."""
    yarns: tuple[tuple[UntilLength, WithYarn], ...] = ()
    """Changes of yarn, each at a length: `…, when piece measures 3 cm, change to CC`."""


@dataclass(frozen=True, slots=True)
class Buttonholes:
    """Buttonholes in rows that go on beside them: `rib 7 rows, with 7 buttonholes in row 4 by …`."""

    made: tuple[Element, ...]
    """How one is made (`yo, k2tog`; `bind off 3`, whose stitches are cast on again in the next row); where no
    number is printed, the stitches of the row up to the last one. Empty for one made as before."""
    place: Span
    number: Numbers | None = None
    """How many lie in each row, spread evenly; None where `made` says where they lie."""
    rows: tuple[int, ...] = ()
    """In which of the rows they lie, from 1; empty for the one row there is, or at intervals."""
    ends: Numbers | None = None
    """Stitches between the outermost ones and the ends of the row; None if the line does not say."""
    every: int = 0
    """In every so many rows, beginning with the first of `rows`; 0 for the rows named alone."""
    times: Numbers | None = None
    """How often at intervals; None as long as the rows go on."""
    more: bool = False
    """Whether the row or rows of the last one are worked once more, beside no others."""
    none: bool = False
    """Whether the part that is worked again comes without those it had."""
    right: bool = False
    """Whether they lie at the right front, where right-side rows begin in a piece that grows upwards."""
    again: Repeated | None = None
    """The rows that are worked again beside them, where the line repeats rows: those count, too."""


@dataclass(frozen=True, slots=True)
class Crossed:
    """How often the pattern of the line crosses its cables: `crossing cable every 8th rnd`."""

    every: Numbers
    place: Span


@dataclass(frozen=True, slots=True)
class EdgesTogether:
    """Both edges shaped side by side: `dec 1 st at armhole edge …, at the same time 1 st at neck edge …`."""

    parts: tuple[EdgeShaping, ...]
    place: Span
    base: WorkRounds | None = None
    """Rows beside which they run, where the line says how many: `Work 4 rows, at the same time …`."""


@dataclass(frozen=True, slots=True)
class AtOnce:
    """Says that the next two lines, which shape one thing each, are worked side by side."""

    place: Span


@dataclass(frozen=True, slots=True)
class EdgeRows:
    """Stitches bound off or cast on at the beginning of several rows."""

    stitch: str
    """`bo` or `co`."""
    number: Numbers
    rows: Numbers
    place: Span
    flat: bool = False
    """Whether the line speaks of rows rather than rounds."""
    sides: bool = False
    """Whether the line says "each side", and no rows."""


@dataclass(frozen=True, slots=True)
class StopShort:
    """The last round stops early, and the next begins there: `ending last rnd 4 sts before BOR`."""

    number: Numbers
    """Stitches left before the end of the round."""
    place: Span


@dataclass(frozen=True, slots=True)
class TurnMethod:
    """How short rows are turned from here on."""

    method: str
    """`german`, `wrap` or `plain`."""
    place: Span


@dataclass(frozen=True, slots=True)
class Going:
    """The fabric continued during shaping: `cont in st st, inc 1 st at each end ...`."""

    manner: str
    """As in `WorkRounds`."""
    place: Span
    side: str = ""
    """`RS` or `WS` if the line says with which row it begins (`beg with a k row`), else empty."""


@dataclass(frozen=True, slots=True)
class Labelled:
    """A named round worked once: `Work dec round`."""

    label: str
    place: Span
    again: bool = False
    """Whether the line says repeat rather than work."""


@dataclass(frozen=True, slots=True)
class Join:
    """Join in the round."""

    place: Span


@dataclass(frozen=True, slots=True)
class Flat:
    """Continue in rows."""

    place: Span
    turned: bool = False
    """Whether the work is turned here, so that the next row is on the other side."""


@dataclass(frozen=True, slots=True)
class Needle:
    """Another needle from here on. Unit: mm."""

    mm: float
    """0 if the line says only `smaller`, `larger` or a bare number (`size 8`), kept in `printed`."""
    place: Span
    printed: str
    own: str = ""
    """The knitter's rule that chose this needle, in her words; empty if it is the printed one."""
    instead_of: float | None = None
    """The printed needle, if her rule replaced it. Unit: mm."""
    kept: bool = False
    """Whether she keeps the needle in hand in place of this one."""


@dataclass(frozen=True, slots=True)
class WithYarn:
    """Another yarn from here on."""

    yarn: str
    place: Span


@dataclass(frozen=True, slots=True)
class BreakYarn:
    """Cut a yarn; an empty name means the one in hand."""

    yarn: str
    place: Span


@dataclass(frozen=True, slots=True)
class BindOff:
    """Bind off all stitches."""

    manner: str
    """How, in words: `in pattern`, `stretchily`; empty for plain."""
    place: Span
    how: str = "bind off"
    """`bind off`, `graft` or `draw` (the yarn drawn through the stitches left)."""


@dataclass(frozen=True, slots=True)
class Return:
    """Put held stitches back on the needles."""

    name: str
    """Empty if the line does not say which, as only one part is on hold."""
    place: Span
    number: Numbers | None = None
    """How many there are, if the line says so."""
    wrong_side: bool = False
    """Whether the line says that the wrong side is facing: the first row on them is one of that side."""
    right_side: bool = False
    """Whether it says so of the right side."""
    on_needle: bool = False
    """Whether the stitches may lie on the needle already: the line only says that yarn is joined to them."""


@dataclass(frozen=True, slots=True)
class AsPart:
    """A part worked again: `Work as for back to **`, `Make second sleeve the same`."""

    part: str
    """The part as the line names it; empty for the part that the line is in (`Make 2`)."""
    place: Span
    times: int = 1
    """How often it is worked from here."""
    from_mark: str = ""
    """Mark of the page after which it begins, as `**`; empty for its beginning."""
    to_mark: str = ""
    """Mark of the page up to which it is worked; empty for none."""
    upto: str = ""
    """Where it ends, in words: `armhole`, `neck`; empty for all of it."""
    until: Duration | None = None
    """Length or count up to which it is worked."""
    reversed_: bool = False
    """Whether the shaping is mirrored."""
    rest: bool = False
    """Whether only the rest is worked: to match the other side of this part, or as another part goes on."""
    front: str = ""
    """The other front, whose rest is worked as its mirror image: `left front`; else empty."""
    shaped: str = ""
    """The shaping of the other part that is worked alone: `armhole`, `raglan`; empty for the part itself."""


@dataclass(frozen=True, slots=True)
class Remark:
    """Words that are said and shown but work no stitches."""

    text: str
    place: Span


@dataclass(frozen=True, slots=True)
class OwnWords:
    """Rows worked by the page's own words, whose stitches are not known: `Own words, 2 rows: … 96 sts.`"""

    text: str
    """The words, as they are read out; lists of sizes stand in them as printed."""
    rows: Numbers | None
    """How many rows are worked by these words; None for one."""
    count: PrintedCount | None
    """The stitches after them, or gained or lost in them, as printed; None if the number stays the same."""
    place: Span
    word: str = ""
    """`row` or `round` if the line says which they are, else empty."""
    several: bool = False
    """Whether the head of the line names several rows, or all of a side."""
    lasts: UntilLength | UntilLike | UntilRows | None = None
    """How long the words are worked, row after row: `Own words, until piece measures 12 cm: …`"""
    beside: Phrase | BindOff | None = None
    """What the words come to, all of it: `Own words, cast on 38 sts: …`, binding all stitches off, or all
    stitches of one row in their order: `Own words, work 25 sts, bind off 10 sts, work 25 sts: …`"""
    held: tuple[Hold, ...] = ()
    """What goes on hold in the row: `Own words, hold 12 sts for left sleeve: …`"""

    @property
    def parted(self) -> bool:
        """Whether it names all stitches of its row, those worked by the words among them."""
        works = self.beside.elements if isinstance(self.beside, Phrase) else ()
        return any(isinstance(one, Work) and one.stitch.startswith("own") for one in works)


@dataclass(frozen=True, slots=True)
class Unread:
    """Words that could not be read, so that it is unknown how many stitches they leave.

    Made only for a file with problems: the arithmetic of the rest is checked all the same.
    """

    place: Span


@dataclass(frozen=True, slots=True)
class PrintedCount:
    """The count printed at the end of a line."""

    number: Numbers
    place: Span
    change: int = 0
    """+1 if the line prints stitches gained (`8 sts inc'd`), -1 if stitches lost; 0 for a count."""
    sections: str = ""
    """What part it counts: `between` two markers, `each` section, the `gusset` or thumb, each of a `pair` of
    parts that are all there is (front and back), each of the two `sides` of a neck, those on `needle 2`;
    `row 9` for all stitches after the row of that printed number, further up; empty for all in hand."""


@dataclass(frozen=True, slots=True)
class RowsCount:
    """The number of rounds printed after a line: `Rep rnds 1-2 4 times (8 rounds).`"""

    number: Numbers
    place: Span
    total: bool = False
    """Whether the words say "in all", so that the rounds of the section before the line may count."""


Sentence = (
    Phrase
    | WorkRounds
    | Forms
    | Striped
    | Repeated
    | Evenly
    | ChartWork
    | AtIntervals
    | EdgeShaping
    | EdgesTogether
    | AtOnce
    | Together
    | Crossed
    | Buttonholes
    | Paced
    | Ended
    | EdgeRows
    | StopShort
    | TurnMethod
    | Labelled
    | Going
    | Join
    | BothSides
    | Flat
    | Needle
    | WithYarn
    | BreakYarn
    | BindOff
    | Return
    | MarkEvery
    | MarkAfter
    | AsPart
    | MarkRow
    | OverNeedles
    | InstepOn
    | MoveOver
    | SetApart
    | OnlyOn
    | BeginFurther
    | BeginsAt
    | Remark
    | OwnWords
    | Unread
    | PrintedCount
    | RowsCount
)


@dataclass(frozen=True, slots=True)
class Assumed:
    """Something that a line leaves open and how it was taken; reported once, with its place."""

    text: str
    place: Span
    wrong_side: bool = False
    """Whether it is that the words turn the wrong side to the knitter; said only if no row is taken so."""


@dataclass(frozen=True, slots=True, kw_only=True)
class UpToHere:
    """A line at which the garment ends for now: it is worked up to there and not beyond.

    Made only where a garment is to be knitted as far as it is read (`stepper.plan.as_far`).
    """

    said: bool = False
    """Whether the line seems to be only said, so that nothing is knitted for it."""
    since: int = 0
    """How many rounds of the garment are worked before that: a line that is worked again ends only the time
    that does not fit."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One printed line: its label, its round numbers, its sentences in order."""

    label: str | None
    numbers: tuple[int, ...]
    """Rounds the line is for (`Rnds 1-4:`), from 1; empty if it names none."""
    side: str
    """`RS` or `WS` if the line says so, else empty."""
    rows: bool
    """Whether the line speaks of rows rather than rounds."""
    sentences: tuple[Sentence, ...]
    text: str
    place: Span
    every: str = ""
    """`WS`, `RS`, `even` or `odd` if the line is for all such rows; else empty."""
    said: tuple[str, ...] = ()
    """Words of the line that work no stitches, said with its first round: where and how."""
    only: tuple[int, ...] = ()
    """Sizes that the line is for, by index from 0; empty for all."""
    marks: tuple[str, ...] = ()
    """Marks of the page after the line, as `**`, to which other lines refer."""
    opens: tuple[str, ...] = ()
    """Marks in front of the line, if it is the first of its section."""
    times: Numbers | None = None
    """How many consecutive rows the line is for (`Next 4 rows:`); None for one."""
    assumed: tuple[Assumed, ...] = ()
    """What the line leaves open."""
    stripes: StripesCalled | None = None
    """The stripes that the page defines and the line calls for; None for none."""
    ends: UpToHere | None = None
    """That the garment ends here for now; None if it goes on."""


def is_only_said(line: Line) -> bool:
    """Return whether nothing is worked for a line: a note, or a step of finishing."""
    return all(isinstance(sentence, Remark) for sentence in line.sentences)
