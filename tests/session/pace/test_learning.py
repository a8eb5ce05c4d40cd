"""What the times of events teach: steps, days, rests. Arithmetic; the figures for rest are named in the module."""

from __future__ import annotations

from datetime import datetime, timedelta, timezone

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.pace import FASTEST_PER_MINUTE
from stepper.craft.pace_by_kind import USUAL_PER_MINUTE
from stepper.session.events import (
    Advanced,
    Closed,
    Counted,
    Event,
    Jumped,
    Noted,
    Opened,
    Placed,
    Remedied,
    Returned,
    Tinked,
    Undone,
)
from stepper.session.evolve import evolve_all
from stepper.session.fault.ways import RemedyKind
from stepper.session.pace.learning import (
    DAYS_KEPT,
    EVENING_ENDS_H,
    KNIT_S,
    MERGED_PER_MINUTE,
    QUIET_S,
    REST_S,
    STEPS_KEPT,
    count_gain,
    count_minutes,
    evening_of,
    learn_times,
)
from stepper.session.state import Day, Done, Position, State, TimedStep
from tests.session.samples import EVENTS

EIGHT = datetime(2026, 3, 3, 20, 0, tzinfo=timezone(timedelta(hours=1)))


def at(minutes: float) -> str:
    """Return a time as minutes after eight in the evening."""
    return (EIGHT + timedelta(minutes=minutes)).isoformat()


def opened(minutes: float) -> Opened:
    """Begin a sitting."""
    return Opened(at=at(minutes), fingerprint="a")


def row(minutes: float, index: int, stitches: int = 200, work: str = "plain") -> Advanced:
    """Finish a round."""
    origin, place = Position(index=index), Position(index=index + 1)
    return Advanced(at=at(minutes), origin=origin, place=place, stitches=stitches, work=work)


def evening(begin: float, end: float, first: int = 0) -> list[Event]:
    """Knit a round every seven minutes."""
    count = int((end - begin) / 7)
    return [row(begin + 7 * each, first + each - 1) for each in range(1, count + 1)]


def folded(*events: Event) -> State:
    """Fold events from the beginning."""
    return evolve_all(State(), events)


def test_a_step_is_timed_from_the_beginning_of_its_stitches() -> None:
    """The first of a sitting from the opening, not from last night; the next from the one before."""
    state = folded(opened(-1500), row(-1490, 0), opened(0), row(7, 1), row(14, 2))
    assert [each.seconds for each in state.worked] == [600, 420, 420]


def test_a_count_between_rounds_is_no_knitting_time() -> None:
    """Counting 200 stitches takes minutes and makes none."""
    count = Counted(at=at(10), place=Position(index=1), stitches=200, expected=200, expected_end=200)
    assert folded(opened(0), row(7, 0), count, row(17, 1)).worked[-1].seconds == 420


def test_steps_told_in_one_go_are_one() -> None:
    """Three rounds knitted in twenty minutes and told at the end are three rounds in twenty minutes."""
    state = folded(opened(0), row(20, 0), row(20.02, 1), row(20.04, 2))
    assert state.worked == (TimedStep(stitches=600, seconds=pytest.approx(1202.4), work="plain"),)


def test_catching_up_teaches_nothing() -> None:
    """Twenty rounds knitted without the program and told in a minute are faster than any hand."""
    assert folded(opened(0), *[row(0.05 * each, each) for each in range(1, 21)]).worked == ()


def test_each_kind_keeps_its_own_steps() -> None:
    """A long body does not push the yoke's pace out of mind."""
    yoke = [row(10 * each, each, work="colourwork") for each in range(5)]
    body = [row(100 + 7 * each, 5 + each) for each in range(3 * STEPS_KEPT)]
    state = folded(opened(-10), *yoke, *body)
    kinds = [each.work for each in state.worked]
    assert (kinds.count("colourwork"), kinds.count("plain")) == (5, STEPS_KEPT)


def test_midnight_belongs_to_the_evening_before() -> None:
    """At half past twelve she is still on the sofa."""
    assert (evening_of(at(270)), evening_of(at(0)), evening_of("soon")) == ("2026-03-03", "2026-03-03", "")


