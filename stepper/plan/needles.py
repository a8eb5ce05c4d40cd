"""What is on the needles while the pattern is worked: the state that every instruction changes. No I/O."""

from __future__ import annotations

from dataclasses import dataclass, field

from stepper.craft.gauge import Gauge, half_up
from stepper.plan.model import Item, Stretch
from stepper.plan.phrase import Worked
from stepper.project.instructions import Element, Length
from stepper.project.model import Fabric, Project
from stepper.project.problems import Place


@dataclass(frozen=True, slots=True)
class Template:
    """A round that can be worked again: written out, or one round of a chart."""

    elements: tuple[Element, ...]
    place: Place
    chart: str = ""
    chart_round: int = 0
    """Round of the chart, from 1."""
    stockinette: bool = False
    """Knit on the right side and, in rows, purl on the wrong side."""


@dataclass(slots=True, kw_only=True)
class Draft:
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

    @property
    def height_mm(self) -> float:
        """What the round adds to the length, on the needles. Unit: mm."""
        works = any(item.uses and item.leaves for item in self.phrase)
        return self.fabric.gauge.round_mm if self.fabric is not None and works else 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Finding:
    """Something wrong in one size, or worth a word."""

    place: Place
    message: str
    hint: str = ""
    size: int = 0
    kind: str = "misfit"
    """`misfit`, `count` or `length`: findings of one kind at one place are told once for all sizes."""


@dataclass(slots=True, kw_only=True)
class Needles:
    """The knitting in hand."""

    project: Project
    size: int
    """The size knitted: place in the list of sizes, from 0."""
    checking: bool = False
    """Whether only the counts are wanted, for a size that is not knitted."""
    count: int = 0
    held: dict[str, int] = field(default_factory=dict)
    markers: tuple[int, ...] = ()
    flat: bool = False
    side: str = "RS"
    needle_mm: float | None = None
    yarn: str = ""
    fabric: Fabric | None = None
    section: str = ""
    section_start: int = 0
    """Index of the first draft of the section."""
    drafts: list[Draft] = field(default_factory=list)
    stretches: list[Stretch] = field(default_factory=list)
    remarks: list[str] = field(default_factory=list)
    """What is to be said before the next round."""
    label: str | None = None
    line: int = 0
    line_start: int = 0
    """Index of the first draft of the line."""
    pattern: tuple[Template, ...] = ()
    """The rounds that "in pattern" means."""
    numbered: dict[int, Template] = field(default_factory=dict)
    named: dict[str, Template] = field(default_factory=dict)
    """Rounds with a name of their own: `dec round`."""
    known: dict[tuple[object, ...], tuple[Template, Worked]] = field(default_factory=dict)
    """Rounds worked out before, by their template and the stitches they met; the template is kept alive."""
    charted: dict[tuple[object, ...], tuple[Item, ...]] = field(default_factory=dict)
    """Chart rounds laid out before."""
    findings: list[Finding] = field(default_factory=list)
    cautions: list[Finding] = field(default_factory=list)
    altered: tuple[str, ...] = ()
    """What of the rounds now worked differs from the printed pattern."""

    section_altered: tuple[str, ...] = ()
    """What of the whole section differs from the printed pattern."""
    marks: dict[int, tuple[str, ...]] = field(default_factory=dict)
    """Line of the file to what the knitter altered in it."""
    reshape: bool = False
    """Whether the line in hand may decrease where it says increase, and the other way round."""

    def report(self, place: Place, message: str, hint: str = "", kind: str = "misfit") -> None:
        """Note something that does not fit."""
        self.findings.append(Finding(place=place, message=message, hint=hint, size=self.size, kind=kind))

    def warn(self, place: Place, message: str) -> None:
        """Note something the knitter should know."""
        self.cautions.append(Finding(place=place, message=message, size=self.size))

    def emit(self, phrase: tuple[Item, ...], after: int, **told: object) -> Draft:
        """Add one round and go to the side that follows."""
        draft = Draft(
            section=self.section,
            before=self.count,
            after=after,
            phrase=phrase,
            line=self.line,
            size=self.size,
            flat=self.flat,
            side=self.side if self.flat else "RS",
            needle_mm=self.needle_mm,
            fabric=self.fabric,
            held=dict(self.held),
            markers=self.markers,
            label=self.label,
            remarks=tuple(self.remarks),
            altered=self.altered,
        )
        for name, value in told.items():
            setattr(draft, name, value)
        self.label = None
        self.remarks = []
        self.count = after
        if self.flat:
            self.side = "WS" if self.side == "RS" else "RS"
        self.drafts.append(draft)
        return draft

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

    def gauge(self, place: Place) -> Gauge | None:
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
