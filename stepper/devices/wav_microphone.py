"""A recording in place of the microphone."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from stepper.devices.ports import HEARING_RATE_HZ
from stepper.devices.resample import resample
from stepper.devices.wav_file import WavFile, WavFormatError
from stepper.errors import SurroundingsError

_BLOCK_BYTES = HEARING_RATE_HZ * 40 // 1000 * 2
_BEFORE_BYTES = 8 * _BLOCK_BYTES


class WavMicrophone:
    """Plays a WAV file as if it came in through the microphone: any rate, channels and width."""

    def __init__(self, path: Path) -> None:
        """Open the file.

        Args:
            path: A WAV file.

        Raises:
            SurroundingsError: The file cannot be read or is not such a WAV file.
        """
        try:
            self._file = WavFile(path)
        except WavFormatError as error:
            raise SurroundingsError(
                f"{path} cannot be heard: it is no WAV file that I can read: {error}."
            ) from error
        except OSError as error:
            raise SurroundingsError(f"{path} cannot be heard: {error.strerror or error}.") from error
        self._closed = False

    def blocks(self) -> Iterator[bytes]:
        """Yield blocks of 40 ms, as fast as they are taken, between 0.32 s and a second of silence."""
        rate = self._file.rate_hz
        rest = bytes(_BEFORE_BYTES)  # or a cue at the very start would stand out from nothing
        while not self._closed and (samples := self._file.read_mono(rate)):
            rest += resample(samples.tobytes(), rate, HEARING_RATE_HZ)
            while len(rest) >= _BLOCK_BYTES and not self._closed:
                yield rest[:_BLOCK_BYTES]
                rest = rest[_BLOCK_BYTES:]
        rest += bytes(HEARING_RATE_HZ * 2)  # so that speech up to the very end of it is heard out
        while len(rest) >= _BLOCK_BYTES and not self._closed:
            yield rest[:_BLOCK_BYTES]
            rest = rest[_BLOCK_BYTES:]

    def close(self) -> None:
        """Let go of the file."""
        self._closed = True
        self._file.close()
