"""Which of the phrases is nearest in sound to what was heard."""

from __future__ import annotations

from collections.abc import Hashable
from dataclasses import dataclass

from stepper.voice.likeness import Likeness
from stepper.voice.pronouncing import Pronounces, Sounds
from stepper.voice.wordings import Wordings


@dataclass(frozen=True, slots=True, kw_only=True)
class Candidate:
    """Something that may have been said."""

    text: str
    """Without the address word."""
    means: Hashable
    distance: float
    """How far its sounds are from those heard. Range: 0 (the same) and up, as a share of the longer."""


class Candidates:
    """Knows the sounds of every phrase."""

    def __init__(self, wordings: Wordings, address: str, pronouncer: Pronounces) -> None:
        """Look up the sounds of every phrase.

        Args:
            wordings: What may be said; numbers are not looked at.
            address: What stands in front of everything; empty for nothing.
            pronouncer: Knows how words are pronounced.
        """
        phrases = list(wordings.phrases.items())
        said = pronouncer.sounds([phrase for phrase, _ in phrases])
        self.unspeakable = tuple(text for (text, _), sounds in zip(phrases, said, strict=True) if not sounds)
        """The phrases that have no sound, and so can never be heard."""
        self._phrases = [each for each, sounds in zip(phrases, said, strict=True) if sounds]
        self._alone = [sounds for sounds in said if sounds]
        front = pronouncer.sounds([address])[0]
        self._tree = Likeness([front + sounds for sounds in self._alone])

    def alike(self, within: float) -> list[tuple[str, str, float]]:
        """List the phrases that sound like a phrase of another meaning, the address word left aside.

        Args:
            within: How far apart they may be. Range: 0 to 1.

        Returns:
            Each pair once, and how far apart the two are, the nearest first.
        """
        tree, found = Likeness(self._alone), []
        for one, sounds in enumerate(self._alone):
            shares = tree.rows(sounds, tree.start(sounds))[:, -1] / tree.lengths.clip(min=len(sounds))
            for other in (shares <= within).nonzero()[0]:
                if one < other and self._phrases[one][1] != self._phrases[other][1]:
                    found.append((self._phrases[one][0], self._phrases[other][0], float(shares[other])))
        return sorted(found, key=lambda pair: pair[2])

    def nearest(self, heard: Sounds, most: int) -> list[Candidate]:
        """List what is nearest to what was heard, the nearest first.

        Args:
            heard: The sounds that were heard, those of the address word too.
            most: How many phrases at most.
        """
        if not heard or not self._phrases:
            return []
        costs = self._tree.rows(heard, self._tree.start(heard))[:, -1]
        far = costs / self._tree.lengths.clip(min=len(heard))
        return [
            Candidate(text=self._phrases[at][0], means=self._phrases[at][1], distance=float(far[at]))
            for at in far.argsort(kind="stable")[:most]
        ]
