"""A plan as the key of a cache. No I/O.

What is asked with every round and rests on the plan alone is worked out once: the answer to a cue must not
wait for the whole garment to be gone through again.
"""

from __future__ import annotations

from stepper.plan.model import Plan
from stepper.records import dataclass


@dataclass(frozen=True, slots=True, eq=False)
class SamePlan:
    """A plan by identity, since comparing or hashing its rounds takes longer than what is kept."""

    plan: Plan

    def __hash__(self) -> int:
        return id(self.plan)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, SamePlan) and other.plan is self.plan
