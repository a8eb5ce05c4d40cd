"""A sine as a WAV file, for what is heard through microphones."""

from __future__ import annotations

import math
import wave
from array import array
from pathlib import Path

TONE_HZ = 500


def tone(path: Path, seconds: float = 1.0, rate: int = 48_000) -> Path:
    """Write a sine of 500 Hz."""
    wave_ = (round(12_000 * math.sin(2 * math.pi * TONE_HZ * n / rate)) for n in range(round(seconds * rate)))
    with wave.open(str(path), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(rate)
        file.writeframes(array("h", wave_).tobytes())
    return path
