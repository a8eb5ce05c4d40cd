"""Recordings of synthetic speech for tests: what a person would say, or what the program would."""

from __future__ import annotations

import wave
from pathlib import Path

from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.pieces import cut_into_pieces
from stepper.mouth.settings import SpeechSettings


def render(text: str, path: Path, settings: SpeechSettings) -> float:
    """Write a line to a WAV file, as eSpeak NG says it: one channel, signed 16-bit, at the voice's own rate.

    Returns:
        How long it lasts. Unit: seconds.
    """
    voice = EspeakVoice(settings)
    try:
        pcm = b"".join(voice.speech(piece, settings.rate_wpm) for piece in cut_into_pieces(text))
    finally:
        voice.close()
    with wave.open(str(path), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(voice.rate_hz)
        file.writeframes(pcm)
    return len(pcm) / 2 / voice.rate_hz
