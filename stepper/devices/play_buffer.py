"""Sound that waits to be heard: filled by one thread, drained by the sound card's. No I/O.

Falling silent empties it but for a few milliseconds that fade out, since sound cut off in the middle of a
wave is heard as a click.
"""

from __future__ import annotations

import time
from array import array
from collections import deque
from threading import Lock

_FADE_S = 0.005
_SAMPLE_BYTES = 2


class PlayBuffer:
    """A queue of sound, first in, first out: one channel, signed 16-bit."""

    def __init__(self, rate_hz: int) -> None:
        """Start empty.

        Args:
            rate_hz: Samples per second of what goes through. Range: 1 and up.
        """
        self._rate_hz = rate_hz
        self._waiting: deque[memoryview] = deque()
        self._size_bytes = 0
        self._quiet_at = 0.0
        self._lock = Lock()

    @property
    def pending_s(self) -> float:
        """How long until the last of it has been heard, device latency included. Unit: seconds."""
        with self._lock:
            in_device_s = max(0.0, self._quiet_at - time.monotonic())
            return in_device_s + self._size_bytes / _SAMPLE_BYTES / self._rate_hz

    def put(self, pcm: bytes) -> None:
        """Add sound at the end."""
        if pcm:
            with self._lock:
                self._waiting.append(memoryview(pcm))
                self._size_bytes += len(pcm)

    def take(self, size_bytes: int, latency_s: float = 0.0) -> bytes:
        """Take sound from the front, filled up with silence to the size asked for.

        Args:
            size_bytes: How much the device wants now. Range: 0 and up, even.
            latency_s: How long the device takes until it is heard. Unit: seconds.
        """
        with self._lock:
            taken = self._pop(size_bytes)
            if taken:
                lasts_s = len(taken) / _SAMPLE_BYTES / self._rate_hz
                self._quiet_at = time.monotonic() + latency_s + lasts_s
        return taken.ljust(size_bytes, b"\0")

    def clear(self) -> None:
        """Drop everything but a short fade."""
        with self._lock:
            tail = self._pop(round(_FADE_S * self._rate_hz) * _SAMPLE_BYTES)
            faded = _fade_out(tail)
            self._waiting = deque([memoryview(faded)] if faded else [])
            self._size_bytes = len(faded)

    def _pop(self, size_bytes: int) -> bytes:
        parts: list[memoryview] = []
        wanted = min(size_bytes, self._size_bytes)
        self._size_bytes -= wanted
        while wanted:
            first = self._waiting.popleft()
            if len(first) > wanted:
                self._waiting.appendleft(first[wanted:])
                first = first[:wanted]
            parts.append(first)
            wanted -= len(first)
        return b"".join(parts)


def _fade_out(pcm: bytes) -> bytes:
    samples = array("h", pcm)
    count = len(samples)
    return array("h", (value * (count - at) // count for at, value in enumerate(samples))).tobytes()
