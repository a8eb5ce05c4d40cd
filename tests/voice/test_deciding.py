from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.voice.candidates import Candidate
from stepper.voice.deciding import Scored, by_likelihood, by_sound
from stepper.voice.thresholds import STRICT


def near(text: str, distance: float, means: str = "") -> Candidate:
    """Make a candidate that means itself."""
    return Candidate(text=text, means=means or text, distance=distance)


def test_the_nearest_in_sound_is_taken_when_nothing_else_is_near() -> None:
    """Another wording of the same cue does not count as something else."""
    found = by_sound(
        [near("go back", 0.1, "back"), near("step back", 0.12, "back"), near("next", 0.4)], STRICT
    )
    assert found is not None
    assert found.text == "go back"


@pytest.mark.parametrize(
    "nearest",
    [[], [near("go back", STRICT.sounds_within + 0.01)], [near("go back", 0.1), near("go buy", 0.12)]],
    ids=["nothing", "too far", "something else as near"],
)
def test_a_doubtful_sound_is_left(nearest: list[Candidate]) -> None:
    """Each of the conditions alone refuses."""
    assert by_sound(nearest, STRICT) is None


def scored(text: str, score: float, means: str = "") -> Scored:
    """Make a text that means itself."""
    return Scored(text=text, means=means or text, score=score)


def test_the_likeliest_is_taken_when_it_is_clear_of_the_next() -> None:
    """Whatever the order they come in, and whatever else means the same."""
    found = by_likelihood(
        [scored("go back", -9.0), scored("next", 5.0), scored("move on", 5.0, "next")], STRICT
    )
    assert found is not None
    assert found.text == "next"


@pytest.mark.parametrize(
    "texts",
    [[], [scored("next", STRICT.least - 0.1)], [scored("next", 9.0), scored("text", 9.1 - STRICT.clear)]],
    ids=["nothing", "unlikely", "not clear of the next"],
)
def test_an_unlikely_text_is_left(texts: list[Scored]) -> None:
    """Each of the conditions alone refuses."""
    assert by_likelihood(texts, STRICT) is None


def test_ways_to_say_the_same_count_together() -> None:
    """Three ways, each as likely as the one rival: together three times as likely (log 3 = 1.0986)."""
    texts = [scored(f"way {each}", 5.0, "same") for each in range(3)] + [scored("rival", 5.0)]
    assert by_likelihood(texts, replace(STRICT, clear=1.09)) is not None
    assert by_likelihood(texts, replace(STRICT, clear=1.1)) is None


def test_less_is_asked_for_when_the_free_transcript_agrees() -> None:
    """As it does not when it is another text or none."""
    texts = [scored("next", 5.0), scored("text", 5.0 - (STRICT.agreed + STRICT.clear) / 2)]
    assert by_likelihood(texts, STRICT) is None
    assert by_likelihood(texts, STRICT, "text") is None
    assert by_likelihood(texts, STRICT, "next") is not None
