from __future__ import annotations

from pathlib import Path

import pytest

from stepper.mouth.ports import NoVoiceError
from stepper.mouth.process_voice import ProcessVoice
from stepper.mouth.settings import SpeechSettings


def test_a_worker_that_is_none_is_a_reason() -> None:
    """A process that ends before it is ready, and the one tried in its place too, is told as half a sentence."""
    with pytest.raises(NoVoiceError, match="ended twice before it was ready"):
        ProcessVoice("stepper.mouth.nowhere", SpeechSettings())


def test_a_voice_that_dies_at_its_first_start_speaks(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Started once more it is as good as any; that it died is nothing she has to know."""
    dies_once = "import os, signal, pathlib\nmark = pathlib.Path(__file__).with_name('mark')\n"
    dies_once += "if not mark.exists(): mark.touch(), os.kill(os.getpid(), signal.SIGKILL)\n"
    (tmp_path / "worker_of_test.py").write_text(f"{dies_once}from stepper.mouth.espeak_worker import main\nmain()\n")
    monkeypatch.setenv("PYTHONPATH", str(tmp_path))
    voice = ProcessVoice("worker_of_test", SpeechSettings())
    assert (tmp_path / "mark").exists()
    assert len(voice.speech("One.", 150)) > 5_000
    voice.close()


def test_any_worker_that_keeps_to_the_pipe_is_a_voice() -> None:
    """What a worker says of itself at the start is what the voice knows; after closing it refuses."""
    voice = ProcessVoice("stepper.mouth.espeak_worker", SpeechSettings(voice="xyzzy"))
    assert voice.rate_hz == 22_050
    assert not voice.voice_is_known
    assert len(voice.speech("One.", 150)) > 5_000
    voice.close()
    with pytest.raises(NoVoiceError, match="it is closed"):
        voice.speech("One.", 150)
