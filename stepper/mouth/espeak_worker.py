"""The process in which eSpeak NG runs: questions in, sound out, or how a text is pronounced.

Run as `python -m stepper.mouth.espeak_worker OPTIONS` with JSON options `voice` and `volume`. The library can
be loaded only once in a process and its licence is not this program's; a process of its own answers both.
"""

from __future__ import annotations

import json
import sys
from contextlib import suppress

from stepper.mouth import worker_protocol as frames
from stepper.mouth.espeak_library import EspeakLibrary
from stepper.mouth.ports import NoVoiceError


def main() -> None:
    """Answer each question with its sound, until the program that asks is gone."""
    asked, answers = frames.worker_pipes()
    options = json.loads(sys.argv[1])
    with suppress(OSError):  # whoever asked is gone, so nobody waits for an answer
        try:
            library = EspeakLibrary(voice=options["voice"], volume=options["volume"])
            about = {"rate_hz": library.rate_hz, "voice_is_known": library.voice_is_known}
            frames.send_answer(answers, frames.READY, json.dumps(about).encode())
            for question in frames.questions(asked):
                if "phonemes" in question:
                    sounds = [library.phonemes(text) for text in question["phonemes"]]
                    frames.send_answer(answers, frames.SOUNDS, json.dumps(sounds).encode())
                    continue
                pcm = library.speech(question["text"], question["words_per_minute"])
                frames.send_answer(answers, frames.SPEECH, pcm)
        except NoVoiceError as reason:
            frames.send_answer(answers, frames.REFUSED, str(reason).encode("utf-8", "replace"))


if __name__ == "__main__":
    main()
