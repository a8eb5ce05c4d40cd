from __future__ import annotations

from dataclasses import replace

from stepper.plan.under_way.absorb import Mend
from stepper.session.answers import TellExpected
from stepper.session.cues import Again, HowMany, Next
from stepper.session.effects import (
    AskCount,
    AskLook,
    TellFound,
    TellLifeline,
    TellMend,
    TellSpot,
    TellStep,
    TellTinked,
)
from stepper.session.events import Tinked
from stepper.session.evolve import SILENCE_S, is_long_silence
from stepper.session.fault.respond import ask_checks, ask_next, tell_mends, tell_spot, tell_tinked
from stepper.session.machine import Session
from stepper.session.state import Answer, Asking, Fault, Knitting, Position, Seen, Sight, State, Verified
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
    kinds = [type(effect) for effect in ask_checks(LACE, state, 1, 1)]
    assert kinds == [AskCount, TellLifeline]


def test_what_tells_the_likeliest_causes_apart_is_asked_alone() -> None:
    """A repeat left out leaves stitches over at the end of its round, and an increase left out does not; where nothing is
    left to ask, the place is said. One thing at a time: the causes are told when she asks what happened."""

    def asked(difference: int) -> list[object]:
        fault = Fault(
            place=Position(index=3),
            difference=difference,
            answers=(Answer(first=0, end=1, stitches=9 + difference),),
            sights=(Sight(seen=Seen.LOOP, number=0),),
        )
        verified = Verified(place=Position(index=1), stitches=80)
        knitting = Knitting(place=Position(index=3), verified=verified, fault=fault)
        return list(ask_next(plan(("yoke", ["co80", "(k8 m1)x10", "k90"])), State(knitting=knitting)))

    (fewer,), (more,) = asked(-1), asked(1)
    assert isinstance(fewer, AskLook)
    assert fewer.seen is Seen.LEFT
    assert isinstance(more, TellFound)
    assert (more.first, more.end, more.difference) == (0, 1, 1)


def test_what_comes_off_is_named_stitch_by_stitch() -> None:
    """Who unknits has the stitches before her eyes in the order in which they come off."""
    lace = plan(("shawl", ["co10", "k2 yo k2tog k6"]))
    event = Tinked(at="", origin=Position(index=1, stitch=6), place=Position(index=1, stitch=2), stitches=4)
    (told,) = tell_tinked(lace, State(), event, State(knitting=Knitting(place=event.place)))

    assert isinstance(told, TellTinked)
    assert [(run.stitch, run.times) for run in told.runs] == [("k", 2), ("k2tog", 1), ("yo", 1)]
    assert told.place == event.place
