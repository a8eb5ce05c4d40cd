from __future__ import annotations

import random

from stepper.lap.ledger import DEVICES_KEPT, TOUCHES_KEPT, Ledger, Outcome
from stepper.lap.touches import TOO_LATE_S, Touch


def touch(number: int, device: str = "tablet", *, again: bool = False, age_s: float = 0.0) -> Touch:
    """Make a touch."""
    return Touch(device=device, number=number, ask="next", again=again, age_s=age_s)


def test_a_number_is_new_once() -> None:
    """Whatever became of it, it is never put into the queue a second time."""
    ledger = Ledger()
    assert ledger.enter(touch(1)) is Outcome.NEW
    assert ledger.enter(touch(1, again=True)) is Outcome.WAITING
    ledger.settle(touch(1), Outcome.TAKEN)
    assert ledger.enter(touch(1, again=True, age_s=9999)) is Outcome.TAKEN
    assert ledger.enter(touch(1, "phone")) is Outcome.NEW


def test_a_touch_of_long_ago_is_passed_over_even_if_the_first_sending_comes_after() -> None:
    """A packet that wandered is not a step."""
    ledger = Ledger()
    assert ledger.enter(touch(5, again=True, age_s=TOO_LATE_S + 1)) is Outcome.PASSED
    assert ledger.enter(touch(5)) is Outcome.PASSED
    assert ledger.enter(touch(4)) is Outcome.PASSED
    assert ledger.enter(touch(6, again=True, age_s=TOO_LATE_S - 1)) is Outcome.NEW


def test_what_is_remembered_is_bounded_and_nothing_forgotten_is_new_again() -> None:
    """A thousand pages opened and a thousand touches: the latest are known, the oldest had their chance."""
    ledger = Ledger()
    for number in range(1, 3 * TOUCHES_KEPT):
        assert ledger.enter(touch(number)) is Outcome.NEW
        ledger.settle(touch(number), Outcome.TAKEN)
    assert ledger.enter(touch(1, again=True)) is Outcome.PASSED
    for number in range(3 * DEVICES_KEPT):
        assert ledger.enter(touch(1, f"page {number}")) is Outcome.NEW
    ledger.settle(touch(7), Outcome.TAKEN)  # of a device that is forgotten: nothing happens
    assert ledger.enter(touch(1, f"page {3 * DEVICES_KEPT - 1}")) is Outcome.WAITING


def test_any_order_of_sendings_makes_each_touch_at_most_once() -> None:
    """Touches sent again at random, in any order, with any age: never twice new."""
    chance = random.Random(23)
    for _ in range(50):
        ledger, new = Ledger(), list[int]()
        sendings = [number for number in range(1, 12) for _ in range(chance.randint(1, 4))]
        chance.shuffle(sendings)
        for number in sendings:
            outcome = ledger.enter(touch(number, again=chance.random() < 0.5, age_s=chance.choice((0.0, 99.0))))
            if outcome is Outcome.NEW:
                new.append(number)
                if chance.random() < 0.5:
                    ledger.settle(touch(number), chance.choice((Outcome.TAKEN, Outcome.PASSED)))
        assert sorted(new) == sorted(set(new))
