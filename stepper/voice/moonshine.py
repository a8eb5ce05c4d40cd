"""The bundled recogniser: what sounds like the model's transcript, then all that may be said scored by it."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from stepper.voice.candidates import Candidate, Candidates
from stepper.voice.deciding import Scored, by_likelihood, by_sound
from stepper.voice.likeness import distance
from stepper.voice.moonshine_model import Encoded, MoonshineModel
from stepper.voice.ports import Heard
from stepper.voice.pronouncing import Pronouncer, Sounds
from stepper.voice.thresholds import ALIKE_WITHIN, LOOSE, STRICT, TOKEN_DUE, Thresholds
from stepper.voice.token_tree import TokenTree
from stepper.voice.wordings import Wordings, without_address

_NEAREST = 24
# Enough to hold a cue of another meaning beside every wording of the first.
_SLACK = 12.0
# What the due of the longest text may add to its log-probability.


@dataclass(frozen=True, slots=True, kw_only=True)
class Evidence:
    """What the model writes down freely, and what sounds like that."""

    transcript: str
    """Lower case, without marks."""
    likely: float
    """The log-probability of that."""
    sounds: Sounds
    nearest: tuple[Candidate, ...]
    """The nearest in sound first."""


@dataclass(frozen=True, slots=True, kw_only=True)
class _Manner:
    """One of the two manners of listening: behind an address word, or for cues alone."""

    address: str
    thresholds: Thresholds
    candidates: Candidates
    tree: TokenTree


class MoonshineRecogniser:
    """Hears the phrases and counts of a vocabulary, whole utterances only."""

    def __init__(
        self,
        wordings: Wordings,
        *,
        address: str = "",
        is_addressed: Callable[[], bool] = lambda: True,
        loose: Thresholds = LOOSE,
        strict: Thresholds = STRICT,
    ) -> None:
        """Load the model and look up the sounds of every phrase.

        Args:
            wordings: What can be said.
            address: The word that stands in front of it while that is asked for; empty for never.
            is_addressed: Whether that is asked for now.
            loose: How sure to be behind the address word.
            strict: How sure to be without it.

        Raises:
            SurroundingsError: The model or the pronunciations cannot be loaded.
        """
        self._model = MoonshineModel()
        self._wordings, self._is_addressed = wordings, is_addressed
        self._number_words = wordings.number_words()
        self._pronouncer = Pronouncer()
        self._alone = self._manner("", strict)
        self._behind = self._manner(address, loose) if address else self._alone
        self.alike = self._alone.candidates.alike(ALIKE_WITHIN)
        """Phrases of different meaning that sound alike: the two, and how far apart. Range: 0 to 1."""
        self.unspeakable = self._alone.candidates.unspeakable
        """Phrases that can never be heard, since they have no sound."""
        self._alike = frozenset(phrase for one, other, _ in self.alike for phrase in (one, other))

    def recognise(self, segment: bytes) -> Heard | None:
        """Say which cue a stretch of sound is, or None."""
        manner, encoded = self.manner, self._model.encode(segment)
        evidence = self.evidence(encoded)
        rest = without_address(evidence.transcript, manner.address)
        exact = rest if rest and self._wordings.known(rest) else None
        # One number is easily written for another, and one of two cues that sound alike for the other: such
        # are always weighed against each other.
        if not self._has_number(evidence.transcript):
            if exact is not None and exact not in self._alike:
                return Heard(text=exact, score=1.0)
            near = by_sound(evidence.nearest, manner.thresholds)
            if near is not None and near.text not in self._alike:
                return Heard(text=near.text, score=max(0.0, 1 - near.distance))
        found = by_likelihood(self.scored(encoded, evidence), manner.thresholds, exact or "")
        if found is not None:
            far = self.distance(found.text, evidence)
            if far <= manner.thresholds.furthest and self._addressed(encoded, found):
                return Heard(text=found.text, score=max(0.0, 1 - far))
        return Heard(text="", score=0.0) if manner.address and rest else None

    @property
    def manner(self) -> _Manner:
        """How it listens now."""
        return self._behind if self._is_addressed() else self._alone

    def _has_number(self, text: str) -> bool:
        return any(word.isdigit() or word in self._number_words for word in text.replace("-", " ").split())

    def encode(self, segment: bytes) -> Encoded:
        """Take in a stretch of sound, to be asked about."""
        return self._model.encode(segment)

    def evidence(self, encoded: Encoded) -> Evidence:
        """Write the sound down freely and look for what sounds like that."""
        text, likely = self._model.transcribe(encoded)
        transcript = " ".join(text.casefold().replace(",", "").rstrip(".?!").split())
        sounds = self._pronouncer.sounds([transcript])[0]
        nearest = tuple(self.manner.candidates.nearest(sounds, _NEAREST))
        return Evidence(transcript=transcript, likely=likely, sounds=sounds, nearest=nearest)

    def scored(self, encoded: Encoded, evidence: Evidence) -> list[Scored]:
        """Let the model look for the likeliest of all that may be said."""
        least = evidence.likely + self.manner.thresholds.least - _SLACK
        return [
            Scored(
                text=each.text,
                means=(each.frame.means, self._wordings.numbers[each.said])
                if each.frame
                else self._wordings.phrases[each.text],
                score=each.score + TOKEN_DUE * each.tokens - evidence.likely,
            )
            for each in self._model.search(encoded, self.manner.tree, least)
        ]

    def distance(self, text: str, evidence: Evidence) -> float:
        """Tell how far a text is in sound from the free transcript. Range: 0 to 1."""
        return distance(self._pronouncer.sounds([f"{self.manner.address} {text}"])[0], evidence.sounds)

    def close(self) -> None:
        """Let go of the pronunciations; the model goes with the object."""
        self._pronouncer.close()

    def _manner(self, address: str, thresholds: Thresholds) -> _Manner:
        return _Manner(
            address=address,
            thresholds=thresholds,
            candidates=Candidates(self._wordings, address, self._pronouncer),
            tree=TokenTree(self._wordings, address, self._model.split),
        )

    def _addressed(self, encoded: Encoded, found: Scored) -> bool:
        """Tell whether the address word was said too: the cue alone must be less likely than both."""
        if not self.manner.address:
            return True
        both = f"{self.manner.address}, {found.text}"
        ways = Wordings(phrases={found.text: 1, both: 2})
        scores = {
            each.text: each.score + TOKEN_DUE * each.tokens
            for each in self._model.search(encoded, TokenTree(ways, "", self._model.split))
        }
        return scores.get(both, -math.inf) >= scores.get(found.text, -math.inf)
