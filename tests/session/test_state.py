from __future__ import annotations

import sys

from stepper.session.codec import encode_state
from stepper.session.events import Advanced
from stepper.session.evolve import evolve
from stepper.session.state import Position, State
from stepper.session.steps import By
from tests.playbook import AT


def test_a_new_garment_begins_at_the_beginning() -> None:
    """Nothing said, nothing knitted: the first stitch of the first round, a round at a time."""
    state = State()

    assert (state.place, state.knitting.by) == (Position(index=0, stitch=0), By.ROUND)
    assert not state.asleep
    assert not state.closed


def test_a_state_stays_small_however_long_the_garment() -> None:
    """A snapshot is written while she knits; it must not grow with the work."""
    state = State()
    for at in range(2000):
        state = evolve(
            state, Advanced(at=AT, origin=Position(index=at), place=Position(index=at + 1), stitches=200)
        )

    assert len(encode_state(state)) < 20_000
    assert sys.getsizeof(state.undo) < 2_000
