from __future__ import annotations

from dataclasses import replace

from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule

from stepper.session.codec import decode_event, encode_event
from stepper.session.cues import Cue, Enough, GoTo, Length, Listen, Redo, Undo, Wait
from stepper.session.events import Event, ReadingSet
from stepper.session.machine import Considered, Session
from stepper.session.replay import replay_events
from stepper.session.state import Knitting, Position, State
from tests.plans import final_increase
from tests.playbook import AT, opened, tell
from tests.session.any_cue import CUES

GARMENT = final_increase()
SHORTER = replace(GARMENT, rounds=GARMENT.rounds[:-3])
"""The same garment with its last rounds not yet written."""


class MemoryJournal:
    """A journal in memory: keeps the written form only, so that what is read back went through the codec."""

    def __init__(self) -> None:
        self._kept: list[tuple[str, int, str]] = []

    def append(self, events: tuple[Event, ...]) -> None:
        """Keep events."""
        self._kept += map(encode_event, events)

    @property
    def events(self) -> list[tuple[int, Event]]:
        """What is kept, as it is read back: number and event."""
        return [(seq, decode_event(*kept)) for seq, kept in enumerate(self._kept, start=1)]


def can_be_taken_back(event: Event) -> bool:
    """Return whether undo takes an event back: how a round is read along is no part of the knitting."""
    return not isinstance(event, ReadingSet)


class Sitting(RuleBasedStateMachine):
    """A knitter who says anything, closes the lid, and loses power at the worst moment.

    The model beside it is a plain list of the knittings she went through, which undo and redo walk along.
    """

    def __init__(self) -> None:
        super().__init__()
        self.journal = MemoryJournal()
        self.session = Session(GARMENT)
        self.past: list[Knitting] = []
        self.future: list[Knitting] = []

    def commit_and_adopt(self, considered: Considered) -> None:
        """Do what the conductor does."""
        self.journal.append(considered.events)
        self.session.adopt(considered)

    @initialize()
    def open_first(self) -> None:
        """Begin the garment."""
        self.commit_and_adopt(self.session.consider_opening(AT, "one"))

    @rule(cue=CUES.filter(lambda cue: not isinstance(cue, Undo | Redo)))
    @precondition(lambda self: not self.session.state.closed and not self.session.state.asleep)
    def say(self, cue: Cue) -> None:
        """Say anything but undo and redo."""
        before = self.session.state.knitting
        considered = self.session.consider(cue)
        self.commit_and_adopt(considered)
        if any(can_be_taken_back(event) for event in considered.events):
            self.past.append(before)
            self.future.clear()
        assert considered.effects  # every cue is answered

    @rule()
    @precondition(lambda self: not self.session.state.closed and not self.session.state.asleep)
    def undo(self) -> None:
        """Take the last thing back."""
        now = self.session.state.knitting
        self.commit_and_adopt(self.session.consider(Undo(at=AT)))
        if self.past:
            self.future.append(now)
            assert self.session.state.knitting == self.past.pop()
        else:
            assert self.session.state.knitting == now

    @rule()
    @precondition(lambda self: not self.session.state.closed and not self.session.state.asleep)
    def redo(self) -> None:
        """Do again what was taken back."""
        now = self.session.state.knitting
        self.commit_and_adopt(self.session.consider(Redo(at=AT)))
        if self.future:
            self.past.append(now)
            assert self.session.state.knitting == self.future.pop()
        else:
            assert self.session.state.knitting == now

    @rule(cue=st.sampled_from([Wait(at=AT), Listen(at=AT), Enough(at=AT)]))
    def say_about_the_sitting(self, cue: Cue) -> None:
        """Close the ears, open them, end the sitting."""
        before = self.session.state.knitting
        self.commit_and_adopt(self.session.consider(cue))
        assert self.session.state.knitting == before

    @rule()
    def close_and_reopen(self) -> None:
        """Take the garment up again from nothing but the journal."""
        before = self.session.state
        self.session = Session(self.session.base, replay_events(self.journal.events))
        assert self.session.state == before
        self.commit_and_adopt(self.session.consider_opening(AT, before.fingerprint))
        assert self.session.state.knitting == before.knitting

    @rule(cue=CUES)
    def lose_power_before_the_commit(self, cue: Cue) -> None:
        """A cue considered and never kept has not happened."""
        before = self.session.state
        self.session.consider(cue)
        self.session = Session(self.session.base, replay_events(self.journal.events))
        assert self.session.state == before

    @rule(cue=CUES.filter(lambda cue: not isinstance(cue, Undo | Redo)))
    @precondition(lambda self: not self.session.state.closed and not self.session.state.asleep)
    def lose_power_after_the_commit(self, cue: Cue) -> None:
        """A cue kept and never answered has happened once."""
        before = self.session.state.knitting
        considered = self.session.consider(cue)
        self.journal.append(considered.events)
        if any(can_be_taken_back(event) for event in considered.events):
            self.past.append(before)
            self.future.clear()
        self.session = Session(self.session.base, replay_events(self.journal.events))
        assert self.session.state == considered.state

    @rule()
    def change_the_file(self) -> None:
        """Go on with the file as it is now; nothing before can be taken back any more."""
        new = SHORTER if self.session.base is GARMENT else GARMENT
        self.commit_and_adopt(self.session.consider_plan(new, AT, "two" if new is SHORTER else "one"))
        self.past.clear()
        self.future.clear()

    @invariant()
    def the_journal_alone_gives_the_state(self) -> None:
        """Folding what is kept is the live state, always."""
        assert replay_events(self.journal.events) == self.session.state

    @invariant()
    def the_numbers_have_no_gap(self) -> None:
        """Every event has the number after the one before."""
        assert self.session.state.seq == len(self.journal.events)

    @invariant()
    def the_place_is_in_the_plan(self) -> None:
        """A place is always a round of the plan and stitches within it, or the end."""
        place, rounds = self.session.state.place, self.session.plan.rounds
        assert 0 <= place.index <= len(rounds)
        if place.index == len(rounds):
            assert place.stitch == 0
        else:
            assert 0 <= place.stitch < rounds[place.index].progress


