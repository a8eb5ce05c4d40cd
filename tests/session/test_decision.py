from __future__ import annotations

from stepper.session.decision import Refusal
from tests.plans import final_increase
from tests.playbook import after, opened


def test_a_refusal_is_said_unless_it_is_told_not_to() -> None:
    """A knitter whose cue makes no sense hears why; only closed ears keep quiet."""
    assert Refusal(sentence="No.").aloud


def test_a_refusal_changes_nothing() -> None:
    """Whatever is refused, the session is exactly what it was."""
    session = after(opened(final_increase()), "next")
    before = session.state

    after(session, "stitch 9999", "at the marker", "redo that", "go to the attic", "count is minus one")

    assert session.state == before
