"""Rounds as they are worked, before they are numbered and written, and what does not fit. Records; no I/O."""

from __future__ import annotations

from collections.abc import Hashable, Iterable
from dataclasses import fields, is_dataclass

from stepper.craft.stitches import stitch
from stepper.plan.model import Item, Run, runs_written
from stepper.project.instructions import Evenly, OwnWords, PrintedCount
from stepper.project.model import Fabric
from stepper.project.problems import ProblemKind, Span
from stepper.project.stitchwork import (
    Across,
    ChartPart,
    Element,
    Hold,
    PickUp,
    Several,
    Spread,
    Until,
    Work,
    every_element,
)
from stepper.records import dataclass


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
    """`RS` or `WS` if the line is only for rows of that side."""
    counts: tuple[PrintedCount, ...] = ()
    """Counts printed with it, if it is written out before it is worked."""
    evenly: Evenly | None = None
    """The change spread evenly over it, if that is all the line says."""
    yarn: str = ""
    """Key of the yarn that the line takes up; empty if it goes on with the current one."""
    own: OwnWords | None = None
    """The page's own words for it, if its stitches are not known; `elements` is empty then."""

    @property
    def asks(self) -> bool:
        """Whether its outcome depends on more than the stitches: on charts or on the rows below."""
        return any(map(_asks, every_element(self.elements)))


def own_words_in(templates: Iterable[Template]) -> int:
    """Return the line of the first of some rounds that is kept in own words; 0 if none is."""
    return next((template.own.place.line for template in templates if template.own is not None), 0)


def own_words_of(line: int) -> str:
    """Say that what a row does to its stitches is not known, by its line."""
    return f"the row in line {line} is in your own words"


def without_places(value: object) -> Hashable:
    """Return what a template says, whatever line says it."""
    if isinstance(value, Span):
        return ""
    if isinstance(value, tuple):
        return tuple(map(without_places, value))
    if is_dataclass(value):
        return tuple(without_places(getattr(value, field.name)) for field in fields(value))
    return str(value)


_RESTS_ON_MORE = (ChartPart, PickUp, Across, Spread)
# Kinds of elements that every round of every size is looked through for.


def _asks(element: Element) -> bool:
    if isinstance(element, Work):  # what most elements are
        return element.stitch == "pattern"
    if isinstance(element, Until):
        # Which markers those of a gusset are depends on the rounds before.
        return element.stitch == "pattern" or element.name in ("gusset", "thumb")
    if isinstance(element, Several):
        return bool(element.reading)
    if isinstance(element, Hold):
        return element.times is None  # they go on hold under the name of the section
    return isinstance(element, _RESTS_ON_MORE)


def _is_whole(phrase: tuple[Item, ...]) -> bool:
    """Return whether a round works stitches, and leaves none unworked at its end."""
    works = False
    for item in phrase:
        if isinstance(item, Run) and item.stitch == "rest":
            return False
        works = works or bool(item.uses and item.leaves)
    return works


@dataclass(frozen=True, slots=True, kw_only=True)
class Opened:
    """What a row becomes by the buttonholes that lie in it, while its pattern goes on beside them."""

    phrase: tuple[Item, ...]
    before: int
    after: int
    remark: str
    """What is said of them with the row."""
    closes: bool = False
    """Whether it only casts on again what the row before bound off."""


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
    fabric: Fabric
    held: dict[str, int]
    markers: tuple[int, ...]
    label: str | None = None
    remarks: tuple[str, ...] = ()
    evenly: bool = False
    shaping: tuple[int, ...] | None = None
    """Places of the changes if known; otherwise they are found from the runs."""
    chart: str | None = None
    chart_round: int | None = None
    divide: bool = False
    bound_off: str | None = None
    """How the stitches are bound off, if they are."""
    altered: tuple[str, ...] = ()
    template: Template | None = None
    from_turn: bool = False
    """Whether it goes on from a turn in the round, and so does not begin where the round does."""
    due: str = ""
    """The page's own words for what goes on beside its changes; empty where all stitches are known."""
    opened: Opened | None = None
    """The row with its buttonholes, if some lie in it; all else here is the row without them."""
    whole: bool | None = None
    """Whether it adds a whole round to the length; None until first asked."""

    @property
    def codes(self) -> set[str]:
        """The stitches it is worked in, by their codes."""
        return {run.stitch for run in runs_written(self.phrase)}

    @property
    def shapes(self) -> bool:
        """Whether it increases or decreases anywhere."""
        return any(stitch(code).shapes for code in self.codes)

    @property
    def two_balls(self) -> bool:
        """Whether two sides of a neck are worked at once in it, each from its own ball."""
        return not self.codes.isdisjoint(("join 2nd ball", "other ball"))

    @property
    def gauge(self) -> str:
        """Name of the gauge it is knitted at."""
        return self.fabric.name

    @property
    def words(self) -> str:
        """The page's own words, if that is all that is known of the round or part of it; else empty."""
        return self.due or (
            self.template.own.text if self.template is not None and self.template.own is not None else ""
        )

    @property
    def height_mm(self) -> float:
        """What the round adds to the length, on the needles. Unit: mm.

        A short row adds nothing where it was not worked, so it does not count.
        """
        if self.whole is None:
            self.whole = _is_whole(self.phrase)
        return self.fabric.gauge.round_mm if self.whole else 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Finding:
    """Something wrong in one size, or worth mentioning."""

    place: Span
    message: str
    hint: str = ""
    size: int = 0
    kind: ProblemKind = "misfit"
    printed: int = 0
    """`count`: the stitches that the pattern prints."""
    counted: int = 0
    """`count`: the stitches that result from the lines."""
    read: str = ""
    """`count`: how the line was read, round by round."""
    row: int = 0
    """The line of the file in hand when it was found; 0 where none was."""
    begun: int = 0
    """Rounds of the garment worked where that line, or the numbered rows it belongs to, was begun."""
    called: int = 0
    """The line that works that line once more; 0 where it is worked by itself."""
    called_at: int = 0
    """Rounds of the garment worked where that was begun."""
