from __future__ import annotations

from stepper.screen.answer_lines import describe_result, pick_answers
from tests.screen.scenes import Desk


def _answers(*words: str) -> tuple[str, ...]:
    desk = Desk().do(*words)
    return pick_answers(desk.lines, desk.conductor.session)


def test_the_step_itself_is_left_out() -> None:
    """It stands on the screen already, large."""
    assert _answers("next", "next") == ()
    assert _answers("next") == (
        "Count now: 60 expected, after the cast-on.",
        "In 2 rounds you need the 3.75 mm needle and markers.",
    )
    assert _answers("next", "say again") == ()
    assert _answers("undo that") == ("There is nothing to take back.",)


def test_words_say_what_they_did_or_that_they_did_nothing() -> None:
    """Four ways it can go."""
    desk = Desk().do("where am i")
    assert describe_result(desk.lines, "where am i", desk.conductor.session, changed=False) == "answered"
    desk.do("next step")
    assert describe_result(desk.lines, "next step", desk.conductor.session, changed=True) == "done"
    desk.do("nxt step")
    assert (
        describe_result(desk.lines, "nxt step", desk.conductor.session, changed=False)
        == "nothing, not understood"
    )
    desk.do("stop listening")
    assert (
        describe_result([], "next step", desk.conductor.session, changed=False)
        == "nothing; the ears are closed"
    )
