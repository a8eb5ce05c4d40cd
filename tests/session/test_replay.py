from __future__ import annotations

from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from stepper.session.codec import decode_event, encode_event, encode_state
from stepper.session.cues import Cue
from stepper.session.events import Event, Noted, Undone
from stepper.session.machine import Session
from stepper.session.replay import list_standing, replay_events, state_from_snapshot
from stepper.session.state import Position, State
from tests.plans import final_increase
from tests.session.any_cue import CUES

GARMENT = final_increase()


def _knitted(cues: list[Cue]) -> tuple[Session, list[Event]]:
    session, events = Session(GARMENT), []
    for cue in cues:
        considered = session.consider(cue)
        session.adopt(considered)
        events += considered.events
    return session, events


def _kept(events: list[Event]) -> list[tuple[int, Event]]:
    """Return events as a journal gives them back."""
    return [(seq, decode_event(*encode_event(event))) for seq, event in enumerate(events, start=1)]


@given(st.lists(CUES, max_size=40), st.data())
def test_a_snapshot_anywhere_changes_nothing(cues: list[Cue], data: st.DataObject) -> None:
    """Folding from a snapshot and folding from the beginning lead to the same state."""
    session, events = _knitted(cues)
    entries = _kept(events)
    at = data.draw(st.integers(0, len(entries)))
    snapshot = state_from_snapshot(at, encode_state(replay_events(entries[:at])))

    assert replay_events(entries, snapshot) == replay_events(entries[at:], snapshot) == replay_events(entries) == session.state


def test_a_snapshot_with_another_number_is_left() -> None:
    """A snapshot filed under the wrong event would double or lose steps."""
    assert state_from_snapshot(3, encode_state(State(seq=4))) is None
    assert state_from_snapshot(4, "{") is None
    assert state_from_snapshot(4, encode_state(State(seq=4))) == State(seq=4)


@given(st.lists(CUES, max_size=40))
def test_what_stands_leads_to_the_same_place_without_any_undo(cues: list[Cue]) -> None:
    """The history without what was taken back is the history of someone who never took anything back."""
    session, events = _knitted(cues)

    stands = list(list_standing(enumerate(events, start=1)))

    assert not any(isinstance(event, Undone) for _, event in stands)
    assert all(one[0] < two[0] for one, two in pairwise(stands))
    clean = replay_events(_kept([event for _, event in stands]))
    assert clean.knitting == session.state.knitting


def test_what_was_taken_back_and_done_again_stands() -> None:
    """The undo of an undo takes nothing else back. By hand: a step, undone, done again, undone once more."""
    step = Noted(at="2025-03-03T20:15:00+01:00", place=Position(), text="a")
    undone = [Undone(at=step.at, seq=seq) for seq in (1, 2, 3)]
    events = list(enumerate([step, *undone], start=1))
    assert list(list_standing(events[:1])) == [(1, step)]
    assert list(list_standing(events[:2])) == []
    assert list(list_standing(events[:3])) == [(1, step)]
    assert list(list_standing(events)) == []
