from __future__ import annotations

import argparse
import stat
import sys
import wave
from pathlib import Path

import pytest

from stepper.commands.voice_enrol import TO_READ, run
from stepper.ears.known_voice import kept_voice
from stepper.errors import SurroundingsError
from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.settings import SpeechSettings
from stepper.sitting.user_folders import voice_path
from tests.evening import written


def _asked(**changes: object) -> argparse.Namespace:
    return argparse.Namespace(**{"hear": None, "keep_recording": None, "forget": False} | changes)


def _read_aloud(path: Path, lines: tuple[str, ...]) -> Path:
    voice = EspeakVoice(SpeechSettings(voice="en-us+f2"))
    written(path, b"".join(voice.speech(line, 150) for line in lines), voice.rate_hz)
    voice.close()
    return path


def test_fifteen_seconds_become_a_voice_and_the_recording_stays_only_where_she_says_so(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """How surely she is known is shown, and the cost; what is kept are numbers; forgetting leaves nothing."""
    monkeypatch.setenv("STEPPER_DATA", str(tmp_path / "data"))
    recording = _read_aloud(tmp_path / "her.wav", TO_READ)
    assert run(_asked(hear=recording, keep_recording=tmp_path / "kept.wav")) == 0
    with wave.open(str(tmp_path / "kept.wav")) as file:
        assert file.getnframes() / file.getframerate() == pytest.approx(15.0, abs=0.1)
    told = capsys.readouterr().out
    folded = " ".join(told.split())
    assert "are surely you, and 0 would be taken for somebody else." in folded
    assert "pieces by 4 synthetic voices" in folded
    assert "ms for each cue" in told
    assert kept_voice(voice_path()) is not None
    if sys.platform != "win32":  # nobody else on a shared computer hears her, or knows her by her voice
        assert [stat.S_IMODE(path.stat().st_mode) for path in (tmp_path / "kept.wav", voice_path())] == [0o600] * 2
    assert [path.name for path in (tmp_path / "data").iterdir()] == ["voice.json"]
    assert run(_asked(forget=True)) == 0
    assert kept_voice(voice_path()) is None


def test_too_little_speech_is_a_sentence_and_keeps_nothing(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """One line is not enough."""
    monkeypatch.setenv("STEPPER_DATA", str(tmp_path / "data"))
    with pytest.raises(SurroundingsError, match="too little speech"):
        run(_asked(hear=_read_aloud(tmp_path / "her.wav", TO_READ[:1])))
    assert not voice_path().exists()
