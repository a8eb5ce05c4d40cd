from __future__ import annotations

import wave
from importlib.util import find_spec
from pathlib import Path

import pytest

from stepper.commands.hearing import heard_in, heard_phrases, is_cue
from stepper.commands.loading import load
from stepper.voice.settings import SpeechSettings
from stepper.voice.wav import render

SAMPLE = Path(__file__).parents[2] / "sample_projects" / "switchback.yaml"
CUES = ("next step", "where are we", "go back", "what can i say")


@pytest.mark.skipif(find_spec("moonshine_voice") is None, reason="the recogniser is not installed")
def test_a_recording_of_cues_is_heard_in_order(tmp_path: Path) -> None:
    """Four cues by a synthetic voice, a second apart, come out as those four."""
    sound, rate = b"", 0
    for cue in CUES:
        render(cue, tmp_path / "one.wav", SpeechSettings(engine="espeak"))
        with wave.open(str(tmp_path / "one.wav"), "rb") as file:
            rate = file.getframerate()
            sound += bytes(2 * rate) + file.readframes(file.getnframes())
    with wave.open(str(tmp_path / "all.wav"), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(rate)
        file.writeframes(sound)
    meanings = heard_phrases()
    heard = list(heard_in(tmp_path / "all.wav", load(SAMPLE).plan))
    assert [meanings[each] for each in heard] == [meanings[each] for each in CUES]


def test_a_single_word_is_never_heard_as_a_cue() -> None:
    """Over a film one word would be a guess; in a frame a count is understood."""
    plan = load(SAMPLE).plan
    assert not is_cue("next", plan)
    assert is_cue("count is 246", plan)
    assert not is_cue("who put that there", plan)
