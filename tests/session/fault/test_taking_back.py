from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.craft.counting import RIP_SHARE
from stepper.session.fault.diagnosis import diagnose
from stepper.session.fault.search import search
from stepper.session.fault.taking_back import rip_back, undo_stitches
from stepper.session.state import Answer, Fault, Knitting, Observation, Position, Seen, State, Verified
from tests.plans import plan

MARKED = plan(
    ("yoke", [("co80", {"markers": (20, 40, 60)}), ("k80", {"markers": (20, 40, 60)}), "k80", "k80"])
)
VERIFIED = Verified(place=Position(index=1), stitches=80)
NO_LOOP = Observation(seen=Seen.LOOP, number=0)


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


def test_where_she_sees_the_fault_its_round_is_far_enough() -> None:
    """The last good count may lie twenty rounds below a mistake that she sees three rounds down."""
    knitting = Knitting(place=Position(index=3), verified=VERIFIED)
    (way,) = rip_back(MARKED, knitting, Fault(place=Position(index=3), difference=17, index=2), ())
    assert (way.place, way.rounds, way.undone) == (Position(index=2), 1, 80)


def test_of_two_places_to_rip_to_the_cheaper_is_taken() -> None:
    """Behind a lifeline every stitch stays on its thread, behind a count each has to be picked up. By hand: one round to
    the lifeline, two and eighty stitches picked up to the count."""
    knitting = Knitting(place=Position(index=3), verified=VERIFIED, lifelines=(Position(index=2),))
    fault = Fault(place=Position(index=3), difference=17)
    (way,) = rip_back(MARKED, knitting, fault, ())
    assert (way.place, way.rounds, way.undone, way.lifeline) == (Position(index=2), 1, 80, True)
    assert way.stitches == round(80 * (1 + RIP_SHARE))
    (counted,) = rip_back(MARKED, Knitting(place=Position(index=3), verified=VERIFIED), fault, ())
    assert counted.stitches == round(160 * (1 + RIP_SHARE) + 80)
    assert not counted.lifeline


def test_ripping_ends_before_the_fault_and_where_she_stands_is_no_place_to_rip_to() -> None:
    """A lifeline above the fault holds the fault in; one in the stitches on the needle takes nothing off."""
    lines = (Position(index=2), Position(index=3))
    knitting = Knitting(place=Position(index=3), verified=VERIFIED, lifelines=lines)
    (way,) = rip_back(MARKED, knitting, Fault(place=Position(index=3), difference=1, index=1), ())
    assert way.place == Position(index=1)
    (way,) = rip_back(MARKED, knitting, Fault(place=Position(index=3), difference=1, index=2), ())
    assert way.place == Position(index=2)
    here = Knitting(place=Position(index=3), lifelines=(Position(index=3),))
    assert rip_back(MARKED, here, Fault(place=Position(index=3), difference=1), ()) == []
    (seen,) = rip_back(MARKED, here, Fault(place=Position(index=3), difference=1, index=2), ())
    assert (seen.place, seen.rounds) == (Position(index=2), 1)
    assert rip_back(MARKED, here, Fault(place=Position(index=3), difference=1, index=3), ()) == []


def test_nobody_rips_farther_than_the_round_she_has_seen_it_in() -> None:
    """A good count far below says only that all was well there; a lifeline close below the round is safer all the same. By
    hand: one round of eighty to the beginning of the third, and three to the cast-on counted."""
    tall = plan(("yoke", ["co80", "k80", "k80", "k80", "k80", "k80"]))
    seen = Fault(place=Position(index=5), difference=0, index=4)
    knitting = Knitting(place=Position(index=5), verified=Verified(place=Position(index=1), stitches=80))
    (way,) = rip_back(tall, knitting, seen, ())
    assert (way.place, way.rounds, way.undone) == (Position(index=4), 1, 80)
    (lined,) = rip_back(tall, replace(knitting, lifelines=(Position(index=3),)), seen, ())
    assert (lined.place, lined.lifeline) == (Position(index=3), True)
    (far,) = rip_back(tall, replace(knitting, lifelines=(Position(index=1),)), seen, ())
    assert far.place == Position(index=4)


def test_nothing_is_ripped_into_a_piece_that_was_finished_before() -> None:
    """The first sock is bound off: a good count or a lifeline in it is no place to go back to from the second, whose own
    cast-on is; by hand, two rounds of twenty and as many cast on."""
    pair = plan(("first", ["co20", "k20", "bo20"]), ("second", ["co20", "k20", "k20"]))
    counted = Verified(place=Position(index=2), stitches=20)
    fault = Fault(place=Position(index=6), difference=17)
    second = Knitting(place=Position(index=6), verified=counted, lifelines=(Position(index=1),))
    (way,) = rip_back(pair, second, fault, ())
    assert (way.place, way.undone, way.lifeline) == (Position(index=3), 60, False)
    assert rip_back(pair, Knitting(place=Position(index=6), lifelines=(Position(index=1),)), fault, ()) == []
    (lined,) = rip_back(pair, replace(second, lifelines=(Position(index=4),)), fault, ())
    assert (lined.place, lined.lifeline) == (Position(index=4), True)
    first = Knitting(place=Position(index=2, stitch=9), verified=Verified(place=Position(index=1), stitches=20))
    (way,) = rip_back(pair, first, Fault(place=Position(index=2, stitch=9), difference=17), ())
    assert way.place == Position(index=1)
    done = Knitting(place=Position(index=3), verified=counted)
    (way,) = rip_back(pair, done, Fault(place=Position(index=3), difference=17), ())
    assert way.place == Position(index=2)


@pytest.mark.parametrize(
    ("now", "place"),
    [
        (Position(index=2), (1, 0)),
        (Position(index=2, stitch=30), (1, 0)),
        (Position(index=3), None),  # too far above to unknit
        (Position(index=1, stitch=30), (1, 0)),
        (Position(index=1), None),  # gone back behind it since
    ],
)
def test_stitches_are_undone_only_where_the_fault_is_in_this_round_or_the_one_before(
    now: Position, place: tuple[int, int] | None
) -> None:
    """Further down it is ripped. The fault is known to lie in the first round of eighty, no stretch of it counted."""
    fault = Fault(place=Position(index=2), difference=-1, index=1, sights=(NO_LOOP,))
    state = State(knitting=Knitting(place=now, verified=VERIFIED))
    causes = diagnose(MARKED, state, fault)
    assert {each.index for each in causes} == {1}
    ways = undo_stitches(MARKED, now, fault, causes, search(MARKED, state, fault))
    assert [(way.place.index, way.place.stitch) for way in ways] == ([] if place is None else [place])
    for way in ways:
        assert way.undone == 80 * (now.index - 1) + now.stitch
        assert way.rounds == now.index - 1
        assert way.stitches == 2 * way.undone
