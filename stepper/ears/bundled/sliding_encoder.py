"""Encode stretches of sound that share most of what is in them, the first steps of each moment once.

What is looked through for the address word are windows of 2.4 s that begin 0.4 s behind one another. The
encoder's attention goes over all of a window; what its convolutions make of a moment depends on that moment
alone, but for a norm over all of them, which is worked out behind. So it is kept, and given again (`rows` and
`known` of the network).
"""

from __future__ import annotations

import importlib
from collections import deque
from typing import Any

_ROW_SAMPLES, _REACH_SAMPLES = 192, 511
"""Rows begin so many samples behind one another, and each depends on so many. Source: the strides and widths
of the two convolutions, 64 × 3 and 64 × 6 + 127."""
_SAMPLE_BYTES = 2
_ROW_BYTES = _ROW_SAMPLES * _SAMPLE_BYTES
_OWN_ROWS = 6
# The network makes a few rows anew in any case: the last ones stand beside what a stretch is filled up with.
_WORTH_IT_ROWS = 25
_KEPT = 2
# The last window, and what the gate cut out in the meantime.
_TRIES = 8
# Silence is like itself everywhere.


class SlidingEncoder:
    """Makes states of sound, and remembers what it began with."""

    def __init__(self, network: Any) -> None:
        """Remember nothing yet.

        Args:
            network: The encoder, as `load_encoder` returns it.
        """
        self._np: Any = importlib.import_module("numpy")
        self._network = network
        self._kept: deque[tuple[bytes, Any]] = deque(maxlen=_KEPT)
        self._nothing = self._np.zeros((1, 0, network.get_outputs()[-1].shape[2]), self._np.float32)

    def states(self, pcm: bytes) -> Any:
        """Return what the encoder makes of sound at the hearing rate, signed 16-bit: 1 × frames × 288."""
        np = self._np
        known = self._known(pcm)
        sound = np.frombuffer(pcm[known.shape[1] * _ROW_BYTES :], np.int16).astype(np.float32) / 32768
        states, rows = self._network.run(["states", "rows"], {"input_values": sound[None], "known": known})
        self._kept.append((pcm, rows))
        return states

    def _known(self, pcm: bytes) -> Any:
        """Return the rows of a stretch of sound that are known; all of them belong to its beginning."""
        best = self._nothing
        for held, rows in self._kept:
            at = _where(pcm, held)
            if at is not None:
                shared_bytes = min(len(pcm), len(held) - at)
                first, count = at // _ROW_BYTES, min(_rows(shared_bytes), _rows(len(pcm)) - _OWN_ROWS)
                if count >= max(_WORTH_IT_ROWS, best.shape[1]):
                    best = rows[:, first : first + count]
        return best


def _rows(size_bytes: int) -> int:
    """Return how many rows depend on nothing but a stretch of sound."""
    return (size_bytes // _SAMPLE_BYTES - _REACH_SAMPLES) // _ROW_SAMPLES + 1


def _where(pcm: bytes, held: bytes) -> int | None:
    """Return where a stretch of sound begins in another, with a row, and is it to the end of one of them.

    Returns:
        None if it is nowhere in it. Unit: bytes.
    """
    begin, at = pcm[:_ROW_BYTES], -1
    for _ in range(_TRIES):
        at = held.find(begin, at + 1)
        if at < 0:
            return None
        if at % _ROW_BYTES == 0 and pcm.startswith(held[at : at + len(pcm)]):
            return at
    return None
