"""The stitches on the needles as the next row meets them, and back again. No I/O.

Theory of operation. Places on the needles (markers, the turns of short rows, the gap where a short row ended)
are kept as seen from the right side, from the first stitch. A row meets them from its own beginning: a
wrong-side row from the other end, a row that goes on from a turn from that turn on. In rows, the stitches
before the turn rest; in the round they come last, since the work is a ring, and the beginning of the round is
on the way. Everything inside a row is counted from where the row begins, and converted back afterwards.
"""

from __future__ import annotations

from collections.abc import Iterable

from stepper.plan.model import Item, flatten
from stepper.records import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Facing:
    """The needles as a row meets them. Every place is counted from where the row begins. Unit: stitches."""

    count: int
    """All stitches on the needles."""
    end: int
    """Where the row, or the round, ends."""
    markers: tuple[int, ...]
    lead: int = 0
    """Stitches before the beginning, which rest; always 0 in the round."""
    behind: tuple[int, ...] = ()
    """Markers among those, from the end of the needle."""
    turns: tuple[int, ...]
    """Turns of short rows ahead, rising."""
    turns_behind: tuple[int, ...] = ()
    around: bool = False
    """Whether the row goes on from a turn in the round."""
    wrong: bool = False
    """Whether it is worked from the wrong side."""
    parted: bool = False
    """Whether the one marker is none, but the neck between two sides that are worked at once."""
    begins_at_turn: bool = False

    @property
    def room(self) -> int:
        """Stitches that the row can work at most."""
        return self.count - self.lead


@dataclass(frozen=True, slots=True, kw_only=True)
class Left:
    """The places on the needles after a row, as seen from the right side."""

    markers: tuple[int, ...]
    gap: int | None
    """Where a short row was turned; None after a whole row."""
    turns: tuple[int, ...]
    passed: bool
    """Whether the row worked past the turn of an earlier one."""


def face(
    *,
    count: int,
    flat: bool,
    side: str,
    markers: tuple[int, ...] = (),
    parted: bool = False,
    gap: int | None = None,
    turns: tuple[int, ...] = (),
) -> Facing:
    """Look at the needles from where the next row begins.

    Args:
        count: Stitches on the needles.
        flat: Whether the piece is worked in rows.
        side: Side of the row, `RS` or `WS`.
        markers: Places of the markers, from the right side.
        parted: Whether the one marker is the neck between two sides worked at once.
        gap: Where the last row was turned before its end, from the right side; None after a whole row.
        turns: Places of all turns not worked past yet, from the right side.
    """
    wrong = side == "WS"
    if gap is None and not wrong:
        return Facing(count=count, end=count, markers=markers, turns=turns, parted=parted)

    def own(place: int) -> int:
        return count - place if wrong else place

    start = own(gap) if gap is not None else 0
    marks = sorted(own(place) for place in markers)
    ends = sorted(own(place) for place in turns)
    if flat:
        return Facing(
            count=count,
            end=count - start,
            markers=tuple(mark - start for mark in marks if mark > start),
            lead=start,
            behind=tuple(mark for mark in marks if mark <= start),
            turns=tuple(end - start for end in ends if end > start),
            turns_behind=tuple(end for end in ends if end <= start),
            wrong=wrong,
            parted=parted,
            begins_at_turn=gap is not None,
        )
    start %= count
    return Facing(
        count=count,
        end=count - start,
        markers=tuple(sorted((mark - start) % count for mark in marks if mark != start)),
        behind=tuple(mark for mark in marks if mark == start),
        turns=tuple(sorted((end - start) % count for end in ends if (end - start) % count)),
        turns_behind=tuple(end for end in ends if (end - start) % count == 0),
        around=True,
        wrong=wrong,
        begins_at_turn=True,
    )


def leave(
    facing: Facing, items: Iterable[Item], *, used: int, made: int, placed: tuple[int, ...], turned: bool
) -> Left:
    """Return the places on the needles after a row, as seen from the right side.

    Args:
        facing: The needles as the row met them.
        items: What it worked, without the stitches that rest.
        used: Stitches of the old row that it worked.
        made: Stitches that it left on the right needle.
        placed: Markers after it, from where the row began.
        turned: Whether it was turned before its end.
    """
    after = facing.count - used + made
    if not (turned or facing.begins_at_turn or facing.wrong or facing.turns):
        return Left(markers=placed, gap=None, turns=(), passed=False)
    # A row that begins where the round does has that place at its own beginning, wherever it grows.
    ends = _moved(facing.end, items, used, made) if facing.end < facing.count else 0
    wrong = facing.wrong

    def outside(place: int) -> int:
        row = (place - ends) % max(after, 1)
        return after - row if wrong else row

    behind = (after - mark if wrong else mark for mark in facing.behind)
    marks = {outside(place) for place in placed} | (
        {outside(0)} if facing.around and facing.behind else set()
    )
    if not facing.around:
        marks |= set(behind)
    gap = None
    turns = {outside(end - used + made) for end in facing.turns if end > used}
    if facing.around:
        turns |= {outside(0) for _ in facing.turns_behind}
    else:
        turns |= {after - end if wrong else end for end in facing.turns_behind}
    if turned:
        gap = outside(made)
        if facing.around:
            gap %= after
        turns.add(gap)
    return Left(
        markers=tuple(sorted(mark for mark in marks if 0 < mark < after)),
        gap=gap,
        turns=tuple(sorted(end for end in turns if 0 < end < after)),
        passed=any(end < used for end in facing.turns),
    )


def _moved(place: int, items: Iterable[Item], used: int, made: int) -> int:
    """Return where a place of the old row is on the new one."""
    old = new = 0
    for run in flatten(tuple(items)):
        if old + run.uses >= place:
            each = run.uses // run.times
            return new + (place - old) // each * (run.leaves // run.times)
        old, new = old + run.uses, new + run.leaves
    return place - used + made


def mirror_places(markers: tuple[int, ...], count: int) -> tuple[int, ...]:
    """Return places counted from the other end of the needle."""
    return tuple(sorted(count - place for place in markers))
