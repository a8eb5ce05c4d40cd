"""Sound out through PortAudio."""

from __future__ import annotations

from typing import Any

from stepper.devices import portaudio
from stepper.devices.output_stream import Stream
from stepper.devices.ports import NoDeviceError, NoOutputError
from stepper.devices.stderr import quiet_stderr

_LATENCY_S = 0.04
"""How far ahead the device asks for sound: short for a quick silence, long enough for a busy machine."""
_BLOCK_S = 0.02
"""How much it asks for at once. Left to itself it asked 84 times a second, which took twice the processor at
the same latency, all evening long."""


class PortAudioOutput(Stream):
    """One output stream of PortAudio."""

    def __init__(self, rate_hz: int, device: str = "") -> None:
        """Open the stream and let it run.

        Args:
            rate_hz: Samples per second that the voice makes; a device that refuses it gets its own rate.
            device: Part of the name of a device; empty for the usual one.

        Raises:
            NoOutputError: PortAudio is not installed, or no such device can be opened.
        """
        super().__init__(rate_hz)
        with quiet_stderr():
            try:
                sounddevice = portaudio.load()
            except NoDeviceError as error:
                raise NoOutputError(str(error)) from error
            try:
                self._stream = self._opened(sounddevice, rate_hz, device)
            except (sounddevice.PortAudioError, ValueError) as error:
                raise NoOutputError(str(error)) from error

    def _opened(self, sounddevice: Any, rate_hz: int, device: str) -> Any:
        wanted = device or None
        try:
            return self._started(sounddevice, rate_hz, wanted)
        except sounddevice.PortAudioError:
            own_rate_hz = int(sounddevice.query_devices(wanted, "output")["default_samplerate"])
            if own_rate_hz == rate_hz:
                raise
            return self._started(sounddevice, own_rate_hz, wanted)

    def _started(self, sounddevice: Any, rate_hz: int, device: str | None) -> Any:
        self.refill(rate_hz)
        stream = sounddevice.RawOutputStream(
            samplerate=rate_hz,
            channels=1,
            dtype="int16",
            device=device,
            latency=_LATENCY_S,
            blocksize=round(rate_hz * _BLOCK_S),
            callback=self._fill,
            finished_callback=self.ended,
        )
        stream.start()
        return stream

    def _fill(self, wanted: Any, frame_count: int, _moment: Any, _status: Any) -> None:
        wanted[:] = self.samples(frame_count, _LATENCY_S)

    def close_device(self) -> None:
        """Close the stream of PortAudio."""
        self._stream.close(ignore_errors=True)


def portaudio_devices() -> tuple[str, ...]:
    """Name the devices sound can go out through; none when PortAudio is not installed."""
    with quiet_stderr():
        try:
            sounddevice = portaudio.load()
        except NoDeviceError:
            return ()
        return tuple(each["name"] for each in sounddevice.query_devices() if each["max_output_channels"] > 0)
