"""Gaps of two neighbouring sizes, and how far the work may drift from the even places. No I/O."""

from __future__ import annotations

from functools import cache

from stepper.craft.even.phrases import Phrase
from stepper.records import dataclass


@dataclass(frozen=True, slots=True)
class Gaps:
    """The gaps that a phrase has to produce, and what surrounds them."""

    size: int
    """The smaller gap. Unit: stitches. Range: 0 and up."""
    smaller: int
    """How many gaps of `size`. Range: 0 and up."""
    larger: int
    """How many gaps of `size + 1`. Range: 0 and up; one of the two is at least 1."""
    lead: Phrase = ()
    """What is worked before them: half a gap and a change."""
    tail: Phrase = ()
    """What is worked after them: half a gap."""
    begins_larger: bool | None = None
    """Whether the first gap must be a larger one; None if either will do."""


@dataclass(frozen=True, slots=True)
class Window:
    """How far the work may get from the even places. In any unit, the same one throughout."""

    start: int
    """Where the work is before the first gap, relative to where it should be: above 0 is ahead."""
    smaller: int
    """How far ahead each smaller gap takes it; below 0 is behind."""
    larger: int
    """How far ahead each larger gap takes it."""
    limit: int
    """The most it may be off either way. Range: 0 and up."""


@dataclass(frozen=True, slots=True)
class Task:
    """Gaps still to be produced, and the window they have to stay in."""

    larger: int
    smaller: int
    at: int
    """Where the work is."""
    low: int
    high: int
    after: bool | None = None
    """Whether the stretch just before is of larger gaps; the next must be of the other kind. None if either
    will do."""

    def less(self, larger: int, smaller: int, at: int, after: bool | None = None) -> Task:
        """Return what is left after some gaps."""
        return Task(self.larger - larger, self.smaller - smaller, at, self.low, self.high, after)

    def shared(self, times: int, drift: int) -> Task:
        """Return one of `times` equal shares of it, which together take the work that far."""
        # The first and the last share have to stay in the window; then so do those between.
        last = drift - drift // times
        low, high = self.low - min(0, last), self.high - max(0, last)
        return Task(self.larger // times, self.smaller // times, self.at, low, high)


def find_multipliers(step: int, low: int, high: int, most: int) -> range:
    """Return the numbers from 1 to `most` that times a step lie between two bounds."""
    if step == 0:
        return range(1, most + 1) if low <= 0 <= high else range(0)
    if step < 0:
        step, low, high = -step, -high, -low
    return range(max(1, -(-low // step)), min(most, high // step) + 1)


@cache
def divisors(number: int) -> tuple[int, ...]:
    """Return the divisors of a number from 2 up."""
    return tuple(each for each in range(2, number + 1) if number % each == 0)
