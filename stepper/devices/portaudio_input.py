"""Sound in through PortAudio."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from stepper.devices import portaudio
from stepper.devices.input_stream import BLOCK_FRAMES, BLOCK_MS, Intake
from stepper.devices.ports import HEARING_RATE_HZ, NoDeviceError, NoInputError
from stepper.devices.resample import at_rate
from stepper.devices.stderr import quiet_stderr


class PortAudioInput(Intake):
    """One microphone stream of PortAudio."""

    def __init__(self, device: str = "", deaf: Callable[[], bool] = lambda: False) -> None:
        """Open the stream and let it run.

        Args:
            device: Part of the name of a microphone; empty for the usual one.
            deaf: Whether what comes in now is to be left out.

        Raises:
            NoInputError: PortAudio is not installed, or no such microphone can be opened.
        """
        super().__init__(deaf)
        self._rate_hz = HEARING_RATE_HZ
        with quiet_stderr():
            try:
                sounddevice = portaudio.load()
                self._stream = self._opened(sounddevice, device or None)
            except NoDeviceError as error:
                raise NoInputError(str(error)) from error

    def _opened(self, sounddevice: Any, device: str | None) -> Any:
        try:
            try:
                return self._started(sounddevice, device, HEARING_RATE_HZ)
            except sounddevice.PortAudioError:
                own_rate_hz = int(sounddevice.query_devices(device, "input")["default_samplerate"])
                if own_rate_hz == HEARING_RATE_HZ:
                    raise
                return self._started(sounddevice, device, own_rate_hz)
        except (sounddevice.PortAudioError, ValueError) as error:
            raise NoInputError(str(error)) from error

    def _started(self, sounddevice: Any, device: str | None, rate_hz: int) -> Any:
        self._rate_hz = rate_hz
        stream = sounddevice.RawInputStream(
            samplerate=rate_hz,
            channels=1,
            dtype="int16",
            device=device,
            blocksize=BLOCK_FRAMES if rate_hz == HEARING_RATE_HZ else rate_hz * BLOCK_MS // 1000,
            callback=self._heard,
            finished_callback=self.ended,
        )
        stream.start()
        return stream

    def _heard(self, pcm: Any, _frame_count: int, _moment: Any, _status: Any) -> None:
        self.put(at_rate(bytes(pcm), self._rate_hz, HEARING_RATE_HZ))

    def close_device(self) -> None:
        """Close the stream of PortAudio."""
        self._stream.close(ignore_errors=True)


def portaudio_microphones() -> tuple[str, ...]:
    """Name the microphones; none when PortAudio is not installed."""
    with quiet_stderr():
        try:
            sounddevice = portaudio.load()
        except NoDeviceError:
            return ()
        return tuple(each["name"] for each in sounddevice.query_devices() if each["max_input_channels"] > 0)
