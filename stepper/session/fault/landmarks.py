"""Find what the stitches on the needles can be counted between: markers, or what can be seen in the fabric.

No I/O. Where no marker hangs, the changes of the last shaped round and the repeats of the last patterned one
can still be seen, or else the blocks of colour of the round just worked; a count runs from one of them to the
next. Sections are in working order.
"""

from __future__ import annotations

from enum import StrEnum
from itertools import pairwise

from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Group, Plan, Round
from stepper.records import dataclass
from stepper.session.counting.tally import each_stitch, markers_in, tally_stitches
from stepper.session.state import Position


class Landmark(StrEnum):
    """What stitches are counted between."""

    MARKER = "marker"
    CHANGE = "change"
    """An increase or decrease."""
    REPEAT = "repeat"
    COLOUR = "colour"
    """A change of colour in the round last worked."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Sections:
    """The stitches on the needles, cut where they can be counted."""

    kind: Landmark
    edges: tuple[int, ...]
    """Where the sections begin and end. From 0 to all stitches. Unit: stitches on the needles."""
    index: int | None = None
    """The round the landmarks were made in; None for markers."""
    turned: bool = False
    """Whether the work lies the other way round than when they were made."""

    @property
    def counts(self) -> tuple[int, ...]:
        """Stitches that should be in each section."""
        return tuple(after - before for before, after in pairwise(self.edges))


def sections_at(plan: Plan, place: Position) -> Sections | None:
    """Cut what is on the needles at a place; None if nothing tells one stitch from another."""
    total, at_marker = _markers_at(plan, place)
    if at_marker:
        return Sections(kind=Landmark.MARKER, edges=(0, *at_marker, total))
    if place.stitch:
        return None  # what is seen below cannot be followed through a round half worked
    return _seen_below(plan, place, total) or _seen_in_colour(plan, place)


def _seen_below(plan: Plan, place: Position, total: int) -> Sections | None:
    """Cut at the changes or repeats of the last round that has any."""
    for index in range(min(place.index, len(plan.rounds)) - 1, -1, -1):
        round_ = plan.rounds[index]
        if round_.words:
            return None  # where in its own words the stitches below it go is not known
        seen = _changes(round_)
        kind = Landmark.CHANGE
        if not seen:
            seen, kind = _repeats(round_), Landmark.REPEAT
        if seen:
            turned = is_turned(plan, index, place.index)
            if any(each.before != each.after for each in plan.rounds[index + 1 : place.index]):
                seen = _followed(plan, seen, index, place.index)
            elif turned:
                seen = [total - each for each in reversed(seen)]
            return Sections(kind=kind, edges=(0, *seen, total), index=index, turned=turned) if seen else None
        if round_.before != round_.after and place.index - index >= SEEN_PAST_EDGES:
            return None
    return None


def _seen_in_colour(plan: Plan, place: Position) -> Sections | None:
    """Cut at the changes of colour of the round just worked, where they are few enough to tell apart."""
    if not 0 < place.index <= len(plan.rounds) or is_turned(plan, place.index - 1, place.index):
        return None
    round_ = plan.rounds[place.index - 1]
    ends = tuple(end for _, end in colour_blocks(round_))
    if not FEWEST_COLOUR_CHANGES <= len(ends) - 1 <= MOST_COLOUR_CHANGES:
        return None
    if any(stitch(run.stitch).kind in (Kind.EDGE, Kind.SHIFT) for run in round_.runs):
        return None
    return Sections(kind=Landmark.COLOUR, edges=(0, *ends), index=round_.index)


def colour_blocks(round_: Round) -> tuple[tuple[str, int], ...]:
    """Return the key of the yarn of each block of colour in a round, in working order, and where it ends.

    Unit: stitches on the right needle.
    """
    blocks, place = list[tuple[str, int]](), 0
    for run in round_.runs:
        if run.leaves:
            place += run.leaves
            if blocks and blocks[-1][0] == run.yarn:
                blocks.pop()
            blocks.append((run.yarn, place))
    return tuple(blocks)


FEWEST_COLOUR_CHANGES = 2
"""Changes of colour in a round from which they are landmarks. Source: chosen here."""
MOST_COLOUR_CHANGES = 12
"""Changes of colour up to which nobody loses count of the blocks. Source: chosen here."""
SEEN_PAST_EDGES = 10
"""Rounds to which increases and repeats are followed down past stitches held, cast on or bound off, as from
the lines of a raglan, or the chart of a yoke, into the body below its underarms. Source: chosen here."""


def _followed(plan: Plan, seen: list[int], made: int, now: int) -> list[int]:
    """Follow the changes or repeats of a round down to the needles past stitches held, cast on and bound off.

    The stitch that was made, or the last of the repeat, is followed, so what is held or bound off is gone,
    and the next is numbered in its place. Empty where they are too far below, cannot be followed, or none is
    left.
    """
    if now - made > SEEN_PAST_EDGES:
        return []
    own = [each - 1 for each in seen]
    for index in range(made + 1, now + 1):
        above = plan.rounds[index - 1]
        if is_turned(plan, above.index, index):
            own = [above.after - 1 - each for each in reversed(own)]
        if index < now:
            if plan.rounds[index].before != above.after:
                return []
            own = _stitches_after(plan.rounds[index], own)
    total, behind = plan.rounds[now - 1].after, not is_turned(plan, made, now)
    return sorted({each + behind for each in own if 0 < each + behind < total})


def _stitches_after(round_: Round, own: list[int]) -> list[int]:
    """Return where stitches of the old round lie after a round, without those that left the needle."""
    right, place = list[int | None](), 0
    for entry in each_stitch(round_.runs):
        right += [place if entry.leaves else None] * entry.uses
        place += entry.leaves
    return [moved for each in own if (moved := right[each]) is not None]


def _markers_at(plan: Plan, place: Position) -> tuple[int, tuple[int, ...]]:
    """Return the stitches on both needles and where the markers hang among them."""
    before: tuple[int, ...] = ()
    if 0 < place.index <= len(plan.rounds):
        last = plan.rounds[place.index - 1]
        before = last.markers
        if is_turned(plan, last.index, place.index):
            before = tuple(sorted(last.after - each for each in before))
    if place.index >= len(plan.rounds):
        total = plan.count_before(place.index)
        return total, tuple(sorted({each for each in before if 0 < each < total}))
    round_ = plan.rounds[place.index]
    now = tally_stitches(round_, place.stitch)
    right = now.count - (round_.before - now.used)
    worked = [each for each in markers_in(round_) if each <= place.stitch]
    still = [each - now.used + right for each in before if each > now.used]
    return now.count, tuple(sorted({each for each in (*worked, *still) if 0 < each < now.count}))


def is_turned(plan: Plan, made: int, now: int) -> bool:
    """Return whether the work lies the other way round than when a row was worked."""
    return now < len(plan.rounds) and plan.rounds[made].side != plan.rounds[now].side


def _changes(round_: Round) -> list[int]:
    """Return the places just after each change, on the right needle, without the round's end."""
    places, place = [], 0
    for entry in each_stitch(round_.runs):
        place += entry.leaves
        if entry.shapes:
            places.append(place)
    return sorted({each for each in places if 0 < each < place})


def _repeats(round_: Round) -> list[int]:
    """Return the places just after each repeat of the round; none where all of it looks alike."""
    if len(round_.runs) < 2:
        return []
    places, place = [], 0
    for item in round_.phrase:
        if isinstance(item, Group) and item.leaves:
            once = item.leaves // item.times
            places += [place + once * number for number in range(1, item.times + 1)]
        place += item.leaves
    return [each for each in places if 0 < each < place]


def marked_off(total: int) -> tuple[int, int]:
    """Return how plain fabric is counted, where nothing can be seen: into how many equal parts, with a marker
    hung after each but the last, and how many stitches in each of these. One part where it is small.

    Source: chosen here; a marker hung at the half or the quarters keeps a count that is broken off.
    """
    parts = 1 if total < HALVED_FROM else 2 if total < QUARTERED_FROM else 4
    return parts, total // parts


HALVED_FROM = 40
"""Stitches from which a marker is hung at the half. Source: chosen here."""
QUARTERED_FROM = 100
"""Stitches from which markers are hung at the quarters. Source: chosen here."""
