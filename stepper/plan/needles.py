"""What is on the needles while the pattern is worked: the state that every instruction changes. No I/O."""

from __future__ import annotations

from dataclasses import dataclass, field

from stepper.craft.gauge import Gauge, half_up
from stepper.craft.stitches import Kind, stitch
from stepper.plan.facing import mirrored
from stepper.plan.model import Item, Run, Stretch, flatten
from stepper.plan.offers import priced
from stepper.plan.phrase import WorkedPhrase
from stepper.plan.supplies import ChartRound, Choice
from stepper.project.instructions import Count, Line
from stepper.project.model import Fabric, Project
from stepper.project.problems import Span
from stepper.project.stitchwork import Across, ChartPart, Element, Length, PickUp, Several, Until, Work

MOST_ROUNDS = 20_000
"""More rounds than any garment has; a larger number is a slip of the pen."""


@dataclass(frozen=True, slots=True)
class Template:
    """A round that can be worked again: written out, or one round of a chart."""

    elements: tuple[Element, ...]
    place: Span
    chart: str = ""
    chart_round: int = 0
    """Round of the chart, from 1."""
    stockinette: bool = False
    """Knit on the right side and, in rows, purl on the wrong side."""
    side: str = ""
    """`RS` or `WS` where the line is for rows of that side only."""
    counts: tuple[Count, ...] = ()
    """Counts printed with it, where it is written out before it is worked."""
    yarn: str = ""
    """Key of the yarn that the line takes up; empty where it goes on with the one in hand."""

    @property
    def asks(self) -> bool:
        """Whether what it comes to depends on more than the stitches: on charts, or on the rows below."""
        return any(_asks(element) for element in self.elements)


def _asks(element: Element) -> bool:
    if isinstance(element, Several):
        return any(_asks(inner) for inner in element.elements) or bool(element.reading)
    pattern = isinstance(element, Until | Work) and element.stitch == "pattern"
    return pattern or isinstance(element, ChartPart | PickUp | Across)


Cell = tuple[str, str]
"""What a column is on one row, from the right side: a stitch, and a yarn or none for the one in hand."""
Column = tuple[Cell, ...]
"""What a stitch of the fabric is on each row of the repeat, in order."""


@dataclass(slots=True, kw_only=True)
class Established:
    """The pattern last set up, and what became of it (`stepper.plan.established`)."""

    cycle: tuple[Template, ...] = ()
    """Its rounds as they are worked anew; empty where they cannot be, as they shape."""
    rounds: int = 1
    """How many rounds it repeats."""
    start: int
    """Index of the first draft worked of it."""
    end: int
    """Index behind the last draft worked of it in its order."""
    columns: list[Column] | None = None
    """Columns from the right side; nothing where nobody has asked yet, or they cannot be told."""
    phase: int = 0
    """Cell of the columns that the next row works."""
    reached: int = 0
    """Index behind the last draft that the columns were carried through."""
    since: int = 0
    """Rows worked behind `end`."""
    shaped: bool = False
    """Whether a row behind `end` changed the stitches."""
    spread: bool = False
    """Whether the last change was spread over the round, so that the pattern can only begin anew."""
    why: str = ""
    """Why the columns cannot be told; empty where they can."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Kept:
    """The fabric of stitches put on hold, told only if they come back and somebody asks."""

    established: Established
    """As it stood before the row that put them on hold."""
    row: int
    """Index of that row's draft."""
    places: tuple[int, ...]
    """Their places before it, from the right side."""


