"""Three manners of spacing an increase or decrease round: evenly mixed, sayable, in two runs.

In all three the gaps differ by at most one; what differs is the order of larger and smaller ones. With `n`
plain stitches and `k` changes on `b` stitches an exactly even round has a change each `b / k` stitches of the
old round; "a gap" below is that way from change to change.

- *Evenly mixed*: larger and smaller gaps alternate as evenly as they can, so no change stands a whole stitch
  from its even place. It begins with half a gap.
- *Sayable*: the shortest phrase in which no change stands more than two gaps from its even place.
- *In two runs*: all larger gaps, then all smaller ones, wherever that takes the changes.

**Where the first change stands.** In the round, sayable and in two runs, it comes after the first whole gap,
and the last change ends the round: a printed "*k4, m1; rep from * around" is worked like that (common
practice), so a repeat is said without a stray half gap at both ends. The even places are then `b / k`,
`2b / k`, … `b`, and the last change stands on its own. No change stands at the very beginning of a round,
where it would be taken for the end of the one before, unless decreases use up every stitch and leave no other
place.
In rows there is half a gap at each end, and the even places are `b / 2k`, `3b / 2k`, …

All is whole-number arithmetic. No I/O.
"""

from __future__ import annotations

from collections.abc import Iterator
from enum import Enum
from fractions import Fraction
from itertools import pairwise
from math import gcd

from stepper.craft.even import spacing
from stepper.craft.even.ordered_gaps import write_gaps
from stepper.craft.even.phrases import Phrase, Plain, Repeat, SpacedStretch, unfold, words_in
from stepper.craft.even.sayable import shortest
from stepper.craft.stitches import stitch
from stepper.craft.window import Gaps, Window
from stepper.records import dataclass

MOST_GAPS_OFF = 2
"""How far a change may stand from its even place in a sayable round. Unit: gaps."""


class Manner(Enum):
    """How larger and smaller gaps follow each other."""

    MIXED = "mixed"
    SAYABLE = "sayable"
    RUNS = "runs"


@dataclass(frozen=True, slots=True)
class Spaced:
    """A round with its changes placed."""

    phrase: Phrase
    """How it is said."""
    positions: tuple[int, ...]
    """Stitches of the old round worked before each change. Shape: (changes,)."""
    gaps: tuple[int, ...]
    """The full gaps in working order; in rows without the two ends. Unit: plain stitches."""
    off: Fraction
    """How far the change farthest from its even place stands from it. Unit: stitches."""
    gap: Fraction
    """The way from change to change in an exactly even round. Unit: stitches."""
    words: int
    """Words of the phrase as it is said."""


def space_changes(
    stitches: int, changes: int, *, change: str, flat: bool, manner: Manner = Manner.SAYABLE
) -> Spaced:
    """Place the changes of a round.

    Args:
        stitches: Stitches of the old round. Range: 1 and up.
        changes: Increases or decreases. Range: 0 and up, as many as fit.
        change: Code of the change in the stitch table: `m1`, which uses no stitch, or a decrease.
        flat: Worked in rows, with half a gap at each end.
        manner: How larger and smaller gaps follow each other.

    Returns:
        The round. Always: its gaps and changes use all stitches, the gaps differ by at most one, and sayable
        and mixed rounds keep what they promise about even places.

    Raises:
        ValueError: So many changes do not fit.

    Source: quotient and remainder for the gaps; `stepper.craft.even.sayable` for their order.
    """
    uses = stitch(change).uses
    # Asked first in every manner, since it knows what does not fit.
    mixed = (
        spacing.decrease_positions(stitches, changes, uses=uses, flat=flat)
        if uses
        else spacing.increase_positions(stitches, changes, flat=flat)
    )
    job = _Job(stitches, changes, change, uses, flat)
    if not changes:
        return job.made((Plain(stitches),) if stitches else (), half=flat)
    if manner is Manner.MIXED or (flat and changes == 1):
        return min((job.made(each, half=True) for each in _mixed(job, mixed)), key=_length)
    if manner is Manner.RUNS:
        return min((job.made(each, half=flat) for each in _two_runs(job)), key=_length)
    phrase = _sayable(job)
    if phrase is not None:
        return job.made(phrase, half=flat)
    # No phrase of four stretches stays near the even places: the most even order does.
    if flat:
        return min((job.made(each, half=True) for each in _mixed(job, mixed)), key=_length)
    return job.made(write_gaps(spacing.gaps(job.plain, changes), change), half=False)


def _length(round_: Spaced) -> tuple[int, Fraction]:
    return round_.words, round_.off


