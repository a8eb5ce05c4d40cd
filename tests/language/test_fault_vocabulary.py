from __future__ import annotations

from stepper.language.fault_vocabulary import FAULT_WORDINGS
from stepper.language.vocabulary import VOCABULARY
from stepper.session import cues
from stepper.session.state import Seen


def test_everything_that_can_be_seen_can_be_said() -> None:
    """She is asked what she sees; there must be words for every answer."""
    seen = {row.fixed["seen"] for row in FAULT_WORDINGS if row.cue is cues.Saw}

    assert seen == set(Seen)


def test_they_are_part_of_the_vocabulary() -> None:
    """One table feeds the recogniser, the help and the keyboard."""
    assert set(map(id, FAULT_WORDINGS)) <= set(map(id, VOCABULARY))
