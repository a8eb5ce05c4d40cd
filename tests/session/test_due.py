from __future__ import annotations

from stepper.session.cues import Next
from stepper.session.due import MEASURE_ROUNDS_LEFT
from stepper.session.effects import AskLength, TellStep
from stepper.session.machine import Session
from stepper.session.state import Knitting, Position, Reminder, State
from tests.plans import final_increase, with_stretch
from tests.playbook import AT, check, opened, tell


def test_a_length_is_asked_for_while_the_course_can_still_be_changed() -> None:
    """Before the instruction, and some rounds before the end of the stretch rather than behind it."""
    plan = with_stretch(final_increase())
    stretch = plan.stretches[0]
    index = stretch.last + 1 - MEASURE_ROUNDS_LEFT
    session = Session(plan, State(seq=5, knitting=Knitting(place=Position(index=index - 1)), last_cue_at=AT))

    told = session.consider(Next(at=AT)).effects

    assert [type(each) for each in told if isinstance(each, AskLength | TellStep)] == [AskLength, TellStep]


def test_a_reminder_is_said_when_its_round_is_reached_and_is_gone_with_undo() -> None:
    """In between nothing is said of it; taken back, nothing is said at all."""
    check(
        opened(final_increase()),
        """
        > remind me in two rounds to try it on
        I will remind you at Yoke, round 1 of 6: try it on.
        > next
        Change to 3.75 mm needles. Round 2: knit all two hundred twenty five.
        > next
        You asked to be reminded: try it on.
        In 2 rounds you need ember.
        Yoke, round 1 of 6: knit all two hundred twenty five.
        > go back
        Change to 3.75 mm needles. Neckband, round 2 of 2: knit all two hundred twenty five.
        > next
        You asked to be reminded: try it on.
        In 2 rounds you need ember.
        Yoke, round 1 of 6: knit all two hundred twenty five.
        """,
    )
    check(
        opened(final_increase()),
        """
        > remind me in 1 round
        I will remind you at Neckband, round 2 of 2.
        > undo that
        Taken back: the reminder.
        > next
        Change to 3.75 mm needles. Round 2: knit all two hundred twenty five.
        """,
    )


def test_what_is_jumped_over_is_said_on_landing() -> None:
    """Else it would never be said."""
    check(
        opened(final_increase()),
        """
        > remind me in two rounds to move the marker
        I will remind you at Yoke, round 1 of 6: move the marker.
        > go to yoke round 3
        Taken as done: up to Yoke, round 2 of 6, Final increase.
        You asked to be reminded: move the marker.
        Yoke, round 3 of 6, chart cairn round 1: two chalk, two ember, two chalk, forty one times.
        """,
    )


def test_beyond_the_garment_nothing_is_promised() -> None:
    """A promise that cannot be kept is refused."""
    check(
        opened(final_increase()),
        """
        > remind me in ninety rounds to try it on
        After this round 22 are left.
        > remind me in 0 rounds to try it on
        That is now.
        """,
    )


def test_a_sitting_that_begins_at_the_round_says_the_reminder_again() -> None:
    """It may be that the program was ended between keeping the step and saying it."""
    knitting = Knitting(place=Position(index=2), reminders=(Reminder(index=2, text="try it on"),))
    session = Session(final_increase(), State(seq=5, knitting=knitting, last_cue_at=AT))

    assert "You asked to be reminded: try it on." in tell(session, session.consider_opening(AT, "f"))
