"""Records of a checked project file, every number still as printed. Frozen; no I/O."""

from __future__ import annotations

from dataclasses import field
from enum import StrEnum

from stepper.craft.even.manners import Manner
from stepper.craft.gauge import Gauge
from stepper.project.instructions import Line
from stepper.project.problems import Span
from stepper.records import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Yarn:
    """One yarn of the garment."""

    key: str
    """The letters the pattern and the charts use."""
    name: str
    """What it is called when read out."""
    colour: str | None
    """`#rrggbb`, or None if the file gives none."""
    grams: float | None
    """Weight of one skein. Unit: g."""
    metres: float | None
    """Length of one skein. Unit: m."""
    bought: float | None
    """How much the knitter has. Unit: skeins."""
    letter: str = ""
    """The letter by which rounds count its stitches, as in "M2, R1"; empty for none."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Swatch:
    """A swatch that was weighed."""

    stitches: float
    """Its width. Unit: stitches."""
    rounds: float
    """Its height. Unit: rounds."""
    grams: float
    """Unit: g."""
    yarn: str
    """Key of the yarn; empty for the first in the file that has a skein."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Fabric:
    """One gauge of the file: a fabric, its needle, its counts before and after blocking."""

    name: str
    needle_mm: float | None
    gauge: Gauge
    """As knitted, on the needles."""
    blocked: Gauge | None
    """After blocking, or None if the file does not say."""
    swatch: Swatch | None = None
    """The weighed swatch, or None if there is none."""


@dataclass(frozen=True, slots=True)
class Cell:
    """One square of a chart."""

    stitch: str
    """A code of the stitch table, or empty for `no stitch`."""
    yarn: str | None
    """Key of the yarn, or None for the yarn in hand."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Chart:
    """A chart as drawn: rounds from the bottom up, squares from left to right."""

    name: str
    rounds: tuple[tuple[Cell, ...], ...]
    place: Span
    edge_left: int = 0
    """Squares at the left that are worked once. Unit: squares."""
    edge_right: int = 0
    """Squares at the right that are worked once."""
    right_side_only: bool = False
    """Whether only the right-side rows are drawn, and the others purled back."""
    caution: str = ""
    """What the knitter should know about how it was read; empty if nothing was guessed."""

    @property
    def width(self) -> int:
        """Squares in a round. Unit: squares."""
        return len(self.rounds[0])


MOST_ROUNDS_OVER = 4
"""Most rounds over which the change at a switch is spread."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Switch:
    """A change to another size from a labelled line on."""

    label: str
    size: int
    """Index in `sizes`, from 0."""
    place: Span
    reshape: bool = False
    """Whether the knitter allows the line to do the opposite of what it prints: a decrease where it says
    increase, if the counts of the two sizes need that."""
    over: int = 1
    """Rounds over which the change of the line is spread. Range: 1 and up."""


class RuleKind(StrEnum):
    """What kind of thing the knitter does differently from the pattern."""

    NOTE = "note"
    NO_BOBBLES = "no bobbles"
    NEEDLE = "needle"
    NO_NEEDLE_CHANGE = "no needle change"
    LENGTH = "length"
    BIND_OFF = "bind-off"
    RIB = "rib"
    SIZE = "size"
    KEEP_FREE = "keep free"
    COUNT = "count"


@dataclass(frozen=True, slots=True, kw_only=True)
class Alteration:
    """What the knitter does differently from the pattern."""

    kind: RuleKind
    text: str
    """In the knitter's words."""
    place: Span
    section: str = ""
    """Name of the section it is for; empty for all."""
    mm: float | None = None
    """`needle`: the needle used instead; `length`: how much longer, below 0 for shorter; `keep free`: over
    what width. Unit: mm."""
    instead_of: float | None = None
    """The needle the pattern prints. Unit: mm."""
    rounds: int = 0
    """`length`: rounds more, below 0 for fewer; 0 if a length is given."""
    words: str = ""
    """`bind-off`: how; `size`: the name of the size; `count`: the label of the line; `keep free`: `front`,
    `back` or both, and `side` if the rounds begin at the side."""
    stitches: int = 0
    """`keep free`: how many; 0 if a length is given. `count`: how many to reach. Unit: stitches."""
    rib: tuple[tuple[str, int], ...] = ()
    """The rib worked instead: each stitch and how many of it, in order."""
    rib_printed: tuple[tuple[str, int], ...] = ()
    """The printed rib it replaces; empty for any."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Section:
    """A part of the garment, knitted from its first line to its last."""

    name: str
    gauge: str
    yarn: str
    lines: tuple[Line, ...]
    place: Span
    short_rows: str = ""
    """How short rows are turned: `german`, `wrap` or `plain`; empty if the section does not say."""
    own_yarn: bool = False
    """Whether the file names its yarn; else it goes on in the yarn in hand."""
    own_gauge: bool = False
    """Whether the file names its gauge; else it goes on with the needle in hand."""


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnCue:
    """The knitter's own words for a cue."""

    words: str
    meant: str
    """The wording in the vocabulary that they replace; not checked here."""
    place: Span
    """Where her words are."""
    meant_place: Span


@dataclass(frozen=True, slots=True, kw_only=True)
class Project:
    """The whole file, checked value by value; the arithmetic comes with the plan."""

    title: str
    units: str
    """`cm` or `in`."""
    sizes: tuple[str, ...]
    size: int
    """The size begun with: index in `sizes`, from 0."""
    switches: tuple[Switch, ...]
    yarns: dict[str, Yarn]
    fabrics: dict[str, Fabric]
    """By name, at least one."""
    charts: dict[str, Chart]
    sections: tuple[Section, ...]
    needles_mm: tuple[float, ...] = ()
    """The needles that the pattern names, if the file lists them: "smaller" and "larger" are of these.
    Unit: mm."""
    needle_names: tuple[tuple[str, float], ...] = ()
    """What the file calls those needles by, "ribbing" or "main", each with its size. Unit: mm."""
    alterations: tuple[Alteration, ...] = ()
    body: dict[str, float] = field(default_factory=dict)
    """The wearer's measurements by name. Unit: mm."""
    wanted_ease: dict[str, float] = field(default_factory=dict)
    """How much larger than the body it should be, by the name of the measurement; below 0 for smaller.
    Unit: mm."""
    finish_by: str | None = None
    """Date to be done by, ISO 8601."""
    float_mm: float | None = None
    """Longest float that is not caught, if the file gives a length. Unit: mm."""
    float_stitches: int | None = None
    """The same, if the file gives a count. Unit: stitches."""
    cues: tuple[OwnCue, ...] = ()
    """The knitter's own wordings, in the order of the file."""
    spacing: Manner | None = Manner.SAYABLE
    """The manner in which even changes are spaced; None spaces them as plans did before there were manners,
    for a journal knitted then."""
    alone: Span | None = None
    """Where the file says that it is kept for the size knitted alone: no other size is worked out or checked,
    as counts in it are said for that one. None if it is for all of them."""

    @property
    def lines(self) -> tuple[Line, ...]:
        """The lines of all sections, in their order."""
        return tuple(line for section in self.sections for line in section.lines)

    @property
    def line_texts(self) -> dict[int, str]:
        """What each line prints, with its label in front, by its line in the file."""
        return {line.place.line: f"{line.label or ''} {line.text}" for line in self.lines}
