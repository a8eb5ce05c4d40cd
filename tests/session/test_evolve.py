from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.plan.under_way.absorb import Mend
from stepper.plan.under_way.lengthen import LengthCorrection
from stepper.plan.under_way.respace import Respacing
from stepper.session import events
from stepper.session.events import (
    Advanced,
    Closed,
    Counted,
    Event,
    FellAsleep,
    Measured,
    Noted,
    Observed,
    Opened,
    PlanChanged,
    Remedied,
    StrideSet,
    Tinked,
    Undone,
    WokeUp,
)
from stepper.session.evolve import (
    BREAKS_KEPT,
    SILENCE_S,
    evolve,
    evolve_all,
    is_long_silence,
)
from stepper.session.fault.ways import RemedyKind
from stepper.session.pace.learning import seconds_between
from stepper.session.state import (
    NOTES_KEPT,
    UNDO_DEPTH,
    Fault,
    Knitting,
    Observation,
    Position,
    ReadingAlong,
    Reminder,
    Seen,
    State,
    Verified,
)
from stepper.session.steps import By
from tests.playbook import AT
from tests.session.samples import EVENTS


def _step(index: int) -> Event:
    return Advanced(at=AT, origin=Position(index=index), place=Position(index=index + 1), stitches=20)


@given(st.lists(EVENTS, max_size=60))
def test_any_events_in_any_order_can_be_folded(events: list[Event]) -> None:
    """Replay must go on whatever the journal holds, with a number for each event and a bounded undo."""
    state = evolve_all(State(), events)

    assert state.seq == len(events)
    assert len(state.undo) <= UNDO_DEPTH
    assert len(state.redo) <= UNDO_DEPTH


def test_undo_gives_back_exactly_what_was() -> None:
    """Not an opposite worked out but the former knitting, whole."""
    before = evolve_all(State(), [_step(0), StrideSet(at=AT, by=By.COLOUR)])
    after = evolve_all(before, [_step(1), Undone(at=AT, seq=3)])

    assert after.knitting == before.knitting
    assert after.undo == before.undo


def test_redo_is_an_undo_of_the_undo_to_any_depth() -> None:
    """Back and forth over the same step ends where it should each time, and each is an event of its own."""
    state = evolve_all(State(), [_step(0)])
    for seq in range(1, 8):
        state = evolve(state, Undone(at=AT, seq=seq))
        assert state.place.index == (0 if seq % 2 else 1)


def test_a_new_step_puts_what_was_taken_back_out_of_reach() -> None:
    """After going another way there is nothing to do again."""
    state = evolve_all(State(), [_step(0), Undone(at=AT, seq=1), _step(0)])

    assert state.redo == ()


def test_an_undo_that_names_the_wrong_event_changes_nothing() -> None:
    """Only the last thing can be taken back; a journal that says otherwise is folded without harm."""
    state = evolve_all(State(), [_step(0), _step(1)])

    assert evolve(state, Undone(at=AT, seq=1)).knitting == state.knitting


def test_only_the_last_hundred_can_be_taken_back() -> None:
    """A bound on undo keeps a snapshot small, so that taking up a long garment stays fast."""
    state = evolve_all(State(), [_step(at) for at in range(UNDO_DEPTH + 30)])

    assert [memento.seq for memento in state.undo] == list(range(31, 131))


def test_a_right_count_is_remembered_and_a_wrong_one_is_not() -> None:
    """The last place known to be right is where a search for a fault begins."""
    right = Counted(at=AT, place=Position(index=3), stitches=20, expected=20, expected_end=24)
    wrong = Counted(at=AT, place=Position(index=4), stitches=19, expected=20, expected_end=24)

    assert evolve_all(State(), [right, wrong]).knitting.verified == Verified(
        place=Position(index=3), stitches=20
    )


def test_a_second_measurement_takes_the_place_of_the_first() -> None:
    """One stretch has one length, the one measured last."""

    def measured(stretch: int, rounds: int) -> Event:
        correction = LengthCorrection(stretch=stretch, rounds=rounds, rounds_per_10cm=30.0)
        return Measured(at=AT, place=Position(), length_mm=100.0, section="body", correction=correction)

    state = evolve_all(State(), [measured(1, 9), measured(0, 5), measured(1, 11)])

    assert [(c.stretch, c.rounds) for c in state.knitting.corrections] == [(0, 5), (1, 11)]


