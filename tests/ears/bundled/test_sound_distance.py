from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.ears.bundled.sound_distance import SoundDistances, similar_phrases
from stepper.ears.bundled.spotting import PronouncedPhrase
from stepper.mouth.pronunciation import SOUNDS, Sounds

sounds = st.lists(st.sampled_from(SOUNDS), min_size=1, max_size=8).map(tuple)


def distance(one: str, other: str) -> float:
    """Tell how far two rows of sounds are apart, a space between two sounds."""
    return float(SoundDistances([tuple(one.split())]).distances(tuple(other.split()))[0])


@given(sounds, sounds)
def test_a_distance_is_none_only_between_the_same_sounds(one: Sounds, other: Sounds) -> None:
    """Zero for the same, above zero and at most one for others, whichever is named first."""
    there, back = SoundDistances([one]).distances(other)[0], SoundDistances([other]).distances(one)[0]
    assert (there == 0) == (one == other)
    assert 0 <= there <= 1
    assert there == pytest.approx(back)


@given(st.lists(sounds, min_size=1, max_size=6), sounds)
def test_many_rows_are_compared_as_each_alone(rows: list[Sounds], heard: Sounds) -> None:
    """The shared tree changes the speed and nothing else."""
    for row, far in zip(rows, SoundDistances(rows).distances(heard), strict=True):
        assert far == pytest.approx(SoundDistances([row]).distances(heard)[0])


def test_like_sounds_are_nearer_than_unlike_ones() -> None:
    """Voiced and voiceless pairs are neighbours on the phonetic chart; p and m share only the lips, p and s
    nothing."""
    assert distance("p i", "b i") < distance("p i", "s i")
    assert distance("m", "n") < distance("m", "k")
    assert distance("i", "ɪ") < distance("i", "ɑ")


def spoken(text: str, means: str, said: str) -> PronouncedPhrase:
    """Make a phrase of its sounds, transcribed by hand (from memory)."""
    return PronouncedPhrase(text=text, means=means, sounds=tuple(said.split()))


def test_wordings_of_different_meaning_that_sound_alike_are_named() -> None:
    """Two wordings of one cue may sound alike as they please."""
    phrases = [
        spoken("go back", "back", "g oʊ b æ k"),
        spoken("go bag", "other", "g oʊ b æ g"),
        spoken("step back", "back", "s t ɛ p b æ k"),
        spoken("go pack", "back", "g oʊ p æ k"),
    ]
    (first, *more) = similar_phrases(phrases, 0.1)
    assert first[:2] == ("go back", "go bag")
    assert 0 < first[2] <= 0.1
    assert [pair[:2] for pair in more] == [("go bag", "go pack")] * len(more)
    assert similar_phrases(phrases, 0.0) == []
