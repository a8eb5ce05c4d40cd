"""Read a WAV file's sound piece by piece: integers of 8 to 32 bits or floating point, and the extensible
header too, which the standard library knows only in later versions.

miniaudio reads such files as well, but says of a damaged one only that it cannot be decoded, takes NaN for
the loudest possible sound, and does not average more than two channels.

Source: the RIFF WAVE format as published (format tags 1, 3 and 0xFFFE with its sub-format).
"""

from __future__ import annotations

import os
import struct
import sys
from array import array
from pathlib import Path
from typing import BinaryIO, Final

from stepper.files import open_plain

_WHOLE, _FLOAT, _LONGER = 1, 3, 0xFFFE
_WIDTHS: Final = {_WHOLE: (1, 2, 3, 4), _FLOAT: (4, 8)}
_MOST_CHANNELS: Final = 64
_RATES_HZ: Final = (1_000, 768_000)


class WavFormatError(ValueError):
    """The file is not a WAV file that can be read."""


class WavFile:
    """An open WAV file."""

    def __init__(self, path: Path) -> None:
        """Open it and read its header.

        Raises:
            OSError: It cannot be read, or is no plain file.
            WavFormatError: It is not a WAV file, or is one of an unknown form.
        """
        self._file: BinaryIO = open_plain(path)
        try:
            self._left = self._header()
        except BaseException:
            self._file.close()
            raise

    def read_mono(self, frames: int) -> array[int]:
        """Read on: the mean of the channels, signed 16-bit.

        Args:
            frames: How many samples of each channel at most.

        Returns:
            The samples: fewer at the end, none after it. An incomplete sample is left out.
        """
        size = self._width * self.channels
        raw = self._file.read(min(frames * size, self._left // size * size))
        raw = raw[: len(raw) // size * size]
        self._left = self._left - len(raw) if raw else 0
        samples = self._sixteen_bits(raw)
        if self.channels == 1:
            return samples
        groups = zip(*(samples[each :: self.channels] for each in range(self.channels)), strict=True)
        return array("h", (sum(group) // self.channels for group in groups))

    def close(self) -> None:
        """Let go of the file. A second call does nothing."""
        self._left = 0
        self._file.close()

    def _header(self) -> int:
        """Read up to the sound; return how many bytes of it there are."""
        if self._exactly(4) != b"RIFF" or self._exactly(8)[4:] != b"WAVE":
            raise WavFormatError("no RIFF WAVE header")
        known = False
        while True:
            name, (size,) = self._exactly(4), struct.unpack("<I", self._exactly(4))
            if name == b"data":
                if not known:
                    raise WavFormatError("the sound comes before its format")
                return int(size)
            if name == b"fmt ":
                self._format(self._exactly(min(size, 64)))
                known, size = True, max(0, size - 64)
            self._file.seek(size + size % 2, os.SEEK_CUR)

    def _format(self, chunk: bytes) -> None:
        if len(chunk) < 16:
            raise WavFormatError("its format is cut off")
        tag, channels, rate, _, _, bits = struct.unpack("<HHIIHH", chunk[:16])
        if tag == _LONGER and len(chunk) >= 26:
            (tag,) = struct.unpack("<H", chunk[24:26])
        self._width, self._tag = (bits + 7) // 8, tag
        if self._width not in _WIDTHS.get(tag, ()):
            raise WavFormatError(f"its samples are of a kind that is not known here (tag {tag}, {bits} bits)")
        if not 1 <= channels <= _MOST_CHANNELS or not _RATES_HZ[0] <= rate <= _RATES_HZ[1]:
            raise WavFormatError(f"it has {channels} channels at {rate} samples a second")
        self.channels: int = channels
        """Number of channels. Range: 1 to 64."""
        self.rate_hz: int = rate
        """Samples per second. Range: 1,000 to 768,000."""

    def _exactly(self, count: int) -> bytes:
        found = self._file.read(count)
        if len(found) < count:
            raise WavFormatError("it ends within its header")
        return found

    def _sixteen_bits(self, raw: bytes) -> array[int]:
        """Keep the upper 16 bits of each sample."""
        if self._tag == _FLOAT:
            floats = array("f" if self._width == 4 else "d", raw)
            if sys.byteorder == "big":
                floats.byteswap()
            return array("h", (_whole(value) for value in floats))
        if self._width == 1:
            return array("h", ((byte - 128) << 8 for byte in raw))
        upper = bytearray(len(raw) // self._width * 2)
        upper[0::2], upper[1::2] = raw[self._width - 2 :: self._width], raw[self._width - 1 :: self._width]
        samples = array("h", bytes(upper))
        if sys.byteorder == "big":
            samples.byteswap()
        return samples


def _whole(value: float) -> int:
    """Turn a sample from -1 to 1 into 16 bits; anything beyond, or NaN, is clipped."""
    return int(max(-32_768.0, min(32_767.0, value * 32_767))) if value == value else 0