def test_notes_move_nothing_but_can_be_taken_back() -> None:
    """A note is the last thing when it is the last thing."""
    state = evolve_all(State(), [_step(0), Noted(at=AT, place=Position(index=1), text="tight")])

    assert state.place.index == 1
    assert evolve(state, Undone(at=AT, seq=2)).place.index == 1


def test_a_new_sitting_is_awake_and_open() -> None:
    """Ears closed last night are open tonight."""
    state = evolve_all(State(), [FellAsleep(at=AT), Closed(at=AT, place=Position())])
    assert (state.asleep, state.closed) == (True, True)

    again = evolve(state, Opened(at=AT, fingerprint="f"))

    assert (again.asleep, again.closed, again.fingerprint) == (False, False, "f")
    assert not evolve(evolve(again, FellAsleep(at=AT)), WokeUp(at=AT)).asleep


def test_a_changed_plan_ends_what_can_be_taken_back() -> None:
    """A place in the old plan means nothing in the new one, so undo must not lead there."""
    changed = PlanChanged(
        at=AT,
        old_fingerprint="a",
        new_fingerprint="b",
        origin=Position(index=2),
        place=Position(index=4, stitch=3),
        corrections=(),
        changes=(),
        have=20,
        want=20,
    )

    state = evolve_all(State(), [_step(0), _step(1), changed])

    assert (state.place, state.undo, state.redo) == (Position(index=4, stitch=3), (), ())
    assert state.fingerprint == "b"


def test_the_last_cue_is_the_knitters_and_not_the_opening() -> None:
    """Opening the program is not knitting."""
    state = evolve_all(State(), [_step(0), Opened(at="2026-01-01T00:00:00+00:00", fingerprint="f")])

    assert state.last_cue_at == AT


def test_a_mend_keeps_from_where_on_the_count_is_off() -> None:
    """Ripping behind that round takes the fault out, so the round must be the one the remedy names, the cast-on too;
    an old journal does not name it, and then it is the round in which the remedy was chosen."""
    for told, kept in ((3, 3), (0, 0), (-1, 7)):
        event = Remedied(
            at=AT,
            origin=Position(index=7),
            place=Position(index=7),
            remedy=RemedyKind.PLAIN,
            difference=1,
            stitches=0,
            minutes=0.0,
            mend=Mend(index=9, stitch=0, change=-1, origin=told),
        )
        (mend,) = evolve(State(), event).knitting.mends
        assert mend.origin == kept


def test_a_mend_is_out_of_the_fabric_once_all_that_was_off_is_ripped() -> None:
    """Off from the sixth round on and right until the fifth: back there, the fault is gone; back only to where it was
    never counted whether it was right, it may still be in."""
    mend = Mend(index=9, stitch=0, change=-1, origin=6)
    for counted, back_to, kept in ((5, 5, ()), (5, 6, (mend,)), (3, 5, (mend,)), (None, 5, (mend,))):
        good = None if counted is None else Verified(place=Position(index=counted), stitches=20)
        state = State(seq=1, knitting=Knitting(place=Position(index=8), verified=good, mends=(mend,)))
        event = Tinked(at=AT, origin=Position(index=8), place=Position(index=back_to), stitches=20)
        assert evolve(state, event).knitting.mends == kept, (counted, back_to)


def test_the_round_she_names_for_a_fault_stays_named_whatever_is_seen_later() -> None:
    """Said once, it need not be said again with each look; said anew, the new one counts."""
    place = Position(index=6)
    state = State(seq=1, knitting=Knitting(place=place))
    for event, named in (
        (Observed(at=AT, place=place, index=4), 4),
        (Observed(at=AT, place=place, sight=Observation(seen=Seen.LOOP, number=0)), 4),
        (Observed(at=AT, place=place, index=2), 2),
    ):
        state = evolve(state, event)
        assert state.knitting.fault is not None
        assert state.knitting.fault.index == named


