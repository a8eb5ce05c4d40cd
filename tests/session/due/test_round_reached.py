from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.model import OpenRow
from stepper.session.cues import Next
from stepper.session.due.round_reached import MEASURE_ROUNDS_LEFT, tell_due, tell_reminders
from stepper.session.effects import AskCount, AskLength, TellLifeline, TellStep
from stepper.session.events import Advanced
from stepper.session.machine import Session
from stepper.session.state import Knitting, Position, Reminder, State
from tests.fixtures import plan_named
from tests.plans import final_increase, plan, with_stretch
from tests.playbook import AT, after, check, opened, tell, transcript


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
        Taken as done: up to Yoke, round 2 of 6, Final increase, which goes from 225 to 246 stitches.
        You asked to be reminded: move the marker.
        Yoke, round 3 of 6, chart cairn round 1: two chalk, two ember, two chalk, forty one times.
        """,
    )


def test_a_sitting_that_begins_at_the_round_says_the_reminder_again() -> None:
    """It may be that the program was ended between keeping the step and saying it."""
    knitting = Knitting(place=Position(index=2), reminders=(Reminder(index=2, text="try it on"),))
    session = Session(final_increase(), State(seq=5, knitting=knitting, last_cue_at=AT))

    assert "You asked to be reminded: try it on." in tell(session, session.consider_opening(AT, "f"))


def _state(index: int, stitch: int = 0, *reminders: int) -> State:
    kept = tuple(Reminder(index=each, text="") for each in reminders)
    knitting = Knitting(place=Position(index=index, stitch=stitch), reminders=kept)
    return State(seq=5, knitting=knitting, last_cue_at=AT)


@pytest.mark.parametrize(
    ("before", "after", "told"),
    [
        ((1, 0), (3, 0), [2, 3]),  # jumped over, and reached
        ((1, 9), (2, 0), [2]),
        ((2, 0), (3, 0), [3]),  # what was said at the last round is not said again
        ((3, 0), (3, 0), [3]),  # a sitting that begins at the round
        ((3, 5), (3, 5), []),  # or behind its beginning, when it was said
        ((3, 0), (3, 5), []),
        ((4, 0), (2, 0), []),  # gone back: they will be reached
        ((0, 0), (5, 0), [2, 3, 4]),
    ],
)
def test_a_reminder_is_told_once_each_time_its_round_is_reached(
    before: tuple[int, int], after: tuple[int, int], told: list[int]
) -> None:
    """Neither lost where rounds are skipped nor said in the middle of a round. By hand, for rounds 2, 3 and 4."""
    effects = tell_reminders(_state(*before, 2, 3, 4), _state(*after, 2, 3, 4))
    assert [each.reminder.index for each in effects] == told


def test_what_is_due_behind_a_round_is_a_count_a_lifeline_and_a_length_each_in_its_place() -> None:
    """A count behind the increases, with the lifeline before the chart, and a length once, seven rounds into ten. By
    hand; where a stretch is only as long as what is left when a length is asked for, nothing can be measured."""
    garment = final_increase()

    def due(index: int, plan_: object = garment) -> list[object]:
        before, after = _state(index - 1), _state(index)
        event = Advanced(at=AT, origin=before.place, place=after.place, stitches=1)
        return list(tell_due(plan_, before, event, after))  # type: ignore[arg-type] # a plan

    assert due(4) == [AskCount(expect=246, reason="after the increases"), TellLifeline(laid=False)]
    length = AskLength(target_mm=100.0, section="body")
    assert [index for index in range(9, 19) if length in due(index)] == [15]
    short = with_stretch(garment, last=10)
    assert not any(isinstance(each, AskLength) for index in range(8, 12) for each in due(index, short))
    four = with_stretch(garment, last=11)
    assert [i for i in range(8, 13) if any(isinstance(each, AskLength) for each in due(i, four))] == [9]
    assert [due(index, plan(("body", ["co4", "k4", "k4", "k4"]))) for index in (1, 2, 3)] == [[], [], []]


def test_after_several_rounds_at_once_the_count_asked_for_is_that_of_the_needles_now() -> None:
    """The count before an increase round that was passed would make her look for 75 stitches too many.

    Source: the printed pattern of the fixture; 150 stitches before the second increase, 225 after it.
    """
    session = after(opened(plan_named("switchback")), "go to round 15 of yoke")
    told = transcript(session, "> two rounds finished")
    assert "Count now: 150" not in told
    told = transcript(session, "> three rounds done")
    assert "Count now: 150" not in told


@pytest.mark.parametrize(("section", "called"), [("sleeve (make 2)", "sleeve"), ("sleeves", "sleeves")])
def test_a_piece_that_is_printed_once_for_two_is_not_left_single(section: str, called: str) -> None:
    """The sheet and the yarn count both sleeves; she is led to the second by what she is told to say. The counts
    asked on the way are beside the point here."""
    session = opened(plan((section, ["co8", "k8", "bo8"]), ("collar", ["co6", "k6"])))
    told = f"This is printed once for two. If this was the first, say: go to {called} round 1."
    first = transcript(session, "> next\n> next\n> next")
    assert f"{told}\nCollar, round 1 of 2: cast on six." in first
    again = transcript(session, f"> go to {called} round 1\n> next\n> next\n> next")
    assert "round 1 of 3: cast on eight." in again
    assert again.count(told) == 1
    assert told not in transcript(session, "> next\n> next")


def test_the_second_of_a_piece_in_parts_is_begun_when_all_of_them_are_done() -> None:
    """Told at the end of the cuff, she would leave the first mitt there."""
    parts = ("mitts, cuff", ["co8", "k8"]), ("mitts, hand", ["k8", "bo8"])
    session = opened(plan(*parts, ("collar", ["co6", "k6"])))
    assert "printed once for two" not in transcript(session, "> next\n> next\n> next")
    assert "If this was the first, say: go to mitts cuff round 1." in transcript(session, "> next")
    assert "Mitts, cuff, round 1 of 2" in transcript(session, "> go to mitts cuff round 1")
    row = OpenRow(line=9, section="mitts, thumb", flat=False, words="Twirl.")
    open_still = opened(replace(plan(*parts), open=row))
    assert "printed once for two" not in transcript(open_still, "> next\n> next\n> next\n> next")


def test_a_garment_is_not_called_finished_while_the_second_piece_may_be_missing() -> None:
    """Nobody knows whether it was the first sleeve or the second that was bound off last."""
    session = opened(plan(("body", ["co6", "k6", "bo6"]), ("sleeves", ["co8", "k8", "bo8"])))
    told = transcript(session, "> go to sleeves round 3\n> next")
    assert told.endswith(
        "If this was the first, say: go to sleeves round 1.\n"
        "Every round is done. With both made, the garment is finished."
    )


def test_a_piece_that_goes_on_with_a_row_that_is_not_read_is_not_done() -> None:
    """She would begin the second sleeve with the first in its rib."""
    cuffs = plan(("sleeves", ["co8", "k8"]))
    session = opened(replace(cuffs, open=OpenRow(line=9, section="sleeves", flat=False, words="Twirl.")))
    assert "printed once for two" not in transcript(session, "> next\n> next")
