from __future__ import annotations

from importlib.util import find_spec
from pathlib import Path

import pytest

from stepper.voice.moonshine_model import MoonshineModel
from stepper.voice.settings import SpeechSettings
from stepper.voice.wav import render
from stepper.voice.wav_microphone import WavMicrophone


@pytest.mark.skipif(find_spec("moonshine_voice") is None, reason="the recogniser is not installed")
def test_what_was_said_is_likelier_than_what_was_not(tmp_path: Path) -> None:
    """A synthetic voice saying "where are we" makes that likelier than two other cues."""
    render("where are we", tmp_path / "a.wav", SpeechSettings(engine="espeak"))
    model = MoonshineModel()
    encoded = model.encode(b"".join(WavMicrophone(tmp_path / "a.wav").blocks()))
    said, *others = model.likelihoods(encoded, ["Where are we?", "Go back.", "Next step."])
    assert said > max(others)
    assert model.transcribe(encoded)[1] <= 0
