"""How long the knitting took, and which rounds were worked more than once. Pure."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from itertools import pairwise

from stepper.session.events import Advanced, Closed, Event, Placed
from stepper.session.evolve import SILENCE_S
from stepper.session.pace.learning import seconds_between


def time_spent(events: Sequence[Event]) -> float:
    """Add up the time from cue to cue within a sitting; a long silence is a break and does not count.

    What was taken back took time too, so it counts.

    Args:
        events: All of them, in order.

    Returns:
        Unit: s. Range: 0 and up.

    Source: a silence of ten minutes is a break, as in `stepper.session.evolve`.
    """
    taken = 0.0
    for earlier, later in pairwise(events):
        if isinstance(earlier, Closed):
            continue
        seconds = seconds_between(earlier.at, later.at)
        if seconds is not None and 0 < seconds < SILENCE_S:
            taken += seconds
    return taken


def find_repeated_rounds(events: Iterable[Event]) -> tuple[tuple[int, int], ...]:
    """Find the rounds that were finished more than once.

    Args:
        events: All that happened and was not undone.

    Returns:
        Index of the round and how often it was worked again, in the order of the garment.
    """
    finished: Counter[int] = Counter()
    for event in events:
        if isinstance(event, Advanced | Placed) and event.place.index > event.origin.index:
            finished[event.origin.index] += 1
    return tuple(sorted((index, times - 1) for index, times in finished.items() if times > 1))
