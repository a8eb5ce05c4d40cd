"""The cue that spreads the rest of a shaped round anew."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.under_way.lengthen import renumber_rounds
from stepper.session.cues import GoTo, Respace, Undo
from stepper.session.decide import decide
from stepper.session.decision import Refusal
from stepper.session.events import Respaced
from stepper.session.machine import Session
from stepper.session.state import Knitting, Position, State
from tests.plans import final_increase, plan
from tests.playbook import AT, check, opened

GARMENT = final_increase()
INDEX = next(round_.index for round_ in GARMENT.rounds if round_.shaping)


def at(stitch: int) -> State:
    """Stand in the round of the increases."""
    return State(seq=3, knitting=Knitting(place=Position(index=INDEX, stitch=stitch)))


def test_asked_at_the_beginning_the_whole_round_fits_into_one_breath() -> None:
    """The same gaps, the larger first: 5 + 14 × 11 + 6 × 10 + 6 = 225. Asked again, nothing changes."""
    session = session_in_the_round()
    check(
        session,
        """
        > respace
        Twenty one left: the next in five; then every eleventh, fourteen times; then every tenth, six times.
        > respace the rest
        Twenty one left: the next in five; then every eleventh, fourteen times; then every tenth, six times.
        """,
    )
    assert len(session.state.undo) == 2  # the jump and one respacing


def session_in_the_round() -> Session:
    """Open a sitting at the increases."""
    session = opened(GARMENT)
    session.adopt(session.consider(GoTo(at=AT, place="final increase")))
    return session


def test_increases_left_out_are_spread_over_the_rest_in_one_breath() -> None:
    """At 132 old stitches with 10 made where the plan has 12: 11 are left over 93 stitches, and the target stands.

    Source: 142 on the right needle less 10 made are 132 of 225, 93 left. The gap she is in has 24 stitches already, so
    the first comes at once; 93 + 5 before the first of all = 98 = 11 × 8 + 10: gaps of 9, one of 8.
    """
    session = session_in_the_round()
    check(
        session,
        """
        > respace at stitch 142 with 10 made
        Eleven left: the next now; then every ninth, nine times; then one more in eight.
        > where am i
        Yoke, round 2 of 6, Final increase, at stitch 142 of 246. 235 stitches on the needles.
        > undo that
        Taken back: the new spacing.
        Yoke, round 2 of 6, Final increase: knit five, make one; then knit eleven, make one, eight times.
        """,
    )
    assert session.plan == GARMENT


@pytest.mark.parametrize(
    ("cue", "words"),
    [
        (Respace(at=AT, made=22), "takes 21 increases"),
        (Respace(at=AT, stitch=300, made=3), "has no stitch 300"),
        (Respace(at=AT, stitch=3, made=9), "has no stitch 3"),
        (Respace(at=AT, stitch=225, made=5), "16 increases do not fit into the 5 stitches left"),
    ],
)
def test_what_is_impossible_is_refused_with_its_numbers(cue: Respace, words: str) -> None:
    """Nothing changes, and the sentence says why."""
    refusal = decide(GARMENT, at(60), cue)
    assert isinstance(refusal, Refusal)
    assert words in refusal.sentence


def test_a_round_without_shaping_has_nothing_to_space() -> None:
    """Said in one sentence."""
    refusal = decide(GARMENT, State(), Respace(at=AT))
    assert isinstance(refusal, Refusal)
    assert "no increases or decreases" in refusal.sentence


def test_what_was_made_and_what_was_planned_are_kept() -> None:
    """The record says later where the knitting left the plan."""
    (event,) = decide(GARMENT, at(60), Respace(at=AT, made=3))  # type: ignore[misc] # events, not a refusal
    assert isinstance(event, Respaced)
    assert (event.made, event.planned, event.respacing.before, event.respacing.after) == (3, 5, 225, 246)
    assert len(event.respacing.places) == 21


def test_after_undo_the_round_is_as_planned_and_redo_brings_the_spacing_back() -> None:
    """One cue is one undo."""
    session = session_in_the_round()
    session.adopt(session.consider(Respace(at=AT, stitch=142, made=10)))
    spaced = session.plan
    assert spaced != GARMENT
    session.adopt(session.consider(Undo(at=AT)))
    assert session.plan == GARMENT


def test_the_new_spacing_goes_along_when_the_pattern_changes_before_it() -> None:
    """A round added before it moves the increases along; they stay where she put them."""
    session = session_in_the_round()
    session.adopt(session.consider(Respace(at=AT, stitch=142, made=10)))
    spaced = session.plan.rounds[INDEX].shaping
    rounds = (*GARMENT.rounds[:2], GARMENT.rounds[1], *GARMENT.rounds[2:])
    session.adopt(session.consider_plan(replace(GARMENT, rounds=renumber_rounds(rounds)), AT, "new"))
    assert session.state.place == Position(index=INDEX + 1, stitch=142)
    assert session.plan.rounds[INDEX + 1].shaping == spaced != GARMENT.rounds[INDEX].shaping


YOKE = plan(("yoke", ["co80", "(k8 m1)x10", "k90"]))
"""Ten increases, nine stitches from one to the next."""


@pytest.mark.parametrize(
    ("stitch", "made", "outcome"),
    [
        (0, 0, ()),
        (9, 1, (1, 9)),
        (89, 10, (1, 89)),
        (90, 10, "Stitch 90 ends this round; nothing is left to space. Say next step."),
        (91, 10, "With 10 made, this round has no stitch 91."),
    ],
)
def test_where_she_says_she_is_is_kept_though_the_spacing_stays(
    stitch: int, made: int, outcome: tuple[int, ...] | str
) -> None:
    """One of ten made behind nine stitches is as planned, and she is nine stitches on. What changes nothing is nothing to
    take back. All ten made behind ninety, the round is done: kept within it, "again" would read it from its beginning.
    A ninety-first stitch there is none."""
    state = State(seq=3, knitting=Knitting(place=Position(index=1)))
    decision = decide(YOKE, state, Respace(at=AT, stitch=stitch, made=made))
    if isinstance(outcome, str):
        assert isinstance(decision, Refusal)
        assert decision.sentence == outcome
    elif outcome:
        assert not isinstance(decision, Refusal)
        (event,) = decision
        assert isinstance(event, Respaced)
        assert (event.place.index, event.place.stitch) == outcome
    else:
        assert decision == ()
