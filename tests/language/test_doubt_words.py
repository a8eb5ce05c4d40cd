from __future__ import annotations

import pytest

from stepper.language.doubt_words import LINES
from stepper.language.effect_words import tell_effect
from stepper.language.understanding.understand import understand
from stepper.session import cues
from stepper.session.counting.doubts import AskBack, TellDismissed
from stepper.session.questions.why import Ground, TellWhy
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
    assert len(LINES) == 3


@pytest.mark.parametrize("ground", Ground)
def test_each_ground_has_one_sentence_for_the_ear(ground: Ground) -> None:
    """She asked one word, and has needles in her hands."""
    said = tell_effect(TellWhy(ground=ground, reason="before the shaping", label="Dec rnd"), GARMENT)
    assert said.endswith(".")
    assert len(said.split()) <= 22
    assert ("Dec rnd" in said) is (ground is Ground.NOTHING)


@pytest.mark.parametrize(
    ("reason", "word"),
    [
        ("after the cast-on", "cast-on"),
        ("before the division", "divided"),
        ("after the divide", "part"),
        ("before a bind-off", "bound off"),
        ("before chart fern", "chart"),
        ("after chart fern", "chart"),
        ("after the increases", "change"),
        ("end of the sleeve", "next part"),
        ("12 rounds without a count", "a while"),
        ("a count pays here", "a while"),
        ("to find the place", "fault"),
    ],
)
def test_the_reason_of_a_count_is_that_of_its_place(reason: str, word: str) -> None:
    """What is lost by not counting differs from place to place."""
    assert word in tell_effect(TellWhy(ground=Ground.COUNT, reason=reason), GARMENT)


@pytest.mark.parametrize("said", ["why", "Why?", "why is that", "tell me why", "why do you ask"])
def test_why_is_understood(said: str) -> None:
    """It is the first word that comes to her when a count is asked for."""
    assert isinstance(understand(said, GARMENT), cues.Why)