def test_days_hold_what_the_garment_gained() -> None:
    """Ripped stitches come off, undone steps too, and done again count again."""
    assert folded(opened(0), row(7, 0), row(14, 1)).days == (day(400),)
    back = Returned(at=at(15), origin=Position(index=2), place=Position(index=1), stitches=200)
    assert folded(opened(0), row(7, 0), row(14, 1), back).days == (day(200),)
    tinked = Tinked(at=at(15), origin=Position(index=2), place=Position(index=1, stitch=170), stitches=30)
    assert folded(opened(0), row(7, 0), row(14, 1), tinked).days == (day(370),)
    undone = folded(opened(0), row(7, 0), row(14, 1), Undone(at=at(15), seq=3))
    assert undone.days == (day(200),)
    assert evolve_all(undone, [Undone(at=at(16), seq=4)]).days == (day(400),)
    assert evolve_all(undone, [Undone(at=at(16), seq=4), Undone(at=at(17), seq=5)]).days == (day(200),)


def day(stitches: int, work: str = "plain") -> Day:
    """Return the day all this happens on."""
    return Day(date="2026-03-03", done=(Done(work=work, stitches=stitches),))


def test_a_jump_ahead_is_not_knitted_tonight() -> None:
    """Who begins with the program at the armhole has not knitted the body in one evening; a jump back is
    ripped out."""
    ahead = Jumped(at=at(1), origin=Position(), place=Position(index=90))
    assert folded(opened(0), ahead).days == ()
    back = Jumped(at=at(20), origin=Position(index=2), place=Position(), stitches=400)
    assert folded(opened(0), row(7, 0), row(14, 1), back).days == (Day(date="2026-03-03"),)


def test_the_place_told_in_the_round_counts() -> None:
    """ "Stitch 84" tells of 84 stitches."""
    place = Placed(at=at(3), origin=Position(), place=Position(stitch=84), stitches=84, work="rib")
    state = folded(opened(0), place)
    assert state.days == (day(84, "rib"),)
    assert state.worked == (TimedStep(stitches=84, seconds=180, work="rib"),)


def test_what_is_ripped_of_another_kind_leaves_no_day_below_nothing() -> None:
    """The rib comes off with the plain rounds."""
    tinked = Tinked(at=at(30), origin=Position(index=2), place=Position(), stitches=300)
    state = folded(opened(0), row(7, 0, 200, "rib"), row(14, 1, 180), tinked)
    assert sum(each.stitches for each in state.days[-1].done) == 80
    assert all(each.stitches > 0 for each in state.days[-1].done)


@pytest.mark.parametrize("taken", [30, 250, 900])
def test_what_is_undone_and_done_again_leaves_the_day_as_it_was(taken: int) -> None:
    """Tinking undone gives the plain stitches back as plain ones, and never more than the day had: the rest of
    what was ripped was knitted another evening."""
    knitted = folded(opened(0), row(7, 0, 200, "rib"), row(14, 1, 250))
    off = Tinked(at=at(20), origin=Position(index=2), place=Position(), stitches=taken)
    tinked = evolve_all(knitted, [off])
    undone = evolve_all(tinked, [Undone(at=at(21), seq=4)])
    again = evolve_all(undone, [Undone(at=at(22), seq=5)])
    assert undone.days == knitted.days
    assert again.days == tinked.days != knitted.days
    assert evolve_all(again, [Undone(at=at(23), seq=6)]).days == knitted.days


def test_what_is_undone_another_evening_is_taken_from_that_one() -> None:
    """Yesterday keeps what was knitted then; tonight never has fewer than none, and done again no more than before."""
    tonight = 24 * 60
    state = folded(opened(0), row(7, 0), row(14, 1), opened(tonight), row(tonight + 7, 2, 90))
    both = [Undone(at=at(tonight + 8), seq=5), Undone(at=at(tonight + 9), seq=3)]
    assert evolve_all(state, both).days == (day(400), Day(date="2026-03-04"))
    again = [Undone(at=at(tonight + 10), seq=7), Undone(at=at(tonight + 11), seq=6)]
    assert evolve_all(state, [*both, again[0]]).days == (day(400), Day(date="2026-03-04"))
    assert evolve_all(state, [*both, *again]).days == state.days


def test_rest_is_due_after_fifty_minutes_at_the_end_of_a_round_and_once() -> None:
    """Published advice for screen work: 5 to 10 minutes after 50 to 60 (see the module)."""
    rows = evening(0, 120)
    told = [evolve_all(State(), [opened(0), *rows[:each]]).rest_told for each in range(1, len(rows) + 1)]
    assert told.index(True) == 7  # the eighth round ends at 56 minutes
    assert all(told[7:])


