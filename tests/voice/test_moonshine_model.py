from __future__ import annotations

from importlib.util import find_spec
from pathlib import Path

import pytest

from stepper.voice.moonshine_model import MoonshineModel
from stepper.voice.settings import SpeechSettings
from stepper.voice.token_tree import token_tree
from stepper.voice.wav import render
from stepper.voice.wav_microphone import WavMicrophone


@pytest.mark.skipif(find_spec("moonshine_voice") is None, reason="the recogniser is not installed")
def test_what_was_said_is_likelier_than_what_was_not(tmp_path: Path) -> None:
    """A synthetic voice saying "where are we" makes that likelier than other cues, and as likely as the free
    transcript, which is the same text."""
    render("where are we", tmp_path / "a.wav", SpeechSettings(engine="espeak"))
    model = MoonshineModel()
    encoded = model.encode(b"".join(WavMicrophone(tmp_path / "a.wav").blocks()))
    transcript, likely = model.transcribe(encoded)
    assert transcript == "Where are we?"
    assert likely <= 0
    found = model.search(encoded, token_tree(("Go back", "Where are we", "Next step"), model.split))
    assert found[0].text == "Where are we"
    assert found[0].score == pytest.approx(likely, abs=0.5)  # its numbers are coarse
    assert len(found) == 3
