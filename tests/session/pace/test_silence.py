from __future__ import annotations

import pytest

from stepper.session.pace.silence import SILENCE_S, silence_limit_s, was_silent
from stepper.session.state import Knitting, Position, State, TimedStep
from tests.plans import plan

BODY = plan(("body", ["co60", "k60", "k60"]))
AT = "2025-03-03T20:00:00+01:00"


def test_the_step_in_hand_has_to_be_worked_first() -> None:
    """Sixty stitches take two minutes at thirty a minute; half of them one."""
    assert silence_limit_s(BODY, State(knitting=Knitting(place=Position(index=1)))) == SILENCE_S + 120
    assert (
        silence_limit_s(BODY, State(knitting=Knitting(place=Position(index=1, stitch=30)))) == SILENCE_S + 60
    )
    assert silence_limit_s(BODY, State(knitting=Knitting(place=Position(index=3))), 60) == 60


def test_a_slow_knitter_is_left_in_peace_longer() -> None:
    """Her own pace counts, not the usual one."""
    slow = tuple(TimedStep(stitches=60, seconds=360, work="") for _ in range(30))
    state = State(knitting=Knitting(place=Position(index=1)), worked=slow)
    assert silence_limit_s(BODY, state) > silence_limit_s(
        BODY, State(knitting=Knitting(place=Position(index=1)))
    )


@pytest.mark.parametrize(("now", "silent"), [("20:06:00", False), ("20:08:00", True), ("21:30:00", True)])
def test_she_is_back_from_a_silence(now: str, silent: bool) -> None:
    """Seven minutes for a round of two."""
    state = State(knitting=Knitting(place=Position(index=1)), last_cue_at=AT)
    assert was_silent(BODY, state, f"2025-03-03T{now}+01:00") is silent
    assert not was_silent(BODY, State(knitting=Knitting(place=Position(index=1))), AT), (
        "nothing was asked before"
    )