@dataclass(slots=True, kw_only=True)
class DraftRound:
    """A round as worked, before it is numbered and written."""

    section: str
    before: int
    after: int
    phrase: tuple[Item, ...]
    line: int
    size: int
    flat: bool
    side: str
    needle_mm: float | None
    fabric: Fabric | None
    held: dict[str, int]
    markers: tuple[int, ...]
    label: str | None = None
    remarks: tuple[str, ...] = ()
    evenly: bool = False
    shaping: tuple[int, ...] | None = None
    """Places of the changes where they are known; else they are found from the runs."""
    chart: str | None = None
    chart_round: int | None = None
    divide: bool = False
    bound_off: str | None = None
    """How the stitches are bound off, where they are."""
    altered: tuple[str, ...] = ()
    template: Template | None = None
    from_turn: bool = False
    """Whether it goes on from a turn in the round, so that it does not begin where the round does."""
    whole: bool | None = None
    """Whether it adds a whole round to the length; found when it is first asked."""

    @property
    def gauge(self) -> str:
        """Name of the gauge it is knitted at; empty for none."""
        return self.fabric.name if self.fabric is not None else ""

    @property
    def height_mm(self) -> float:
        """What the round adds to the length, on the needles. Unit: mm.

        A short row adds nothing to the places where it was not worked, so it is left out.
        """
        if self.whole is None:
            short = any(isinstance(item, Run) and item.stitch == "rest" for item in self.phrase)
            self.whole = not short and any(item.uses and item.leaves for item in self.phrase)
        return self.fabric.gauge.round_mm if self.fabric is not None and self.whole else 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Finding:
    """Something wrong in one size, or worth a word."""

    place: Span
    message: str
    hint: str = ""
    size: int = 0
    kind: str = "misfit"
    """`misfit`, `count` or `length`: findings of one kind at one place are told once for all sizes."""
    printed: int = 0
    """`count`: the stitches that the pattern prints."""
    counted: int = 0
    """`count`: the stitches that the lines come to."""
    read: str = ""
    """`count`: how the line was read, round by round."""


