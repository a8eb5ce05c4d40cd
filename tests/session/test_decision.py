from __future__ import annotations

from stepper.session import cues
from stepper.session.decide import decide
from stepper.session.decision import Refusal
from tests.plans import final_increase
from tests.playbook import AT, after, opened


def test_a_refusal_is_said_unless_the_ears_are_closed() -> None:
    """A knitter whose cue makes no sense hears why; what closed ears caught may be the film's, so nothing
    is said to it."""
    session = opened(final_increase())

    awake = decide(session.plan, session.state, cues.Redo(at=AT))
    asleep = decide(session.plan, after(session, "stop listening").state, cues.Redo(at=AT))

    assert isinstance(awake, Refusal)
    assert isinstance(asleep, Refusal)
    assert (awake.aloud, asleep.aloud) == (True, False)


def test_a_refusal_changes_nothing() -> None:
    """Whatever is refused, the session is exactly what it was."""
    session = after(opened(final_increase()), "next")
    before = session.state

    after(session, "stitch 9999", "at the marker", "redo that", "go to the attic", "count is minus one")

    assert session.state == before
