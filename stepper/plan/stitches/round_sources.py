"""What a written-out round may need besides its stitches: charts, the fabric below, held stitches.

Records and pure functions; no I/O.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import field

from stepper.plan.model import Run
from stepper.plan.stitches.row_elements import MisfitError
from stepper.project.problems import Span
from stepper.project.stitchwork import ChartPart, PickUp
from stepper.records import dataclass

Cells = tuple[tuple[str, str], ...]
"""How stitches are worked one by one: a stitch, and a yarn or none for the one in hand."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ChartRound:
    """One round of a chart in working order: the edge it begins with, the repeat, the edge it ends with."""

    before: tuple[Run, ...]
    repeat: tuple[Run, ...]
    after: tuple[Run, ...]
    name: str = ""
    number: int = 0
    """Round of the chart, from 1."""

    @property
    def edges(self) -> int:
        """Stitches of the old round that both edges use. Unit: stitches."""
        return sum(run.uses for run in self.before + self.after)

    @property
    def uses(self) -> int:
        """Stitches of the old round that one repeat uses. Unit: stitches."""
        return sum(run.uses for run in self.repeat)

    def times(self, count: int) -> int:
        """Return how many repeats there is room for on so many stitches."""
        uses = self.uses
        return max(0, count - self.edges) // uses if uses else 0

    def fits(self, count: int) -> bool:
        """Return whether whole repeats fill so many stitches, with the edges."""
        uses, within = self.uses, count - self.edges
        return within >= 0 and within % uses == 0 if uses else within == 0

    def near(self, count: int) -> list[int]:
        """Return the numbers of stitches next to one on which it does not fit that it would fit on."""
        below = self.edges + self.times(count) * self.uses
        return [each for each in dict.fromkeys((below, below + self.uses)) if each]


@dataclass(frozen=True, slots=True, kw_only=True)
class TwoReadings:
    """Words with two readings, met while working."""

    place: Span
    words: str
    """The words, as quoted to the knitter."""
    first: str
    """What they mean in the first reading, which is taken if both fit: `4 times in all`."""
    second: str
    line: int
    """Line of the file whose final count is told for both readings."""
    quiet: bool = False
    """Whether the first reading is so common that it need not be told if it fits."""

    @property
    def key(self) -> tuple[int, int]:
        """Line and column of the words."""
        return self.place.line, self.place.column


def _no_chart(part: ChartPart, room: int) -> ChartRound:
    raise MisfitError(part.place, f'there is no chart "{part.name}" for these {room} stitches.')


def _not_seen(place: Span) -> Cells:
    told = "this row is worked over a part of another, so what stands below it is not known."
    raise MisfitError(place, told, "Write its stitches, for example k1, p1, k1.")


@dataclass(frozen=True, slots=True, kw_only=True)
class RoundSources:
    """What is at hand while a round is worked; by itself only its own stitches are."""

    chart: Callable[[ChartPart, int], ChartRound] = _no_chart
    """Returns the round of a chart, or of a pattern that the page defines, over so many stitches."""
    width: Callable[[ChartPart], int] = lambda part: 0
    """Returns the stitches that a panel has by its own rows; 0 where they fit many counts."""
    look: Callable[[Span], Cells] = _not_seen
    """Returns, for each stitch the row meets, how it goes on in pattern: a stitch, and a yarn or none."""
    pattern_stands: Callable[[], bool] = lambda: True
    """Returns whether a pattern was set up that "patt 10" may go on with."""
    stretch: Callable[[str, int, int, Span], Cells] = lambda name, start, number, place: _not_seen(place)
    """Returns how a stretch in a fabric by its name is worked, from so many stitches on, so many wide."""
    flat: bool = False
    """Whether the piece is worked in rows."""
    section: str = ""
    """Name of the section that is worked."""
    copied: str = ""
    """Name of the part whose lines are worked in it; empty for its own."""
    held: dict[str, int] = field(default_factory=dict)
    """Stitches on hold by name. Unit: stitches."""
    held_by: dict[str, int] = field(default_factory=dict)
    """Line that put stitches on hold under a name in this section; worked again, it adds to them."""
    came_back: bool = False
    """Whether all that is on the needles was taken back from hold in the row before."""
    lots: Callable[[], dict[str, str]] = dict
    """Returns the sections that put stitches on hold, by what those are called."""
    half: Callable[[str], int] = lambda name: 0
    """Returns how many stitches front and back have of a body on hold as one; 0 where it is not known."""
    pair: Callable[[], tuple[int, ...]] = tuple
    """Gives the two markers between which alone the last shaping fell, as gusset markers stand; empty where
    there are no such two. Unit: stitches from where the row begins."""
    named_marker: Callable[[str], tuple[int, int] | None] = lambda name: None
    """Returns which marker of how many was placed by a name in the row that placed all of them, from 1; None
    if none was."""
    tell: Callable[[Span, str], None] = lambda place, words: None
    """Tells her something about the words at a place; by itself nothing, as the row is told of elsewhere."""
    picked: Callable[[PickUp], int] = lambda edge: 0
    """Returns the number of stitches picked up along an edge. Unit: stitches."""
    reads_second: Callable[[TwoReadings], bool] = lambda choice: False
    """Notes words with two readings that were met; returns whether they are taken in the second."""
