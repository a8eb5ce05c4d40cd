from __future__ import annotations

from dataclasses import replace

from stepper.plan.under_way.resuming import PlaceChoice
from stepper.screen.open_questions import NOTHING_ASKED, find_asked
from stepper.session.state import Question
from tests.screen.scenes import Desk


def test_a_question_about_a_fault_stays_until_it_is_answered() -> None:
    """She asks where she is in between and must not have to ask for the question again."""
    desk = Desk().do("go to yoke round 2", "count is 59", "where am I")
    asked = find_asked(desk.plan, desk.state)

    assert asked.questions == ("Is there a loose loop below the needles? Say: I see a loop, or: no loop.",)
    assert asked.expect is None


def test_the_count_asked_for_comes_with_its_number() -> None:
    """Without the number she cannot tell whether what she counted is right."""
    desk = Desk().do("go to yoke round 2", "count is 59", "no loop")
    asked = find_asked(desk.plan, desk.state)

    assert asked.part
    assert asked.expect is not None
    assert f"{asked.expect} expected" in asked.questions[0]


def test_every_way_to_mend_a_fault_is_a_sentence_of_its_own() -> None:
    """They are read one by one, so none may be joined to another."""
    desk = Desk().do("go to yoke round 2", "count is 59", "no loop")
    remedies = find_asked(desk.plan, desk.state).remedies

    assert len(remedies) > 1
    assert all(each[0].isupper() and each.endswith(".") and not each.endswith("..") for each in remedies)


def test_a_number_read_back_and_an_open_place_are_questions_too() -> None:
    """Nothing moves before they are answered, so they must be in sight."""
    desk = Desk().do("go to yoke round 2", "stitch 69", "count is 70")
    choice = PlaceChoice(index=1, stitch=0, section="yoke", number=1, flat=False, label=None, have=9, want=8)
    elsewhere = replace(Desk().state, question=Question(new_fingerprint="b", choices=(choice,)))

    assert find_asked(desk.plan, desk.state).questions[0].startswith("70 is what the whole round leaves.")
    assert find_asked(desk.plan, elsewhere).questions[0].startswith("Where do you go on? 1:")


def test_most_of_the_time_nothing_is_asked() -> None:
    """A question that nobody asked would only disturb."""
    assert find_asked(Desk().plan, Desk().state) == NOTHING_ASKED
