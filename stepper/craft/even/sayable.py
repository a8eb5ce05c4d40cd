"""Find the shortest phrase for gaps of two neighbouring sizes that keeps every change near its even place.

Theory of operation. Larger and smaller gaps, one stitch apart, may follow each other in any order as long as
every change stays near its even place. Each larger gap takes the work a little ahead of the even places, each
smaller one a little behind, so its distance from them is a sum, and an order will do if the sum never leaves
a window. A phrase is a tree over that order: stretches of one gap, and repeats.

Phrases are tried by how many stretches they name, from one to four, and each try knows how many words it may
take; few words are tried first, since that leaves few phrases to look at. The result is the shortest of
all phrases that name up to four stretches, with repeats as `stepper.craft.even.phrases` says them. A common
factor of the numbers of gaps comes in as a repeat of everything.

All is whole-number arithmetic. No I/O.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import gcd

from stepper.craft.even.phrases import (
    Phrase,
    Plain,
    Repeat,
    SpacedStretch,
    stretch_words,
    times_words,
    words_in,
)
from stepper.craft.window import Gaps, Task, Window, divisors, find_multipliers

_BUDGETS = (*range(12, 28), 30, 35, 50)
"""Words a phrase may take, tried in turn."""

_NEVER = 1_000_000
"""More words than any phrase has."""

MOST_STRETCHES = 4
"""More than four things with numbers in them cannot be kept in mind."""


def shortest(ways: Sequence[tuple[Gaps, Window]], change: str) -> Phrase | None:
    """Find the shortest phrase that covers the gaps of one of several ways.

    Args:
        ways: Gaps with what stands around them, and how far the changes may stand from their even places.
            Behind the last gap, the same place in every order, the work has to be within its window.
        change: Code of the change in the stitch table, for its words.

    Returns:
        The phrase with lead and tail. Of equally short ones the one with fewer stretches, then one that
        begins with a larger gap, then the one whose changes stay nearest to their even places. None if no
        phrase of up to four stretches stays in the window.

    Source: search over all of them; the tests compare it with a search over all orders of the gaps.
    """
    searches = [_Search(gaps, window, change) for gaps, window in ways]
    for most in _BUDGETS:
        # Few words first: a search allowed many words looks at many more phrases.
        for search in searches:
            search.run(most)
            most = min(most, search.words)
        found = [search for search in searches if search.phrase is not None]
        if found:
            return min(found, key=lambda search: (search.words, search.rank)).phrase
    return None


class _Search:
    """One search and the best phrase so far."""

    def __init__(self, gaps: Gaps, window: Window, change: str) -> None:
        self.gaps, self.window, self.change = gaps, window, change
        said = words_in((SpacedStretch(0),), change)
        self.unit = (stretch_words(gaps.size, said), stretch_words(gaps.size + 1, said))
        self.step = (window.smaller, window.larger)
        self.around = words_in((*gaps.lead, *gaps.tail), change)
        self.phrase: Phrase | None = None
        self.words = _NEVER
        self.rank = (0, True, 0)

    def run(self, most: int) -> None:
        """Look for the best phrase of at most that many words."""
        gaps, window = self.gaps, self.window
        task = Task(gaps.larger, gaps.smaller, window.start, -window.limit, window.limit)
        level = 1 if gaps.lead or gaps.tail else 2
        for stretches in range(1, MOST_STRETCHES + 1):
            spare = min(most, self.words) - self.around
            for parts in self._sequences(stretches, task, spare, level=level):
                self._offer(parts, stretches, most)

    def _least(self, stretches: int, larger: int, smaller: int) -> int:
        """Return the fewest words that a number of stretches need to cover some gaps."""
        if stretches == 1:
            size = larger > 0
            return _NEVER if larger and smaller else self.unit[size] + times_words(larger or smaller)
        if not (larger and smaller):
            return _NEVER
        both = self.unit[0] + self.unit[1]
        if stretches > 2:
            return both + (stretches - 2) * min(self.unit) + (2 if larger + smaller > stretches else 0)
        in_two = both + times_words(larger) + times_words(smaller)
        return min(in_two, both + 2) if gcd(larger, smaller) > 1 else in_two

    def _offer(self, parts: Phrase, stretches: int, most: int) -> None:
        phrase = (*self.gaps.lead, *parts, *self.gaps.tail)
        words = words_in(phrase, self.change)
        if words > min(most, self.words):
            return
        begins_larger = _first_gap(parts) > self.gaps.size
        if self.gaps.begins_larger not in (None, begins_larger):
            return
        rank = (stretches, not begins_larger, self._farthest(parts))
        if words < self.words or rank < self.rank:
            self.phrase, self.words, self.rank = phrase, words, rank

    def _farthest(self, parts: Phrase) -> int:
        """Return how far the changes get from their even places."""
        low, high, _ = self._reach(parts)
        return max(-(self.window.start + low), self.window.start + high)

    def _reach(self, parts: Phrase) -> tuple[int, int, int]:
        """Return how far behind and ahead of its beginning a phrase gets, and where it ends."""
        low = high = at = 0
        for part in parts:
            if isinstance(part, Plain):
                continue
            if isinstance(part, Repeat):
                least, most, drift = self._reach(part.parts)
                last = (part.times - 1) * drift
                low, high = min(low, at + least + min(0, last)), max(high, at + most + max(0, last))
            else:
                drift = self.step[part.gap > self.gaps.size]
                low, high = min(low, at + drift * part.times), max(high, at + drift * part.times)
            at += drift * part.times
        return low, high, at

    def _sequences(self, stretches: int, task: Task, spare: int, *, level: int) -> Iterator[Phrase]:
        """Find the phrases that cover all of a task in a number of stretches.

        Args:
            stretches: How many to name.
            task: What to cover.
            spare: Words it may take; some of those found take a few more.
            level: How deep a repeat with a repeat inside may still be said: 2 as the whole round, 1 as a part
                of it, 0 not at all.
        """
        if stretches == 1:
            yield from self._as_one(task)
            return
        if spare < self._least(stretches, task.larger, task.smaller):
            return
        yield from self._as_repeat(stretches, task, spare, level=level)
        level = min(level, 1)
        for larger in (True, False):
            left = spare - self.unit[larger]
            yield from self._after_stretch(stretches - 1, larger, task, left, level=level)
        if stretches > 2:
            yield from self._after_pairs(stretches - 2, task, spare, level=level)
        if stretches > 3:
            yield from self._before_stretch(stretches - 1, task, spare, level=level)

    def _as_one(self, task: Task) -> Iterator[Phrase]:
        """Cover everything as one stretch, if it is of one size."""
        larger = task.larger > 0
        times = task.larger or task.smaller
        if (task.larger and task.smaller) or task.after is larger:
            return
        if task.low <= task.at + times * self.step[larger] <= task.high:
            yield (self._stretch(larger, times),)

    def _as_repeat(self, stretches: int, task: Task, spare: int, *, level: int) -> Iterator[Phrase]:
        """Cover everything as a repeat of one part of it."""
        drift = task.larger * self.step[True] + task.smaller * self.step[False]
        common = gcd(task.larger, task.smaller)
        for times in divisors(common):
            left = spare - times_words(times)
            share = task.shared(times, drift)
            for parts in self._sequences(stretches, share, left, level=level - 1 if level else 0):
                repeat = Repeat(parts, times)
                if len(parts) > 1 and (level or not repeat.nested):
                    yield (repeat,)

    def _after_stretch(
        self, stretches: int, larger: bool, task: Task, spare: int, *, level: int
    ) -> Iterator[Phrase]:
        """Begin with one stretch of larger or of smaller gaps."""
        if task.after is larger:
            return
        most = task.larger if larger else task.smaller
        for times in find_multipliers(self.step[larger], task.low - task.at, task.high - task.at, most):
            more, fewer = (times, 0) if larger else (0, times)
            left = spare - times_words(times)
            if left >= self._least(stretches, task.larger - more, task.smaller - fewer):
                rest = task.less(more, fewer, task.at + times * self.step[larger], larger)
                for parts in self._sequences(stretches, rest, left, level=level):
                    yield (self._stretch(larger, times), *parts)

    def _after_pairs(self, stretches: int, task: Task, spare: int, *, level: int) -> Iterator[Phrase]:
        """Begin with a repeat of two stretches: one of larger gaps, one of smaller."""
        spare -= sum(self.unit) + 2
        more = spare - (min(self.unit) if stretches == 1 else sum(self.unit))
        for times, larger, smaller in self._pairs(task, last=stretches == 1, simple=not level or more < 2):
            left = spare - times_words(larger) - times_words(smaller) - times_words(times) + 2
            rest_larger, rest_smaller = task.larger - times * larger, task.smaller - times * smaller
            if not (rest_larger or rest_smaller) or left < self._least(stretches, rest_larger, rest_smaller):
                continue
            end = task.at + times * (larger * self.step[True] + smaller * self.step[False])
            rest = task.less(larger * times, smaller * times, end)
            found = tuple(self._sequences(stretches, rest, left, level=level))
            for body in self._orders(larger, smaller, times, task) if found else ():
                for parts in found:
                    yield (Repeat(body, times), *parts)

    def _pairs(self, task: Task, *, last: bool, simple: bool) -> Iterator[tuple[int, int, int]]:
        """Return how often a repeat may be worked, and how many larger and smaller gaps it may have.

        Args:
            task: What to cover.
            last: Whether one stretch is to follow, so that all gaps of one size are in the repeat.
            simple: Whether it may have only one of each.
        """
        if not last:
            for times in range(2, task.larger + 1):
                for larger in range(1, 2 if simple else task.larger // times + 1):
                    for smaller in self._balancing(larger, times, task, simple=simple):
                        yield times, larger, smaller
            return
        for times in divisors(task.larger):
            larger = task.larger // times
            if larger == 1 or not simple:
                for smaller in self._balancing(larger, times, task, simple=simple):
                    yield times, larger, smaller
        for times in divisors(task.smaller):
            smaller = task.smaller // times
            if simple and smaller > 1:
                continue
            behind = smaller * self.step[False]
            low, high = self._room(times, task)
            most = task.larger // times
            for larger in find_multipliers(self.step[True], low - behind, high - behind, most):
                yield times, larger, smaller

    def _balancing(self, larger: int, times: int, task: Task, *, simple: bool) -> range:
        """Return how many smaller gaps a repeat with a number of larger ones may have."""
        low, high = self._room(times, task)
        ahead, most = larger * self.step[True], task.smaller // times
        return find_multipliers(self.step[False], low - ahead, high - ahead, min(most, 1) if simple else most)

    def _room(self, times: int, task: Task) -> tuple[int, int]:
        """Return how far one time of a repeat may take the work behind and ahead."""
        return -((task.at - task.low) // times), (task.high - task.at) // times

    def _orders(self, larger: int, smaller: int, times: int, task: Task) -> Iterator[Phrase]:
        """Return the two orders of a repeat of two stretches, as far as they stay in the window."""
        last = (times - 1) * (larger * self.step[True] + smaller * self.step[False])
        pair = (self._stretch(True, larger), self._stretch(False, smaller))
        for body, inside in ((pair, larger * self.step[True]), (pair[::-1], smaller * self.step[False])):
            inside += task.at
            if task.low <= inside + min(0, last) and inside + max(0, last) <= task.high:
                yield body

    def _before_stretch(self, stretches: int, task: Task, spare: int, *, level: int) -> Iterator[Phrase]:
        """End with one stretch after a repeat of several."""
        for larger in (True, False):
            for times in range(1, (task.larger if larger else task.smaller) + 1):
                more, fewer = (times, 0) if larger else (0, times)
                left = spare - self.unit[larger] - times_words(times)
                rest = task.less(more, fewer, task.at)
                for parts in self._as_repeat(stretches, rest, left, level=level):
                    yield (*parts, self._stretch(larger, times))

    def _stretch(self, larger: bool, times: int) -> SpacedStretch:
        return SpacedStretch(self.gaps.size + larger, times)


def _first_gap(parts: Phrase) -> int:
    first = parts[0]
    if isinstance(first, Repeat):
        return _first_gap(first.parts)
    return first.gap if isinstance(first, SpacedStretch) else 0
