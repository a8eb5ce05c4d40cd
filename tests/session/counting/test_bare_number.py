from __future__ import annotations

import pytest

from stepper.session import cues
from stepper.session.effects import Refuse
from stepper.session.events import Counted, Doubted
from stepper.session.machine import Session
from stepper.session.state import Knitting, Position, State, Verified
from tests.plans import plan
from tests.playbook import AT, check

MARKED = plan(
    ("yoke", [("co80", {"markers": (20, 40, 60)}), ("k80", {"markers": (20, 40, 60)}), "k80", "k80"])
)


def _at(index: int) -> Session:
    verified = Verified(place=Position(index=1), stitches=80)
    return Session(MARKED, State(seq=1, knitting=Knitting(place=Position(index=index), verified=verified)))


def test_figures_answer_a_count_and_its_parts() -> None:
    """With both hands full nobody types "count is"; the figures are what she has counted. While a loose loop is asked
    after they are another count of all."""
    check(
        _at(2),
        """
        > 79
        79: 1 fewer than 80.
        Is there a loose loop below the needles? Say: I see a loop, or: no loop.
        > 86
        86: 6 too many.
        In parts: count up to the first marker: 20 expected. Say: there are, and the number.
        """,
    )


@pytest.mark.parametrize(
    ("number", "taken"), [(80, True), (40, True), (39, False), (2, False), (0, False), (160, True)]
)
def test_a_number_alone_is_a_count_from_half_the_stitches_on(number: int, taken: bool) -> None:
    """Half or twice as many may be there, where a round that halves or doubles them was left out or worked twice. Less is
    something else, and taken for a count it would begin a search for a fault that is not there."""
    effects = _at(2).consider(cues.Count(at=AT, stitches=number, bare=True)).events
    assert any(isinstance(each, Counted) for each in effects) is taken
    worded = _at(2).consider(cues.Count(at=AT, stitches=number)).events
    assert any(isinstance(each, Counted) for each in worded)


def test_what_was_heard_alone_is_read_back_and_not_refused() -> None:
    """A yes takes it, so that nothing has to be said anew."""
    heard = _at(2).consider(cues.Count(at=AT, stitches=2, bare=True, heard=1.0)).events
    assert [type(each) for each in heard] == [Doubted]


def test_a_part_that_is_asked_for_is_answered_by_figures() -> None:
    """20 is far from 80, but it is what the first part should have."""
    check(
        _at(2),
        """
        > 79
        79: 1 fewer than 80.
        Is there a loose loop below the needles? Say: I see a loop, or: no loop.
        > 20
        20 alone is far from 80 stitches. Say: count is 20.
        > no loop
        In parts: count up to the first marker: 20 expected. Say: there are, and the number.
        > 20
        Count from the first marker to the second: 20 expected. Say: yes, or the number.
        > 2
        2 alone is far from 20 stitches. Say: take remedy 2; or: there are 2; or: count is 2.
        """,
    )


def test_stitches_left_over_are_not_taken_for_a_count() -> None:
    """Where the session asks whether the round came out, a 2 is what was left over or short, and she says which."""
    session = Session(
        plan(("body", ["co12", "k12", "k12"])), State(seq=1, knitting=Knitting(place=Position(index=2)))
    )
    for cue in (cues.Saw(at=AT, seen=cues.Seen.LEFT, number=1),):
        session.adopt(session.consider(cue))
    told = session.consider(cues.Count(at=AT, stitches=2, bare=True)).effects
    assert [type(each) for each in told] == [Refuse]


def test_a_few_alone_are_rounds_and_no_count() -> None:
    """Asked how many rounds she ripped she types the number; "count is 2" would begin a search for 78 stitches."""
    check(
        _at(2),
        """
        > rip back
        How many rounds? Say: go back two rounds, or as many as it is.
        > 2
        Yoke, round 1 of 4: cast on eighty.
        """,
    )
    check(
        _at(2),
        """
        > rip back
        How many rounds? Say: go back two rounds, or as many as it is.
        > where am i
        Yoke, round 3 of 4, at its beginning. 80 stitches on the needles.
        > yes
        How many rounds? Say: go back two rounds, or as many as it is.
        > no
        Nothing is changed.
        > 2
        2 alone is far from 80 stitches. Say: go back 2 rounds; or: 2 rounds done.
        > rip back
        How many rounds? Say: go back two rounds, or as many as it is.
        > 3
        Only 2 lie behind.
        > rip back
        How many rounds? Say: go back two rounds, or as many as it is.
        > count is 79
        79: 1 fewer than 80.
        Is there a loose loop below the needles? Say: I see a loop, or: no loop.
        """,
    )


def test_what_is_wrong_so_far_down_is_ripped_back_to_with_a_yes() -> None:
    """No count shows a wrong colour, so no search finds it: she says where it lies, and the place follows her."""
    check(
        _at(2),
        """
        > wrong colour one round down
        1 round ripped back? Say: yes it is, or: no it is not. A few stitches are covered in duplicate stitch later.
        > no
        Nothing is changed.
        > wrong colour one round down
        1 round ripped back? Say: yes it is, or: no it is not. A few stitches are covered in duplicate stitch later.
        > yes
        Yoke, round 2 of 4: knit all eighty.
        > wrong colour two rounds down
        Only 1 lies behind.
        """,
    )
