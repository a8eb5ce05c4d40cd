"""Judge an address word: how many syllables it has, and which cues it sounds like. No I/O."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from stepper.ears.bundled.sound_distance import VOWELS, SoundDistances
from stepper.ears.bundled.spotting import PronouncedPhrase
from stepper.mouth.pronunciation import Sounds
from stepper.records import dataclass

FEWEST_SYLLABLES: Final = 2
"""A shorter word is a part of too many others that a film says."""
MOST_SYLLABLES: Final = 4
"""Nobody says a longer one in front of every cue."""


@dataclass(frozen=True, slots=True, kw_only=True)
class AddressWord:
    """What is known of an address word before anybody has said it."""

    word: str
    syllables: int
    """0 if it has no sound, so that it can never be heard."""
    alike: tuple[str, ...]
    """The cues it sounds like, the most alike first."""

    @property
    def is_long_enough(self) -> bool:
        """Whether it has as many syllables as an address word needs, and not too many."""
        return FEWEST_SYLLABLES <= self.syllables <= MOST_SYLLABLES


def judge_address(
    word: str, sounds: Sounds, phrases: Sequence[PronouncedPhrase], within: float
) -> AddressWord:
    """Judge an address word.

    Args:
        word: The word or words.
        sounds: What it sounds like; empty if it has no sound.
        phrases: What may be said behind it; none may be without a sound.
        within: How far apart two texts are at most that sound alike. Range: 0 to 1.
    """
    alike: tuple[str, ...] = ()
    if sounds and phrases:
        distances = SoundDistances([each.sounds for each in phrases]).distances(sounds)
        near = (at for at in distances.argsort(kind="stable") if distances[at] <= within)
        alike = tuple(phrases[at].text for at in near)
    return AddressWord(word=word, syllables=sum(each in VOWELS for each in sounds), alike=alike)