def test_a_second_look_at_the_same_takes_the_place_of_the_first() -> None:
    """She looked again, and closer; what she saw elsewhere stays."""
    place = Position(index=6)
    state = State(seq=1, knitting=Knitting(place=place))
    here, there = Observation(seen=Seen.LEFT, number=1, index=4), Observation(seen=Seen.LEFT, number=0, index=5)
    again = Observation(seen=Seen.LEFT, number=0, index=4)
    for sight in (here, there, again):
        state = evolve(state, Observed(at=AT, place=place, sight=sight))

    assert state.knitting.fault is not None
    assert set(state.knitting.fault.sights) == {there, again}


def test_reading_along_ends_with_the_sitting_and_not_with_a_note() -> None:
    """The next evening must not begin in the middle of a round that reads itself out."""
    reading = ReadingAlong(index=0)
    state = State(seq=1, reading=reading)
    assert evolve(state, Noted(at=AT, place=Position(), text="soft")).reading == reading
    assert evolve(state, Closed(at=AT, place=Position())).reading is None
    assert evolve(state, FellAsleep(at=AT)).reading is None


def _reminded(index: int, at: int = 3) -> events.ReminderSet:
    return events.ReminderSet(
        at=AT, place=Position(index=at), reminder=Reminder(index=index, text="try it on")
    )


def test_reminders_are_kept_in_order_and_those_gone_by_are_dropped() -> None:
    """A list that only grows would be carried through the whole garment."""
    state = evolve_all(State(), [_reminded(9), _reminded(5), _reminded(12, at=6)])

    assert [each.index for each in state.knitting.reminders] == [9, 12]


def test_a_reminder_is_taken_back_like_anything_else() -> None:
    """She changed her mind."""
    state = evolve_all(State(), [_reminded(9), events.Undone(at=AT, seq=1)])

    assert state.knitting.reminders == ()


def test_a_reminder_stays_as_many_rounds_ahead_in_a_changed_pattern() -> None:
    """She said "in ten rounds", not which."""
    changed = events.PlanChanged(
        at=AT, old_fingerprint="a", new_fingerprint="b", origin=Position(index=3), place=Position(index=5),
        corrections=(), changes=(), have=9, want=9,
    )  # fmt: skip
    state = evolve_all(State(knitting=Knitting(place=Position(index=3))), [_reminded(9), changed])

    assert [each.index for each in state.knitting.reminders] == [11]


def _counted(stitches: int, index: int = 3) -> Counted:
    place = Position(index=index)
    return Counted(at=AT, place=place, stitches=stitches, expected=20, expected_end=20)


def test_a_count_that_comes_to_the_same_twice_is_believed() -> None:
    """A slip of counting seldom happens twice; another figure or another place is a new count."""
    faults = [
        evolve_all(State(), [_counted(19), second]).knitting.fault
        for second in (_counted(19), _counted(18), _counted(19, index=4))
    ]

    assert [fault is not None and fault.confirmed for fault in faults] == [True, False, False]


def _knitted(stitches: int, index: int = 0) -> Event:
    return Advanced(at=AT, origin=Position(index=index), place=Position(index=index + 1), stitches=stitches)


def test_her_fault_rate_is_learned_from_counts_alone() -> None:
    """Stitches covered by counts, and the faults these found. By hand: sixty knitted and counted right, forty more and
    one too few; counted once more it is the same fault."""
    state = evolve_all(State(), [_knitted(20), _knitted(40, 1)])
    assert (state.knitting.uncounted, state.knitting.covered, state.knitting.faults) == (60, 0, 0)
    state = evolve(state, _counted(20, index=2))
    assert (state.knitting.uncounted, state.knitting.covered, state.knitting.faults) == (0, 60, 0)
    state = evolve_all(state, [_knitted(40, 2), _counted(19)])
    assert (state.knitting.uncounted, state.knitting.covered, state.knitting.faults) == (0, 100, 1)
    assert evolve(state, _counted(19)).knitting.faults == 1
    assert evolve(state, _counted(18)).knitting.faults == 1


