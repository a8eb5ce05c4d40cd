"""How loud the room was for a while, in the order of loudness at any moment. No I/O.

The gate asks for each chunk of 32 ms how loud the room mostly is. Half a thousand levels put in order anew
each time were three hundredths of what the ears took through a film.
"""

from __future__ import annotations

import math
from bisect import bisect_left, insort
from collections import deque
from collections.abc import Collection, Sequence


class RoomLevels:
    """The latest levels, up to a number of them; each with a moment, by which it can be left out again."""

    def __init__(self, most: int) -> None:
        """Begin with none.

        Args:
            most: How many are kept.
        """
        self._most = most
        self._kept: deque[tuple[int, float]] = deque()
        self._ordered: list[float] = []

    def take(self, level_db: float, when: int) -> None:
        """Keep one more, and let go of the oldest if there are too many. Unit: dB."""
        self._kept.append((when, level_db))
        insort(self._ordered, level_db)
        if len(self._kept) > self._most:
            _, oldest_db = self._kept.popleft()
            del self._ordered[bisect_left(self._ordered, oldest_db)]

    def leave_out(self, begin: int, end: int) -> None:
        """Forget those from one moment to another, both included."""
        self._kept = deque(each for each in self._kept if not begin <= each[0] <= end)
        self._ordered = sorted(level_db for _, level_db in self._kept)

    def at_share(self, share: float) -> float:
        """Return the level that a given share of them does not exceed. Unit: dB."""
        return _at_share(self._ordered, share)


def level_at_share(levels: Collection[float], share: float) -> float:
    """Return the level that a given share of some does not exceed; minus infinity if there are none."""
    return _at_share(sorted(levels), share)


def _at_share(ordered: Sequence[float], share: float) -> float:
    return ordered[int(share * (len(ordered) - 1))] if ordered else -math.inf