@dataclass(slots=True, kw_only=True)
class Needles:
    """The knitting in hand."""

    project: Project
    size: int
    """The size knitted: place in the list of sizes, from 0."""
    checking: bool = False
    """Whether only the counts are wanted, for a size that is not knitted."""
    knitted: bool = False
    """Whether this is the garment as it is knitted, with the knitter's own alterations."""
    count: int = 0
    held: dict[str, int] = field(default_factory=dict)
    markers: tuple[int, ...] = ()
    """Places of the markers, from the right side. Unit: stitches from the beginning."""
    flat: bool = False
    side: str = "RS"
    """Side of the next row."""
    free: bool = False
    """Whether rows were just begun, so that a line may name either side for the first of them."""
    gap: int | None = None
    """Where the last row was turned before its end, from the right side; nothing after a whole row."""
    turns: tuple[int, ...] = ()
    """Turns of short rows not worked past yet, from the right side."""
    slipped: bool = False
    """Whether the row after the last turn began with a slipped stitch: such a heel closes its own gaps."""
    method: str = ""
    """How short rows are turned: `german`, `wrap` or `plain`; empty where the pattern does not say."""
    turned_at: Span | None = None
    """Where a turn whose method nobody said stands, until that is told."""
    turning_told: bool = False
    """Whether the method taken for such turns was told."""
    needle_mm: float | None = None
    yarn: str = ""
    fabric: Fabric | None = None
    section: str = ""
    section_start: int = 0
    """Index of the first draft of the section."""
    drafts: list[DraftRound] = field(default_factory=list)
    stretches: list[Stretch] = field(default_factory=list)
    remarks: list[str] = field(default_factory=list)
    """What is to be said before the next round."""
    label: str | None = None
    line: int = 0
    place: Span | None = None
    """Where the line in hand stands."""
    fits: set[int] = field(default_factory=set)
    """Rounds that were worked, by the identity of their template."""
    line_start: int = 0
    """Index of the first draft of the line."""
    line_side: str = ""
    """`RS` or `WS` where the line in hand is for rows of that side."""
    pattern: tuple[Template, ...] = ()
    """The rounds last set up or repeated in the section, shaping and all."""
    established: Established | None = None
    """The fabric that "even" and "in pattern" go on with; nothing where nothing is on the needles."""
    kept: dict[str, Kept] = field(default_factory=dict)
    """The fabric of the stitches on hold, by name."""
    numbered: dict[int, Template] = field(default_factory=dict)
    named: dict[str, Template] = field(default_factory=dict)
    """Rounds with a name of their own: `dec round`."""
    in_all: set[str] = field(default_factory=set)
    """Named rounds whose times, said next, count the once they were worked where they are written."""
    known: dict[tuple[object, ...], tuple[Template, WorkedPhrase]] = field(default_factory=dict)
    """Rounds worked out before, by their template and the stitches they met; the template is kept alive."""
    charted: dict[tuple[object, ...], tuple[Item, ...]] = field(default_factory=dict)
    """Chart rounds laid out before."""
    drawn: dict[tuple[object, ...], ChartRound] = field(default_factory=dict)
    """Chart rounds read before, by chart, round, yarn and side; shared by all sizes."""
    chart_at: dict[str, int] = field(default_factory=dict)
    """Round of each chart last worked, from 1."""
    garter: bool = False
    """Whether plain rows are knitted on both sides."""
    written: tuple[tuple[Template, ...], int] = ((), 0)
    """The numbered rounds last written out, and how many drafts there were behind them."""
    back: Template | None = None
    """What all rows of the wrong side are, where a line says so for all of them."""
    back_line: Line | None = None
    """That line."""
    resume: tuple[tuple[Template, ...], int] = ((), 0)
    """The rounds last repeated and which of them comes next, from 0."""
    readings: frozenset[tuple[int, int]] = frozenset()
    """Line and column of words that are taken in their second reading."""
    choices: list[Choice] = field(default_factory=list)
    """Words of two readings that were met."""
    findings: list[Finding] = field(default_factory=list)
    cautions: list[Finding] = field(default_factory=list)
    altered: tuple[str, ...] = ()
    """What of the rounds now worked differs from the printed pattern."""

    section_altered: tuple[str, ...] = ()
    """What of the whole section differs from the printed pattern."""
    needle_altered: tuple[str, ...] = ()
    """The rule by which the needle in hand is the knitter's own; nothing where it is the printed one."""
    marks: dict[int, tuple[str, ...]] = field(default_factory=dict)
    """Line of the file to what the knitter altered in it."""
    reshape: bool = False
    """Whether the line in hand may decrease where it says increase, and the other way round."""

    lost: bool = False
    """Whether the count is not known: a line was not read or did not fit, and no printed count came since."""
    shaky: bool = False
    """Whether a line of the section was not read: what seems to be missing may have stood in it."""
    unread: bool = False
    """The same of any line so far."""
    fresh: bool = True
    """Whether the section has worked no stitch yet."""
    off: int = 0
    """What the printed count last told has more than the lines; a count as far off is no new fault."""

    def report(self, place: Span, message: str, hint: str = "", kind: str = "misfit") -> None:
        """Note something that does not fit; nothing where the count is not known anyway."""
        gauge = self.fabric.gauge if self.fabric is not None else None
        hint = priced(hint, self.count, gauge, self.project.units)
        if not self.lost:
            self.findings.append(Finding(place=place, message=message, hint=hint, size=self.size, kind=kind))

    def miss(self, place: Span, message: str, hint: str = "", *, anywhere: bool = False) -> None:
        """Note something that is not there, unless it may have stood in a line not read; lose the count."""
        if not (self.unread if anywhere else self.shaky):
            self.report(place, message, hint)
        self.lose()

    def lose(self) -> None:
        """Go on past a line that was not read or does not fit: count, markers and holds are not known."""
        self.lost = self.shaky = self.unread = True

    def regain(self, count: int) -> None:
        """Go on with a count that is known again."""
        self.lost, self.off, self.count = False, 0, count
        self.markers, self.turns, self.gap = (), (), None

    def warn(self, place: Span, message: str) -> None:
        """Note something the knitter should know."""
        self.cautions.append(Finding(place=place, message=message, size=self.size))

    def emit(
        self, phrase: tuple[Item, ...], after: int, *, turned: bool = False, **told: object
    ) -> DraftRound:
        """Add one round and go to the side that follows."""
        flat = self.flat or turned or bool(self.gap)  # a gap at 0 is the beginning of the round
        if not flat:
            self.side = "RS"
        draft = DraftRound(
            section=self.section,
            before=self.count,
            after=after,
            phrase=phrase,
            line=self.line,
            size=self.size,
            flat=flat,
            side=self.side,
            needle_mm=self.needle_mm,
            fabric=self.fabric,
            held=dict(self.held),
            markers=mirrored(self.markers, after) if self.side == "WS" else self.markers,
            from_turn=self.gap is not None and not self.flat,
            label=self.label,
            remarks=tuple(self.remarks),
            altered=(*self.altered, *self.needle_altered),
        )
        for name, value in told.items():
            setattr(draft, name, value)
        if not self.count:
            begin = len(self.drafts)
            self.established = Established(start=begin, end=begin, reached=begin, columns=[])
        self.label = None
        self.remarks = []
        self._next_side(phrase, turned=turned)
        self.gap = None
        self.free = False
        self.count = after
        self.drafts.append(draft)
        if len(self.drafts) > MOST_ROUNDS:
            place = Span(line=max(1, self.line), column=1)
            self.report(place, "the garment comes to more rounds than any has.", kind="length")
        return draft

    def _next_side(self, phrase: tuple[Item, ...], *, turned: bool) -> None:
        """Turn the work where the row was worked from end to end; a cast-on leaves the right side next."""
        if not self.flat and not turned:
            picked = self.count == 0 and any(isinstance(item, Run) and item.stitch == "pu" for item in phrase)
            self.side = "WS" if picked else "RS"
        elif turned or any(_is_worked(item) for item in phrase):
            self.side = "WS" if self.side == "RS" else "RS"

    @property
    def last_template(self) -> Template | None:
        """The round last worked, if it can be worked again."""
        for draft in reversed(self.drafts[self.section_start :]):
            if draft.template is not None:
                return draft.template
        return None

    def height_mm(self, origin: int) -> float:
        """Give the length knitted since a round, on the needles. Unit: mm."""
        return sum(draft.height_mm for draft in self.drafts[origin:])

    def gauge(self, place: Span) -> Gauge | None:
        """Give the gauge of the section, or report that there is none."""
        if self.fabric is None:
            self.report(place, "a length needs a gauge, and this section names none.", kind="length")
            return None
        return self.fabric.gauge

    def rounds_for(self, length: Length, *, origin: int, measured: bool, blocked: bool) -> tuple[int, float]:
        """Turn a length into rounds still to work.

        Args:
            length: The length as printed.
            origin: Index of the draft from whose beginning it is measured.
            measured: Whether what is already worked since `origin` counts.
            blocked: Whether the length is meant after blocking.

        Returns:
            Rounds still to work, and the length to reach on the needles in mm.
        """
        gauge = self.gauge(length.place)
        if gauge is None or self.fabric is None:
            return 1, 0.0
        target = length.of(self.size)
        if blocked and self.fabric.blocked is not None:
            target = target * self.fabric.blocked.rounds / self.fabric.gauge.rounds
        done = self.height_mm(origin) if measured else 0.0
        rounds = half_up((target - done) * gauge.rounds / 100)
        if rounds < 1 and done == 0.0:
            rounds = 1
        return rounds, target


def _is_worked(item: Item) -> bool:
    """Say whether an item works stitches along the needle, rather than casts on or moves them."""
    run = next(flatten((item,)), None)
    if run is None:
        return False
    return run.stitch in ("pu", "bo") or stitch(run.stitch).kind not in (Kind.EDGE, Kind.MARK, Kind.SHIFT)
