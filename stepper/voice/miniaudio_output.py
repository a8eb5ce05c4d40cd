"""Sound out through miniaudio, which carries its library along, for machines without PortAudio."""

from __future__ import annotations

from collections.abc import Generator
from contextlib import suppress
from threading import Event, Thread
from typing import Any

from stepper.voice.playing import PlayBuffer
from stepper.voice.resample import at_rate
from stepper.voice.seams import NoOutputError
from stepper.voice.stderr import quiet_stderr

_PERIOD_MS = 20
_PERIODS = 3
_LATENCY_S = _PERIOD_MS * _PERIODS / 1000
_SAMPLE_BYTES = 2
_CLOSE_TIMEOUT_S = 1.0
_NO_BACKEND = "Null"
"""What miniaudio takes without a word when the system has no sound: it plays into nothing."""


class MiniaudioOutput:
    """One output stream of miniaudio."""

    def __init__(self, rate_hz: int, device: str = "") -> None:
        """Open the stream and let it run; miniaudio itself converts to the device's rate.

        Args:
            rate_hz: Samples per second that the voice makes.
            device: Part of the name of a device; empty for the usual one.

        Raises:
            NoOutputError: miniaudio is not installed, or no such device can be opened.
        """
        self._rate_hz = rate_hz
        self._buffer = PlayBuffer(rate_hz)
        self._gone = Event()
        self._closing = False
        with quiet_stderr():
            try:
                import miniaudio
            except ImportError as error:
                raise NoOutputError("it is not installed") from error
            try:
                self._device = self._opened(miniaudio, device)
            except miniaudio.MiniaudioError as error:
                raise NoOutputError(str(error.args[0])) from error

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
        closing = Thread(target=self._close_device, name="closing sound", daemon=True)
        closing.start()
        closing.join(_CLOSE_TIMEOUT_S)

    def _opened(self, miniaudio: Any, name: str) -> Any:
        device = miniaudio.PlaybackDevice(
            output_format=miniaudio.SampleFormat.SIGNED16,
            nchannels=1,
            sample_rate=self._rate_hz,
            buffersize_msec=_PERIOD_MS,
            callback_periods=_PERIODS,
            device_id=_device_id(miniaudio, name),
            app_name="stepper",
        )
        if device.backend == _NO_BACKEND:
            device.close()
            raise NoOutputError("it knows no sound of this system")
        samples = self._samples()
        next(samples)
        device.stop_callback = self._stopped
        device.start(samples)
        return device

    def _samples(self) -> Generator[bytes, int, None]:
        frame_count = yield b""
        while True:
            frame_count = yield self._buffer.take(frame_count * _SAMPLE_BYTES, _LATENCY_S)

    def _stopped(self) -> None:
        if not self._closing:
            self._gone.set()

    def _close_device(self) -> None:
        with suppress(Exception):  # a device that has gone may refuse in any way
            self._device.close()


def _device_id(miniaudio: Any, name: str) -> Any:
    if not name:
        return None
    for each in miniaudio.Devices().get_playbacks():
        if name.casefold() in each["name"].casefold():
            return each["id"]
    raise NoOutputError(f'there is no device named "{name}"')


def miniaudio_devices() -> tuple[str, ...]:
    """Name the devices sound can go out through; none when miniaudio is not installed or finds no sound."""
    with quiet_stderr():
        try:
            import miniaudio
        except ImportError:
            return ()
        try:
            devices = miniaudio.Devices()
            if devices.backend == _NO_BACKEND:
                return ()
            return tuple(each["name"] for each in devices.get_playbacks())
        except miniaudio.MiniaudioError:
            return ()
