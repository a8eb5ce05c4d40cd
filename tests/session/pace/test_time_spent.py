"""Time and repetition, from a made-up evening."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from stepper.session.events import Advanced, Closed, Event, Opened, Returned
from stepper.session.pace.time_spent import find_repeated_rounds, time_spent
from stepper.session.state import Position
from tests.session.samples import EVENTS


def at(minute: int) -> str:
    """Return a time of the evening."""
    return f"2027-01-05T{20 + minute // 60:02}:{minute % 60:02}:00+01:00"


def step(index: int, minute: int) -> Event:
    """Finish a round."""
    return Advanced(at=at(minute), origin=Position(index=index), place=Position(index=index + 1), stitches=20)


def test_breaks_and_the_time_between_sittings_do_not_count() -> None:
    """Four and nine minutes of knitting; twenty without a cue, and the night, are none."""
    evening: list[Event] = [
        Opened(at=at(0), fingerprint=""),
        step(0, 4),
        step(1, 24),
        step(2, 33),
        Closed(at=at(33), place=Position(index=3)),
        Opened(at=at(40), fingerprint=""),
    ]
    assert time_spent(evening) == (4 + 9) * 60
    assert time_spent(()) == 0


@given(st.lists(EVENTS, max_size=20))
def test_time_is_never_less_than_none(events: list[Event]) -> None:
    """Whatever the clock did."""
    assert time_spent(events) >= 0


def test_rounds_finished_twice_were_worked_again() -> None:
    """Back two rounds and forward again."""
    back = Returned(at=at(5), origin=Position(index=3), place=Position(index=1))
    events = [step(0, 1), step(1, 2), step(2, 3), back, step(1, 6), step(2, 7), step(3, 8)]
    assert find_repeated_rounds(events) == ((1, 1), (2, 1))
    assert find_repeated_rounds(events[:3]) == ()


def test_a_time_that_is_none_counts_for_nothing_and_a_step_within_a_round_finishes_none() -> None:
    """An entry without a readable time must not end the page; a round read in two steps was knitted once."""
    broken = Opened(at="", fingerprint="")
    assert time_spent([step(0, 0), broken, step(1, 4), step(2, 9)]) == 5 * 60

    def part(index: int, start: int, stitch: int) -> Event:
        here, place = Position(index=index, stitch=start), Position(index=index, stitch=stitch)
        return Advanced(at=at(1), origin=here, place=place, stitches=5)

    back = Returned(at=at(2), origin=Position(index=4), place=Position(index=3), stitches=20)
    assert find_repeated_rounds([part(3, 0, 5), part(3, 5, 10), step(3, 2)]) == ()
    assert find_repeated_rounds([step(3, 1), back, part(3, 0, 5), step(3, 3)]) == ((3, 1),)