Sitting.TestCase.settings = settings(max_examples=60, stateful_step_count=40, deadline=None)
TestSitting = Sitting.TestCase


def test_a_length_kept_one_night_shapes_the_plan_of_the_next() -> None:
    """Corrections of lengths are folded anew from the journal and lead to the same rounds."""
    journal = MemoryJournal()
    session = Session(GARMENT)
    for cue in (GoTo(at=AT, place="body", round_number=8), Length(at=AT, length_mm=77.0)):
        considered = session.consider(cue)
        journal.append(considered.events)
        session.adopt(considered)

    again = Session(GARMENT, replay_events(journal.events))

    assert again.state == session.state
    assert again.plan == session.plan
    assert again.plan != again.base


def test_a_changed_file_is_told_before_anything_else() -> None:
    """What changed, what of it is knitted, and where she now is, before a single step."""
    session = opened(GARMENT)
    session.adopt(replace(session.consider_opening(AT, "one"), state=_at(session.state, 5)))
    fewer = replace(
        GARMENT,
        rounds=tuple(replace(r, label="Last increase" if r.index == 3 else r.label) for r in GARMENT.rounds),
    )

    lines = tell(session, session.consider_plan(fewer, AT, "two"))
    lines += tell(session, session.consider_opening(AT, "two"))

    assert lines == [
        "The pattern has changed since last time. Yoke, round 2, Last increase: changed, already knitted.",
        "Last done: Yoke, round 3 of 6, chart cairn round 1.",
        "Round 4, chart cairn round 2: one chalk, four ember, one chalk, forty one times.",
    ]


def test_a_file_whose_past_cannot_be_read_is_not_passed_over() -> None:
    """If the old text compiles no more, the place is kept and the knitter is told to look."""
    session = opened(GARMENT)

    lines = tell(session, session.consider_plan(SHORTER, AT, "two", comparable=False))

    assert lines == [
        "The pattern has changed since last time. "
        "The earlier version can no longer be read, so check the place yourself."
    ]


def _at(state: State, index: int) -> State:
    return replace(state, knitting=replace(state.knitting, place=Position(index=index)))
