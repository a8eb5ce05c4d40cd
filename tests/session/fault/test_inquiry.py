from __future__ import annotations

from stepper.session.fault.inquiry import inquire
from stepper.session.state import Fault, Knitting, Position, State, TimedStep, Verified
from tests.plans import final_increase

GARMENT = final_increase()
KNITTING = Knitting(place=Position(index=9), verified=Verified(place=Position(index=6), stitches=156))


def test_without_a_fault_there_is_nothing_to_know() -> None:
    """Nothing is made up."""
    assert inquire(GARMENT, State(knitting=KNITTING)) is None


def test_what_a_remedy_takes_is_told_at_her_own_pace() -> None:
    """Ten minutes to one are an hour to another."""
    fault = Fault(place=Position(index=9), difference=-1)
    knitting = Knitting(place=KNITTING.place, verified=KNITTING.verified, fault=fault)
    slow, fast = (
        inquire(
            GARMENT,
            State(knitting=knitting, worked=tuple(TimedStep(stitches=100, seconds=each) for _ in range(40))),
        )
        for each in (600, 200)
    )

    assert slow is not None
    assert fast is not None
    assert [way.kind for way in slow.remedies] == [way.kind for way in fast.remedies]
    assert all(a.minutes > 2 * b.minutes for a, b in zip(slow.remedies, fast.remedies, strict=True))
