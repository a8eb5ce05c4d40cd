"""Sound out through miniaudio, which carries its library along, for machines without PortAudio."""

from __future__ import annotations

from collections.abc import Generator
from typing import Any

from stepper.devices.miniaudio_devices import NO_BACKEND, named, names
from stepper.devices.output_stream import Stream
from stepper.devices.ports import NoOutputError
from stepper.devices.stderr import quiet_stderr

_PERIOD_MS = 20
_PERIODS = 3
_LATENCY_S = _PERIOD_MS * _PERIODS / 1000


class MiniaudioOutput(Stream):
    """One output stream of miniaudio."""

    def __init__(self, rate_hz: int, device: str = "") -> None:
        """Open the stream and let it run; miniaudio itself converts to the device's rate.

        Args:
            rate_hz: Samples per second that the voice makes.
            device: Part of the name of a device; empty for the usual one.

        Raises:
            NoOutputError: miniaudio is not installed, or no such device can be opened.
        """
        super().__init__(rate_hz)
        with quiet_stderr():
            try:
                import miniaudio
            except ImportError as error:
                raise NoOutputError("it is not installed") from error
            try:
                self._device = self._opened(miniaudio, rate_hz, device)
            except miniaudio.MiniaudioError as error:
                raise NoOutputError(str(error.args[0])) from error

    def _opened(self, miniaudio: Any, rate_hz: int, name: str) -> Any:
        device = miniaudio.PlaybackDevice(
            output_format=miniaudio.SampleFormat.SIGNED16,
            nchannels=1,
            sample_rate=rate_hz,
            buffersize_msec=_PERIOD_MS,
            callback_periods=_PERIODS,
            device_id=_device_id(miniaudio, name),
            app_name="stepper",
        )
        if device.backend == NO_BACKEND:
            device.close()
            raise NoOutputError("it knows no sound of this system")
        samples = self._sound()
        next(samples)
        device.stop_callback = self.ended
        device.start(samples)
        return device

    def _sound(self) -> Generator[bytes, int, None]:
        frame_count = yield b""
        while True:
            frame_count = yield self.samples(frame_count, _LATENCY_S)

    def close_device(self) -> None:
        """Close the device of miniaudio."""
        self._device.close()


def _device_id(miniaudio: Any, name: str) -> Any:
    if not name:
        return None
    found = named(miniaudio.Devices().get_playbacks(), name)
    if found is None:
        raise NoOutputError(f'there is no device named "{name}"')
    return found


def miniaudio_devices() -> tuple[str, ...]:
    """Name the devices sound can go out through; none when miniaudio is not installed or finds no sound."""
    return names(lambda devices: devices.get_playbacks())
