"""The guard of the arithmetic notices what it guards."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from stepper.plan.model import Round, Run
from tests.invariants import broken_invariants
from tests.plan.test_compile import plan_of
from tests.project.samples import project

WORK = "Cast on 8 sts.\nIncrease evenly to 12 sts.\nChart peak.\nBind off."


@pytest.mark.parametrize(
    ("index", "spoil", "words"),
    [
        (1, lambda r: replace(r, before=9), "begins with 9"),
        (1, lambda r: replace(r, after=13), "leave"),
        (1, lambda r: replace(r, runs=(*r.runs, Run("k", 1, "MC"))), "use 9 of 8"),
        (1, lambda r: replace(r, shaping=(1, 2, 3, 8)), "gaps of 1 to 5"),
        (1, lambda r: replace(r, shaping=(1,)), "1 changes"),
        (2, lambda r: replace(r, phrase=(*r.phrase, Run("k", 1, "MC"))), "not a whole number"),
        (2, lambda r: replace(r, index=7), "index 7"),
    ],
)
def test_a_spoilt_plan_is_caught(index: int, spoil: Callable[[Round], Round], words: str) -> None:
    """Each invariant, broken on purpose."""
    plan = plan_of(project(WORK))
    assert broken_invariants(plan) == ()
    rounds = list(plan.rounds)
    rounds[index] = spoil(rounds[index])
    assert any(words in sentence for sentence in broken_invariants(replace(plan, rounds=tuple(rounds))))
