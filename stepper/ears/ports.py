"""The port that turns sound into words. Its fake is in `stepper.ears.fakes`. No I/O."""

from __future__ import annotations

import math
from collections.abc import Hashable
from typing import Final, Protocol, runtime_checkable

from stepper.records import dataclass

LATEST_S: Final = 1.7
"""What has been over for longer is not answered any more: by then she says it again, or something else, and
it would count for that. Unit: s."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Heard:
    """What a recogniser made of one stretch of sound."""

    text: str
    """The words, lower case, one space between them. Empty: it was meant for the program, as far as can be
    told, and is no cue; that is answered with a tone and nothing else."""
    score: float
    """How sure it is. Range: 0 (a guess) to 1 (certain); comparable within one recogniser only."""
    addressed: bool = False
    """Whether the program's name stood in front of it."""
    goes_on: bool = False
    """Whether what follows at once belongs to it. Without text: the program was called, or a cue with a
    number was begun, and the rest is still to come. With text: it counts if nothing follows ("count is two
    hundred")."""
    is_answer: bool = False
    """Whether it answers what is open, without the name: a single word, a bare number, "not now"."""
    moves: bool = False
    """Whether it moves the knitting, so that it has to be said to its end."""
    means: Hashable = None
    """What tells an answer from another, if not its words: "I don't know" is "I do not know"."""
    hers: bool = False
    """Whether it was surely said by the voice that is known."""
    span_s: tuple[float, float] | None = None
    """Where in the stretch the sounds of the words begin and end; None where nobody knows. Unit: s."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """Where in a stretch of sound the address word and a cue behind it stand. Unit: s from its beginning."""

    start_s: float
    """Where the address word begins."""
    end_s: float | None
    """Where the cue ends; None if nothing behind the word sounds like a cue so far."""
    may_go_on: bool
    """Whether more words would make another cue of it."""
    says_more: bool = False
    """Whether something else sounds in the 0.3 s behind it."""
    fit: float = -math.inf
    """How well the sounds of the cue behind the word fit: a natural log-probability above that of the
    likeliest of any kind, 0 or less; minus infinity where there is none."""


@dataclass(frozen=True, slots=True, kw_only=True)
class FoundAlone:
    """A cue without the address word that may stand in a stretch of sound, amid anything."""

    text: str
    start_s: float
    """Where its sounds begin. Unit: s from the beginning of the stretch."""
    end_s: float
    """Where they end. Unit: s."""
    fit: float
    """How well its sounds fit. A natural logarithm, 0 or less."""
    length: int
    """How many sounds it has."""
    before: int
    """In how many frames of the 0.3 s before it something sounds."""
    behind: int
    """In how many of the 0.3 s behind it something sounds."""
    is_answer: bool = False
    """Whether it answers what is open: a single word, a bare number, "not now"."""
    has_number: bool = False
    may_go_on: bool = False
    """Whether more words would make another number of it."""
    alike: frozenset[str] = frozenset()
    """Other texts that mean the same and may have been said as well."""
    clear: float = 0.0
    """How much better it fits than what means something else and is more than its beginning. A natural
    logarithm."""


class Recogniser(Protocol):
    """Turns one stretch of speech into words."""

    def recognise(self, segment: bytes) -> Heard | None:
        """Return the words that a stretch of sound holds.

        Args:
            segment: Sound at `HEARING_RATE_HZ`, from just before the first word to just after the last.

        Returns:
            The words, or None if there are none that it could be sure of.
        """

    def close(self) -> None:
        """Let go of the model, for good. A second call does nothing."""


class Canceller(Protocol):
    """Takes the loudspeaker's own sound out of what the microphone hears."""

    def clean(self, near: bytes, far: bytes, far_rate_hz: int) -> bytes:
        """Return what is left of a block of the microphone.

        Args:
            near: The block, at `HEARING_RATE_HZ`.
            far: What the loudspeaker was given in the same time, or a little before.
            far_rate_hz: Samples per second of `far`.
        """


@runtime_checkable
class Finder(Protocol):
    """A recogniser that finds the address word amid other sound, where loudness tells nothing."""

    def find(self, sound: bytes) -> Place | None:
        """Return where in a stretch of sound the address word stands; None if it does not, or there is none.

        Args:
            sound: At `HEARING_RATE_HZ`, with anything before and after.
        """


@runtime_checkable
class LoneFinder(Protocol):
    """A recogniser that finds a cue alone amid other sound."""

    def hears_alone(self) -> bool:
        """Return whether cues without the address word count now."""

    def find_alone(self, sound: bytes) -> FoundAlone | None:
        """Return what may be a cue, and where; None if there is none.

        Args:
            sound: As in `Finder.find`.
        """


@runtime_checkable
class Knower(Protocol):
    """A recogniser that knows her voice."""

    def is_hers(self, sound: bytes) -> bool:
        """Return whether a stretch of sound is surely hers.

        Args:
            sound: As in `Recogniser.recognise`.
        """


@runtime_checkable
class Foresighted(Protocol):
    """A recogniser that knows of a cue whether more may follow."""

    def recognise_early(self, segment: bytes) -> Heard | None:
        """Return the cue that a stretch of sound is; None if it is none or begins something longer.

        Args:
            segment: As in `Recogniser.recognise`, with a tenth of a second of silence at its end.
        """

    def goes_on(self, segment: bytes, heard: Heard) -> bool:
        """Return whether something else sounds behind a cue that was known early and moves the knitting.

        Args:
            segment: The same stretch, with all that has followed.
            heard: The cue.
        """