def test_a_pause_is_a_rest() -> None:
    """Twelve minutes away after 42 of knitting, and the fifty begin anew."""
    before, later = evening(0, 42), evening(54, 103, first=6)
    late = row(54 + 7 + 43, 13)
    assert not folded(opened(0), *before, *later).rest_told
    assert evolve_all(folded(opened(0), *before, *later), [row(111, 13), late]).rest_told


def test_a_long_round_is_no_rest() -> None:
    """400 stitches take sixteen minutes at 25 a minute; the hands did not rest."""
    rows = [row(16 * each, each - 1, 400) for each in range(1, 5)]
    assert folded(opened(0), *rows).rest_told


def test_closing_and_opening_again_at_once_is_no_rest() -> None:
    """The lid of the laptop does not rest the hands; an hour does."""
    before = [opened(0), *evening(0, 45), Closed(at=at(45), place=Position(index=6))]
    assert folded(*before, opened(46), row(53, 6)).rest_told
    assert not folded(*before, opened(105), row(112, 6)).rest_told


def test_days_are_bounded() -> None:
    """A snapshot stays small however long a garment takes."""
    state = folded(*[row(1440 * each, each) for each in range(DAYS_KEPT + 9)])
    assert len(state.days) == DAYS_KEPT


@given(st.lists(EVENTS, max_size=30))
def test_folding_is_total(events: list[Event]) -> None:
    """Whatever the journal holds, in whatever order of times, something sound comes of it."""
    state = State()
    for event in events:
        state = learn_times(state, event)
        assert all(each.stitches > 0 for one in state.days for each in one.done)
        assert all(each.stitches > 0 and each.seconds > 0 for each in state.worked)


def test_time_at_the_needles_is_told_in_whole_five_minutes() -> None:
    """Nobody is told forty seven; and without a beginning there is nothing to tell."""
    told = {each: count_minutes(State(sat_since=at(0)), at(each)) for each in (0, 4.9, 5, 9.9, 10, 59.9, 60)}
    assert told == {0: 0, 4.9: 0, 5: 5, 9.9: 5, 10: 10, 59.9: 55, 60: 60}
    assert count_minutes(State(), at(60)) == count_minutes(State(sat_since=at(0)), "soon") == 0


def test_an_evening_lasts_until_four_in_the_morning() -> None:
    """Who knits at half past three has not gone to bed. Eight in the evening and eight hours are four."""
    assert EVENING_ENDS_H == 4
    days = [evening_of(at(60 * hours)) for hours in (-16.1, -16, 0, 4, 7.9, 8, 8.1)]
    assert days == ["2026-03-02", "2026-03-03", "2026-03-03", "2026-03-03", "2026-03-03", "2026-03-04", "2026-03-04"]
    assert evening_of("soon") == ""


@pytest.mark.parametrize(
    ("event", "gain"),
    [
        (row(1, 0, 20), 20),
        (Placed(at=at(1), origin=Position(index=1), place=Position(), stitches=-7), -7),
        (Counted(at=at(1), place=Position(), stitches=9, expected=9, expected_end=9, worked=6), 6),
        (Returned(at=at(1), origin=Position(index=1), place=Position(), stitches=5), -5),
        (Jumped(at=at(1), origin=Position(index=1), place=Position(), stitches=5), -5),
        (Tinked(at=at(1), origin=Position(index=1), place=Position(), stitches=5), -5),
        (Noted(at=at(1), place=Position(), text="x"), 0),
        (Closed(at=at(1), place=Position()), 0),
        (Undone(at=at(1), seq=3), 0),
    ],
    ids=lambda each: type(each).__name__,
)
def test_what_an_event_adds_to_the_garment(event: Event, gain: int) -> None:
    """Forth it grows, back it shrinks, and a word leaves it as it is."""
    assert count_gain(State(), event)[0] == gain


def test_a_remedy_takes_off_what_it_undoes_and_only_where_it_goes_back() -> None:
    """Unknitted stitches by their number, ripped rounds by their stitches; making one good takes nothing off."""

    def gain(place: int, undone: int) -> int:
        remedied = Remedied(
            at=at(1), origin=Position(index=3), place=Position(index=place), remedy=RemedyKind.TINK, difference=-1,
            stitches=90, minutes=3.0, mend=None, undone=undone,
        )  # fmt: skip
        return count_gain(State(), remedied)[0]

    assert [gain(2, 40), gain(2, 0), gain(3, 40), gain(4, 0)] == [-40, -90, 0, 0]


