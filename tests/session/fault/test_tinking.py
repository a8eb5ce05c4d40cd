from __future__ import annotations

import random

import pytest

from stepper.plan.model import Run
from stepper.session.cues import Count, Next, Tink, Undo
from stepper.session.fault.tinking import reverse
from stepper.session.machine import Session
from stepper.session.state import Knitting, Position, State, Verified
from tests import knitter
from tests.plans import final_increase, plan
from tests.playbook import AT

GARMENT = final_increase()


def test_the_last_stitch_comes_off_first() -> None:
    """She undoes what her hands meet, in that order."""
    back = reverse(plan(("body", ["co20", "k5 m1 k11 k2tog k2"])), Position(index=1, stitch=19), 5)

    assert back is not None
    assert back.runs == (Run("k", 1, "MC"), Run("k2tog", 1, "MC"), Run("k", 3, "MC"))
    assert back.place == Position(index=1, stitch=14)


def test_undone_and_worked_again_is_the_same_everywhere() -> None:
    """From any place back by any number of stitches: what came off, turned round, is what lies between."""
    dice = random.Random(3)
    for _ in range(400):
        round_ = dice.choice(GARMENT.rounds[:12])
        place = Position(index=round_.index, stitch=dice.randrange(round_.progress))
        back = reverse(GARMENT, place, dice.randint(1, 300))
        if back is None:
            continue
        todo = []
        for index in range(back.place.index, place.index + 1):
            start = back.place.stitch if index == back.place.index else 0
            end = place.stitch if index == place.index else GARMENT.rounds[index].progress
            todo += knitter.between(GARMENT.rounds[index], start, end)
        assert knitter.runs_reversed(back.runs)[::-1] == todo


def test_more_than_was_knitted_cannot_be_undone() -> None:
    """Nothing is there."""
    assert reverse(GARMENT, Position(index=0, stitch=5), 6) is None


def test_undo_gives_the_state_back_exactly() -> None:
    """A tink taken back leaves everything as it was, and stitch by stitch leads to the same place as at
    once."""
    session = Session(GARMENT, State(knitting=Knitting(place=Position(index=3, stitch=60))))
    before = session.state.knitting
    session.adopt(session.consider(Tink(at=AT, stitches=70)))
    at_once = session.state.place
    session.adopt(session.consider(Undo(at=AT)))
    assert session.state.knitting == before

    for _ in range(70):
        session.adopt(session.consider(Tink(at=AT)))
    assert session.state.place == at_once
    for _ in range(70):
        session.adopt(session.consider(Undo(at=AT)))
    assert session.state.knitting == before
    session.adopt(session.consider(Next(at=AT)))


@pytest.mark.parametrize("seed", range(8))
def test_undone_stitch_by_stitch_the_state_is_exactly_as_before(seed: int) -> None:
    """Stitches worked and undone one by one leave no trace in the knitting: not in the place, not in what is
    still to be counted, not in what is known to be right. Taking the steps back does the same."""
    dice = random.Random(seed)
    garment = final_increase()
    start = Position(index=dice.randrange(1, 12))
    verified = Verified(place=start, stitches=garment.rounds[start.index].before)
    knitting = Knitting(place=start, verified=verified, uncounted=dice.randrange(500), covered=900, faults=2)
    session = Session(garment, State(seq=1, knitting=knitting))
    steps = dice.randint(1, 4)
    for _ in range(steps):
        session.adopt(session.consider(Next(at=AT)))
    worked = session.state
    while session.state.place != start:
        session.adopt(session.consider(Tink(at=AT, stitches=1)))
    assert session.state.knitting == knitting

    session = Session(garment, worked)
    for _ in range(steps):
        session.adopt(session.consider(Undo(at=AT)))
    assert session.state.knitting == knitting


def test_a_count_taken_back_gives_back_what_was_not_counted() -> None:
    """A slip of the tongue is no fault of hers, and what was not counted is still to be counted."""
    garment = final_increase()
    knitting = Knitting(place=Position(index=3), uncounted=450, covered=900, faults=2)
    session = Session(garment, State(seq=1, knitting=knitting))
    session.adopt(session.consider(Count(at=AT, stitches=224)))
    assert (session.state.knitting.uncounted, session.state.knitting.faults) == (0, 3)
    session.adopt(session.consider(Count(at=AT, stitches=223)))
    assert session.state.knitting.faults == 3, "the same fault counted again is no other"
    for _ in range(2):
        session.adopt(session.consider(Undo(at=AT)))
    assert session.state.knitting == knitting
