from __future__ import annotations

import pytest

from stepper.mouth.ports import NoVoiceError
from stepper.mouth.process_voice import ProcessVoice
from stepper.mouth.settings import SpeechSettings


def test_a_worker_that_is_none_is_a_reason() -> None:
    """A process that ends before it is ready is told as half a sentence."""
    with pytest.raises(NoVoiceError, match="ended before it was ready"):
        ProcessVoice("stepper.mouth.nowhere", SpeechSettings())


def test_any_worker_that_keeps_to_the_pipe_is_a_voice() -> None:
    """What a worker says of itself at the start is what the voice knows; after closing it refuses."""
    voice = ProcessVoice("stepper.mouth.espeak_worker", SpeechSettings(voice="xyzzy"))
    assert voice.rate_hz == 22_050
    assert not voice.voice_is_known
    assert len(voice.speech("One.", 150)) > 5_000
    voice.close()
    with pytest.raises(NoVoiceError, match="it is closed"):
        voice.speech("One.", 150)
