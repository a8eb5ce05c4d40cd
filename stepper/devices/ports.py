"""The ports between the program and sound: its sources, its sinks, and what can go wrong. No I/O."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Protocol

from stepper.errors import SurroundingsError

HEARING_RATE_HZ = 16_000
"""Samples per second of all incoming sound: one channel, signed 16-bit, native byte order."""


Door = Callable[[bytes, bool], bytes]
"""Decides what of a block of the microphone is let in: given the block and whether the ears are closed now,
returns what the ears get, which may be longer; empty for nothing. Called by the device's own thread."""


class NoDeviceError(SurroundingsError):
    """A sound library or a device cannot be used; the text says why, as half a sentence."""


class NoOutputError(NoDeviceError):
    """No sound device can be opened; the text says why, as half a sentence."""


class NoInputError(NoDeviceError):
    """No microphone can be opened; the text says why, as half a sentence."""


class Microphone(Protocol):
    """A source of sound, as it comes in."""

    def blocks(self) -> Iterator[bytes]:
        """Yield block after block of sound at `HEARING_RATE_HZ`, waiting for each.

        An empty block means that sound is missing here: it came in while the program spoke, it could not be
        taken in time, or the device was away. What comes before it and what comes after it belong to
        different utterances. The iterator ends when the microphone is closed or will never return.
        """

    def close(self) -> None:
        """Let go of the device, for good. A second call does nothing."""


class InputStream(Protocol):
    """One stream from a microphone, filled by its device in the background."""

    @property
    def lost(self) -> bool:
        """Whether the device is known to have gone."""

    def take(self, timeout_s: float) -> bytes | None:
        """Wait for the next block.

        Args:
            timeout_s: How long to wait at most. Unit: seconds.

        Returns:
            Sound at `HEARING_RATE_HZ`; empty if some is missing here; None if none came.
        """

    def close(self) -> None:
        """Close the stream, for good."""


class OutputStream(Protocol):
    """One stream to a sound device, open for as long as the session lasts.

    On wireless headsets, a stream opened for each line would swallow its beginning.
    """

    @property
    def pending_s(self) -> float:
        """How long until all that was played has been heard; 0 when it is quiet. Unit: seconds."""

    @property
    def lost(self) -> bool:
        """Whether the device is known to have gone."""

    def play(self, pcm: bytes, rate_hz: int) -> None:
        """Add sound after what is already playing, and return at once."""

    def clear(self) -> None:
        """Fall silent at once; the stream stays open."""

    def close(self) -> None:
        """Close the stream, for good."""
