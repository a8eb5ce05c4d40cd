"""What the loudspeaker is given, kept for a moment: it is taken away from what the microphone hears.

The loudspeaker's device puts in what it takes, silence too; the microphone's takes out as much as it heard
in the meantime. Both run at the same pace, so what comes out is always equally old: a canceller finds out how
old, as long as that does not jump. A little always waits, so that a device that is late for once leaves no
hole. No I/O.
"""

from __future__ import annotations

from collections import deque
from threading import Lock

from stepper.devices.ports import HEARING_RATE_HZ

_SAMPLE_BYTES = 2
USUAL_S = 0.08
"""How much waits after what was taken when both begin. Unit: s."""
MOST_S = 0.2
"""Where more would wait one of the devices stood still, and the rest is dropped: what lies longer would come
out later than its echo comes in. Unit: s."""
_FORGOTTEN_S = 1.0


class PlayedSound:
    """A short queue between the loudspeaker's device and the microphone's."""

    def __init__(self) -> None:
        """Start with nothing played."""
        self._rate_hz = HEARING_RATE_HZ
        self._waiting: deque[bytes] = deque()
        self._size_bytes = 0
        self._lock = Lock()
        self._was_fed = False
        self._jumps = 0

    @property
    def rate_hz(self) -> int:
        """Samples per second of what comes out."""
        return self._rate_hz

    @property
    def was_fed(self) -> bool:
        """Whether a loudspeaker ever put something in; a voice of the system's own plays past us."""
        return self._was_fed

    @property
    def jumps(self) -> int:
        """How often what comes out has jumped, so that a canceller has to find out anew how old it is."""
        return self._jumps

    def put(self, pcm: bytes, rate_hz: int) -> None:
        """Note what the loudspeaker takes now; called by its device's own thread."""
        with self._lock:
            if rate_hz != self._rate_hz:
                self._rate_hz = rate_hz
                self._waiting.clear()
                self._size_bytes = 0
            self._was_fed = True
            self._waiting.append(pcm)
            self._size_bytes += len(pcm)
            while self._size_bytes > self._bytes(_FORGOTTEN_S):  # nobody listens
                self._size_bytes -= len(self._waiting.popleft())

    def take(self, seconds: float) -> bytes:
        """Take the oldest that waits, filled up with silence where too little does.

        Args:
            seconds: How much. Range: 0 and up.
        """
        with self._lock:
            wanted = self._bytes(seconds)
            if self._size_bytes > wanted + self._bytes(MOST_S):
                self._pop(self._size_bytes - wanted - self._bytes(USUAL_S))
                self._jumps += 1
            elif self._size_bytes < wanted:
                self._jumps += 1
            return self._pop(wanted).ljust(wanted, b"\0")

    def _bytes(self, seconds: float) -> int:
        return round(seconds * self._rate_hz) * _SAMPLE_BYTES

    def _pop(self, size_bytes: int) -> bytes:
        parts: list[bytes] = []
        missing = size_bytes
        while missing > 0 and self._waiting:
            first = self._waiting.popleft()
            if len(first) > missing:
                self._waiting.appendleft(first[missing:])
                first = first[:missing]
            parts.append(first)
            missing -= len(first)
        self._size_bytes -= size_bytes - missing
        return b"".join(parts)
