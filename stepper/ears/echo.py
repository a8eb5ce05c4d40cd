"""Take the loudspeaker's own sound out of what the microphone hears, by WebRTC's echo canceller.

It was chosen among what packages bring: `pywebrtc-audio` has wheels of half a megabyte for every system and
Python that the ears run on. `livekit` has the same canceller in 12 MB with much else, `aec-audio-processing`
has to be compiled, and the others are Speex's, unkept since 2024 or older.
"""

from __future__ import annotations

import importlib
from importlib.util import find_spec
from typing import Any

from stepper.devices.ports import HEARING_RATE_HZ
from stepper.errors import NotInstalledError

_PACKAGE = "pywebrtc_audio"
_TAPS = 16
"""How many samples on either side weigh in where a sample is put between others."""


def can_cancel_echo() -> bool:
    """Return whether the canceller is installed. Nothing is loaded."""
    return find_spec(_PACKAGE) is not None


class EchoCanceller:
    """Cleans block after block; it goes by what came before, so blocks come in order."""

    def __init__(self) -> None:
        """Load it.

        Raises:
            NotInstalledError: It is not installed.
        """
        try:
            package: Any = importlib.import_module(_PACKAGE)
            self._numpy: Any = importlib.import_module("numpy")
        except (ImportError, OSError) as error:
            raise NotInstalledError("The echo canceller is not installed.", "ears") from error
        self._canceller: Any = package.EchoCanceller(sample_rate=HEARING_RATE_HZ)
        self._far_rate_hz = HEARING_RATE_HZ
        self._before: Any = self._numpy.zeros(0, dtype=self._numpy.float32)

    def clean(self, near: bytes, far: bytes, far_rate_hz: int) -> bytes:
        """Return what the microphone heard without what the loudspeaker gave out.

        Args:
            near: A block of the microphone, at `HEARING_RATE_HZ`.
            far: What the loudspeaker was given in the same time, or a little before.
            far_rate_hz: Samples per second of `far`.
        """
        heard = self._numpy.frombuffer(near, self._numpy.int16)
        given = self._at_hearing_rate(self._numpy.frombuffer(far, self._numpy.int16), far_rate_hz, len(heard))
        cleaned: bytes = self._canceller.process(heard, given).tobytes()
        return cleaned

    def _at_hearing_rate(self, far: Any, rate_hz: int, count: int) -> Any:
        """Return a block at the microphone's rate, without a seam to the block before.

        Between samples stands a sinc under a Hann window, as wide as the lower of the two rates asks for; a
        conversion block by block would put a click on each seam, which the canceller cannot take away.
        """
        numpy = self._numpy
        if rate_hz == HEARING_RATE_HZ and len(far) == count:
            return far
        if rate_hz != self._far_rate_hz or not len(self._before):
            self._far_rate_hz, self._before = rate_hz, numpy.zeros(2 * _TAPS, dtype=numpy.float32)
        sound = numpy.concatenate([self._before, far.astype(numpy.float32)])
        self._before = sound[-2 * _TAPS :]
        where = numpy.arange(count) * (len(far) / count) + _TAPS
        whole = where.astype(numpy.int64)
        reach = numpy.arange(1 - _TAPS, _TAPS + 1)
        away = reach[None, :] - (where - whole)[:, None]
        narrower = min(1.0, HEARING_RATE_HZ / rate_hz)
        weights = numpy.sinc(away * narrower) * narrower * (0.5 + 0.5 * numpy.cos(numpy.pi * away / _TAPS))
        mixed = (sound[whole[:, None] + reach[None, :]] * weights).sum(axis=1)
        return numpy.clip(numpy.rint(mixed), -32_768, 32_767).astype(numpy.int16)
