"""Numbers used once: what became of each touch, so that one that is sent again is answered and not repeated.

Bounded: the last touches of the last devices. No I/O.
"""

from __future__ import annotations

from collections import OrderedDict
from enum import Enum
from typing import Final

from stepper.lap.touches import TOO_LATE_S, Touch

DEVICES_KEPT: Final = 32
"""Devices whose touches are remembered, those that were heard of last."""
TOUCHES_KEPT: Final = 64
"""Touches remembered of each."""


class Outcome(Enum):
    """What became of a touch."""

    TAKEN = "taken"
    """It is worked off, and what came of it is on the disk."""
    PASSED = "passed"
    """It was not worked off and never will be: the knitting had moved on."""
    WAITING = "waiting"
    """It is in the queue."""
    NEW = "new"
    """Never seen before: it is to be put into the queue, once."""


class Ledger:
    """What became of the touches."""

    def __init__(self) -> None:
        self._devices: OrderedDict[str, OrderedDict[int, Outcome]] = OrderedDict()

    def enter(self, touch: Touch) -> Outcome:
        """Enter a touch, and return what became of it.

        Returns:
            `NEW` exactly once for each device and number; the caller then puts the touch into the queue, and
            calls `settle` when it is worked off.
        """
        known = self._devices.setdefault(touch.device, OrderedDict())
        self._devices.move_to_end(touch.device)
        while len(self._devices) > DEVICES_KEPT:
            self._devices.popitem(last=False)
        if touch.number in known:
            return known[touch.number]
        # One older than those known was overtaken on the way, or is forgotten: either way it had its chance.
        overtaken = bool(known) and touch.number < next(reversed(known))
        if overtaken or (touch.again and touch.age_s > TOO_LATE_S):
            if not overtaken:
                self._keep(known, touch.number, Outcome.PASSED)
            return Outcome.PASSED
        self._keep(known, touch.number, Outcome.WAITING)
        return Outcome.NEW

    def settle(self, touch: Touch, outcome: Outcome) -> None:
        """Write down what became of a touch that was new."""
        known = self._devices.get(touch.device)
        if known is not None and touch.number in known:
            known[touch.number] = outcome

    @staticmethod
    def _keep(known: OrderedDict[int, Outcome], number: int, outcome: Outcome) -> None:
        known[number] = outcome
        while len(known) > TOUCHES_KEPT:
            known.popitem(last=False)
