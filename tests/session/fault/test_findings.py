from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.session.fault.findings import add_answers, add_sight, choose_way, count_off, is_slip
from stepper.session.fault.ways import RemedyKind
from stepper.session.state import Answer, Fault, Narrowing, Observation, Position, Seen

HERE, THERE = Position(index=3), Position(index=4)
LOOP, NO_LOOP = Observation(seen=Seen.LOOP, number=1), Observation(seen=Seen.LOOP, number=0)
LEFT = Observation(seen=Seen.LEFT, number=2, index=2)
OFF = Fault(place=HERE, difference=-2, sights=(LOOP, LEFT), index=2, chosen=Narrowing.RECOUNT)


def test_a_second_count_like_the_first_keeps_what_was_found() -> None:
    """It was no slip, and what was to be done next is done; the loop that hung is caught or asked after once more."""
    assert count_off(OFF, HERE, -2) == replace(OFF, sights=(LEFT,), confirmed=True, chosen=None)
    none_hangs = replace(OFF, sights=(LEFT, NO_LOOP))
    assert count_off(none_hangs, HERE, -2).sights == (NO_LOOP, LEFT)


@pytest.mark.parametrize(("place", "off"), [(HERE, -1), (THERE, -2), (THERE, -1)])
def test_another_number_or_another_place_begins_anew(place: Position, off: int) -> None:
    """What was seen belongs to the fault of before, but for the loop that does not hang here."""
    none_hangs = replace(OFF, sights=(LEFT, NO_LOOP))
    kept = (NO_LOOP,) if place == HERE else ()
    assert count_off(none_hangs, place, off) == Fault(place=place, difference=off, sights=kept)
    assert count_off(None, place, off) == Fault(place=place, difference=off)


def test_a_count_that_comes_out_was_a_slip_only_where_nothing_was_done_in_between() -> None:
    """At another place she has knitted on; with a loop that hung she has caught it; and seen alone is not counted."""
    quiet = replace(OFF, sights=(LEFT, NO_LOOP))
    assert is_slip(quiet, HERE)
    assert not is_slip(quiet, THERE)
    assert not is_slip(OFF, HERE)
    assert not is_slip(replace(quiet, difference=0), HERE)


def test_counts_between_landmarks_are_kept_in_their_order_and_settle_what_was_chosen() -> None:
    """She was to count a part, and has."""
    one, two = Answer(first=0, end=2, stitches=40), Answer(first=2, end=3, stitches=20)
    both = add_answers(add_answers(OFF, (one,)), (two,))
    assert (both.answers, both.chosen) == ((one, two), None)


def test_only_what_narrows_a_fault_down_is_chosen_next() -> None:
    """The names are those of the remedies, and a remedy that is none of them leaves nothing chosen."""
    by_name = {each.value: choose_way(OFF, each.value) for each in RemedyKind}
    chosen = {name: fault.chosen for name, fault in by_name.items() if fault is not None and fault.chosen}
    assert chosen == {each.value: each for each in Narrowing}
    assert choose_way(None, "look") is None


def test_what_is_seen_begins_the_search_where_there_was_none() -> None:
    """Nothing was counted, so nothing is known to be off."""
    assert add_sight(None, THERE, LOOP, None) == Fault(place=THERE, difference=0, sights=(LOOP,))
    assert add_sight(None, THERE, NO_LOOP, None) == Fault(place=THERE, difference=0, sights=(NO_LOOP,))
    assert add_sight(None, THERE, None, 2) == Fault(place=THERE, difference=0, index=2)


def test_the_same_thing_seen_again_takes_the_place_of_the_first_in_its_round_alone() -> None:
    """Another round has its own."""
    again, elsewhere = replace(LEFT, number=-1), replace(LEFT, index=1)
    seen = add_sight(OFF, THERE, again, None)
    assert seen == replace(OFF, sights=(LOOP, again), chosen=None)
    other = add_sight(OFF, THERE, elsewhere, None)
    assert other is not None
    assert other.sights == (LOOP, LEFT, elsewhere)
    named = add_sight(OFF, THERE, None, 1)
    assert named == replace(OFF, index=1)


def test_a_loop_that_hung_and_is_gone_ends_the_search() -> None:
    """It is caught, so what is off then is counted anew; where none hung, nothing has changed by its not being there."""
    assert add_sight(OFF, HERE, NO_LOOP, None) is None
    kept = add_sight(replace(OFF, sights=(LEFT,)), HERE, NO_LOOP, None)
    assert kept is not None
    assert kept.sights == (LEFT, NO_LOOP)
    still = add_sight(OFF, HERE, LOOP, None)
    assert still is not None
    assert still.sights == (LEFT, LOOP)
