from __future__ import annotations

from dataclasses import replace

from stepper.plan.absorb import Mend
from stepper.session.answers import TellExpected
from stepper.session.cues import Again, HowMany, Next
from stepper.session.effects import AskCount, TellLifeline, TellMend, TellSpot, TellStep
from stepper.session.evolve import SILENCE_S, is_long_silence
from stepper.session.fault.respond import ask_checks, tell_mends, tell_spot
from stepper.session.machine import Session
from stepper.session.state import Asking, Knitting, Position, State
from tests.plans import plan

LACE = plan(("shawl", [("co40", {"markers": (10, 30)}), ("k40", {"markers": (10, 30)}), "(k2 yo k2tog)x10"]))


def test_the_place_is_told_from_the_last_marker() -> None:
    """Whoever looks at her needles finds it at once."""
    state = State(knitting=Knitting(place=Position(index=1, stitch=31)))
    assert list(tell_spot(LACE, state)) == [TellSpot(past=1, marker=2)]
    begun = State(knitting=Knitting(place=Position(index=1)))
    assert list(tell_spot(LACE, begun)) == [TellSpot(past=0, marker=0, index=1)]
    assert list(tell_spot(LACE, begun, marked=True)) == []


def test_after_a_long_silence_the_place_is_said_first() -> None:
    """Then what was asked; after a short one nothing is added."""
    earlier, later = "2025-03-03T20:00:00+01:00", "2025-03-03T20:40:00+01:00"
    state = State(knitting=Knitting(place=Position(index=1, stitch=31)), last_cue_at=earlier)
    session = Session(LACE, state)

    assert isinstance(session.consider(Again(at=later)).effects[0], TellSpot)
    assert not isinstance(session.consider(Again(at=earlier)).effects[0], TellSpot)
    asked = session.consider(HowMany(at=later)).effects
    assert [type(each) for each in asked] == [TellSpot, TellExpected, TellStep], "and what comes next"
    assert session.consider(Next(at=later)).state.breaks == (Position(index=1, stitch=31),)
    assert is_long_silence(earlier, later) is (SILENCE_S <= 40 * 60)
    assert not is_long_silence("", later)


def test_a_mend_is_told_in_its_round_and_not_before() -> None:
    """It is worked there."""
    mend = Mend(index=2, stitch=20, change=1)
    knitting = Knitting(place=Position(index=2), mends=(mend,))
    assert list(tell_mends(State(knitting=knitting))) == [TellMend(mend=mend)]
    assert list(tell_mends(State(knitting=replace(knitting, place=Position(index=1))))) == []


def test_a_lifeline_is_suggested_before_lace_and_the_count_with_it() -> None:
    """Lace cannot be ripped back without one."""
    state = State(knitting=Knitting(place=Position(index=2), asking=Asking.MORE))
    kinds = [type(effect) for effect in ask_checks(LACE, state, 1)]
    assert kinds == [AskCount, TellLifeline]
