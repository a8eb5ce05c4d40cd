from __future__ import annotations

import pytest

from stepper.plan.kinds import kind_of
from stepper.screen.course import course_of
from stepper.screen.drawing.rows import text_of
from stepper.screen.pages.ahead import draw_progress, find_next_shaping, list_facts, say_duration
from stepper.session.pace.outlook import look_ahead, paces_of
from stepper.session.state import Asking, Knitting, Position, State, TimedStep
from tests.screen.scenes import garment

COURSE = course_of(garment())


def _state(index: int, stitch: int = 0) -> State:
    return State(knitting=Knitting(place=Position(index=index, stitch=stitch)))


@pytest.mark.parametrize(
    ("index", "stitch", "expected"),
    [
        (4, 0, ("increase", 6, 0)),
        (4, 6, ("increase", 0, 0)),
        (4, 7, ("increase", 6, 0)),
        (3, 20, ("increase", 46, 1)),
        (4, 70, ("decrease", 70 * 3 + 80 + 50 + 48, 6)),
        (10, 49, None),
        (11, 0, None),
        (12, 0, None),
    ],
)
def test_the_next_change_is_so_many_stitches_on(
    index: int, stitch: int, expected: tuple[str, int, int] | None
) -> None:
    """Counted by hand: six plain before each of ten increases, 60 in the round before, and the rounds between;
    the division deals with 40 knitted, 30 held and 10 cast on."""
    found = find_next_shaping(COURSE, _state(index, stitch))

    assert (None if found is None else (found.word, found.stitches, found.rounds)) == expected


def test_what_is_ahead_is_told_nearest_first() -> None:
    """Count, shaping, needle, yarn."""
    assert [text_of(each) for each in list_facts(COURSE, _state(1))] == [
        "Count 70 in 4 rounds",
        "Next increase in 3 rounds, 186 stitches",
        "Needle 3.75 mm in 2 rounds",
        "Yarn pine and ember join in 4 rounds",
    ]
    assert [text_of(each) for each in list_facts(COURSE, _state(6))] == [
        "Count 50 in 3 rounds",
        "Next decrease in 4 rounds, 318 stitches",
        "Yarn without chalk and pine next round",
    ]
    assert list_facts(COURSE, _state(12)) == []


def test_where_no_counts_are_wanted_that_is_said() -> None:
    """She set it, and may have forgotten."""
    state = State(knitting=Knitting(place=Position(index=1), asking=Asking.NEVER))

    assert text_of(list_facts(COURSE, state)[0]) == "Counts none asked for"


def test_time_left_follows_her_pace_at_each_kind_of_knitting() -> None:
    """Plain rounds at the pace of plain ones, colour at that of colour; as "how far to go" says it, which she would
    else hear to differ from what she sees."""
    worked = tuple(TimedStep(stitches=60, seconds=60.0) for _ in range(5))
    state = State(knitting=Knitting(place=Position(index=3)), worked=worked)
    paces, ahead = paces_of(state), COURSE.plan.rounds[3:]
    seconds = sum(paces.of(kind_of(each)).seconds_for(each.progress) for each in ahead)

    assert text_of(draw_progress(COURSE, state, 0, blocks=True)[-1]) == (
        f"garment {COURSE.before[3] * 100 // COURSE.stitches} %, about {round(seconds / 60)} min left"
    )
    assert look_ahead(COURSE.plan, state, "2025-03-03T20:15:00+01:00").seconds_left == pytest.approx(seconds)



def test_the_bar_is_full_at_the_end_and_empty_before_it() -> None:
    """What is drawn is what is done."""
    assert text_of(draw_progress(COURSE, _state(0), 10, blocks=True)[-1]).endswith("░" * 10)
    assert text_of(draw_progress(COURSE, _state(12), 10, blocks=False)[-1]) == "garment 100 % ##########"


@pytest.mark.parametrize(
    ("seconds", "said"),
    [
        (20, "under 1 min"),
        (60 * 25, "about 25 min"),
        (3600 * 2, "about 2 h"),
        (3600 * 3 + 60 * 8, "about 3 h 10 min"),
        (3600 * 41.3, "about 41 h"),
    ],
)
def test_a_time_is_no_finer_than_anyone_can_foresee(seconds: float, said: str) -> None:
    """Minutes up to an hour, tens of minutes up to ten hours, then hours."""
    assert say_duration(seconds) == said
