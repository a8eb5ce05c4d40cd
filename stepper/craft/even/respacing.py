"""Respacing: the rest of a round from where she is, and keeping changes off stitches that must stay plain.

Theory of operation. `respread` is water filling: the open gaps are columns, of which the one she is in and
the one across the join are already partly filled, and the remaining stitches are poured in. The result is the
most even filling there is. `avoid_places` looks for the smallest difference between largest and smallest gap
that any legal arrangement has. If a difference is possible, so is every larger one, so it is found by
bisection; whether one is possible is decided with sets of places held as bits of integers. Among the
arrangements with that difference, the one that moves the changes least is found by dynamic programming with a
sliding minimum. No I/O.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Collection, Iterator, Sequence

from stepper.craft.even.spacing import gaps_between
from stepper.records import dataclass


def respread(
    stitches_left: int, changes_left: int, *, worked_since: int = 0, beyond: int = 0, uses: int = 0
) -> tuple[int, ...]:
    """Place the changes still due in the rest of a round, starting from where she is.

    Args:
        stitches_left: Stitches of the old round not yet worked. Range: 0 and up.
        changes_left: Increases or decreases still due. Range: 0 and up.
        worked_since: Plain stitches worked since the last change; they count towards the gap she is in.
        beyond: Plain stitches the last gap has besides those left: in the round, those before the round's
            first change; flat, the half gap that would complete the one at the row's end.
        uses: Stitches of the old round each change takes up; 0 for increases, 2 for k2tog.

    Returns:
        Stitches to work from here before each change. Shape: (changes_left,). Always: of all ways to place
        the rest, the gaps have the smallest difference; within one unless the gap she is in, or the one
        across the join, is already longer than an even one.

    Raises:
        ValueError: A number is out of range, or the rest has no room for the changes: each increase needs a
            stitch between it and the next, and each decrease its own stitches.

    Source: derived here (water filling).
    """
    if min(stitches_left, changes_left, worked_since, beyond) < 0:
        raise ValueError("stitches, changes and stitches worked must be whole numbers from 0 up.")
    _require_uses(uses)
    if changes_left == 0:
        return ()
    plain = stitches_left - uses * changes_left
    filled = [worked_since, *([0] * (changes_left - 1)), beyond]
    levels = _filled(filled, plain) if plain >= 0 else None
    if levels is None or (uses == 0 and min(levels) < 1):
        kind = "decreases" if uses else "increases"
        raise ValueError(
            f"{changes_left} {kind} do not fit into the {stitches_left} stitches left: there is room for "
            f"{_room(stitches_left, worked_since, beyond, uses)}."
        )
    places, place = [], 0
    for i in range(changes_left):
        place += levels[i] - filled[i]
        places.append(place + i * uses)
    return tuple(places)


def avoid_places(
    positions: Sequence[int],
    stitches: int,
    forbidden: Collection[int],
    *,
    flat: bool = False,
    uses: int = 0,
    within: int | None = None,
) -> tuple[int, ...]:
    """Move changes off places that must stay plain, as little and as evenly as possible.

    For marker stitches, a motif or a free centre front, take the places from `places_touching`.

    Args:
        positions: Stitches of the old round worked before each change, in order.
        stitches: Stitches of the old round. Range: 0 and up.
        forbidden: Places where no change may be, counted in the same way as `positions`.
        flat: Worked in rows; a gap at an end counts as half a gap.
        uses: Stitches of the old round each change takes up; 0 for increases.
        within: Largest difference between gaps that is allowed; None for any.

    Returns:
        As many places as were given, in order; the given ones if none of them is forbidden. Otherwise no
        arrangement off the forbidden places has a smaller difference between its gaps (as measured by
        `gaps_between`), and none with that difference moves the changes by fewer stitches in all. An increase
        stays off the join unless it was given there.

    Raises:
        ValueError: The positions are not in order within the round, or too few places are left, or no
            arrangement has gaps within that difference.

    Source: derived here (search over the difference, then shortest path).
    """
    _require_uses(uses)
    gaps_between(positions, stitches, flat=flat, uses=uses)
    barred = set(forbidden)
    if not barred.intersection(positions):
        return tuple(positions)
    at_join = {place for place in (0, stitches) if place in positions}
    usual = range(1, stitches) if uses == 0 else range(stitches - uses + 1)
    allowed = (at_join.union(usual)) - barred
    search = _Search(tuple(positions), stitches, sum(1 << place for place in allowed), flat, uses)
    widest = 2 * stitches + 2  # an end, which is half a gap, may have to hold nearly all stitches
    if len(allowed) < len(positions) or (within is None and not search.can(widest)):
        raise ValueError(
            f"{len(positions)} changes cannot be placed on {stitches} stitches: "
            f"{len(allowed)} places are free to carry one."
        )
    if within is not None and not search.can(within):
        raise ValueError(f"no places off the forbidden ones have gaps within {within}.")
    _, places = min(search.cheapest(*window) for window in search.windows(_least_difference(search)))
    return places


def _least_difference(search: _Search) -> int:
    """Return the least difference between gaps that any arrangement has."""
    least, most = 0, 1
    while not search.can(most):  # 1 is usually enough, so bisection starts from small differences
        least, most = most + 1, 2 * most
    while least < most:
        middle = (least + most) // 2
        if search.can(middle):
            most = middle
        else:
            least = middle + 1
    return least


def places_touching(stitch_numbers: Collection[int], *, uses: int = 0) -> frozenset[int]:
    """Return the places where a change would disturb stitches that must stay plain.

    Args:
        stitch_numbers: Stitches of the old round, the first being 1.
        uses: Stitches each change takes up; 0 for increases.

    Returns:
        Places counted as in `increase_positions`. An increase disturbs the two neighbours it separates, a
        decrease every stitch it uses.

    Raises:
        ValueError: A stitch number is below 1 or `uses` is 1 or below 0.

    Source: derived here.
    """
    _require_uses(uses)
    kept = set(stitch_numbers)
    if any(number < 1 for number in kept):
        raise ValueError("stitch numbers start at 1.")
    if uses == 0:
        return frozenset(number for number in kept if number + 1 in kept)
    return frozenset(place for n in kept for place in range(max(0, n - uses), n))


@dataclass(frozen=True, slots=True)
class _Search:
    """One problem for `avoid_places`: where the changes were, and which places (as bits) are free."""

    positions: tuple[int, ...]
    stitches: int
    free: int
    flat: bool
    uses: int

    def can(self, difference: int) -> bool:
        """Return whether some arrangement has gaps that differ by no more than that."""
        return any(True for _ in self.windows(difference))

    def windows(self, difference: int) -> Iterator[tuple[int, int, int]]:
        """Yield smallest gap, largest gap and first place of every arrangement with that difference."""
        plain = self.stitches - self.uses * len(self.positions)
        highest = (plain + 1) // len(self.positions)
        least = 0 if self.uses else 1
        smallest = (plain - 1) // len(self.positions) - difference
        for low in range(highest, max(least, smallest) - 1, -1):
            for first in self._firsts(low, low + difference):
                if self.free >> first & 1 and self._can(low, low + difference, first):
                    yield low, low + difference, first

    def _firsts(self, low: int, high: int) -> range:
        start, stop = (max(0, low // 2), (high + 1) // 2) if self.flat else (0, high)
        return range(start, min(stop, self.stitches) + 1)

    def _lasts(self, low: int, high: int, first: int) -> range:
        end = self.stitches - self.uses
        shortest, longest = (low // 2, (high + 1) // 2) if self.flat else (low - first, high - first)
        return range(max(0, end - longest), max(-1, min(end - shortest, self.stitches)) + 1)

    def _can(self, low: int, high: int, first: int) -> bool:
        # Bit p is set if the current change can be at p.
        reached = 1 << first
        for _ in self.positions[1:]:
            reached = _smear(reached << (low + self.uses), high - low) & self.free
            if not reached:
                return False
        lasts = self._lasts(low, high, first)
        return bool(reached >> lasts.start & ((1 << len(lasts)) - 1))

    def cheapest(self, low: int, high: int, first: int) -> tuple[int, tuple[int, ...]]:
        """Return the arrangement that moves the changes least: stitches moved, and places."""
        costs = {first: abs(first - self.positions[0])}
        trail: list[dict[int, int]] = []
        for was in self.positions[1:]:
            came_from = self._nearest_before(costs, low + self.uses, high + self.uses)
            costs = {place: costs[before] + abs(place - was) for place, before in came_from.items()}
            trail.append(came_from)
        lasts = self._lasts(low, high, first)
        cost, place = min((cost, place) for place, cost in costs.items() if place in lasts)
        places = [place]
        for came_from in reversed(trail):
            places.append(came_from[places[-1]])
        return cost, tuple(reversed(places))

    def _nearest_before(self, costs: dict[int, int], low: int, high: int) -> dict[int, int]:
        # For each free place, the cheapest place from `high` to `low` stitches before it.
        best: dict[int, int] = {}
        queue: deque[int] = deque()
        for place in range(min(costs) + low, min(max(costs) + high, self.stitches) + 1):
            newest = place - low
            if newest in costs:
                while queue and costs[queue[-1]] > costs[newest]:
                    queue.pop()
                queue.append(newest)
            while queue and queue[0] < place - high:
                queue.popleft()
            if queue and self.free >> place & 1:
                best[place] = queue[0]
        return best


def _smear(bits: int, width: int) -> int:
    """Set also the `width` bits above each set bit, doubling the reach each time."""
    reach = 0
    while reach < width:
        step = min(reach + 1, width - reach)
        bits |= bits << step
        reach += step
    return bits


def _filled(heights: Sequence[int], amount: int) -> list[int]:
    """Pour `amount` into columns so that they are as level as possible."""
    open_columns = list(range(len(heights)))
    while True:
        level, larger = divmod(amount + sum(heights[i] for i in open_columns), len(open_columns))
        too_high = [i for i in open_columns if heights[i] > level + (1 if larger else 0)]
        if not too_high:
            break
        open_columns = [i for i in open_columns if i not in too_high]
    levels = list(heights)
    # A column already one above the level counts as a larger one; the others are mixed in evenly.
    raised = [i for i in open_columns if heights[i] > level]
    rest = [i for i in open_columns if heights[i] <= level]
    extra = larger - len(raised)
    for order, i in enumerate(rest):
        levels[i] = level + (order + 1) * extra // len(rest) - order * extra // len(rest)
    return levels


def _room(stitches_left: int, worked_since: int, beyond: int, uses: int) -> int:
    if uses:
        return stitches_left // uses
    # One increase in each gap between stitches, including those before and after the rest.
    return max(0, stitches_left - 1 + min(worked_since, 1) + min(beyond, 1))


def _require_uses(uses: int) -> None:
    if uses < 0 or uses == 1:
        raise ValueError(f"uses must be 0 for increases or from 2 up for decreases (got {uses}).")
