"""The ports of what speaks, from a line to its sound, and what can go wrong. No I/O.

```
 Speaker.say ─► QueuedSpeaker ─► Mouth ─┬─ PlaybackMouth ─► Synthesiser (in a process) ─► OutputStream
                one thread, line        └─ SystemVoiceMouth ─► the system's voice (a process for each line)
                after line
```

The queue knows nothing of sound, a mouth nothing of queues, an output nothing of words. A natural voice
that takes longer to start is another `Synthesiser`.

Everything outside this room knows `Speaker` and nothing behind it; its fake stands in `stepper.mouth.fakes`.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import Enum
from threading import Event
from typing import Protocol

from stepper.errors import SurroundingsError


class NoVoiceError(SurroundingsError):
    """A voice cannot be started, or has stopped for good; the text says why, as half a sentence."""


class Tone(Enum):
    """A soft tone that stands for a word."""

    HEARD = "heard"
    """A cue was heard; its answer follows."""
    NOT_UNDERSTOOD = "not understood"
    """Something was said to the program that is no cue, or none that makes sense now."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SpokenLine:
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

    def sound(self, sound: Tone) -> None:
        """Play a soft tone at once, in front of any line said after it. It is no speech: `speaking` leaves it
        out.

        A speaker that cannot play tones leaves it out.
        """
        ...

    def expect(self, lines: Iterable[SpokenLine]) -> None:
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


class Mouth(Protocol):
    """Says one line at a time."""

    def utter(self, text: str, words_per_minute: int, cut: Event) -> None:
        """Say a line and return when it has been heard, or soon after `cut` is set and `hush` called.

        Raises:
            NoVoiceError: The voice has stopped for good.
        """
        ...

    def chime(self, pcm: bytes, rate_hz: int) -> None:
        """Play a short sound that was not asked for by `utter`, if that can be done. From any thread."""
        ...

    def expect(self, lines: Iterable[tuple[str, int]]) -> None:
        """Make ready lines that will probably be said next, each with its words per minute.

        Called from any thread.
        """
        ...

    def hush(self) -> None:
        """Make no more sound, at once. Called from another thread than `utter`, after `cut` is set."""
        ...

    def close(self) -> None:
        """Let go of everything. Never called while a line is said, unless that line will not end."""
        ...


class Synthesiser(Protocol):
    """Turns words into sound, faster than they are spoken."""

    @property
    def rate_hz(self) -> int:
        """Samples per second of what it makes."""
        ...

    def speech(self, text: str, words_per_minute: int) -> bytes:
        """Make the sound of a stretch of text: one channel, signed 16-bit, no silence after it.

        Raises:
            NoVoiceError: The voice has stopped for good.
        """
        ...

    def expect(self, pieces: Iterable[tuple[str, int]]) -> None:
        """Note what will probably be asked for next, each with its words per minute; may be ignored."""
        ...

    def close(self) -> None:
        """Let go of everything, from any thread."""
        ...
