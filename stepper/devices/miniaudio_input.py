"""Sound in through miniaudio, which carries its library along, for machines without PortAudio."""

from __future__ import annotations

from collections.abc import Callable, Generator
from typing import Any

from stepper.devices.input_stream import BLOCK_FRAMES, BLOCK_MS, Intake
from stepper.devices.miniaudio_devices import NO_BACKEND, named, names
from stepper.devices.ports import HEARING_RATE_HZ, NoInputError
from stepper.devices.stderr import quiet_stderr

_BLOCK_BYTES = BLOCK_FRAMES * 2


class MiniaudioInput(Intake):
    """One microphone stream of miniaudio, which itself converts from the device's rate."""

    def __init__(self, device: str = "", deaf: Callable[[], bool] = lambda: False) -> None:
        """Open the stream and let it run.

        Args:
            device: Part of the name of a microphone; empty for the usual one.
            deaf: Whether what comes in now is to be left out.

        Raises:
            NoInputError: miniaudio is not installed, or no such microphone can be opened.
        """
        super().__init__(deaf)
        with quiet_stderr():
            try:
                import miniaudio
            except ImportError as error:
                raise NoInputError("it is not installed") from error
            try:
                self._device = self._opened(miniaudio, device)
            except miniaudio.MiniaudioError as error:
                raise NoInputError(str(error.args[0])) from error

    def _opened(self, miniaudio: Any, name: str) -> Any:
        device = miniaudio.CaptureDevice(
            input_format=miniaudio.SampleFormat.SIGNED16,
            nchannels=1,
            sample_rate=HEARING_RATE_HZ,
            buffersize_msec=BLOCK_MS,
            device_id=_device_id(miniaudio, name),
            app_name="stepper",
        )
        if device.backend == NO_BACKEND:
            device.close()
            raise NoInputError("it knows no sound of this system")
        blocks = self._blocks()
        next(blocks)
        device.stop_callback = self.ended
        device.start(blocks)
        return device

    def _blocks(self) -> Generator[None, bytes, None]:
        held = b""
        while True:
            held += bytes((yield))
            while len(held) >= _BLOCK_BYTES:
                self.put(held[:_BLOCK_BYTES])
                held = held[_BLOCK_BYTES:]

    def close_device(self) -> None:
        """Close the device of miniaudio."""
        self._device.close()


def _device_id(miniaudio: Any, name: str) -> Any:
    if not name:
        return None
    found = named(miniaudio.Devices().get_captures(), name)
    if found is None:
        raise NoInputError(f'there is no microphone named "{name}"')
    return found


def miniaudio_microphones() -> tuple[str, ...]:
    """Name the microphones; none when miniaudio is not installed or finds no sound."""
    return names(lambda devices: devices.get_captures())