def test_a_fault_that_was_a_slip_of_counting_is_taken_from_the_rate_again() -> None:
    """Only where the very count that was wrong comes out, and no loop was caught in between; and never below none."""
    wrong = evolve_all(State(), [_knitted(40, 2), _counted(19)])
    loop = Observed(at=AT, place=Position(index=3), sight=Observation(seen=Seen.LOOP, number=1))
    none = Observed(at=AT, place=Position(index=3), sight=Observation(seen=Seen.LOOP, number=0))
    left = Observed(at=AT, place=Position(index=3), sight=Observation(seen=Seen.LEFT, number=1, index=2))
    for between, faults in (((), 0), ((none,), 0), ((left,), 0), ((loop,), 1)):
        assert evolve_all(wrong, [*between, _counted(20)]).knitting.faults == faults, between
    assert evolve(wrong, _counted(20, index=4)).knitting.faults == 1
    seen = evolve(State(knitting=Knitting(place=Position(index=3))), left)
    assert evolve(seen, _counted(20)).knitting.faults == 0
    unknown = State(knitting=Knitting(fault=Fault(place=Position(index=3), difference=-1)))
    assert evolve(unknown, _counted(20)).knitting.faults == 0


def test_what_is_taken_off_the_needles_is_not_waiting_to_be_counted() -> None:
    """Ripped stitches need no count, and of those counted already none is owed."""
    state = evolve(State(), _knitted(20))
    for undone, left in ((5, 15), (20, 0), (21, 0)):
        event = Tinked(at=AT, origin=Position(index=1), place=Position(), stitches=undone)
        assert evolve(state, event).knitting.uncounted == left


@pytest.mark.parametrize(("seconds", "long"), [(0, False), (599, False), (600, True), (601, True)])
def test_ten_minutes_without_a_word_are_an_interruption(seconds: int, *, long: bool) -> None:
    """Place-keeping goes wrong behind one, so a fault is looked for there first."""
    assert SILENCE_S == 600
    begin, now = "2025-03-03T20:00:00+01:00", f"2025-03-03T20:{seconds // 60:02}:{seconds % 60:02}+01:00"
    assert seconds_between(begin, now) == seconds
    assert is_long_silence(begin, now) is long
    state = State(seq=1, knitting=Knitting(place=Position(index=4, stitch=7)), last_cue_at=begin)
    noted = evolve(state, Noted(at=now, place=Position(index=4, stitch=7), text="soft"))
    assert noted.breaks == ((Position(index=4, stitch=7),) if long else ())


def test_what_is_no_time_is_no_silence() -> None:
    """A journal of before the times were kept, or one of another clock, opens all the same."""
    for last, now in (("", AT), (AT, ""), ("2025-03-03", AT), ("soon", AT)):
        assert not is_long_silence(last, now)


def test_the_last_twenty_interruptions_are_kept() -> None:
    """The oldest are the least likely to matter. Leaving the room, ending the sitting: either is one."""
    state = State()
    for number in range(BREAKS_KEPT + 3):
        state = evolve_all(state, [_knitted(1, number), FellAsleep(at=AT)])
    assert [each.index for each in state.breaks] == list(range(4, BREAKS_KEPT + 4))
    assert BREAKS_KEPT == 20


def test_of_each_yarn_the_last_weighing_counts() -> None:
    """Another ball of the same yarn takes its place; a ball of another yarn lies beside it."""

    def weighed(yarn: str, grams: float) -> Event:
        return events.Weighed(at=AT, place=Position(index=4), yarn=yarn, grams=grams)

    state = evolve_all(State(), [weighed("A", 42.5), weighed("B", 20), weighed("A", 30), weighed("B", 19)])
    assert [(ball.yarn, ball.weighing.grams) for ball in state.knitting.balls] == [("A", 30), ("B", 19)]


def test_every_event_has_the_next_number_from_one_on() -> None:
    """Undo and the journal name an event by it."""
    assert [evolve_all(State(), [_step(index) for index in range(count)]).seq for count in (0, 1, 2)] == [
        0,
        1,
        2,
    ]


def test_the_latest_notes_are_kept_with_their_rounds_and_taken_back_alike() -> None:
    """She asks what she noted here; the journal holds them all, the state no more than she can hear."""
    noted = [events.Noted(at=AT, place=Position(index=at), text=f"note {at}") for at in range(NOTES_KEPT + 3)]
    state = evolve_all(State(), noted)
    assert [each.index for each in state.knitting.notes] == list(range(3, NOTES_KEPT + 3))
    assert evolve_all(State(), [noted[0], events.Undone(at=AT, seq=1)]).knitting.notes == ()
    assert evolve_all(State(), [replace(noted[0], text="")]).knitting.notes == ()


