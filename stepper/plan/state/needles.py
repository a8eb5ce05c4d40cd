"""What is on the needles while the pattern is worked: the state that every instruction changes. No I/O."""

from __future__ import annotations

from dataclasses import field, replace

from stepper.craft.gauge import half_up
from stepper.craft.rows import row_word
from stepper.craft.stitches import Kind, stitch
from stepper.plan.drafts import DraftRound, Finding, Template
from stepper.plan.model import Item, Stretch, flatten, other_side, runs_written
from stepper.plan.state.fitting_counts import price_counts
from stepper.plan.state.in_hand import (
    Alterations,
    Caches,
    Counting,
    Established,
    HeldFabric,
    LastWorked,
    LineInHand,
    SectionInHand,
    ShortRows,
)
from stepper.plan.state.stripes_in_hand import StripesInHand
from stepper.plan.stitches.round_sources import TwoReadings
from stepper.plan.stitches.row_facing import Facing, face, mirror_places
from stepper.project.instructions import Line
from stepper.project.model import Fabric, Project
from stepper.project.problems import ProblemKind, Span
from stepper.project.stitchwork import PrintedLength
from stepper.records import dataclass

MOST_ROUNDS = 20_000
"""More rounds than any garment has; a larger number is a slip of the pen."""
MOST_WORKED = 1_000_000
"""More stitches than any garment has, twenty pullovers or so; of the rounds worked out one by one."""


class PartReachedError(Exception):
    """A part worked again has come to where it ends, in the middle of a line."""


class OpenReachedError(Exception):
    """The garment has come to the line up to which it is worked."""


