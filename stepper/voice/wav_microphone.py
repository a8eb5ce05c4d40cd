"""A recording in place of the microphone."""

from __future__ import annotations

import sys
import wave
from array import array
from collections.abc import Iterator
from pathlib import Path

from stepper.errors import SurroundingsError
from stepper.voice.ports import HEARING_RATE_HZ
from stepper.voice.resample import at_rate

_BLOCK_BYTES = HEARING_RATE_HZ * 40 // 1000 * 2
_WIDTHS = (1, 2, 3, 4)


class WavMicrophone:
    """Plays a WAV file as if it came in through the microphone: any rate, channels and integer width."""

    def __init__(self, path: Path) -> None:
        """Open the file.

        Args:
            path: A WAV file with integer samples.

        Raises:
            SurroundingsError: The file cannot be read, or is no such WAV file.
        """
        try:
            self._file = wave.open(str(path), "rb")  # noqa: SIM115 - closed by close()
        except (OSError, EOFError, wave.Error) as error:
            raise SurroundingsError(f"{path} cannot be heard: it is no WAV file that I can read.") from error
        if self._file.getsampwidth() not in _WIDTHS:
            self._file.close()
            raise SurroundingsError(f"{path} cannot be heard: its samples are of a width I do not know.")
        self._closed = False

    def blocks(self) -> Iterator[bytes]:
        """Yield blocks of 40 ms, as fast as they are taken, a second of silence after the last."""
        rate = self._file.getframerate()
        rest = b""
        while not self._closed and (raw := self._file.readframes(rate)):
            rest += at_rate(self._mono(raw), rate, HEARING_RATE_HZ)
            while len(rest) >= _BLOCK_BYTES and not self._closed:
                yield rest[:_BLOCK_BYTES]
                rest = rest[_BLOCK_BYTES:]
        rest += bytes(HEARING_RATE_HZ * 2)  # whoever speaks to the very end of it is heard out
        while len(rest) >= _BLOCK_BYTES and not self._closed:
            yield rest[:_BLOCK_BYTES]
            rest = rest[_BLOCK_BYTES:]

    def close(self) -> None:
        """Let go of the file."""
        self._closed = True
        self._file.close()

    def _mono(self, raw: bytes) -> bytes:
        """Keep the upper 16 bits of each sample and the mean of the channels."""
        width, channels = self._file.getsampwidth(), self._file.getnchannels()
        raw = raw[: len(raw) // (width * channels) * width * channels]
        if width == 1:
            samples = array("h", ((byte - 128) << 8 for byte in raw))
        else:
            upper = bytearray(len(raw) // width * 2)
            upper[0::2], upper[1::2] = raw[width - 2 :: width], raw[width - 1 :: width]
            samples = array("h", bytes(upper))
            if sys.byteorder == "big":
                samples.byteswap()
        if channels == 1:
            return samples.tobytes()
        groups = zip(*(samples[each::channels] for each in range(channels)), strict=True)
        return array("h", (sum(group) // channels for group in groups)).tobytes()
