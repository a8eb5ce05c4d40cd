"""Sound in and out through PortAudio."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Literal

from stepper.devices import portaudio
from stepper.devices.played_sound import PlayedSound
from stepper.devices.ports import HEARING_RATE_HZ, Door, NoDeviceError, NoInputError, NoOutputError
from stepper.devices.resample import resample
from stepper.devices.stderr import quiet_stderr
from stepper.devices.streams import BLOCK_FRAMES, BLOCK_MS, BufferedInput, BufferedOutput

_LATENCY_S = 0.04
"""How far ahead the device asks for sound: short for a quick silence, long enough for a busy machine."""
_BLOCK_S = 0.02
"""How much it asks for at once. Left to itself it asked 84 times a second, which took twice the processor
time at the same latency."""

_Side = Literal["input", "output"]


class PortAudioInput(BufferedInput):
    """One microphone stream of PortAudio."""

    def __init__(
        self, device: str = "", deaf: Callable[[], bool] = lambda: False, door: Door | None = None
    ) -> None:
        """Open the stream and let it run.

        Args:
            device: Part of the name of a microphone; empty for the usual one.
            deaf: Whether what comes in now is to be left out.
            door: Decides what of a block is let in.

        Raises:
            NoInputError: PortAudio is not installed, or no such microphone can be opened.
        """
        super().__init__(deaf, door)
        self._rate_hz = HEARING_RATE_HZ
        self._stream = _opened("input", device, HEARING_RATE_HZ, self._started, NoInputError)

    def _started(self, sounddevice: Any, device: str | None, rate_hz: int) -> Any:
        self._rate_hz = rate_hz
        return sounddevice.RawInputStream(
            samplerate=rate_hz,
            channels=1,
            dtype="int16",
            device=device,
            blocksize=BLOCK_FRAMES if rate_hz == HEARING_RATE_HZ else rate_hz * BLOCK_MS // 1000,
            callback=self._heard,
            finished_callback=self.ended,
        )

    def _heard(self, pcm: Any, _frame_count: int, _moment: Any, _status: Any) -> None:
        self.put(resample(bytes(pcm), self._rate_hz, HEARING_RATE_HZ))

    def close_device(self) -> None:
        """Close the stream of PortAudio."""
        self._stream.close(ignore_errors=True)


class PortAudioOutput(BufferedOutput):
    """One output stream of PortAudio."""

    def __init__(self, rate_hz: int, device: str = "", played: PlayedSound | None = None) -> None:
        """Open the stream and let it run.

        Args:
            rate_hz: Samples per second that the voice makes; a device that refuses it gets its own rate.
            device: Part of the name of a device; empty for the usual one.
            played: Is told what the device takes.

        Raises:
            NoOutputError: PortAudio is not installed, or no such device can be opened.
        """
        super().__init__(rate_hz, played)
        self._stream = _opened("output", device, rate_hz, self._started, NoOutputError)

    def _started(self, sounddevice: Any, device: str | None, rate_hz: int) -> Any:
        self.refill(rate_hz)
        return sounddevice.RawOutputStream(
            samplerate=rate_hz,
            channels=1,
            dtype="int16",
            device=device,
            latency=_LATENCY_S,
            blocksize=round(rate_hz * _BLOCK_S),
            callback=self._fill,
            finished_callback=self.ended,
        )

    def _fill(self, wanted: Any, frame_count: int, _moment: Any, _status: Any) -> None:
        wanted[:] = self.samples(frame_count, _LATENCY_S)

    def close_device(self) -> None:
        """Close the stream of PortAudio."""
        self._stream.close(ignore_errors=True)


def portaudio_names(side: _Side) -> tuple[str, ...]:
    """Return the names of the microphones or loudspeakers; none if PortAudio is not installed."""
    with quiet_stderr():
        try:
            sounddevice = portaudio.load_portaudio()
        except NoDeviceError:
            return ()
        return tuple(each["name"] for each in sounddevice.query_devices() if each[f"max_{side}_channels"] > 0)


def _opened(
    side: _Side,
    name: str,
    rate_hz: int,
    make: Callable[[Any, str | None, int], Any],
    refusal: type[NoDeviceError],
) -> Any:
    """Open a stream and let it run, at the rate asked for or, if that is refused, at the device's own."""
    device = name or None

    def run(rate_hz: int) -> Any:
        stream = make(sounddevice, device, rate_hz)
        stream.start()
        return stream

    with quiet_stderr():
        try:
            sounddevice = portaudio.load_portaudio()
        except NoDeviceError as error:
            raise refusal(str(error)) from error
        try:
            try:
                return run(rate_hz)
            except sounddevice.PortAudioError:
                own_rate_hz = int(sounddevice.query_devices(device, side)["default_samplerate"])
                if own_rate_hz == rate_hz:
                    raise
                return run(own_rate_hz)
        except (sounddevice.PortAudioError, ValueError) as error:
            raise refusal(str(error)) from error