def test_a_count_that_differs_from_the_last_begins_the_search_anew_but_for_the_loop_that_is_not_there() -> (
    None
):
    """What was seen fitted a fault of one stitch, and two are off: only that no loop hangs is still true."""
    place = Position(index=6)
    none_hangs, left = Observation(seen=Seen.LOOP, number=0), Observation(seen=Seen.LEFT, number=0, index=4)
    state = State(seq=1, knitting=Knitting(place=place))
    counted = [
        Counted(at=AT, place=place, stitches=each, expected=20, expected_end=20) for each in (19, 19, 18)
    ]
    state = evolve(state, counted[0])
    for sight in (none_hangs, left):
        state = evolve(state, Observed(at=AT, place=place, sight=sight))
    again, other = evolve(state, counted[1]).knitting.fault, evolve(state, counted[2]).knitting.fault
    assert again is not None
    assert other is not None
    assert (again.confirmed, sorted(again.sights, key=lambda each: each.seen.value)) == (
        True,
        [left, none_hangs],
    )
    assert (other.confirmed, other.difference, other.sights) == (False, -2, (none_hangs,))


def test_a_stretch_that_grows_takes_the_mends_behind_it_along() -> None:
    """Made good in another round than the one meant, the fault would be doubled. By hand: in round 5 of a stretch that
    ended with round 10; two rounds more, so that round 11, the first behind it, is now round 13."""
    mends = tuple(Mend(index=index, stitch=0, change=-1, origin=2) for index in (6, 10, 11, 15))
    knitting = Knitting(place=Position(index=5), mends=mends)
    correction = LengthCorrection(stretch=0, rounds=12, rounds_per_10cm=30.0)
    measured = Measured(
        at=AT,
        place=Position(index=5),
        length_mm=100.0,
        section="body",
        rounds_before=10,
        rounds_left=8,
        correction=correction,
    )
    moved = evolve(State(knitting=knitting), measured).knitting.mends
    assert [each.index for each in moved] == [6, 10, 13, 17]


def test_a_reminder_of_the_round_in_hand_has_been_heard() -> None:
    """Kept, it would be said again as often as she goes back to this round."""
    kept = evolve_all(State(), [_reminded(6), _reminded(9, at=6)]).knitting.reminders
    assert [each.index for each in kept] == [9]


@pytest.mark.parametrize(("back_to", "kept"), [(8, (3, 6)), (6, (3, 6)), (5, (3,)), (2, ())])
def test_a_lifeline_is_there_as_long_as_it_is_on_or_below_the_needles(
    back_to: int, kept: tuple[int, ...]
) -> None:
    """Ripped back to the lifeline its thread holds the stitches; beyond it, it lies in her lap."""
    lifelines = (Position(index=3), Position(index=6))
    state = State(seq=1, knitting=Knitting(place=Position(index=8), lifelines=lifelines))
    event = Tinked(at=AT, origin=Position(index=8), place=Position(index=back_to), stitches=20)
    assert tuple(each.index for each in evolve(state, event).knitting.lifelines) == kept


def test_a_count_that_was_right_within_what_is_off_leaves_the_mend_in() -> None:
    """Off from the sixth round on, and the right count is of the seventh: back in the sixth, that round is still in the
    fabric as it was worked."""
    mend = Mend(index=9, stitch=0, change=-1, origin=6)
    good = Verified(place=Position(index=7), stitches=20)
    state = State(seq=1, knitting=Knitting(place=Position(index=8), verified=good, mends=(mend,)))
    for back_to, kept in ((6, (mend,)), (5, ())):
        event = Tinked(at=AT, origin=Position(index=8), place=Position(index=back_to), stitches=20)
        assert evolve(state, event).knitting.mends == kept, back_to


def test_what_names_neither_the_last_done_nor_the_last_taken_back_changes_nothing() -> None:
    """Two taps at once, of which the second comes when the first has already done it."""
    state = evolve_all(State(), [_step(0), _step(1), Undone(at=AT, seq=2)])
    other = evolve(state, Undone(at=AT, seq=1 + state.seq))
    assert (other.knitting, other.undo, other.redo) == (state.knitting, state.undo, state.redo)
    assert state.redo != ()


