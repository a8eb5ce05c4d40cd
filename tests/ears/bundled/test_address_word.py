from __future__ import annotations

import pytest

from stepper.ears.bundled.address_word import AddressWord, judge_address
from stepper.ears.bundled.spotting import PronouncedPhrase
from stepper.mouth.pronunciation import Pronouncer

WITHIN = 0.3
CUES = ("forward", "next step", "go back")


def judged(word: str) -> AddressWord:
    """Judge a word as eSpeak NG pronounces it."""
    pronouncer = Pronouncer()
    try:
        sounds, *cues = pronouncer.sounds([word, *CUES])
    finally:
        pronouncer.close()
    phrases = [
        PronouncedPhrase(text=text, means=text, sounds=said) for text, said in zip(CUES, cues, strict=True)
    ]
    return judge_address(word, sounds, phrases, WITHIN)


@pytest.mark.parametrize(
    ("word", "syllables", "is_long_enough"),
    [
        ("ann", 1, False),
        ("stepper", 2, True),
        ("computer", 3, True),
        ("my dear knitter", 4, True),
        ("thingamajiggery", 6, False),
        ("...", 0, False),
    ],
)
def test_an_address_word_has_two_to_four_syllables(word: str, syllables: int, is_long_enough: bool) -> None:
    """A shorter one is in half of what a film says, a longer one nobody says before every cue.

    Source: the syllables as a dictionary divides the words, from memory.
    """
    found = judged(word)
    assert (found.syllables, found.is_long_enough) == (syllables, is_long_enough)


def test_an_address_word_that_sounds_like_a_cue_is_found_out() -> None:
    """Behind "foreword" nobody knows whether she called it or stepped forward."""
    assert judged("foreword").alike == ("forward",)
    assert judged("marigold").alike == ()
    assert judge_address("...", (), [], WITHIN).alike == ()
