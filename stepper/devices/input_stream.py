"""What every microphone stream has in common: a queue its device fills, and what is left out of it.

The device's own thread only copies a block into the queue and returns. The queue is bounded: where nobody
takes blocks for so long, the oldest go, and an empty block stands for what is missing.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections import deque
from collections.abc import Callable
from contextlib import suppress
from threading import Condition, Event, Thread

from stepper.devices.ports import HEARING_RATE_HZ

BLOCK_MS = 40
"""Length of a block. At 20 ms the callbacks alone cost a tenth of a core, at 40 ms next to nothing."""
BLOCK_FRAMES = HEARING_RATE_HZ * BLOCK_MS // 1000
MOST_BLOCKS = 250
"""Blocks that may wait: ten seconds, longer than any recogniser takes over one utterance."""
GAP = b""
"""Stands for sound that is missing."""
_CLOSE_TIMEOUT_S = 1.0


class Intake(ABC):
    """A microphone stream, but for the device."""

    def __init__(self, deaf: Callable[[], bool]) -> None:
        """Start with nothing heard.

        Args:
            deaf: Whether what comes in now is to be left out. Asked by the device's own thread as each block
                comes in, so that it does not matter how late a block is looked at.
        """
        self._deaf = deaf
        self._waiting: deque[bytes] = deque()
        self._changed = Condition()
        self._gone = Event()
        self._closing = False

    @property
    def lost(self) -> bool:
        """Whether the stream has ended without being closed. Not every system tells."""
        return self._gone.is_set()

    def take(self, timeout_s: float) -> bytes | None:
        """Wait for the next block; empty where sound is missing, None when none came in time."""
        with self._changed:
            self._changed.wait_for(lambda: bool(self._waiting) or self.lost or self._closing, timeout_s)
            return self._waiting.popleft() if self._waiting else None

    def close(self) -> None:
        """Close the stream, without waiting for a device that does not answer."""
        self._closing = True
        with self._changed:
            self._changed.notify_all()
        closing = Thread(target=self._close_whatever_happens, name="closing the microphone", daemon=True)
        closing.start()
        closing.join(_CLOSE_TIMEOUT_S)

    # The device's thread

    def put(self, pcm: bytes) -> None:
        """Take a block from the device, or leave it out while the ears are closed."""
        block = GAP if self._deaf() else pcm
        with self._changed:
            if block == GAP and self._waiting and self._waiting[-1] == GAP:
                return
            self._waiting.append(block)
            if len(self._waiting) > MOST_BLOCKS:
                self._waiting.popleft()
                self._waiting[0] = GAP
            self._changed.notify_all()

    def ended(self) -> None:
        """Take note that the device has stopped."""
        if not self._closing:
            self._gone.set()
            with self._changed:
                self._changed.notify_all()

    @abstractmethod
    def close_device(self) -> None:
        """Let go of the device; may raise anything, and may never come back."""

    def _close_whatever_happens(self) -> None:
        with suppress(Exception):  # a device that has gone may refuse in any way
            self.close_device()
