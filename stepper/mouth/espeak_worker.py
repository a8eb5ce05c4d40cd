"""The process in which eSpeak NG runs: questions in, sound out, or how a text is pronounced.

Run as `python -m stepper.mouth.espeak_worker OPTIONS` with JSON options `voice` and `volume`. The library can
be loaded only once in a process and its licence is not this program's; a process of its own answers both.
"""

from __future__ import annotations

import json
from typing import Any

from stepper.mouth import worker_protocol
from stepper.mouth.espeak_library import EspeakLibrary


def main() -> None:
    """Answer each question with its sound, or with its pronunciation if that is asked for."""
    worker_protocol.serve(lambda voice, volume: EspeakLibrary(voice=voice, volume=volume), _answer)


def _answer(library: EspeakLibrary, question: dict[str, Any]) -> tuple[bytes, bytes]:
    if "phonemes" in question:
        sounds = [library.phonemes(text) for text in question["phonemes"]]
        return worker_protocol.SOUNDS, json.dumps(sounds).encode()
    return worker_protocol.SPEECH, library.speech(question["text"], question["words_per_minute"])


if __name__ == "__main__":
    main()
