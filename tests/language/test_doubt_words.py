from __future__ import annotations

import pytest

from stepper.language.doubt_words import LINES
from stepper.language.effect_words import tell_effect
from stepper.language.understanding.understand import understand
from stepper.session import cues
from stepper.session.counting.doubts import AskBack, TellDismissed
from stepper.session.state import Doubt, DoubtKind, Position
from tests.plans import final_increase

GARMENT = final_increase()
HERE = Position(index=3)


@pytest.mark.parametrize("kind", DoubtKind)
def test_everything_asked_back_says_how_to_answer(kind: DoubtKind) -> None:
    """In at most 25 words, and what it offers is understood as a yes and a no."""
    doubt = Doubt(kind=kind, place=HERE, number=146, length_mm=76.2)
    line = tell_effect(AskBack(doubt=doubt, expected=136, longer_by=-64, rounds_left=3), GARMENT)
    assert "?" in line
    assert len(line.split()) <= 25
    assert isinstance(understand("yes it is", GARMENT), cues.Yes)
    assert isinstance(understand("no it is not", GARMENT), cues.No)
    assert "yes it is" in line
    assert "no it is not" in line


def test_what_would_follow_is_said_with_the_number() -> None:
    """A number alone is nodded through."""
    count = Doubt(kind=DoubtKind.COUNT, place=HERE, number=146)
    assert tell_effect(AskBack(doubt=count, expected=136), GARMENT).startswith("146? That is 10 more than 136.")
    inches = Doubt(kind=DoubtKind.LENGTH, place=HERE, length_mm=76.0)
    line = tell_effect(AskBack(doubt=inches, longer_by=-64, rounds_left=3), GARMENT)
    assert line.startswith("7.6 cm? That cuts 64 rounds, 3 left.")
    assert tell_effect(TellDismissed(count=False), GARMENT) == "Nothing is changed. Say the number again."
    assert len(LINES) == 2
