"""The seams between the program and sound: what speaks, what listens, what understands.

Everything outside this room knows these Protocols and nothing behind them. Each has a fake with a memory in
`stepper.voice.fakes`. No I/O here.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import Enum
from typing import Protocol

HEARING_RATE_HZ = 16_000
"""Samples per second of all sound that is listened to: one channel, signed 16-bit, native byte order."""


class Sound(Enum):
    """A soft tone that stands for a word."""

    HEARD = "heard"
    """A cue was heard; its answer follows."""
    NOT_UNDERSTOOD = "not understood"
    """Something was said to the program that is no cue, or none that makes sense now."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One line as it is given to a speaker."""

    text: str
    slower: bool = False


class Speaker(Protocol):
    """Says lines one after another, each in the order it was given.

    No method raises, whatever happens to the sound device. Every method may be called from any thread.
    """

    @property
    def speaking(self) -> bool:
        """Whether a line is being said, is still on its way through the sound device, or waits its turn."""
        ...

    def say(self, text: str, slower: bool = False) -> None:
        """Put a line at the end of the queue and return at once.

        Args:
            text: What to say; nothing but spaces is not a line and is left out.
            slower: Say it more slowly than usual, as when it is said again.
        """
        ...

    def sound(self, sound: Sound) -> None:
        """Play a soft tone at once, in front of any line said after it. It is no speech: `speaking` leaves it
        out.

        A speaker that cannot play tones leaves it out.
        """
        ...

    def expect(self, lines: Iterable[Line]) -> None:
        """Make ready what will probably be said next, and forget what was expected before.

        Args:
            lines: The likeliest first. They are said only when `say` is called. A speaker that makes nothing
                ready does not even look at them.
        """
        ...

    def silence(self) -> None:
        """Fall silent at once and forget the lines that wait. Lines said afterwards are heard.

        What the device has already taken may sound for another tenth of a second.
        """
        ...

    def wait(self, timeout: float) -> bool:
        """Wait until everything has been said.

        Args:
            timeout: How long to wait at most. Unit: seconds.

        Returns:
            Whether it is quiet now.
        """
        ...

    def close(self) -> None:
        """Fall silent and let go of the device, for good. Later calls do nothing."""
        ...


class Microphone(Protocol):
    """Gives sound as it comes in."""

    def blocks(self) -> Iterator[bytes]:
        """Yield block after block of sound at `HEARING_RATE_HZ`, waiting for each.

        An empty block says that sound is missing here: it came in while the program spoke, it could not be
        taken in time, or the device was away. What came before it and what comes after belong to different
        utterances. The iterator ends when the microphone is closed or can never come back.
        """
        ...

    def close(self) -> None:
        """Let go of the device, for good. A second call does nothing."""
        ...


@dataclass(frozen=True, slots=True, kw_only=True)
class Heard:
    """What a recogniser made of one stretch of sound."""

    text: str
    """The words, lower case, one space between them. Empty: it was meant for the program, as far as can be
    told, and is no cue; that is answered with a tone and nothing else."""
    score: float
    """How sure it is. Range: 0 (a guess) to 1 (certain); comparable within one recogniser only."""
    addressed: bool = False
    """The program's name stood in front of it."""
    goes_on: bool = False
    """The program was called and nothing was said behind its name yet: what follows at once belongs to it."""


class Recogniser(Protocol):
    """Turns one stretch of speech into words."""

    def recognise(self, segment: bytes) -> Heard | None:
        """Say which words a stretch of sound holds.

        Args:
            segment: Sound at `HEARING_RATE_HZ`, from just before the first word to just after the last.

        Returns:
            The words, or None when there are none that it could be sure of.
        """
        ...

    def close(self) -> None:
        """Let go of the model, for good. A second call does nothing."""
        ...
