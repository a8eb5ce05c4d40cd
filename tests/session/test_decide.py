from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from stepper.session.clock_cues import Silence
from stepper.session.cues import Cue, Next
from stepper.session.decide import decide
from stepper.session.decision import Refusal
from stepper.session.events import Advanced
from stepper.session.evolve import evolve_all
from stepper.session.state import State
from tests.plans import final_increase
from tests.session.any_cue import CUES

GARMENT = final_increase()


@given(st.lists(CUES, max_size=30))
def test_deciding_is_repeatable_and_undo_takes_back_one_cue(cues: list[Cue]) -> None:
    """The same cue in the same state gives the same events, and never more than one that undo has to take
    back."""
    state = State()
    for cue in cues:
        decision = decide(GARMENT, state, cue)

        assert decision == decide(GARMENT, state, cue)
        if not isinstance(decision, Refusal):
            after = evolve_all(state, decision)
            assert len(after.undo) + len(after.redo) <= len(state.undo) + len(state.redo) + 1
            state = after


def test_the_time_of_a_cue_is_the_time_of_its_event() -> None:
    """The session owns no clock: what it records is what it was told."""
    decision = decide(GARMENT, State(), Next(at="2030-01-01T00:00:00+00:00"))

    assert isinstance(decision, tuple)
    assert [event.at for event in decision] == ["2030-01-01T00:00:00+00:00"]
    assert isinstance(decision[0], Advanced)


def test_a_silence_is_no_event() -> None:
    """Nothing happened; the place is said all the same, which is no affair of the journal."""
    assert decide(GARMENT, State(), Silence(at="2030-01-01T00:00:00+00:00")) == ()
