"""What every output stream has in common: a buffer its device drains, and an end that is bounded."""

from __future__ import annotations

from abc import ABC, abstractmethod
from contextlib import suppress
from threading import Event, Thread

from stepper.devices.play_buffer import PlayBuffer
from stepper.devices.resample import at_rate

SAMPLE_BYTES = 2
"""Size of a sample: signed 16-bit."""
_CLOSE_TIMEOUT_S = 1.0


class Stream(ABC):
    """An output stream, but for the device."""

    def __init__(self, rate_hz: int) -> None:
        """Start with nothing to play.

        Args:
            rate_hz: Samples per second that the device is given.
        """
        self.refill(rate_hz)
        self._gone = Event()
        self._closing = False

    @property
    def pending_s(self) -> float:
        """How long until all that was played has been heard. Unit: seconds."""
        return self._buffer.pending_s

    @property
    def lost(self) -> bool:
        """Whether the stream has ended without being closed. Not every system tells."""
        return self._gone.is_set()

    def play(self, pcm: bytes, rate_hz: int) -> None:
        """Add sound behind what is already playing, and return at once."""
        self._buffer.put(at_rate(pcm, rate_hz, self._rate_hz))

    def clear(self) -> None:
        """Fall silent at once; the stream stays open."""
        self._buffer.clear()

    def close(self) -> None:
        """Close the stream, without waiting for a device that does not answer."""
        self._closing = True
        self._buffer.clear()
        closing = Thread(target=self._close_whatever_happens, name="closing sound", daemon=True)
        closing.start()
        closing.join(_CLOSE_TIMEOUT_S)

    def refill(self, rate_hz: int) -> None:
        """Begin anew with nothing to play, at a rate that the device takes."""
        self._rate_hz = rate_hz
        self._buffer = PlayBuffer(rate_hz)

    def ended(self) -> None:
        """Take note that the device has stopped; called by its own thread."""
        if not self._closing:
            self._gone.set()

    def samples(self, frame_count: int, latency_s: float) -> bytes:
        """Give the device what it plays next."""
        return self._buffer.take(frame_count * SAMPLE_BYTES, latency_s)

    @abstractmethod
    def close_device(self) -> None:
        """Let go of the device; may raise anything, and may never come back."""

    def _close_whatever_happens(self) -> None:
        with suppress(Exception):  # a device that has gone may refuse in any way
            self.close_device()