@dataclass(slots=True, kw_only=True)
class Needles:
    """The knitting in hand."""

    project: Project
    size: int
    """The size being knitted: index in the list of sizes, from 0."""
    checking: bool = False
    """Whether only the counts are wanted, for a size that is not being knitted."""
    knitted: bool = False
    """Whether this is the garment as it is knitted, with the knitter's own alterations."""
    partial: bool = False
    """Whether a line of the file was not read: what is not found may stand there."""
    readings: frozenset[tuple[int, int]] = frozenset()
    """Line and column of words that are taken in their second reading."""

    count: int = 0
    held: dict[str, int] = field(default_factory=dict)
    held_by: dict[str, tuple[str, int]] = field(default_factory=dict)
    """Section and line that last put stitches on hold under each name."""
    markers: tuple[int, ...] = ()
    """Places of the markers, from the right side. Unit: stitches from the beginning."""
    sides_parted: bool = False
    """Whether a second ball was joined, at the one place that `markers` then has; see `two_balls`."""
    ends: tuple[int, ...] = ()
    """Where the needles of a sock end, but the last; empty if nobody can tell. Unit: stitches."""
    instep: tuple[int, int] | None = None
    """Where the instep of a sock lies, begin and end; None if nobody can tell. Unit: stitches."""
    flat: bool = False
    joined: bool = False
    """Whether a line joined the piece in hand in the round."""
    side: str = "RS"
    """Side of the next row."""
    free: bool = False
    """Whether rows have just begun, so that a line may name either side for the first of them."""
    short_rows: ShortRows = field(default_factory=ShortRows)
    needle_mm: float | None = None
    yarn: str = ""
    stripes: StripesInHand | None = None
    """The stripe sequence of the page that the rounds are worked in; None for none."""
    stripes_left: StripesInHand | None = None
    """The one that was left for a yarn, on the piece in hand; None for none."""
    fabric: Fabric
    established: Established = field(default_factory=lambda: Established(start=0, end=0, columns=[]))
    """The fabric that "even" and "in pattern" go on with; without columns where nothing is on the needles."""
    kept: dict[str, tuple[HeldFabric, ...]] = field(default_factory=dict)
    """The fabric of the stitches on hold, by name."""

    copied: str = ""
    """Name of the part whose lines are worked in the section in hand; empty for its own."""
    limit: int | None = None
    """Number of drafts at which a part worked again ends; None while there is none."""
    patterns: dict[str, tuple[Template, ...]] = field(default_factory=dict)
    """The rows of the patterns that the page defines, by name."""
    techniques: dict[str, Template] = field(default_factory=dict)
    """The rounds that the page explains before they are worked, by name."""

    section: SectionInHand
    line: LineInHand = field(default_factory=LineInHand)
    counting: Counting = field(default_factory=Counting)
    alterations: Alterations = field(default_factory=Alterations)
    last: LastWorked = field(default_factory=LastWorked)
    caches: Caches = field(default_factory=Caches)

    worked: int = 0
    """Stitches of all rounds worked out one by one. Unit: stitches."""
    drafts: list[DraftRound] = field(default_factory=list)
    stretches: list[Stretch] = field(default_factory=list)
    remarks: list[str] = field(default_factory=list)
    """What is to be said before the next round."""
    findings: list[Finding] = field(default_factory=list)
    cautions: list[Finding] = field(default_factory=list)
    choices: list[TwoReadings] = field(default_factory=list)
    """Words of two readings that were met."""
    ends_at: Line | None = None
    """The line up to which the garment was worked; None if it was worked to its end."""
    ends_second: bool = False
    """Whether it ends where that line makes the second of a piece, behind the lines of the first."""
    block_begun: int = 0
    """Rounds worked when the line in hand, or the numbered rows that it belongs to, was begun."""
    called: tuple[int, int] = (0, 0)
    """The line that works others once more, while it does, and the rounds worked where that was begun; a line
    among those that does so itself is no other."""

    def report(self, place: Span, message: str, hint: str = "", kind: ProblemKind = "misfit") -> None:
        """Note something that does not fit, unless the count is unknown anyway."""
        hint = price_counts(hint, self.count, self.fabric.gauge, self.project.units)
        if not self.counting.lost:
            self.find(Finding(place=place, message=message, hint=hint, size=self.size, kind=kind))

    def find(self, finding: Finding) -> None:
        """Note something that does not fit, with the line in hand."""
        line, rounds = self.called
        found = replace(finding, row=self.line.number, begun=self.block_begun)
        self.findings.append(replace(found, called=line, called_at=rounds))

    def miss(self, place: Span, message: str, hint: str = "", *, anywhere: bool = False) -> None:
        """Note something missing, unless it may have been in a line not read; lose the count."""
        if not (self.counting.unread if anywhere else self.section.shaky):
            self.report(place, message, hint)
        self.lose()

    def miss_stitches(self, place: Span) -> None:
        """Note that nothing was cast on before a line; once, up to the next printed count or beginning."""
        self.report(place, "there are no stitches on the needles.", "Cast on first.", kind="empty")
        self.lose()

    def lose(self) -> None:
        """Go on past a line that was not read or does not fit: count, markers and holds are now unknown."""
        self.counting.lost = self.section.shaky = self.counting.unread = True

    def regain(self, count: int) -> None:
        """Go on with a count that is known again."""
        self.counting.lost, self.counting.off, self.count = False, 0, count
        self.markers, self.ends, self.short_rows.turns, self.short_rows.gap = (), (), (), None
        self.sides_parted, self.instep = False, None

    def warn(self, place: Span, message: str, kind: ProblemKind = "misfit") -> None:
        """Note something the knitter should know."""
        self.cautions.append(Finding(place=place, message=message, size=self.size, kind=kind))

    def reads_second(self, choice: TwoReadings) -> bool:
        """Note words of two readings; return whether they are taken in the second."""
        self.choices.append(choice)
        return choice.key in self.readings

    @property
    def wrong(self) -> bool:
        """Whether the row that comes next is worked on the wrong side; in the round, only behind a turn."""
        return self.side == "WS" and (self.flat or self.short_rows.gap is not None)

    @property
    def two_balls(self) -> bool:
        """Whether two sides of a neck are worked at once, each from its own ball; no marker is there then."""
        return self.sides_parted and len(self.markers) == 1

    @property
    def here(self) -> Span:
        """Where the line in hand stands; the beginning of the file before the first."""
        return self.line.place or Span(line=max(1, self.line.number), column=1)

    @property
    def facing(self) -> Facing:
        """The stitches as the row that comes next meets them."""
        return face(
            count=self.count,
            flat=self.flat,
            side="WS" if self.wrong else "RS",
            markers=self.markers,
            parted=self.two_balls,
            gap=self.short_rows.gap,
            turns=self.short_rows.turns,
        )

    @property
    def reached(self) -> bool:
        """Whether a part worked again has come to where it ends."""
        return self.limit is not None and len(self.drafts) >= self.limit

    def begin_section(self, name: str, yarn: str, fabric: Fabric) -> None:
        """Take up a section; with nothing on the needles it begins a piece."""
        self.section = SectionInHand(
            name=name, yarn=yarn, fabric=fabric, start=len(self.drafts), named=dict(self.techniques)
        )
        self.yarn, self.fabric = yarn, fabric
        self.leave_stripes()
        if not self.count:
            self.stripes_left = None
            self.flat, self.side, self.markers, self.sides_parted = False, "RS", (), False
            self.short_rows = replace(self.short_rows, gap=None, turns=())

    def emit(
        self,
        phrase: tuple[Item, ...],
        after: int,
        *,
        template: Template | None = None,
        turned: bool = False,
        divide: bool = False,
        chart: str | None = None,
        chart_round: int | None = None,
        evenly: bool = False,
        shaping: tuple[int, ...] | None = None,
        altered: tuple[str, ...] = (),
        bound_off: str | None = None,
        due: str = "",
    ) -> None:
        """Add one round and go to the side that follows.

        `altered` is what is the knitter's own besides the line and the needle; the rest is as in
        `DraftRound`.
        """
        if self.reached:
            raise PartReachedError
        # A gap at 0 is the beginning of the round; from one on the right side the rest of it is worked.
        flat = self.flat or turned or (bool(self.short_rows.gap) and self.side == "WS")
        if not flat:
            self.side = "RS"
        if self.section.own_yarn_again:
            self.section.own_yarn_again = False
            self.remarks.append(f"with {self.project.yarns[self.yarn].name}")
        draft = DraftRound(
            section=self.section.name,
            before=self.count,
            after=after,
            phrase=phrase,
            line=self.line.number,
            size=self.size,
            flat=flat,
            side=self.side,
            needle_mm=self.needle_mm,
            fabric=self.fabric,
            held=dict(self.held),
            markers=mirror_places(self.markers, after) if self.side == "WS" else self.markers,
            from_turn=self.short_rows.gap is not None and not self.flat,
            label=self.section.label,
            remarks=tuple(self.remarks),
            altered=(*self.alterations.line, *self.alterations.needle, *altered),
            template=template,
            divide=divide,
            chart=chart,
            chart_round=chart_round,
            evenly=evenly,
            shaping=shaping,
            bound_off=bound_off,
            due=due,
        )
        self._next_side(phrase, turned=turned)
        self._add(draft)

    def _refuse_one_piece(self) -> None:
        """Report a row worked as over one piece, where the needles hold two sides of a neck."""
        told = "two sides are worked at once here, each from its own ball, and this is not read of both."
        self.report(self.here, told, "Write the row out, for each side to its neck edge.")
        self.lose()

    def _add(self, draft: DraftRound) -> None:
        """Take a round as worked; what was said of it alone is not said of the next."""
        if self.two_balls and draft.after and not (draft.two_balls and draft.flat):
            self._refuse_one_piece()
            return
        if not self.count:
            self.joined, self.last.markers_lost = False, 0
            begin = len(self.drafts)
            self.established = Established(start=begin, end=begin, reached=begin, columns=[])
        self._tell_plain_change(draft)
        self._tell_yarn_in_hand(draft)
        self.section.label = None
        self.remarks = []
        self.short_rows.gap = None
        self.free = False
        if draft.after != self.count:
            self.ends, self.instep = (), None
        self.count = draft.after
        self.drafts.append(draft)
        if self.stripes is not None:
            self._go_on_striped(draft, self.stripes)
        self.worked += draft.after
        for far, what in (
            (len(self.drafts) > MOST_ROUNDS, "rounds"),
            (self.worked > MOST_WORKED, "stitches"),
        ):
            if far:
                place = Span(line=max(1, self.line.number), column=1)
                self.report(place, f"the garment comes to more {what} than any has.", kind="length")

    def turn_to_rows(self, side: str | None = None) -> None:
        """Go on in rows, the next one on `side` (None: the side stays), and tell it with that row."""
        self.flat = True
        if side is not None:
            self.side = side
        self.remarks.append("work in rows")

    def begin_rows(self, side: str | None = None) -> None:
        """Go on in rows as `turn_to_rows` does; a line may name either side for the first."""
        self.free = True
        self.turn_to_rows(side)

    def leave_stripes(self) -> None:
        """End the stripes of the page; a line may go on with them later."""
        if self.stripes is not None:
            self.stripes_left, self.stripes = self.stripes, None

    def _go_on_striped(self, draft: DraftRound, stripes: StripesInHand) -> None:
        """Go on to the next round of the stripes; a cast-on is none of them."""
        if not draft.before:
            stripes.next = 0 if stripes.last else stripes.next
            self.yarn = stripes.yarn
            return
        if yarns_in(draft.phrase) - {stripes.yarn}:
            hint = 'Write "With MC, ..." for a line that ends the stripes.'
            self.report(self.here, f"the line has other yarns than the {stripes.name} it is worked in.", hint)
            self.lose()
            return
        if not draft.height_mm and draft.after:
            told = f"whether a short row is a row of the {stripes.name} is not said."
            self.report(self.here, told, "Write the yarn of the short rows on a line before them.")
            self.lose()
            return
        stripes.step()
        self.yarn = stripes.yarn

    def _tell_plain_change(self, draft: DraftRound) -> None:
        """Tell the knitter of a round knitted plain for its changes, if knit and purl go on behind it.

        A chart behind it is another fabric, and the plain round the way to it.
        """
        place, self.last.plain_change = self.last.plain_change, None
        if place is None or draft.chart is not None:
            return
        if {"k", "p"} <= draft.codes:
            told = 'the round of the change is knitted plain; "in pattern, inc 8 sts evenly" keeps it.'
            self.warn(place, told)

    def _tell_yarn_in_hand(self, draft: DraftRound) -> None:
        """Tell the knitter which yarn is taken behind a round of two, if nothing says it.

        Behind a chart the part goes on in its own yarn, the background: common practice.
        """
        last, template, place = self.drafts[-1] if self.drafts else None, draft.template, self.line.place
        if last is None or draft.chart is not None or last.line == draft.line:
            return
        again = template is not None and (template.yarn or template.place.line < draft.line)
        background = last.chart is not None and self.yarn == self.section.yarn
        if place is None or again or background or self.last.yarn_named == len(self.drafts):
            return
        if len(yarns_in(last.phrase)) < 2 or yarns_in(draft.phrase) != {self.yarn}:
            return
        row, name = row_word(draft.flat), self.project.yarns[self.yarn].name
        told = f"behind a {row} in two yarns nothing says in which this one is worked: {name} is taken."
        self.warn(place, f'{told} Write "With CC" where it is another.')

    def _next_side(self, phrase: tuple[Item, ...], *, turned: bool) -> None:
        """Turn the work if the row was worked from end to end; after a cast-on the right side is next."""
        if not self.flat and not turned:
            picked = not self.count and "pu" in {run.stitch for run in runs_written(phrase)}
            self.side = "WS" if picked else "RS"
        elif turned or any(_is_worked(item) for item in phrase):
            self.side = other_side(self.side)

    def height_mm(self, origin: int) -> float:
        """Return the length knitted since a round, on the needles. Unit: mm."""
        return sum(draft.height_mm for draft in self.drafts[origin:])

    def length_in_rounds(
        self, length: PrintedLength, *, origin: int, blocked: bool = False
    ) -> tuple[float, float]:
        """Turn a length into rounds still to work, not yet rounded.

        Args:
            length: The length as printed.
            origin: Index of the draft from whose beginning it is measured.
            blocked: Whether the length is meant after blocking.

        Returns:
            Rounds still to work, at least one where nothing is worked yet, and the length to reach on the
            needles in mm.
        """
        gauge, target = self.fabric.gauge, length.of(self.size)
        if blocked and self.fabric.blocked is not None:
            target = target * self.fabric.blocked.rounds / gauge.rounds
        done = self.height_mm(origin)
        rounds = (target - done) * gauge.rounds / 100
        return (1.0 if half_up(rounds) < 1 and done == 0.0 else rounds), target


def yarns_in(phrase: tuple[Item, ...]) -> set[str]:
    """Return the yarns in which stitches of a round are worked."""
    apart = (Kind.MARK, Kind.SHIFT)
    return {run.yarn for run in runs_written(phrase) if run.yarn and stitch(run.stitch).kind not in apart}


def _is_worked(item: Item) -> bool:
    """Return whether an item works stitches along the needle, rather than casts on or moves them."""
    run = next(flatten((item,)), None)
    if run is None:
        return False
    return run.stitch in ("pu", "bo") or stitch(run.stitch).kind not in (Kind.EDGE, Kind.MARK, Kind.SHIFT)
