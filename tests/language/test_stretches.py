"""Stretches of speech short enough to be kept in mind."""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.language.stretches import part_long_sentences
from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.settings import SpeechSettings
from stepper.session.speech_length import LONGEST_S, seconds_of

LONG = [
    "Round eighty: knit one, slip slip knit, knit twenty, knit two together, knit one, slip marker, knit one, "
    "slip slip knit, knit twenty, knit two together, knit one.",
    "After that: round twenty four, chart plait round four: knit two, purl two, knit two, two over two left cross, "
    "purl two, nine times.",
    "Say: finished the round; three rounds done; go back three rounds; go to left sleeve; stitch one hundred "
    "thirty; at the marker.",
    "one hundred nineteen rounds left in right sleeve, one hundred nineteen altogether, six thousand four hundred "
    "sixty eight stitches.",
    "one hundred nineteen rounds left in right sleeve, one hundred nineteen altogether, 28576 stitches.",
]


@pytest.mark.parametrize("sentence", LONG)
def test_no_stretch_is_longer_than_eight_seconds(sentence: str) -> None:
    """What goes on longer is lost while it is heard. Outside check: the sound itself, of eSpeak NG."""
    voice = EspeakVoice(SpeechSettings())
    rate = SpeechSettings().words_per_minute(slower=False)

    def lasts(text: str) -> float:
        return len(voice.speech(text, rate)) / 2 / voice.rate_hz

    assert lasts(sentence) > LONGEST_S
    assert all(lasts(each) <= LONGEST_S for each in re.split(r"(?<=\.) ", part_long_sentences(sentence)))
    voice.close()


def test_what_is_worked_nine_times_is_heard_as_a_whole() -> None:
    """A full stop inside it, and she works only its end nine times."""
    said = part_long_sentences(LONG[1])
    assert said.endswith(". Knit two, purl two, knit two, two over two left cross, purl two, nine times.")


def test_the_number_in_front_of_a_repeat_stays_with_it() -> None:
    """"Twelve times:" speaks of what follows it."""
    long = "After that: row forty three, Fourth increase: twelve times: knit two, make one, once; knit three, make one."
    assert "welve times: knit two, make one, once; knit three, make one." in part_long_sentences(long)


def test_a_short_sentence_is_left_as_it_is() -> None:
    """A pause more would only make her wait."""
    assert part_long_sentences("Round two: knit eleven, make one.") == "Round two: knit eleven, make one."


@given(st.text(alphabet="abc times,;:.?", max_size=200))
def test_nothing_is_left_out_and_nothing_put_in(text: str) -> None:
    """The same words in the same order, whatever the signs between them."""
    assert re.findall(r"\w+", part_long_sentences(text).lower()) == re.findall(r"\w+", text.lower())
    assert seconds_of(text) > 0
