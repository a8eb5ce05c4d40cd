"""The plan: every round of the garment, to the stitch, in the order in which it is knitted.

Records only; frozen, checked when built elsewhere (`tests.invariants`). A round is written twice:
`phrase` keeps its repeats as groups, for reading out; `runs` is the same laid out flat, for counting.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import field
from enum import StrEnum

from stepper.craft.even.manners import Manner
from stepper.craft.stitches import stitch
from stepper.plan.materials import Materials
from stepper.project.reading.own_words import UNCOUNTED
from stepper.records import dataclass


@dataclass(frozen=True, slots=True)
class Run:
    """The same stitch worked several times in one yarn."""

    stitch: str
    """A code of the stitch table."""
    times: int
    """How often. Range: 1 and up."""
    yarn: str
    """Key of the yarn; for `hold` and `return` the name of the held stitches."""

    @property
    def uses(self) -> int:
        """Stitches of the old round used. Unit: stitches."""
        return self.times * stitch(self.stitch).uses

    @property
    def leaves(self) -> int:
        """Stitches left on the right needle. Unit: stitches."""
        return self.times * stitch(self.stitch).leaves

    @property
    def progress(self) -> int:
        """How far the run moves the place in the round. Unit: stitches, as counted on the right needle."""
        return self.times * stitch(self.stitch).progress


@dataclass(frozen=True, slots=True)
class Group:
    """Items worked repeatedly, as between the asterisks or brackets of a printed line."""

    items: tuple[Item, ...]
    times: int
    """How often the whole group is worked. Range: 1 and up."""
    name: str = ""
    """Name of the chart whose repeat this is; empty for a plain repeat."""

    @property
    def uses(self) -> int:
        """Stitches of the old round used. Unit: stitches."""
        return self.times * sum(item.uses for item in self.items)

    @property
    def leaves(self) -> int:
        """Stitches left on the right needle. Unit: stitches."""
        return self.times * sum(item.leaves for item in self.items)

    @property
    def progress(self) -> int:
        """How far the group moves the place in the round. Unit: stitches."""
        return self.times * sum(item.progress for item in self.items)


Item = Run | Group


def other_side(side: str) -> str:
    """Return the side of the row after one of a side: `RS` or `WS`."""
    return "WS" if side == "RS" else "RS"


def flatten(phrase: tuple[Item, ...]) -> Iterator[Run]:
    """Lay a phrase out flat, run by run, in working order, without joining equal neighbours."""
    for item in phrase:
        if isinstance(item, Run):
            yield item
        else:
            for _ in range(item.times):
                yield from flatten(item.items)


def runs_written(phrase: tuple[Item, ...]) -> Iterator[Run]:
    """List the runs of a phrase as written: those of a group once, however often it is worked."""
    for item in phrase:
        if isinstance(item, Run):
            yield item
        elif item.times:
            yield from runs_written(item.items)


@dataclass(frozen=True, slots=True, kw_only=True)
class Checkpoint:
    """A count worth making, at the end of the round it belongs to."""

    expect: int
    """Stitches that should be on the needles after the round. Unit: stitches."""
    reason: str
    """Why here, in the trade's words: `after the increases`, `before chart ridge`."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Round:
    """One round, or one row of flat knitting."""

    index: int
    """Place in the whole garment, from 0."""
    section: str
    number: int
    """Number in the section, from 1, for people."""
    of: int
    """Rounds in the section; 0 while it is not read to its end."""
    label: str | None
    """The printed label of the line this round begins, if it has one."""
    size: str
    """Name of the size whose numbers this round uses."""
    needle_mm: float | None
    """Needle in hand. Unit: mm; None if the pattern names none."""
    flat: bool
    side: str
    """`RS` or `WS`; always `RS` in the round."""
    before: int
    """Stitches on the needles before the round."""
    after: int
    """Stitches on the needles after it."""
    held: dict[str, int]
    """Stitches on hold after the round, by the name they were held for. Unit: stitches."""
    phrase: tuple[Item, ...]
    """The round with its repeats kept as groups."""
    runs: tuple[Run, ...]
    """The round laid out flat, equal neighbours joined. Uses `before`, leaves `after`."""
    shaping: tuple[int, ...]
    """Stitches of the old round worked before each increase or decrease. Unit: stitches."""
    floats: tuple[tuple[str, int], ...]
    """Longest float of each yarn, including across the join, if more than one yarn is used. Unit:
    stitches."""
    instruction: str
    """The round in trade abbreviations, one line."""
    checkpoint: Checkpoint | None = None
    remarks: tuple[str, ...] = ()
    """What is said before the round: a needle change, a note, a yarn to break."""
    caught: tuple[tuple[str, tuple[int, ...]], ...] = ()
    """Where long floats are caught: key of the yarn, and behind which stitches of the round, from 1."""
    evenly: bool = False
    """Whether the changes of this round are spread evenly over it."""
    chart: str | None = None
    """Name of the chart this round is from."""
    chart_round: int | None = None
    """Round of the chart, from 1 at the bottom."""
    gauge: str = ""
    """Name of the gauge the round is knitted at."""
    markers: tuple[int, ...] = ()
    """Places of the markers after the round. Unit: stitches from the beginning of the round."""
    line: int = 0
    """Line of the project file the round comes from, from 1."""
    altered: tuple[str, ...] = ()
    """How it differs from the printed pattern, in words; empty if it is as printed."""
    words: str = ""
    """The round in the page's own words, if only the number of its stitches is known; else empty."""

    @property
    def progress(self) -> int:
        """How many stitches the round has, as counted on the right needle. Unit: stitches."""
        return sum(item.progress for item in self.phrase)

    @property
    def is_uncounted(self) -> bool:
        """Whether nobody knows how many stitches it leaves: of several rows only the last was counted."""
        return self.words.rstrip(" .").endswith(UNCOUNTED)

    @property
    def numbered(self) -> str:
        """Its number in the section, and of how many if that is known: `35 of 98`."""
        return f"{self.number} of {self.of}" if self.of else f"{self.number}"

    @property
    def holds(self) -> bool:
        """Whether stitches are put on hold in it, as where a yoke is divided."""
        return any(run.stitch == "hold" for run in self.runs)


