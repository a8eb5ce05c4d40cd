"""How far a row is worked: stitches used and made, markers passed, places to work to. No I/O."""

from __future__ import annotations

import re
from dataclasses import dataclass, field

from stepper.craft.stitches import stitch
from stepper.plan.model import Item, Run
from stepper.plan.needle_by_needle import NeedleEnds
from stepper.plan.round_sources import Supplies
from stepper.plan.row_elements import MisfitError
from stepper.plan.row_facing import Facing
from stepper.project.problems import Span
from stepper.project.stitchwork import ChartPart, Several, Until

_OF_A_KIND = {"gusset": 2, "thumb": 2, "center": 1, "centre": 1}
"""Markers that there are of a kind; where the row meets another number, some are of another kind."""


@dataclass(slots=True, kw_only=True)
class PlaceInRow:
    """How far a row is worked, and what it has met: stitches, markers, ends of needles."""

    facing: Facing
    size: int
    yarn: str
    method: str
    supplies: Supplies
    waiting: list[int] = field(default_factory=list)
    """Markers not reached yet, on the old round."""
    used: int = 0
    made: int = 0
    placed: list[int] = field(default_factory=list)
    held: list[tuple[str, int]] = field(default_factory=list)
    returned: list[str] = field(default_factory=list)
    charts: list[tuple[str, int]] = field(default_factory=list)
    turned: bool = False
    begins: int = 0
    """Where a marker for the beginning of the round was placed within it, on the new round; 0 for nowhere."""
    parted: bool = False
    """Whether the row ended at a turn with the rest put on hold."""
    aimed: int | None = None
    """Marker that was last worked to, or to so many stitches before it: its place on the old round."""
    ends: NeedleEnds = field(default_factory=NeedleEnds)
    """Where the needles of a sock end."""
    steps: int = 0
    """Elements worked so far, every pass of a repeat counted."""

    def __post_init__(self) -> None:
        """Take the markers that the row will meet."""
        self.waiting = list(self.facing.markers)

    def advance(self, run: Run, items: list[Item]) -> None:
        """Work a run, carrying the markers that it passes."""
        entry = stitch(run.stitch)
        if run.times <= 0:
            return
        start_used, start_made = self.used, self.made
        self.used += run.uses
        self.made += run.leaves
        if entry.uses:
            while self.waiting and self.waiting[0] < self.used:
                passed = self.waiting.pop(0)
                self.placed.append(start_made + (passed - start_used) // entry.uses * entry.leaves)
        if self.ends.waiting:
            self.ends.advance(run, entry, start_used, start_made)
        items.append(run)

    def pass_markers(self) -> None:
        """Carry the markers at the very end of the round."""
        for passed in self.waiting:
            if passed <= self.used and self.made not in self.placed:
                self.placed.append(self.made)
        self.waiting = []
        self.placed = sorted({place for place in self.placed if 0 < place < self.made})

    def need(self, uses: int, what: str, place: Span) -> None:
        """Raise MisfitError if fewer stitches are left than something uses."""
        left = self.facing.room - self.used
        if uses > left:
            raise MisfitError(
                place,
                f"{what} needs {uses} stitches; {left} of the {self.facing.count} are left at this place.",
            )

    def goal_of(self, element: Until | Several | ChartPart) -> int:
        """Return the place up to which an element works. Unit: stitches of the old round."""
        short = element.short.of(self.size) if element.short else 0
        name = "" if isinstance(element, ChartPart) else element.name
        if element.goal in ("turn", "past"):
            goal = self._turning(element, name) + (short if element.goal == "past" else -short)
        elif element.goal == "marker" and name != "end":
            goal = self._marker(element, name) - short
        elif element.goal == "last":
            goal = self.facing.end - short
        else:
            goal = self.facing.end - (short if element.goal == "marker" else 0)
        if goal < self.used:
            raise MisfitError(
                element.place,
                f"{self.used} stitches are worked at this place, past the one to work to ({goal}).",
            )
        return goal

    def _marker(self, element: Until | Several | ChartPart, name: str) -> int:
        """Return the place of the next marker, or of the last; in the round its end is one."""
        if name == "first" and self.facing.markers and self.facing.markers[0] < self.used:
            raise MisfitError(element.place, "the first marker of the row is behind this place.")
        ahead = self.waiting
        if ahead and ahead[0] == self.used == self.aimed:
            ahead = ahead[1:]  # worked to already, and standing at it: the next one is meant
        if name in _OF_A_KIND and len(self.facing.markers) != _OF_A_KIND[name]:
            raise MisfitError(
                element.place,
                f"markers have no names here: the row meets {len(self.facing.markers)}, and nobody can tell "
                f"which is the {name} marker.",
                'Write "k to marker", with "sm" for every marker that is passed before it.',
            )
        if ahead:
            self.aimed = ahead[-1] if name == "last" else ahead[0]
            return self.aimed
        if (self.placed or self.waiting) and self.used < self.facing.end:
            return self.facing.end
        raise MisfitError(
            element.place,
            "no marker is left in this round.",
            "Place markers first: pm in a line, or Place marker every 20 sts.",
        )

    def _turning(self, element: Until | Several | ChartPart, name: str) -> int:
        """Return the place of the next turn; the double stitch lies before it, the wrapped one after."""
        for turn in self.facing.turns:
            if turn > self.used:
                if element.goal == "past":
                    return turn + (1 if name == "wrap" else 0)
                return turn - (1 if name == "ds" else 0)
        raise MisfitError(
            element.place,
            "no short row was turned ahead of this place.",
            "Write the first two short rows with their stitches: k27, turn.",
        )


def begins_round(name: str) -> bool:
    """Return whether a marker is placed for the beginning of the round: "pm for new BOR"."""
    pattern = r"\bbor\b|\bbeg\w*(?:\s+of\s+(?:the\s+)?(?:rnd|round))?$"
    return re.search(pattern, name, re.IGNORECASE) is not None
