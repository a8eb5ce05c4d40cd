"""Places in a round up to which its elements work: markers, the middle, turns, the end. No I/O.

All of them are counted from where the row begins (`stepper.plan.stitches.row_facing`).
"""

from __future__ import annotations

import re
from dataclasses import field

from stepper.plan.stitches.round_sources import RoundSources
from stepper.plan.stitches.row_elements import MisfitError
from stepper.plan.stitches.row_facing import Facing
from stepper.project.stitchwork import ChartPart, Several, Until
from stepper.records import dataclass

_OF_A_KIND = {"gusset": 2, "thumb": 2, "center": 1, "centre": 1}
"""Number of markers of each kind; if the row meets a different number, some are of another kind."""


_PAIRS = ("gusset", "thumb")
"""Kinds whose two markers are known by the shaping between them, where the row meets others too."""


@dataclass(slots=True, kw_only=True)
class RoundProgress:
    """How far a round has got, and what is ahead."""

    facing: Facing
    size: int
    supplies: RoundSources
    waiting: list[int] = field(default_factory=list)
    """Markers not reached yet, on the old round."""
    used: int = 0
    made: int = 0
    placed: list[int] = field(default_factory=list)
    closes_gap: bool = False
    """Whether a decrease follows that closes the gap beside wrapped stitches, after the last of them."""
    aimed: int | None = None
    """Marker last worked up to, or to a number of stitches before it: its place on the old round."""

    def goal(self, element: Until | Several | ChartPart) -> int:
        """Return the place up to which an element works. Unit: stitches of the old round."""
        short = element.short.of(self.size) if element.short else 0
        name = "" if isinstance(element, ChartPart) else element.name
        name = "end" if self._means_beginning(element, name) else name
        if element.goal in ("turn", "past"):
            goal = self._turning(element, name) + (short if element.goal == "past" else -short)
        elif element.goal == "marker" and name != "end":
            goal = self._marker(element, name) - short
        elif element.goal == "last":
            goal = self.facing.end - short
        elif element.goal == "behind":
            goal = (self.facing.end if name == "end" else self._marker(element, name)) + short
        elif element.goal == "half":
            goal = self._half(element) - short
        elif element.goal in ("centre", "before centre"):
            goal = self._centre(element, short)
        else:
            goal = self.facing.end - (short if element.goal == "marker" else 0)
        # Short rows in the round may go on past its beginning, but never over more stitches than there are.
        # It is not passed unsaid.
        within = element.goal == "behind" and name != "end" and self.used < self.facing.end
        if goal > (self.facing.end if within else self.facing.room):
            raise MisfitError(element.place, "that is past the end of the row.")
        if goal < self.used:
            raise MisfitError(
                element.place,
                f"{self.used} stitches are worked at this place, past the one to work to ({goal}).",
            )
        return goal

    def _marker(self, element: Until | Several | ChartPart, name: str) -> int:
        """Return the place of the next marker or the last; in the round, its end counts as one."""
        if self.facing.parted or name == "neck":
            return self._neck(element, name)
        if name == "first" and self.facing.markers and self.facing.markers[0] < self.used:
            raise MisfitError(element.place, "the first marker of the row is behind this place.")
        if name.isdigit():
            return self._marker_by_number(element, int(name))
        ahead = self.waiting
        if ahead and ahead[0] == self.used == self.aimed:
            ahead = ahead[1:]  # already reached: the next one is meant
        if name in _PAIRS and len(self.facing.markers) > _OF_A_KIND[name]:
            own = self.supplies.pair()
            ahead = [mark for mark in ahead if mark in own]
            if ahead:
                self.aimed = ahead[0]
                return self.aimed
        own_name = self.supplies.named_marker(name) if name else None
        if name == "marked" and (own_name is None or self.facing.wrong):
            told = "from the wrong side, the marker hangs behind the marked stitch"
            told = told if own_name is not None else "no row before marks one stitch"
            raise MisfitError(
                element.place,
                f"{told}: nobody can tell where it is.",
                "Write how many stitches come before it.",
            )
        if own_name is not None and own_name[1] == len(self.facing.markers):
            return self._marker_by_number(element, own_name[0])
        if own_name is not None and (
            own_name[0] > 1 or name == "marked" or own_name[1] < len(self.facing.markers)
        ):
            raise MisfitError(
                element.place,
                f"the {name} marker was number {own_name[0]} of {own_name[1]} where it was placed, and the "
                f"row meets {len(self.facing.markers)}: nobody can tell which it is.",
                'Write "to third marker", or whichever it is in this row.',
            )
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
        if isinstance(element, Several) and not self.used:
            return self.facing.end  # "(k1, p1) to marker": the one at the beginning of the round
        raise MisfitError(
            element.place,
            "no marker is left in this round.",
            "Place markers first: pm in a line, or Place marker every 20 sts.",
        )

    def _means_beginning(self, element: Until | Several | ChartPart, name: str) -> bool:
        """Return whether "the marker" of a short row is that where the round begins: no other hangs."""
        others = self.facing.markers or self.placed or self.waiting
        passes = self.facing.room > self.facing.end > self.used  # as only short rows in the round may
        return element.goal in ("marker", "behind") and not (name or others) and passes

    def _neck(self, element: Until | Several | ChartPart, name: str) -> int:
        """Return the place where two sides that are worked at once part."""
        if name == "neck" and self.facing.parted and self.waiting:
            self.aimed = self.waiting[0]
            return self.aimed
        told = "no marker is left where two sides are worked at once."
        if name == "neck" and self.facing.parted:
            told = "the neck edge is behind this place."
        elif name == "neck":
            told = "two sides are not worked at once here, so nobody can tell where the neck edge is."
        raise MisfitError(element.place, told, 'Write "to end", or "to last 3 sts".')

    def _marker_by_number(self, element: Until | Several | ChartPart, number: int) -> int:
        """Return the place of the second marker of the row, the third, and so on.

        A wrong-side row meets the markers from the other end, and it is not clear from where they are
        counted; a marker is taken only if both ways lead to the same one.
        """
        markers = self.facing.markers
        if number > len(markers):
            there = f"the row meets {len(markers)} marker{'' if len(markers) == 1 else 's'}"
            raise MisfitError(element.place, f"{there}, so there is no such one to work to.")
        if self.facing.wrong and number != len(markers) + 1 - number:
            raise MisfitError(
                element.place,
                "on the wrong side nobody can tell from which end the markers are counted.",
                'Write "p to marker", with "sm" for every marker that is passed before it.',
            )
        place = markers[number - 1]
        if place not in self.waiting:
            raise MisfitError(element.place, "that marker of the row is behind this place.")
        self.aimed = place
        return place

    def _half(self, element: Until | Several | ChartPart) -> int:
        """Return the place where half of the stitches that the row meets are worked."""
        if self.facing.end % 2:
            told = f"half of {self.facing.end} stitches is no place between two."
            raise MisfitError(element.place, told, "Say how many stitches are worked.")
        return self.facing.end // 2

    def _centre(self, element: Until | Several | ChartPart, short: int) -> int:
        """Return the place of the middle of the row, or where a number of middle stitches begin.

        The one stitch in the middle is that of the row before, as in a shawl that grows at edges and spine.
        """
        width = short if element.goal == "centre" else 1
        grown = self.made > self.used and width < 2
        width = width or int(grown and self.facing.end % 2)
        beside = self.facing.end - width
        if beside < 0 or beside % 2 or not (self.used == self.made or (grown and width)):
            told = f"the {self.facing.end} stitches of the row have no {width} in the middle"
            if beside >= 0 and beside % 2 == 0:
                told = "stitches were changed before the middle, so nobody can tell which one is meant"
            raise MisfitError(element.place, f"{told}.", "Say how many stitches are worked before them.")
        return beside // 2 - (short if element.goal == "before centre" else 0)

    def _turning(self, element: Until | Several | ChartPart, name: str) -> int:
        """Return the place of the next turn; the double stitch is before it, the wrapped one after it.

        The gap that a decrease closes after wrapped short rows is beyond all of them.
        """
        ahead = [turn for turn in self.facing.turns if self.used < turn <= self.facing.end]
        if self.closes_gap and not name and len(ahead) > 1:
            return ahead[-1] + 1
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
