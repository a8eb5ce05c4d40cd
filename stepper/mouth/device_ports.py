"""The seams inside the speaking half, and what can go wrong at each. No I/O.

```
 Speaker.say ──► QueuedSpeaker ──► Mouth ─┬─ PlayedMouth ──► Synthesiser (in a process) ──► Output (device)
                 one thread, line         └─ PyttsxMouth ──► the system's voice (a process for each line)
                 after line
```

The queue knows nothing of sound, a mouth nothing of queues, an output nothing of words. A natural voice
that takes longer to start is another `Synthesiser`.
"""

from __future__ import annotations

from collections.abc import Iterable
from threading import Event
from typing import Protocol

from stepper.errors import SurroundingsError


class NoVoiceError(SurroundingsError):
    """A voice cannot be started, or has stopped for good; the text says why, as half a sentence."""


class NoDeviceError(SurroundingsError):
    """A sound library or a device cannot be used; the text says why, as half a sentence."""


class NoOutputError(NoDeviceError):
    """No sound device can be opened; the text says why, as half a sentence."""


class NoInputError(NoDeviceError):
    """No microphone can be opened; the text says why, as half a sentence."""


class Mouth(Protocol):
    """Says one line at a time."""

    def utter(self, text: str, words_per_minute: int, cut: Event) -> None:
        """Say a line and come back when it has been heard, or soon after `cut` is set and `hush` called.

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
        """Take it what will probably be asked for next, each with its words per minute; may be left aside."""
        ...

    def close(self) -> None:
        """Let go of everything, from any thread."""
        ...


class Input(Protocol):
    """One stream from a microphone, filled by its device while nobody looks."""

    @property
    def lost(self) -> bool:
        """Whether the device is known to have gone."""
        ...

    def take(self, timeout_s: float) -> bytes | None:
        """Wait for the next block.

        Args:
            timeout_s: How long to wait at most. Unit: seconds.

        Returns:
            Sound at the rate that is listened to; empty where some is missing here; None when none came.
        """
        ...

    def close(self) -> None:
        """Close the stream, for good."""
        ...


class Output(Protocol):
    """One stream to a sound device, open for as long as the session lasts.

    A stream that is opened for each line would swallow the beginning of it on wireless headsets.
    """

    @property
    def pending_s(self) -> float:
        """How long until all that was played has been heard; 0 when it is quiet. Unit: seconds."""
        ...

    @property
    def lost(self) -> bool:
        """Whether the device is known to have gone."""
        ...

    def play(self, pcm: bytes, rate_hz: int) -> None:
        """Add sound behind what is already playing, and return at once."""
        ...

    def clear(self) -> None:
        """Fall silent at once; the stream stays open."""
        ...

    def close(self) -> None:
        """Close the stream, for good."""
        ...
