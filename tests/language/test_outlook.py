"""Time in words. The numbers are checked in tests/session/pace/test_outlook.py."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.craft.pace import TimedStretch
from stepper.craft.pace_by_kind import measure_pace_by_kind
from stepper.language.outlook import say_day, say_hours, tell_evenings_due, tell_film, tell_time_left
from stepper.session.pace.outlook import Outlook
from stepper.session.state import Position
from tests.plans import final_increase

SEEN = Outlook(
    paces=measure_pace_by_kind({"plain": [TimedStretch(stitches=300, seconds=600)]}),
    today="2026-11-25",
    seconds_left=90_000,
    likely="2027-01-12",
    early="2027-01-02",
    late="2027-01-25",
    assumed_days=0,
    finish_by="2027-02-14",
    evenings=82,
    rounds_each=6,
    seconds_each=1100,
    film_rounds=3,
    film_to=Position(index=5, stitch=12),
)


@pytest.mark.parametrize(
    ("seconds", "said"),
    [
        (20, "less than a minute"),
        (60, "about 1 minute"),
        (3540, "about 59 minutes"),
        (3600, "about 1 hour"),
        (8400, "about 2 hours 20 minutes"),
        (35_990, "about 10 hours"),
        (90_000, "about 25 hours"),
    ],
)
def test_a_time_is_said_no_finer_than_it_can_be_foreseen(seconds: float, said: str) -> None:
    """Minutes up to an hour, tens of minutes up to ten hours, hours beyond."""
    assert say_hours(seconds) == said


def test_what_is_left_and_when() -> None:
    """The likely day and the range, with nothing said of guesses where there are none."""
    assert tell_time_left(SEEN) == (
        "About 25 hours of knitting left. Done about 12 January. In 8 cases of 10 between 2 January and 25 January."
    )


def test_a_guess_is_called_one() -> None:
    """The pace and the evenings are marked, each by itself."""
    unmeasured = replace(SEEN, paces=measure_pace_by_kind({}))
    assert "at a usual pace until yours is known" in tell_time_left(unmeasured)
    assert "usual evenings" not in tell_time_left(unmeasured)
    assert "with usual evenings until yours are known" in tell_time_left(replace(SEEN, assumed_days=4))


def test_too_little_to_say_how_surely() -> None:
    """No range is invented; evenings all alike need none."""
    assert tell_time_left(replace(SEEN, late=None)).endswith("It is too early to say how sure that is.")
    assert tell_time_left(replace(SEEN, early=SEEN.likely, late=SEEN.likely)).endswith("Done about 12 January.")
    assert tell_time_left(replace(SEEN, likely=None)) == "About 25 hours of knitting left."


def test_what_an_evening_must_bring() -> None:
    """So many rounds each evening, tonight where it is the last, nothing where the day has passed."""
    due = "To be done by 14 February: 6 rounds, about 18 minutes, on each of 82 evenings."
    assert tell_evenings_due(SEEN) == due
    assert tell_evenings_due(replace(SEEN, evenings=1, rounds_each=1)).endswith("1 round, about 18 minutes, tonight.")
    past = replace(SEEN, evenings=0, rounds_each=None, seconds_each=None)
    assert tell_evenings_due(past) == "14 February, the date in the file, has passed."
    assert tell_evenings_due(replace(SEEN, finish_by=None, evenings=None)) == ""


def test_what_a_film_brings() -> None:
    """Whole rounds, or how far in a round longer than a film, or the end."""
    plan = final_increase()
    assert (
        tell_film(SEEN, plan)
        == "A two-hour film brings 3 rounds: done to Yoke, round 3 of 6, chart cairn round 1."
    )
    assert (
        tell_film(replace(SEEN, film_rounds=0), plan) == "A two-hour film brings you to stitch 12 of this round."
    )
    done = replace(SEEN, film_to=Position(index=len(plan.rounds)))
    assert tell_film(done, plan) == "A two-hour film is enough to finish it."


def test_a_far_day_has_its_year() -> None:
    """12 March of which year is only asked when it is not the next one."""
    assert say_day("2027-03-12", "2026-11-25") == "12 March"
    assert say_day("2028-03-12", "2026-11-25") == "12 March 2028"
    assert say_day("2027-03-12", None) == "12 March"