@dataclass(frozen=True, slots=True)
class _Job:
    """What to place."""

    stitches: int
    changes: int
    change: str
    uses: int
    flat: bool

    @property
    def plain(self) -> int:
        """Stitches that no change uses."""
        return self.stitches - self.uses * self.changes

    def made(self, phrase: Phrase, *, half: bool) -> Spaced:
        """Measure a phrase; `half` where the even places begin with half a gap."""
        gaps, tail = unfold(phrase)
        positions, worked = [], 0
        # In stitches times twice the changes, so that all is whole numbers.
        farthest, twice, first = 0, 2 * self.changes, 1 if half else 2
        for number, gap in enumerate(gaps):
            worked += gap
            positions.append(worked + number * self.uses)
            farthest = max(farthest, abs(worked * twice - (2 * number + first) * self.plain))
        off = Fraction(farthest, twice) if twice else Fraction(0)
        full = gaps[1:] if self.flat else (tail + gaps[0], *gaps[1:]) if gaps else ()
        way = Fraction(self.stitches, self.changes) if self.changes else Fraction(0)
        return Spaced(phrase, tuple(positions), full, off, way, words_in(phrase, self.change))

    def window(self, start: int, size: int) -> Window:
        """Return the window of a sayable round, in stitches times twice the changes."""
        even = 2 * self.plain
        step = 2 * self.changes
        limit = 2 * MOST_GAPS_OFF * self.stitches
        return Window(start, size * step - even, (size + 1) * step - even, limit)


def _mixed(job: _Job, positions: tuple[int, ...]) -> Iterator[Phrase]:
    """Write a round that begins with half a gap: as a whole, and as its shortest period over and over."""
    plain = [place - number * job.uses for number, place in enumerate(positions)]
    gaps = (plain[0], *(later - earlier for earlier, later in pairwise(plain)))
    common = gcd(job.plain, job.changes)
    for times in {1, common}:
        lead, *inner = gaps[: job.changes // times]
        rest = job.plain // times - lead - sum(inner)
        tail = (Plain(rest),) if rest else ()
        for period in (
            (SpacedStretch(lead), *write_gaps(tuple(inner), job.change), *tail),
            (*write_gaps((lead, *inner), job.change), *tail),
        ):
            yield (Repeat(period, times),) if times > 1 else period


def _sayable(job: _Job) -> Phrase | None:
    ways = _row_gaps(job) if job.flat else _round_gaps(job)
    return shortest([(gaps, job.window(start, gaps.size)) for gaps, start in ways], job.change)


def _two_runs(job: _Job) -> Iterator[Phrase]:
    for gaps, _ in _row_gaps(job, joined=False) if job.flat else _round_gaps(job):
        larger = (SpacedStretch(gaps.size + 1, gaps.larger),) if gaps.larger else ()
        yield (*gaps.lead, *larger, SpacedStretch(gaps.size, gaps.smaller), *gaps.tail)


def _round_gaps(job: _Job) -> Iterator[tuple[Gaps, int]]:
    size, larger = divmod(job.plain, job.changes)
    # An empty gap at the beginning would put a change at the very beginning.
    begins = True if size == 0 and larger else None
    yield Gaps(size, job.changes - larger, larger, begins_larger=begins), 0


def _row_gaps(job: _Job, *, joined: bool = True) -> Iterator[tuple[Gaps, int]]:
    """Return the gaps between the changes of a row for each length of its two ends.

    An end is half of a gap, of the smaller or the larger one, rounded either way. `joined`: where an end is
    as long as a gap, it may also be taken as one of them.
    """
    least = 0 if job.uses else 1  # one is not made at the edge itself
    usual = job.plain // job.changes
    for size in range(max(0, usual - 1), usual + 2):
        for lead in range(max(least, size // 2), (size + 2) // 2 + 1):
            for tail in range(max(least, size // 2), (size + 2) // 2 + 1):
                larger = job.plain - lead - tail - (job.changes - 1) * size
                yield from _with_ends(job, size, larger, lead, tail, joined=joined)


def _with_ends(
    job: _Job, size: int, larger: int, lead: int, tail: int, *, joined: bool
) -> Iterator[tuple[Gaps, int]]:
    """Return the gaps of a row with its ends, if the ends leave as many stitches as such gaps take."""
    inner = job.changes - 1
    if not 0 <= larger < inner:
        return
    if max(lead, tail) > (size + (2 if larger else 1)) // 2:
        return
    first, behind = SpacedStretch(lead), (Plain(tail),) if tail else ()
    start = 2 * job.changes * lead - job.plain
    yield Gaps(size, inner - larger, larger, lead=(first,), tail=behind), start
    if joined and lead == size:
        yield Gaps(size, inner - larger + 1, larger, tail=behind, begins_larger=False), job.plain
    elif joined and lead == size + 1:
        yield Gaps(size, inner - larger, larger + 1, tail=behind, begins_larger=True), job.plain
