"""The bundled recogniser: the model's own transcript first, then every known phrase scored against it."""

from __future__ import annotations

import random
from array import array
from collections.abc import Callable, Mapping
from difflib import SequenceMatcher

from stepper.voice.moonshine_model import MoonshineModel
from stepper.voice.ports import Heard

_LEAST = -8.0
_MARGIN = 1.5
_FURTHEST = 0.65
_NOISE_WEIGHT = 0.3
_NOISES = (33, 330)
_NOISE_SAMPLES = 24_000
# Strict: measured for cues without an address word, on synthetic voices; the distance was one of sounds there
# and is one of letters here.


class MoonshineRecogniser:
    """Hears the phrases of a vocabulary, whole utterances only."""

    def __init__(self, phrases: Mapping[str, object], known: Callable[[str], bool]) -> None:
        """Load the model and score every phrase on noise alone.

        Args:
            phrases: What can be said, without slots, each with what it means; phrases that mean the same do
                not compete.
            known: Whether a transcript is a cue just as it stands, slots and all.

        Raises:
            SurroundingsError: The model cannot be loaded.
        """
        self._model = MoonshineModel()
        self._phrases, self._known = dict(phrases), known
        rows = [(phrase, text) for phrase in self._phrases for text in _punctuated(phrase)]
        self._rows = [phrase for phrase, _ in rows]
        self._texts = [text for _, text in rows]
        source = random.Random(0)
        noise = [self._likelihoods_of_noise(source, loud) for loud in _NOISES]
        self._on_noise = [_NOISE_WEIGHT * sum(each) / len(each) for each in zip(*noise, strict=True)]

    def recognise(self, segment: bytes) -> Heard | None:
        """Say which cue a stretch of sound is, or None."""
        encoded = self._model.encode(segment)
        transcript, likely = self._model.transcribe(encoded)
        text = _plain(transcript)
        if not text:
            return None
        if self._known(text):
            return Heard(text=text, score=1.0)
        scores = self._model.likelihoods(encoded, self._texts)
        best: dict[object, tuple[float, str]] = {}
        for phrase, score, noise in zip(self._rows, scores, self._on_noise, strict=True):
            meaning, found = self._phrases[phrase], (score - noise, phrase)
            best[meaning] = max(best.get(meaning, found), found)
        return decided(sorted(best.values(), reverse=True), text, likely)

    def close(self) -> None:
        """Do nothing; the model goes with the object."""

    def _likelihoods_of_noise(self, source: random.Random, loud: int) -> list[float]:
        noise = array("h", (int(source.gauss(0, loud)) for _ in range(_NOISE_SAMPLES)))
        return self._model.likelihoods(self._model.encode(noise.tobytes()), self._texts)


def decided(ranked: list[tuple[float, str]], transcript: str, likely: float) -> Heard | None:
    """Accept the best phrase if it is likely enough, clear of the next and not too far from the transcript.

    Args:
        ranked: Score and phrase, the best first, one for each meaning.
        transcript: What the model would write down freely.
        likely: The log-probability of that.
    """
    if not ranked:
        return None
    score, phrase = ranked[0]
    clear = len(ranked) < 2 or score - ranked[1][0] >= _MARGIN
    distance = 1 - SequenceMatcher(None, transcript, phrase, autojunk=False).ratio()
    if score - likely < _LEAST or not clear or distance > _FURTHEST:
        return None
    return Heard(text=phrase, score=1 - distance)


def _plain(transcript: str) -> str:
    return " ".join(transcript.casefold().replace(",", "").rstrip(".?!").split())


def _punctuated(phrase: str) -> tuple[str, str]:
    text = (phrase[0].upper() + phrase[1:]).replace(" i ", " I ")
    asked = phrase.split()[0] in ("where", "what", "how", "which", "when")
    return (f"{text}?", f"{text}.") if asked else (f"{text}.", text)
