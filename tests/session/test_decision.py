from __future__ import annotations

from stepper.session import cues
from stepper.session.decide import decide
from stepper.session.decision import Refusal
from tests.plans import final_increase
from tests.playbook import AT, after, opened


def test_ears_are_closed_and_opened_once() -> None:
    """Who asks for what is so already hears that it is."""
    session = opened(final_increase())
    assert decide(session.plan, session.state, cues.Listen(at=AT)) == Refusal(sentence="I am listening.")

    after(session, "stop listening")
    told = Refusal(sentence="I am not listening. Say: start listening.")
    assert decide(session.plan, session.state, cues.Wait(at=AT)) == told


def test_a_refusal_changes_nothing() -> None:
    """Whatever is refused, the session is exactly what it was."""
    session = after(opened(final_increase()), "next")
    before = session.state

    after(session, "stitch 9999", "at the marker", "redo that", "go to the attic", "count is minus one")

    assert session.state == before
