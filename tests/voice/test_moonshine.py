from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from importlib.util import find_spec
from pathlib import Path

import pytest

from stepper.voice.moonshine import MoonshineRecogniser, _said_behind
from stepper.voice.settings import SpeechSettings
from stepper.voice.wav import render
from stepper.voice.wav_microphone import WavMicrophone
from stepper.voice.wordings import Frame, Wordings

WORDINGS = Wordings(
    phrases={"next step": "next", "go back": "back", "where are we": "where", "say that again": "again"},
    frames=(Frame(before="count is", after="", means="count"),),
    numbers={"two hundred forty six": 246, "two hundred fifty six": 256, "forty six": 46, "twelve": 12},
)

pytestmark = pytest.mark.skipif(
    find_spec("moonshine_voice") is None, reason="the recogniser is not installed"
)


@pytest.fixture(scope="module")
def recogniser() -> Iterator[MoonshineRecogniser]:
    """One for the tests of this module."""
    found = MoonshineRecogniser(WORDINGS)
    yield found
    found.close()


def sound(text: str, folder: Path) -> bytes:
    """Let a synthetic voice say a text."""
    render(text, folder / "a.wav", SpeechSettings(engine="espeak"))
    return b"".join(WavMicrophone(folder / "a.wav").blocks())


@pytest.mark.parametrize(
    "cue", ["next step", "where are we", "say that again", "count is two hundred forty six"]
)
def test_a_cue_is_heard_as_that_cue(cue: str, recogniser: MoonshineRecogniser, tmp_path: Path) -> None:
    """A synthetic voice is understood; a number comes back as words that can be read."""
    heard = recogniser.recognise(sound(cue, tmp_path))
    assert heard is not None
    assert heard.text == cue


@pytest.mark.parametrize(
    "line", ["somebody followed us from the station", "please sit down and listen to me"]
)
def test_what_is_no_cue_is_not_heard(line: str, recogniser: MoonshineRecogniser, tmp_path: Path) -> None:
    """Lines of a film are left alone."""
    assert recogniser.recognise(sound(line, tmp_path)) is None


@pytest.mark.parametrize(
    ("transcript", "address", "is_called", "tried"),
    [
        ("note it", "", False, ["note it"]),
        ("stepper note it now", "stepper", False, ["note it now"]),
        ("step or note it now", "stepper", True, ["or note it now", "note it now", "it now"]),
        ("step or note it now", "stepper", False, []),
        ("stepper", "stepper", True, []),
    ],
)
def test_where_the_transcript_has_the_name_wrong_its_sounds_count(
    transcript: str, address: str, is_called: bool, tried: list[str]
) -> None:
    """As many words are left out as the name may have been taken for; without its sounds none are."""
    assert [text for text in _said_behind(transcript, address, is_called) if text] == tried


def test_a_remark_is_heard_behind_the_name_with_a_number_in_it(tmp_path: Path) -> None:
    """No list of phrases can hold it, so the free transcript is taken; what the name was taken for is left out."""
    wordings = replace(WORDINGS, remark=lambda text: text.startswith("make a note "))
    recogniser = MoonshineRecogniser(wordings, address="stepper")
    try:
        heard = recogniser.recognise(sound("stepper, make a note, two stitches were dropped", tmp_path))
        assert heard is not None
        assert heard.text.startswith("make a note")
        assert heard.addressed
        assert "dropped" in heard.text
    finally:
        recogniser.close()


def test_silence_and_next_to_no_sound_are_no_cue(recogniser: MoonshineRecogniser) -> None:
    """Nothing at all, a tenth of a second and a second of silence."""
    assert [recogniser.recognise(bytes(size)) for size in (0, 3200, 32_000)] == [None] * 3


def test_behind_an_address_word_only_what_is_addressed_is_heard(tmp_path: Path) -> None:
    """The cue comes back without the word; without it there is no cue, until the word is no longer asked for. The
    word alone waits for more, and something else behind it is no cue but is answered."""
    is_addressed = True
    recogniser = MoonshineRecogniser(WORDINGS, address="computer", is_addressed=lambda: is_addressed)
    try:
        heard = recogniser.recognise(sound("computer, say that again", tmp_path))
        assert heard is not None
        assert heard.text == "say that again"
        bare = recogniser.recognise(sound("say that again", tmp_path))
        assert bare is None or bare.text == ""
        alone = recogniser.recognise(sound("computer", tmp_path))
        assert alone is not None
        assert (alone.text, alone.goes_on) == ("", True)
        other = recogniser.recognise(sound("computer, paint the garage", tmp_path))
        assert other is not None
        assert (other.text, other.goes_on) == ("", False)
        is_addressed = False
        for line in ("say that again", "computer, say that again"):
            heard = recogniser.recognise(sound(line, tmp_path))
            assert heard is not None
            assert heard.text == "say that again"
    finally:
        recogniser.close()
