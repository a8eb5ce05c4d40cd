"""The process in which eSpeak NG runs: questions in, sound out, or how a text is pronounced.

Run as `python -m stepper.mouth.espeak_worker OPTIONS` with JSON options `voice` and `volume`. The library can
be loaded only once in a process and its licence is not this program's; a process of its own answers both.
"""

from __future__ import annotations

import json
import sys
from contextlib import suppress

from stepper.mouth import worker_protocol
from stepper.mouth.espeak_library import EspeakLibrary
from stepper.mouth.ports import NoVoiceError


def main() -> None:
    """Answer each question with its sound, until the program that asks is gone."""
    asked, answers = worker_protocol.take_pipes()
    options = json.loads(sys.argv[1])
    with suppress(OSError):  # whoever asked is gone, so nobody waits for an answer
        try:
            library = EspeakLibrary(voice=options["voice"], volume=options["volume"])
            about = {"rate_hz": library.rate_hz, "voice_is_known": library.voice_is_known}
            worker_protocol.send_answer(answers, worker_protocol.READY, json.dumps(about).encode())
            for question in worker_protocol.read_questions(asked):
                if "phonemes" in question:
                    sounds = [library.phonemes(text) for text in question["phonemes"]]
                    worker_protocol.send_answer(answers, worker_protocol.SOUNDS, json.dumps(sounds).encode())
                    continue
                pcm = library.speech(question["text"], question["words_per_minute"])
                worker_protocol.send_answer(answers, worker_protocol.SPEECH, pcm)
        except NoVoiceError as reason:
            why = str(reason).encode("utf-8", "replace")
            worker_protocol.send_answer(answers, worker_protocol.REFUSED, why)


if __name__ == "__main__":
    main()
