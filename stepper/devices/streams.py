"""What every stream of a sound device has in common, whichever library drives it.

A device's own thread only fills or drains a queue and returns. Closing a stream is bounded: a device that was
pulled out may never answer.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections import deque
from collections.abc import Callable
from contextlib import suppress
from threading import Condition, Event, Thread

from stepper.devices.play_buffer import PlayBuffer
from stepper.devices.played_sound import PlayedSound
from stepper.devices.ports import HEARING_RATE_HZ, Door
from stepper.devices.resample import resample

SAMPLE_BYTES = 2
"""Size of a sample: signed 16-bit."""
BLOCK_MS = 40
"""Length of an input block. At 20 ms the callbacks alone cost a tenth of a core, at 40 ms next to nothing."""
BLOCK_FRAMES = HEARING_RATE_HZ * BLOCK_MS // 1000
MOST_BLOCKS = 250
"""Number of input blocks that may wait: ten seconds' worth, longer than any recogniser takes over one
utterance."""
GAP = b""
"""Stands for sound that is missing."""
_CLOSE_TIMEOUT_S = 1.0


class DeviceStream(ABC):
    """A stream of a device that may go."""

    def __init__(self) -> None:
        """Start with the device there."""
        self._gone = Event()
        self._closing = False

    @property
    def lost(self) -> bool:
        """Whether the stream has ended without being closed. Not every system reports it."""
        return self._gone.is_set()

    def close(self) -> None:
        """Close the stream, without waiting for a device that does not answer."""
        self._closing = True
        closing = Thread(target=self._close_whatever_happens, name="closing sound", daemon=True)
        closing.start()
        closing.join(_CLOSE_TIMEOUT_S)

    def ended(self) -> None:
        """Note that the device has stopped; called by its own thread."""
        if not self._closing:
            self._gone.set()

    @abstractmethod
    def close_device(self) -> None:
        """Let go of the device; may raise anything, and may never return."""

    def _close_whatever_happens(self) -> None:
        with suppress(Exception):  # a device that has gone may refuse in any way
            self.close_device()


class BufferedInput(DeviceStream):
    """A stream from a microphone: a queue filled by its device, which may leave sound out.

    The queue is bounded: if nobody takes blocks for long, the oldest are dropped, and an empty block stands
    for what is missing.
    """

    def __init__(self, deaf: Callable[[], bool], door: Door | None = None) -> None:
        """Start with nothing heard.

        Args:
            deaf: Whether what comes in now is to be left out. Asked by the device's own thread as each block
                comes in, so that it does not matter how late a block is looked at.
            door: Decides what of a block is let in; if None, all of it while the ears are open.
        """
        super().__init__()
        self._deaf, self._door = deaf, door
        self._waiting: deque[bytes] = deque()
        self._changed = Condition()

    def take(self, timeout_s: float) -> bytes | None:
        """Wait for the next block: empty where sound is missing, None if none came in time."""
        with self._changed:
            self._changed.wait_for(lambda: bool(self._waiting) or self.lost or self._closing, timeout_s)
            return self._waiting.popleft() if self._waiting else None

    def close(self) -> None:
        """Close the stream; whoever waits for a block waits no longer."""
        self._closing = True
        self._wake()
        super().close()

    def put(self, pcm: bytes) -> None:
        """Accept a block from the device, or leave it out while the ears are closed."""
        is_deaf = self._deaf()
        block = GAP if is_deaf else pcm
        if self._door is not None:
            block = self._door(pcm, is_deaf)
        with self._changed:
            if block == GAP and self._waiting and self._waiting[-1] == GAP:
                return
            self._waiting.append(block)
            if len(self._waiting) > MOST_BLOCKS:
                self._waiting.popleft()
                self._waiting[0] = GAP
            self._changed.notify_all()

    def ended(self) -> None:
        """Note that the device has stopped; whoever waits for a block waits no longer."""
        super().ended()
        self._wake()

    def _wake(self) -> None:
        with self._changed:
            self._changed.notify_all()


class BufferedOutput(DeviceStream):
    """A stream to a loudspeaker: a buffer that its device drains."""

    def __init__(self, rate_hz: int, played: PlayedSound | None = None) -> None:
        """Start with nothing to play.

        Args:
            rate_hz: Samples per second that the device is given.
            played: Is told what the device takes, if anybody wants to know.
        """
        super().__init__()
        self._played = played
        self.refill(rate_hz)

    @property
    def pending_s(self) -> float:
        """How long until all that was played has been heard. Unit: seconds."""
        return self._buffer.pending_s

    def play(self, pcm: bytes, rate_hz: int) -> None:
        """Add sound after what is already playing, and return at once."""
        self._buffer.put(resample(pcm, rate_hz, self._rate_hz))

    def clear(self) -> None:
        """Fall silent at once; the stream stays open."""
        self._buffer.clear()

    def close(self) -> None:
        """Fall silent and close the stream."""
        self._closing = True
        self._buffer.clear()
        super().close()

    def refill(self, rate_hz: int) -> None:
        """Start over with nothing to play, at a rate that the device accepts."""
        self._rate_hz = rate_hz
        self._buffer = PlayBuffer(rate_hz)

    def samples(self, frame_count: int, latency_s: float) -> bytes:
        """Return what the device plays next."""
        pcm = self._buffer.take(frame_count * SAMPLE_BYTES, latency_s)
        if self._played is not None:
            self._played.put(pcm, self._rate_hz)
        return pcm
