"""What is known of a fault: the search, its causes and its remedies, worked out afresh each time.

The state holds only what was counted and seen. No I/O.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.session.counting.count_timing import stitches_per_minute
from stepper.session.fault.diagnosis import Likely, diagnose
from stepper.session.fault.remedies import list_remedies, may_hang_a_loop
from stepper.session.fault.search import Search, search
from stepper.session.fault.ways import Remedy, RemedyKind
from stepper.session.state import Fault, Narrowing, Position, Seen, State


@dataclass(frozen=True, slots=True, kw_only=True)
class Inquiry:
    """What is known of a fault, worked out whenever it is asked for."""

    fault: Fault
    search: Search
    causes: tuple[Likely, ...]
    remedies: tuple[Remedy, ...]

    @property
    def look(self) -> tuple[Seen, int] | None:
        """What she chose to look at before she counts on, and in which round; None if she did not."""
        looks = (each.look for each in self.remedies[:1] if self.fault.chosen is Narrowing.LOOK)
        return next(looks, None)

    def is_overtaken(self, now: Position) -> bool:
        """Return whether she has knitted on since the count, so that all stitches are counted first."""
        return self.fault.place != now and any(each.kind is RemedyKind.RECOUNT for each in self.remedies[:1])

    def asks_part(self, now: Position) -> bool:
        """Return whether a number alone is that of a part of the stitches: not while a loop is looked for."""
        if self.search.next is None or not self.search.single or self.is_overtaken(now):
            return False
        return not may_hang_a_loop(self.fault, self.causes)

    @property
    def part(self) -> int | None:
        """How many stitches are expected in the part that is counted next; None if something else is first.

        Unit: stitches.
        """
        stretches = (each.stretch for each in self.remedies[:1])
        return next((each.expect for each in stretches if each is not None), None)


def inquire(plan: Plan, state: State) -> Inquiry | None:
    """Work out what is known of the fault in hand; None if no fault is being looked for."""
    fault = state.knitting.fault
    if fault is None:
        return None
    found = search(plan, state, fault)
    causes = diagnose(plan, state, fault, found)
    ways = tuple(
        replace(way, minutes=way.stitches / stitches_per_minute(state))
        for way in list_remedies(plan, state.knitting, fault, found, causes)
    )
    return Inquiry(fault=fault, search=found, causes=causes, remedies=ways)