@dataclass(frozen=True, slots=True, kw_only=True)
class Stretch:
    """Rounds worked until the piece has a length; their number can be corrected by measuring."""

    first: int
    """Index of the first round of the stretch."""
    last: int
    """Index of the last round of the stretch."""
    origin: int
    """Index of the round from whose beginning the length is measured."""
    target_mm: float
    """Length to reach. Unit: mm, measured on the needles."""
    rounds_per_10cm: float
    """Rounds over 10 cm on the needles."""
    cycle: int = 1
    """Rounds in the pattern that the stretch repeats; measured, it changes by whole repeats."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Caution:
    """Something the knitter should know that does not stop the plan."""

    line: int
    text: str


class OpenKind(StrEnum):
    """What a row that is not read may be."""

    ROWS = "rows"
    """Rows worked by its words."""
    IDLE = "idle"
    """A remark: nothing is knitted for it."""
    CAST_ON = "cast on"
    PICK_UP = "pick up"
    HOLD = "hold"
    BIND_OFF = "bind off"
    """All stitches bound off."""
    AGAIN = "again"
    """Lines of another part once more."""
    PARTS = "parts"
    """One row with all its stitches in their order: worked, bound off, cast on, left to wait."""
    SHORT_ROWS = "short rows"
    """Rows turned before their end, all of them up to where the last turn is closed."""
    TAKEN = "taken back"
    """Stitches on hold taken onto empty needles."""
    COME = "come"
    """Stitches that come onto empty needles by its words, whatever way."""


class PartKind(StrEnum):
    """What is done with a stretch of stitches of a row."""

    WORKED = "worked"
    OFF = "bound off"
    ON = "cast on"
    HELD = "on hold"
    """They wait, and are not worked in the row."""
    BEYOND = "beyond the turn"
    """They lie beyond a turn, and wait on hold."""
    BACK = "back from hold"
    """They waited, and are worked in the row."""
    FIRST_HELD = "first on hold"
    """The stretch worked first waits from then on: it is worked, and not on the needle behind the row."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RowPart:
    """A stretch of stitches of a row."""

    kind: PartKind
    stitches: int
    """How many: of those that the row met, or that it casts on. Unit: stitches. Range: 1 and up."""
    leaves: int = 0
    """`WORKED`, `BACK`: how many they are behind the row. Unit: stitches. Range: 1 and up; else 0."""
    name: str = ""
    """The part that they wait for, as the page calls it; empty for none."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Proposed:
    """What a row that is not read is likely to be, as the page says, in the size that is knitted."""

    kind: OpenKind
    rows: int = 0
    """`ROWS`: how many; 0 if they last until something."""
    lasts: str = ""
    """`ROWS`: until what they last: "until piece measures 12 cm"; empty if their number is known."""
    stitches: int = 0
    """Stitches after it. Range: 0 and up; 0 where none are left."""
    printed: bool = False
    """Whether the page prints them; else they stay as they are."""
    moved: str = ""
    """What is cast on, picked up or put on hold: "38", "54 for left sleeve"; `AGAIN`: bound off first."""
    part: str = ""
    """`AGAIN`: the part."""
    parts: tuple[RowPart, ...] = ()
    """`PARTS`: all stitches of the row in their order; the row ends behind the last that is worked."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CountWanted:
    """What a page asks of a number of stitches that it leaves to the knitter: an odd one, a multiple of 4."""

    multiple: int = 1
    """What it is to be a multiple of. Range: 1 and up; 1 where any number will do."""
    over: int = 0
    """Stitches on top of that multiple. Range: below `multiple`."""
    least: int = 0
    """The range told beside it ("approx 95-107"), from here. Unit: stitches; 0 where none is told."""
    most: int = 0
    """To here; a range binds nobody."""

    def takes(self, number: int) -> bool:
        """Return whether a number is one of those asked for."""
        return number % self.multiple == self.over


