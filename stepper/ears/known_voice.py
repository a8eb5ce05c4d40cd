"""Know her voice: what is kept of it, how it is told from others, and a recogniser that goes by that.

What is kept is 96 numbers, but no sound. What was said is surely hers, surely somebody else's, or neither;
then it is dealt with as if no voice were known.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path
from typing import Final

from stepper.devices.ports import HEARING_RATE_HZ
from stepper.ears.ports import Finder, Foresighted, FoundAlone, Heard, LoneFinder, Place, Recogniser
from stepper.ears.speaker_embedding import SpeakerEncoder, Vector, likeness
from stepper.errors import SurroundingsError
from stepper.files import make_private_folder, read_plain, write_private
from stepper.records import dataclass

PIECE_S = 1.5
"""Length of the pieces her voice is learnt from: about that of a cue. Unit: s."""
_PIECE_BYTES = round(PIECE_S * HEARING_RATE_HZ) * 2
FEWEST_PIECES = 4
_MOST_BYTES = 1_000_000
_NUMBERS = 96
HERS: Final = 0.40
"""What is so much like her is surely hers. Of 30 pieces that a film of development voices was taken for a cue
by, laid beside 27 people, one in a hundred is; of the cues of six development voices 10 and 5 dB above a film
98 in a hundred, of single words of people, who were known by three to six seconds, three in four. A
likeness."""
ANOTHER: Final = 0.12
"""What is less like her is surely somebody else's: of those pieces three in four, of those words one in a
hundred, of those cues none. A likeness."""


@dataclass(frozen=True, slots=True, kw_only=True)
class KnownVoice:
    """What is kept of a voice."""

    vector: Vector


@dataclass(frozen=True, slots=True, kw_only=True)
class Enrolment:
    """What came of getting to know a voice."""

    voice: KnownVoice
    own: tuple[float, ...]
    """Likeness of each of her own pieces to the rest of her speech."""

    @property
    def sure(self) -> int:
        """How many of her own pieces are surely hers."""
        return sum(each >= HERS for each in self.own)

    @property
    def refused(self) -> int:
        """How many of her own pieces are taken for somebody else's."""
        return sum(each < ANOTHER for each in self.own)


def pieces_of(speech: bytes) -> list[bytes]:
    """Cut speech into pieces as long as a cue; a shorter remainder is left out."""
    ends = range(_PIECE_BYTES, len(speech) + 1, _PIECE_BYTES)
    return [speech[end - _PIECE_BYTES : end] for end in ends]


def enrol(speech: bytes, encoder: SpeakerEncoder) -> Enrolment:
    """Get to know a voice.

    Args:
        speech: At the hearing rate, without silence.
        encoder: Makes the vectors.

    Raises:
        SurroundingsError: There is too little speech.
    """
    vectors = [encoder.vector(piece) for piece in pieces_of(speech)]
    if len(vectors) < FEWEST_PIECES:
        needed = FEWEST_PIECES * PIECE_S
        raise SurroundingsError(f"That is too little speech to know a voice by; {needed:.0f} s are needed.")
    own = tuple(
        likeness(vector, mean_of([*vectors[:at], *vectors[at + 1 :]])) for at, vector in enumerate(vectors)
    )
    return Enrolment(voice=KnownVoice(vector=mean_of(vectors)), own=own)


def mean_of(vectors: Sequence[Vector]) -> Vector:
    """Return the mean direction of some vectors."""
    sums = [sum(column) for column in zip(*vectors, strict=True)]
    size = sum(each * each for each in sums) ** 0.5 or 1.0
    return tuple(each / size for each in sums)


class KnowingRecogniser:
    """Hears what another recogniser hears, tells what is surely hers, and leaves out what is surely not."""

    def __init__(self, recogniser: Recogniser, voice: KnownVoice, encoder: SpeakerEncoder) -> None:
        """Ask who spoke only after what was said, and so for cues alone.

        Args:
            recogniser: Hears the words; owned by this one from now on.
            voice: Hers.
            encoder: Makes the vectors.
        """
        self._recogniser, self._voice, self._encoder = recogniser, voice, encoder
        self._weighed, self._alike = b"", 0.0

    def recognise(self, segment: bytes) -> Heard | None:
        """Return the words a stretch of sound holds, or None if somebody else says them."""
        heard = self._recogniser.recognise(segment)
        return None if heard is None else self._if_hers(heard, segment)

    def recognise_early(self, segment: bytes) -> Heard | None:
        """Return the cue that a stretch of sound is, if nothing longer begins with it and she said it."""
        inner = self._recogniser
        heard = inner.recognise_early(segment) if isinstance(inner, Foresighted) else None
        return None if heard is None else self._if_hers(heard, segment)

    def goes_on(self, segment: bytes, heard: Heard) -> bool:
        """Return whether something else sounds behind a cue that was known early."""
        inner = self._recogniser
        return isinstance(inner, Foresighted) and inner.goes_on(segment, heard)

    def is_hers(self, sound: bytes) -> bool:
        """Return whether a stretch of sound is surely hers."""
        return self._likeness(sound) >= HERS

    def _if_hers(self, heard: Heard, segment: bytes) -> Heard | None:
        """Tell whether a cue is hers; what has the program's name in front of it counts whoever says it, and
        that name alone is too little to know a voice by."""
        if not heard.text or heard.addressed:
            return heard
        alike = self._likeness(segment)
        return replace(heard, hers=alike >= HERS) if alike >= ANOTHER else None

    def _likeness(self, sound: bytes) -> float:
        """Return how much like her a stretch of sound is; what is found amid a film is asked for twice."""
        if sound != self._weighed:
            vector = self._encoder.vector(sound)
            self._weighed, self._alike = sound, likeness(vector, self._voice.vector)
        return self._alike

    def find(self, sound: bytes) -> Place | None:
        """Return where the address word stands amid other sound; who said it is asked once it is cut out."""
        return self._recogniser.find(sound) if isinstance(self._recogniser, Finder) else None

    def hears_alone(self) -> bool:
        """Return whether cues without the address word count now, and can be found."""
        return isinstance(self._recogniser, LoneFinder) and self._recogniser.hears_alone()

    def find_alone(self, sound: bytes) -> FoundAlone | None:
        """Return what may be a cue amid other sound; who said it is asked once it is cut out."""
        return self._recogniser.find_alone(sound) if isinstance(self._recogniser, LoneFinder) else None

    def close(self) -> None:
        """Let go of the model."""
        self._recogniser.close()


def keep_voice(voice: KnownVoice, path: Path) -> None:
    """Write a voice down, for its owner alone to read.

    Raises:
        SurroundingsError: It cannot be written.
    """
    try:
        make_private_folder(path.parent)
        write_private(path, json.dumps({"vector": voice.vector}).encode())
    except OSError as error:
        raise SurroundingsError(f"{path} cannot be written: {error.strerror}.") from error


def kept_voice(path: Path) -> KnownVoice | None:
    """Read the voice that is kept; None if none is.

    Raises:
        SurroundingsError: The file is not what `keep_voice` writes.
    """
    try:
        written = json.loads(read_plain(path, _MOST_BYTES))
        vector = tuple(float(each) for each in written["vector"])
        if len(vector) != _NUMBERS:
            raise ValueError("made by another network")
        return KnownVoice(vector=vector)
    except FileNotFoundError:
        return None
    except (OSError, ValueError, KeyError, TypeError, RecursionError) as error:
        raise SurroundingsError(
            f"What is kept of your voice in {path} cannot be read. Make it anew with: stepper voice enrol"
        ) from error
