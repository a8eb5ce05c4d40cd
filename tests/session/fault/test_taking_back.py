from __future__ import annotations

from stepper.session.fault.diagnosis import diagnose
from stepper.session.fault.search import search
from stepper.session.fault.taking_back import rip_back, undo_stitches
from stepper.session.state import Answer, Fault, Knitting, Position, Seen, Sight, State, Verified
from tests.plans import plan

MARKED = plan(
    ("yoke", [("co80", {"markers": (20, 40, 60)}), ("k80", {"markers": (20, 40, 60)}), "k80", "k80"])
)
VERIFIED = Verified(place=Position(index=1), stitches=80)
NO_LOOP = Sight(seen=Seen.LOOP, number=0)


def test_stitches_are_undone_to_the_beginning_of_the_stretch() -> None:
    """Known by a count of just that stretch, what lies before it stays on the needle. By hand: forty of eighty."""
    state = State(knitting=Knitting(place=Position(index=2), verified=VERIFIED))
    right = tuple(Answer(first=at, end=at + 1, stitches=20) for at in range(2))
    off = Answer(first=2, end=3, stitches=19)
    fault = Fault(place=Position(index=2), difference=-1, answers=(*right, off), sights=(NO_LOOP,))
    looking = search(MARKED, state, fault)
    (way,) = undo_stitches(MARKED, state.place, fault, diagnose(MARKED, state, fault), looking)
    assert (way.place, way.undone) == (Position(index=1, stitch=40), 40)


def test_without_a_good_count_or_a_cause_nothing_is_ripped() -> None:
    """Back to the cast-on is no advice."""
    fault = Fault(place=Position(index=3), difference=17)
    assert rip_back(MARKED, Knitting(place=Position(index=3)), fault, ()) == []


def test_ripping_ends_at_the_last_good_count() -> None:
    """And says how many rounds that is."""
    knitting = Knitting(place=Position(index=3), verified=VERIFIED)
    (way,) = rip_back(MARKED, knitting, Fault(place=Position(index=3), difference=17), ())
    assert (way.place, way.rounds, way.undone) == (Position(index=1), 2, 160)