@dataclass(frozen=True, slots=True, kw_only=True)
class OpenRow:
    """A row that is not read or does not fit, up to which the garment is worked out."""

    line: int
    """Its line in the project file, from 1."""
    section: str
    """The section that it stands in."""
    flat: bool
    """Whether the piece is worked in rows before it."""
    remarks: tuple[str, ...] = ()
    """What is to be said before it, of lines that are read."""
    words: str = ""
    """The row as the page prints it."""
    trouble: str = ""
    """Why it cannot be kept by its count alone, as a sentence; empty if it can."""
    besides: str = ""
    """What she says yes to besides its count, as it is said: "in rounds from here"; empty for nothing."""
    fabric: str = ""
    """The fabric that its words order from here on, as they name it; empty for none."""
    proposed: Proposed | None = None
    """What it is likely to be; None where the page does not say enough."""
    stitches: int = 0
    """Stitches on the needles before it."""
    wrong: bool = False
    """Whether the wrong side faces her before it."""
    gap: bool = False
    """Whether the row before bound off stitches in its middle: this one turns there or fills the gap."""
    second: bool = False
    """Whether it makes the second of a piece, so that it is worked behind the lines of the first."""
    within_turns: bool = False
    """Whether short rows are open before it, which a later row closes."""
    held: tuple[tuple[str, int], ...] = ()
    """What waits on hold before it, name and stitches, the last first."""
    by_parts: frozenset[PartKind] = frozenset()
    """What its words say is done with some stitches of the row, so that it is asked stretch by stretch; empty
    if its count is enough."""
    turns: bool = False
    """Whether its words turn within the row."""
    several: bool = False
    """Whether they are short rows, all of which are asked of at their end."""
    leaves_ring: bool = False
    """Whether a ring may be worked back and forth behind it, so that this is asked."""
    names: tuple[str, ...] = ()
    """The parts for which its words put stitches on hold, in their order."""
    wanted: CountWanted | None = None
    """What its words ask of the number of stitches that come; None where they leave none open."""

    @property
    def is_asked_by_parts(self) -> bool:
        """Whether it is asked of its stitches stretch by stretch."""
        return bool(self.by_parts) or self.turns


@dataclass(frozen=True, slots=True, kw_only=True)
class Plan:
    """The whole garment, ready to knit, or as much of it as is read."""

    title: str
    rounds: tuple[Round, ...]
    stretches: tuple[Stretch, ...] = ()
    warnings: tuple[Caution, ...] = ()
    units: str = "cm"
    """The unit in which lengths are said: `cm` or `in`."""
    yarns: dict[str, str] = field(default_factory=dict)
    """What each yarn is called when read out: name by key."""
    finish_by: str | None = None
    """Date to be done by, ISO 8601, if the file names one."""
    materials: Materials = field(default_factory=Materials)
    """What the garment is made of."""
    spacing: Manner = Manner.SAYABLE
    """The manner in which its even changes are spaced."""
    open: OpenRow | None = None
    """The row behind the last round if the garment goes on with one that is not read; None if it ends."""

    @property
    def sections(self) -> tuple[str, ...]:
        """Names of the sections in the order knitted."""
        return tuple(dict.fromkeys(round_.section for round_ in self.rounds))

    @property
    def phrases(self) -> tuple[tuple[Item, ...], ...]:
        """What is worked in its rounds, each but once: alike rounds share one phrase."""
        return tuple({id(round_.phrase): round_.phrase for round_ in self.rounds}.values())

    @property
    def charts(self) -> set[str]:
        """Names of the charts that are worked, over whole rounds or parts of rounds."""
        parts = {item.name for phrase in self.phrases for item in phrase if isinstance(item, Group)}
        return {*parts, *(round_.chart for round_ in self.rounds if round_.chart is not None)} - {""}

    def count_before(self, index: int) -> int:
        """Return the stitches at the beginning of a round; after the last one, those it leaves."""
        if index < len(self.rounds):
            return self.rounds[index].before
        return self.rounds[-1].after if self.rounds else 0

    def stretch_ahead(self, index: int) -> Stretch | None:
        """Find the length-driven stretch that begins later, and is measured from here or from before."""
        for stretch in self.stretches:
            if stretch.origin <= index < stretch.first:
                return stretch
        return None

    def stretch_at(self, index: int) -> Stretch | None:
        """Find the length-driven stretch that the round belongs to, if any."""
        for stretch in self.stretches:
            if stretch.first <= index <= stretch.last:
                return stretch
        return None