@pytest.mark.parametrize(
    ("counted_at", "place", "kept"),
    [(2, 2, "all"), (2, 5, "difference"), (1, 2, "nothing"), (1, 5, "nothing")],
)
def test_a_fault_goes_into_a_changed_plan_only_from_the_place_it_was_counted_at(
    counted_at: int, place: int, kept: str
) -> None:
    """What is off stays off, but the stretches she counted are those of the old plan; one counted earlier lies where the
    new plan may have other stitches. The lifelines on and below the needles go along."""
    fault = Fault(place=Position(index=counted_at), difference=-1, confirmed=True)
    changed = PlanChanged(
        at=AT, old_fingerprint="a", new_fingerprint="b", origin=Position(index=2), place=Position(index=place),
        corrections=(), changes=(), have=20, want=20,
        lifelines=(Position(index=1), Position(index=place), Position(index=place, stitch=1)),
    )  # fmt: skip
    state = State(seq=1, knitting=Knitting(place=Position(index=2), fault=fault))
    knitting = evolve(state, changed).knitting
    moved = Fault(place=Position(index=place), difference=-1)
    assert knitting.fault == {"all": fault, "difference": moved, "nothing": None}[kept]
    assert knitting.lifelines == (Position(index=1), Position(index=place))


@pytest.mark.parametrize(("counted", "left"), [(20, -68), (88, None), (112, None), (90, 2)])
def test_a_count_is_held_against_the_size_she_goes_on_with(counted: int, left: int | None) -> None:
    """The file wanted 112 stitches here, and now a smaller size wants 88. By hand: twenty are 68 fewer than these, and 88
    were right all along; who counted 112 had no fault before and is told of the 24 anyway."""
    place = Position(index=40)
    count = Counted(at=AT, place=place, stitches=counted, expected=112, expected_end=112)
    changed = PlanChanged(
        at=AT,
        old_fingerprint="M",
        new_fingerprint="S",
        origin=place,
        place=place,
        corrections=(),
        changes=(),
        have=112,
        want=88,
        lifelines=(),
        respacings=(),
    )
    fault = evolve_all(State(knitting=Knitting(place=place)), [count, changed]).knitting.fault
    assert (None if fault is None else fault.difference) == left


def test_what_is_kept_of_rounds_moves_with_them_into_a_changed_plan_and_never_before_its_beginning() -> None:
    """By hand: two rounds were taken out in front of round 5, so a note and a weighing of round 4 are of round 2, and
    those of round 0 and 1 of round 0. A journal of before does not say what became of respaced rounds: they stay."""
    spaced = Respacing(index=4, section="yoke", before=20, after=22, places=(5, 15))
    state = State(knitting=Knitting(place=Position(index=5), respacings=(spaced,)))
    for index in (0, 1, 4):
        place = Position(index=index)
        state = evolve(state, Noted(at=AT, place=place, text="snug"))
        state = evolve(state, events.Weighed(at=AT, place=place, yarn=f"yarn {index}", grams=9.0))
    carried = PlanChanged(
        at=AT, old_fingerprint="a", new_fingerprint="b", origin=Position(index=5), place=Position(index=3),
        corrections=(), changes=(), have=20, want=20, lifelines=(),
    )  # fmt: skip

    knitting = evolve(state, carried).knitting

    assert [each.index for each in knitting.notes] == [0, 0, 2]
    assert [each.weighing.index for each in knitting.balls] == [0, 0, 2]
    assert knitting.respacings == (spaced,)
    assert evolve(state, replace(carried, respacings=())).knitting.respacings == ()


def test_a_stop_is_heard_by_a_step_on_the_spot_and_forgotten_by_going_anywhere() -> None:
    """`heard` counts the stops before the step in hand; a note in between leaves it as it is."""
    here = Position(index=3)
    on_the_spot = Advanced(at=AT, origin=here, place=here, stitches=0)
    state = evolve_all(State(knitting=Knitting(place=here)), [on_the_spot, on_the_spot])
    assert state.knitting.heard == 2
    assert evolve(state, Noted(at=AT, place=here, text="snug")).knitting.heard == 2
    assert evolve(state, _step(3)).knitting.heard == 0
    assert evolve(state, events.Returned(at=AT, origin=here, place=here)).knitting.heard == 0
    elsewhere = replace(on_the_spot, origin=Position(index=7), place=Position(index=7))
    assert evolve(state, elsewhere).knitting.heard == 0
