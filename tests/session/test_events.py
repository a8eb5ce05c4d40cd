from __future__ import annotations

from dataclasses import FrozenInstanceError

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.plan.under_way.respace import Respacing
from stepper.session import events
from stepper.session.events import (
    EVENTS,
    Counted,
    Event,
    Jumped,
    Measured,
    Noted,
    Remedied,
    Respaced,
    Tallied,
)
from stepper.session.fault.ways import RemedyKind
from stepper.session.state import Fault, Knitting, Narrowing, Position, Verified
from stepper.session.steps import By, RoundSort
from tests.playbook import AT
from tests.session import samples


@pytest.mark.parametrize(("stitches", "agrees"), [(225, True), (246, True), (235, False), (0, False)])
def test_a_count_agrees_here_or_at_the_end_of_the_round(stitches: int, agrees: bool) -> None:
    """Whoever counts in a shaped round may have finished it already."""
    counted = Counted(at=AT, place=Position(index=3), stitches=stitches, expected=225, expected_end=246)

    assert counted.agrees is agrees


def test_what_happened_cannot_be_changed() -> None:
    """Events are history."""
    event: Event = Noted(at=AT, place=Position(), text="tight")
    with pytest.raises(FrozenInstanceError):
        event.at = "earlier"  # type: ignore[misc] # the point of the test


ONLY_KEPT = {
    *(events.Opened, events.PlanChanged, events.PlaceAsked, events.Undone, events.Closed),
    *(events.FellAsleep, events.WokeUp, events.ReadingSet, events.RowAnswered),
}
"""What leaves the knitting as it is: what it changes is the sitting, and undo and a changed plan are for all events."""


def test_every_event_that_changes_the_knitting_says_how() -> None:
    """One that forgets to would be kept and told, and nothing would come of it. The others are listed by hand."""
    assert {each for each in EVENTS if each.applied is Event.applied} == ONLY_KEPT


@pytest.mark.parametrize("kind", EVENTS, ids=lambda kind: kind.__name__)
def test_what_an_event_makes_of_the_knitting_never_fails_and_leaves_what_was(kind: type[Event]) -> None:
    """Replay goes on whatever the journal holds, and undo needs the knitting of before as it was."""

    @settings(max_examples=20)
    @given(samples.of_kind(kind), st.lists(samples.EVENTS, max_size=8))
    def check(event: Event, before: list[Event]) -> None:
        knitting = Knitting()
        for each in before:
            knitting = each.applied(knitting)
        was = repr(knitting)
        after = event.applied(knitting)
        assert repr(knitting) == was
        assert event.applied(knitting) == after
        assert kind not in ONLY_KEPT or after is knitting

    check()


@pytest.mark.parametrize(("worked", "index"), [(0, 3), (12, 4)])
def test_a_good_count_ends_the_search_and_the_round_if_she_says_so(worked: int, index: int) -> None:
    """She counts all stitches at its end, in place of "next": the good count then stands at the next round."""
    at = Position(index=3, stitch=8 if worked else 0)
    looking = Knitting(place=at, fault=Fault(place=at, difference=1), tens=(10, 10))
    counted = Counted(at=AT, place=at, stitches=20, expected=20, expected_end=20, worked=worked)

    after = counted.applied(looking)

    there = Position(index=index)
    assert after == Knitting(place=there, verified=Verified(place=there, stitches=20))


def test_a_jump_off_the_path_leaves_the_good_count_and_another_keeps_it() -> None:
    """What was counted on one sleeve says nothing of the other."""
    counted = Knitting(place=Position(index=5), verified=Verified(place=Position(index=4), stitches=60))
    jump = Jumped(at=AT, origin=Position(index=5), place=Position(index=9))
    assert jump.applied(counted).verified == counted.verified
    assert (
        Jumped(at=AT, origin=jump.origin, place=jump.place, off_path=True).applied(counted).verified is None
    )


@pytest.mark.parametrize("remedy", RemedyKind, ids=lambda remedy: remedy.value)
def test_a_way_that_settles_nothing_only_says_what_she_does_next(remedy: RemedyKind) -> None:
    """She looks or counts first: the place and the fault stay. Any other way moves and ends the search."""
    here, fault = Position(index=5), Fault(place=Position(index=5), difference=-1)
    way = Remedied(
        at=AT, origin=here, place=Position(index=4), remedy=remedy, difference=-1, stitches=3, minutes=0.1
    )

    after = way.applied(Knitting(place=here, fault=fault))

    if remedy.settles:
        assert (after.place, after.fault) == (Position(index=4), None)
    else:
        assert after.place == here
        assert after.fault is not None
        assert after.fault.chosen == {each.value: each for each in Narrowing}.get(
            remedy.value
        )  # none for the round's end


def test_a_measurement_that_corrects_nothing_is_only_kept() -> None:
    """Where nothing is worked to a length there is nothing to correct."""
    knitting = Knitting(place=Position(index=5))
    assert (
        Measured(at=AT, place=Position(index=5), length_mm=80.0, section="body").applied(knitting) is knitting
    )


def test_a_respaced_round_ends_what_was_counted_and_looked_for_in_it() -> None:
    """The count that was being made aloud was held against the old spacing."""
    here = Position(index=4, stitch=9)
    spaced = Respacing(index=4, section="yoke", before=20, after=22, places=(12, 16))
    event = Respaced(
        at=AT, origin=here, place=Position(index=4, stitch=8), made=0, planned=1, respacing=spaced
    )

    after = event.applied(
        Tallied(at=AT, tens=(9,)).applied(Knitting(place=here, fault=Fault(place=here, difference=1)))
    )

    assert after == Knitting(place=Position(index=4, stitch=8), respacings=(spaced,))


def test_entries_that_do_not_say_mean_what_was_so_before_it_was_kept() -> None:
    """By the frozen forms of `test_codec`: a place was always found, and going back took nothing off the count."""
    here = Position(index=3)
    assert events.Returned(at=AT, origin=here, place=here).stitches == 0
    changed = events.PlanChanged(
        at=AT,
        old_fingerprint="a",
        new_fingerprint="b",
        origin=here,
        place=here,
        corrections=(),
        changes=(),
        have=20,
        want=20,
    )
    assert (changed.found, changed.comparable, changed.answer) == (True, True, 0)


def test_what_is_chosen_for_all_rounds_leaves_none_chosen_apart() -> None:
    """And what is chosen for one sort stands beside the others, the last for each."""
    knitting = Knitting(by=By.ROUND)
    for by, sort in ((By.GAP, RoundSort.EVEN), (By.MARKER, RoundSort.RAGLAN), (By.REPEAT, RoundSort.EVEN)):
        knitting = events.StrideSet(at=AT, by=by, sort=sort).applied(knitting)
    assert [(each.sort, each.by) for each in knitting.strides] == [
        (RoundSort.RAGLAN, By.MARKER),
        (RoundSort.EVEN, By.REPEAT),
    ]
    everywhere = events.StrideSet(at=AT, by=By.GAP, sort=None).applied(knitting)
    assert (everywhere.by, everywhere.strides) == (By.GAP, ())
