"""How a text is pronounced, as a row of sounds that can be compared with another.

eSpeak NG, in a worker process, gives the sounds, so anything a recogniser may have written ("246", a name, a
word that does not exist) has some. Fine differences that no recogniser keeps (length, stress, the many weak
vowels) are dropped.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from typing import Final, Protocol

from stepper.errors import SurroundingsError
from stepper.mouth.ports import NoVoiceError
from stepper.mouth.worker import Worker, WorkerGoneError, wait_until_ready
from stepper.regex import regex

Sounds = tuple[str, ...]
"""A text as a row of sounds, each in the International Phonetic Alphabet."""

_DOUBLE: Final = ("aɪ", "aʊ", "dʒ", "eɪ", "tʃ", "ɔɪ", "oʊ", "əʊ")
_SAME: Final = {
    "ɚ": "ɜ", "ɐ": "ə", "ʌ": "ə", "ɾ": "t", "ʔ": "t", "ᵻ": "ɪ", "ɹ": "r", "x": "k", "ç": "k", "ɬ": "l",
    "o": "ɔ", "e": "ɛ", "a": "æ", "ɒ": "ɑ", "əʊ": "oʊ", "ɡ": "g",
}  # fmt: skip
SOUNDS: Final = (
    "p", "b", "t", "d", "k", "g", "f", "v", "θ", "ð", "s", "z", "ʃ", "ʒ", "h", "m", "n", "ŋ", "l", "r", "w",
    "j", "tʃ", "dʒ", "i", "ɪ", "ɛ", "æ", "ɑ", "ɔ", "ʊ", "u", "ə", "ɜ", "aɪ", "aʊ", "eɪ", "ɔɪ", "oʊ",
)  # fmt: skip
"""Every sound that is distinguished."""

_KNOWN: Final = frozenset(SOUNDS)
_NO_SOUND: Final = regex(r"\([a-z-]+\)|[ˈˌːʲ\u0329\u200d\s_]")
# A change of language in brackets, stress, length, and ties between letters.
_TIMEOUT_S = 5.0


class Pronounces(Protocol):
    """Something that knows how texts are pronounced."""

    def sounds(self, texts: Sequence[str]) -> list[Sounds]:
        """Return the sounds of each text."""


class Pronouncer:
    """Knows how English is pronounced; holds a worker process until it is closed."""

    def __init__(self) -> None:
        """Start the worker.

        Raises:
            SurroundingsError: It cannot be started.
        """
        try:
            self._worker = self._start()
            wait_until_ready(self._worker, self._replace)
        except NoVoiceError as reason:
            raise SurroundingsError(f"It is not known how words are pronounced: {reason}.") from reason

    def sounds(self, texts: Sequence[str]) -> list[Sounds]:
        """Return the sounds of each text.

        Raises:
            SurroundingsError: The worker has died.
        """
        try:
            _, body = self._worker.ask({"phonemes": list(texts)}, _TIMEOUT_S)
        except (WorkerGoneError, NoVoiceError) as error:
            raise SurroundingsError("It is no longer known how words are pronounced.") from error
        return [split_phonemes(text) for text in json.loads(body)]

    def close(self) -> None:
        """End the worker. A second call does nothing."""
        self._worker.close()

    def _start(self) -> Worker:
        return Worker("stepper.mouth.espeak_worker", {"voice": "en-us", "volume": 1.0})

    def _replace(self) -> Worker:
        """Start another worker in the place of one that has died."""
        self._worker.close()
        self._worker = self._start()
        return self._worker


def split_phonemes(written: str) -> Sounds:
    """Split a text in the International Phonetic Alphabet into the sounds that are distinguished."""
    plain = _NO_SOUND.sub("", written)
    sounds, at = [], 0
    while at < len(plain):
        double = plain[at : at + 2]
        sound = double if double in _DOUBLE else plain[at]
        at += len(sound)
        sound = _SAME.get(sound, sound)
        if sound in _KNOWN:
            sounds.append(sound)
    return tuple(sounds)
