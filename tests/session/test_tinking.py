from __future__ import annotations

import random

from stepper.plan.model import Run
from stepper.session.cues import Next, Tink, Undo
from stepper.session.machine import Session
from stepper.session.state import Knitting, Place, State
from stepper.session.tinking import reverse
from tests import knitter
from tests.plans import final_increase, plan
from tests.playbook import AT

GARMENT = final_increase()


def test_the_last_stitch_comes_off_first() -> None:
    """She undoes what her hands meet, in that order."""
    back = reverse(plan(("body", ["co20", "k5 m1 k11 k2tog k2"])), Place(index=1, stitch=19), 5)

    assert back is not None
    assert back.runs == (Run("k", 1, "MC"), Run("k2tog", 1, "MC"), Run("k", 3, "MC"))
    assert back.place == Place(index=1, stitch=14)


def test_undone_and_worked_again_is_the_same_everywhere() -> None:
    """From any place back by any number of stitches: what came off, turned round, is what lies between."""
    dice = random.Random(3)
    for _ in range(400):
        round_ = dice.choice(GARMENT.rounds[:12])
        place = Place(index=round_.index, stitch=dice.randrange(round_.progress))
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
    assert reverse(GARMENT, Place(index=0, stitch=5), 6) is None


def test_undo_gives_the_state_back_exactly() -> None:
    """A tink taken back leaves everything as it was, and stitch by stitch leads to the same place as at
    once."""
    session = Session(GARMENT, State(knitting=Knitting(place=Place(index=3, stitch=60))))
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