def test_steps_told_faster_than_anybody_knits_are_joined_to_the_one_before() -> None:
    """A step of a minute at the fastest there is counts by itself; one stitch more was told late. It is joined to the
    step before, if both together can have been knitted in their time, and else left out. By hand."""
    fastest, merged = int(FASTEST_PER_MINUTE), int(MERGED_PER_MINUTE)

    def steps(*rows: tuple[float, int]) -> list[tuple[int, float]]:
        told = [row(minutes, number, stitches) for number, (minutes, stitches) in enumerate(rows)]
        return [(each.stitches, each.seconds) for each in folded(opened(0), *told).worked]

    assert steps((1, fastest)) == [(fastest, 60.0)]
    assert steps((1, fastest + 1)) == []
    assert steps((9, 180), (10, fastest)) == [(180, 540.0), (fastest, 60.0)]
    assert steps((9, 180), (10, fastest + 1)) == [(180 + fastest + 1, 600.0)]
    assert steps((9, 180), (10, 10 * merged - 180)) == [(10 * merged, 600.0)]
    assert steps((9, 180), (10, 10 * merged - 179)) == [(180, 540.0)]


def test_a_rest_is_a_pause_longer_than_the_stitches_need() -> None:
    """Five minutes more than the slowest knitting of ten stitches; a quarter of an hour where none are told. Just short
    of it she has not got up. By hand from the slowest of the usual paces."""
    slowest = 10 * 60 / min(USUAL_PER_MINUTE.values())
    for over, rested in ((-1, False), (0, True), (1, True)):
        pause = (slowest + REST_S + over) / 60
        state = folded(opened(0), row(7, 0), row(7 + pause, 1, 10))
        assert (state.sat_since == at(7 + pause)) is rested, over
        quiet = QUIET_S / 60 + over / 60
        noted = folded(opened(0), row(7, 0), Noted(at=at(7 + quiet), place=Position(index=1), text="x"))
        assert (noted.sat_since == at(7 + quiet)) is rested, over
    assert (REST_S, QUIET_S, KNIT_S) == (300, 900, 3000)


def test_hands_are_told_to_rest_after_fifty_minutes_at_the_end_of_a_round() -> None:
    """Not a minute sooner, and not in the middle of one. Rounds of ten minutes, the last one second short or not."""
    begin = [opened(0), *[row(10 * each, each, 300) for each in range(1, 5)]]
    assert not folded(*begin, row(50 - 1 / 60, 5, 300)).rest_told
    assert folded(*begin, row(50, 5, 300)).rest_told
    inside = Advanced(
        at=at(50), origin=Position(index=5), place=Position(index=5, stitch=30), stitches=300, work="plain"
    )
    assert not folded(*begin, inside).rest_told


def test_times_with_and_without_a_zone_are_not_set_against_each_other() -> None:
    """A journal carried to another machine may hold both; nobody can say how long lies between."""
    bare, zoned = "2026-03-01T19:00:00", "2026-03-01T19:40:00+00:00"
    assert count_minutes(State(sat_since=bare), zoned) == count_minutes(State(sat_since=zoned), bare) == 0
    assert count_minutes(State(sat_since=bare), "2026-03-01T19:40:00") == 40
    assert count_minutes(State(sat_since="2026-03-01T19:00:00+00:00"), zoned) == 40


@pytest.mark.parametrize("seconds", [-600, -1, 0])
def test_stitches_of_no_time_are_no_step(seconds: int) -> None:
    """A clock set back within a sitting must not make her pace a guess."""
    before = folded(opened(0), row(7, 0), row(14, 1))
    state = evolve_all(before, [row(14 + seconds / 60, 2, 40)])
    assert [each.seconds for each in state.worked] == [420, 420]


def test_of_many_steps_the_newest_are_kept() -> None:
    """Her hands grow faster, and what she did a month ago is not her pace today. Each round takes a second more than the one before."""
    took = [400 + each for each in range(STEPS_KEPT + 3)]
    ends = [sum(took[: each + 1]) / 60 for each in range(len(took))]
    state = folded(opened(0), *[row(end, number) for number, end in enumerate(ends)])
    assert [round(each.seconds) for each in state.worked] == took[-STEPS_KEPT:]
