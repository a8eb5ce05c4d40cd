from __future__ import annotations

from stepper.lap.questions import NOT_READ, find_question, foresee_number, say_what_number_does
from stepper.screen.open_questions import find_asked
from stepper.session.cues import Choose, Count, GoTo
from tests.plans import plan
from tests.playbook import AT, opened, tell
from tests.screen.scenes import Desk
from tests.session.open_row.evening import ONE_ROUND, cowl, evening


def says(desk: Desk) -> list[str]:
    """List what can be touched for an answer."""
    question = find_question(desk.plan, desk.state, find_asked(desk.plan, desk.state))
    return [] if question is None else [each.says for each in question.choices]


def test_nothing_is_asked_most_of_the_time() -> None:
    """The step is alone on the page."""
    assert find_question(Desk().plan, Desk().state, find_asked(Desk().plan, Desk().state)) is None


def test_a_question_about_the_fabric_is_answered_by_touch() -> None:
    """In the words that are said for it, so that voice and finger are one vocabulary."""
    desk = Desk().do("go to yoke round 2", "count is 59")
    question = find_question(desk.plan, desk.state, find_asked(desk.plan, desk.state))
    assert question is not None
    assert question.title == "1 too few"
    assert question.says.startswith("Is there a loose loop below the needles?")
    assert [(each.says, each.ask, each.text) for each in question.choices[:2]] == [
        ("I see a loop", "words", "i see a loop"),
        ("No loop", "words", "no loop"),
    ]


def test_a_loop_that_was_seen_is_said_to_be_caught() -> None:
    """Nothing else matters while it hangs there."""
    desk = Desk().do("go to yoke round 2", "count is 59", "i see a loop")
    assert says(desk)[0] == "It is caught"
    desk.do("it is caught")
    assert "It is caught" not in says(desk)


def test_the_ways_to_mend_are_numbered_as_they_are_said() -> None:
    """What is touched is what "take remedy 2" would take."""
    desk = Desk().do("go to yoke round 2", "count is 59", "no loop")
    question = find_question(desk.plan, desk.state, find_asked(desk.plan, desk.state))
    assert question is not None
    for each in question.choices:
        if each.ask == "choose":
            other = Desk().do("go to yoke round 2", "count is 59", "no loop", Choose(number=each.value))
            assert other.state.knitting.fault is None, each
    first, *_, before_last, last = question.choices
    assert (first.says, first.ask, first.value) == ("12, as expected", "part", 12)
    assert before_last.ask == "what happened"
    assert last.says.startswith("Rip")  # never the first that a finger finds


def test_a_count_that_is_the_rounds_end_is_asked_back() -> None:
    """Yes and no are two touches."""
    desk = Desk().do("go to yoke round 2", "stitch 30", Count(stitches=70))
    question = find_question(desk.plan, desk.state, find_asked(desk.plan, desk.state))
    assert question is not None
    assert [each.ask for each in question.choices] == ["yes", "no"]
    assert "70" in question.says


def test_where_to_go_on_in_a_changed_pattern_is_a_list() -> None:
    """Each place with whether the count fits there."""
    session = opened(plan(("neck", ["co20", "k20"]), ("yoke", ["k20", "k10 m1 k10", "k21", "p21", "bo21"])))
    tell(session, session.consider(GoTo(at=AT, place="yoke", round_number=3)))
    changed = plan(("neck", ["co20", "k20"]), ("yoke", ["k20", "k5 m1 k10 m1 k5", "k22", "p22", "bo22"]))
    tell(session, session.consider_plan(changed, AT, "second"))
    question = find_question(session.plan, session.state, find_asked(session.plan, session.state))
    assert question is not None
    assert question.title == "Where do you go on?"
    assert [each.value for each in question.choices] == list(range(1, len(question.choices) + 1))
    assert say_what_number_does(session.plan, session.state).ask == "choose"
    assert question.choices[0].says.startswith("Yoke, round 3; you have 21 stitches and it wants 22.")


def test_what_a_number_would_mean_changes_nothing() -> None:
    """It may be typed, read and taken back any number of times."""
    desk = Desk().do("next")
    before = desk.state
    session = desk.conductor.session
    assert foresee_number(session, 60).says == "60, as it should be."
    assert foresee_number(session, 59).says.startswith("59: 1 fewer than 60.")
    assert foresee_number(session, 400).says == "400 cannot be; 60 are expected."
    assert desk.state == before


def test_a_number_is_taken_for_what_was_asked() -> None:
    """As at the terminal: a part of a count aloud, the stitches in between, or a count."""
    for words, ask in ((["next"], "count"), (["next", "count with me"], "ten"), (["go to yoke round 2", "count is 59"], "count"), (["go to yoke round 2", "count is 59", "no loop"], "part")):
        desk = Desk().do(*words)
        assert say_what_number_does(desk.plan, desk.state).ask == ask


def test_a_row_that_is_not_read_is_answered_by_touch() -> None:
    """What it seems to be, with a yes and a no; a number typed is its count."""
    garment = cowl(proposed=ONE_ROUND)
    state = evening(garment).state
    question = find_question(garment, state, find_asked(garment, state))
    assert question is not None
    assert question.title == NOT_READ
    assert question.says == "I take it for 1 round, 36 stitches after it as printed: is that so?"
    assert [each.ask for each in question.choices] == ["yes", "no"]
    assert say_what_number_does(garment, state).ask == "count"
