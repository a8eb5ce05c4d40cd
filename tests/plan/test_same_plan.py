"""Which plan a cache is asked for."""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache

from stepper.plan.same_plan import SamePlan
from tests.plans import final_increase


def test_the_same_plan_is_known_again_and_another_is_not_taken_for_it() -> None:
    """Two plans of the same rounds are kept apart: one of them may be changed by a mend."""
    one = final_increase()
    other = replace(one)
    asked: list[SamePlan] = []
    keep = lru_cache(maxsize=4)(asked.append)
    for plan in (one, one, other, one):
        keep(SamePlan(plan))
    assert [each.plan for each in asked] == [one, other]
    assert [each.plan is made for each, made in zip(asked, (one, other), strict=True)] == [True, True]
    assert SamePlan(one) != one
