"""How tests wait, and how they measure, on a machine of any speed that others use as well.

What has to come is waited for, however long it takes. What has to be quick is held against its bound in one of three ways:
by counting instead of measuring; by the least of several tries, since a machine that stands still for a moment only
lengthens a time; by processor time in `usual_s`, which are longer on a slower machine.
"""

from __future__ import annotations

import time
from collections.abc import Callable

PATIENCE_S = 60.0
"""How long a test waits for what has to come. Nothing takes as long where all is well, so it costs nothing. Unit: s."""
_WORK_S = 0.03
# What the work of `_work` takes of the processor on the machine on which the bounds were set.


def wait_until(come: Callable[[], bool], complaint: str = "it did not happen") -> None:
    """Wait until something is so."""
    ends_at = time.monotonic() + PATIENCE_S
    while not come():
        assert time.monotonic() < ends_at, complaint
        time.sleep(0.005)


def least_of(measure: Callable[[], float], below: float, tries: int = 10) -> float:
    """Return the least of some measures of one thing, taken until one is below a bound or there are enough.

    Args:
        measure: Does it once, and returns how long it took.
        below: The bound.
        tries: How often it is done at most.
    """
    least = float("inf")
    for _ in range(tries):
        least = min(least, measure())
        if least < below:
            break
    return least


def processor_s(do: Callable[[], object], tries: int = 3) -> float:
    """Return the processor time that something takes in this process, least of some tries. Unit: s."""
    return min(_processor_s(do) for _ in range(tries))


def usual_s(seconds: float) -> float:
    """Return what some seconds of the usual machine's processor are on this one, as it is now."""
    return seconds * max(1.0, processor_s(_work) / _WORK_S)


def _processor_s(do: Callable[[], object]) -> float:
    begun = time.process_time()
    do()
    return time.process_time() - begun


def _work() -> dict[str, int]:
    """Do what most of this program does: short texts, small numbers, a table."""
    found: dict[str, int] = {}
    for number in range(60_000):
        found[str(number)] = found.get(str(number - 1), 0) + 1
    return found
