"""What the times of events teach: steps, days, rests. Arithmetic; the figures for rest are named in the module."""

from __future__ import annotations

from datetime import datetime, timedelta, timezone

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.session.events import (
    Advanced,
    Closed,
    Counted,
    Event,
    Jumped,
    Opened,
    Placed,
    Returned,
    Tinked,
    Undone,
)
from stepper.session.evolve import evolve_all
from stepper.session.pace.learning import DAYS_KEPT, STEPS_KEPT, evening_of, learn_times
from stepper.session.state import Day, Done, Position, State, TimedStep
from tests.session.samples import EVENTS

EIGHT = datetime(2026, 3, 3, 20, 0, tzinfo=timezone(timedelta(hours=1)))


def at(minutes: float) -> str:
    """Give a time as minutes after eight in the evening."""
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
    """Give the day all this happens on."""
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
