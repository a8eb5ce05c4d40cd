"""Write what would be said to a file, to listen to it or to measure it."""

from __future__ import annotations

import sys
import wave
from pathlib import Path

from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.pieces import pieces, speakable
from stepper.mouth.ports import NoVoiceError
from stepper.mouth.settings import SpeechSettings
from stepper.mouth.system_voice import save_with_pyttsx

_SAMPLE_BYTES = 2


def render(text: str, path: Path, settings: SpeechSettings) -> float:
    """Write a line to a WAV file: one channel, signed 16-bit, at the voice's own rate.

    Args:
        text: What to say; nothing but spaces gives a file without sound.
        path: The file; one that is there is replaced.
        settings: Which voice, how fast and how loud.

    Returns:
        How long it lasts. Unit: seconds.

    Raises:
        NoVoiceError: The voice cannot be started, or the engine is "none".
        OSError: The file cannot be written.
    """
    if settings.engine == "none":
        raise NoVoiceError("no voice is wanted")
    if settings.engine == "pyttsx3":
        return _render_with_pyttsx(text, path, settings)
    voice = EspeakVoice(settings)
    try:
        pcm = b"".join(voice.speech(piece, settings.rate_wpm) for piece in pieces(text))
    finally:
        voice.close()
    _write_wav(path, pcm, voice.rate_hz)
    return len(pcm) / _SAMPLE_BYTES / voice.rate_hz


def _render_with_pyttsx(text: str, path: Path, settings: SpeechSettings) -> float:
    words = speakable(text)
    if sys.platform == "darwin":
        raise NoVoiceError("macOS writes its voices to another kind of file")
    if not words:
        _write_wav(path, b"", 22_050)
        return 0.0
    save_with_pyttsx(words, path, settings)
    with wave.open(str(path), "rb") as file:
        return file.getnframes() / file.getframerate()


def _write_wav(path: Path, pcm: bytes, rate_hz: int) -> None:
    with path.open("wb") as raw, wave.open(raw, "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(_SAMPLE_BYTES)
        file.setframerate(rate_hz)
        file.writeframes(pcm)
