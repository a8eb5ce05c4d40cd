"""Sound in and out through miniaudio, which brings its own library, for machines without PortAudio.

miniaudio itself converts from and to the device's rate.
"""

from __future__ import annotations

from collections.abc import Callable, Generator, Iterable, Mapping
from typing import Any, Literal

from stepper.devices.played_sound import PlayedSound
from stepper.devices.ports import HEARING_RATE_HZ, Door, NoDeviceError, NoInputError, NoOutputError
from stepper.devices.stderr import quiet_stderr
from stepper.devices.streams import BLOCK_FRAMES, BLOCK_MS, SAMPLE_BYTES, BufferedInput, BufferedOutput

_BLOCK_BYTES = BLOCK_FRAMES * SAMPLE_BYTES
_PERIOD_MS = 20
_PERIODS = 3
_LATENCY_S = _PERIOD_MS * _PERIODS / 1000
_NO_BACKEND = "Null"
"""The backend miniaudio silently takes when the system has no sound: it plays nothing and hears nothing."""

_Side = Literal["input", "output"]
_NOUNS: dict[_Side, str] = {"input": "microphone", "output": "device"}


class MiniaudioInput(BufferedInput):
    """One microphone stream of miniaudio."""

    def __init__(
        self, device: str = "", deaf: Callable[[], bool] = lambda: False, door: Door | None = None
    ) -> None:
        """Open the stream and let it run.

        Args:
            device: Part of the name of a microphone; empty for the usual one.
            deaf: Whether what comes in now is to be left out.
            door: Decides what of a block is let in.

        Raises:
            NoInputError: miniaudio is not installed, or no such microphone can be opened.
        """
        super().__init__(deaf, door)
        how = {"sample_rate": HEARING_RATE_HZ, "buffersize_msec": BLOCK_MS}
        self._device = _started("input", device, how, self._blocks(), self.ended, NoInputError)

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


class MiniaudioOutput(BufferedOutput):
    """One output stream of miniaudio."""

    def __init__(self, rate_hz: int, device: str = "", played: PlayedSound | None = None) -> None:
        """Open the stream and let it run.

        Args:
            rate_hz: Samples per second that the voice makes.
            device: Part of the name of a device; empty for the usual one.
            played: Is told what the device takes.

        Raises:
            NoOutputError: miniaudio is not installed, or no such device can be opened.
        """
        super().__init__(rate_hz, played)
        how = {"sample_rate": rate_hz, "buffersize_msec": _PERIOD_MS, "callback_periods": _PERIODS}
        self._device = _started("output", device, how, self._sound(), self.ended, NoOutputError)

    def _sound(self) -> Generator[bytes, int, None]:
        frame_count = yield b""
        while True:
            frame_count = yield self.samples(frame_count, _LATENCY_S)

    def close_device(self) -> None:
        """Close the device of miniaudio."""
        self._device.close()


def miniaudio_names(side: _Side) -> tuple[str, ...]:
    """Return the names of the microphones or loudspeakers; none without miniaudio or without sound."""
    with quiet_stderr():
        try:
            import miniaudio
        except ImportError:
            return ()
        try:
            devices = miniaudio.Devices()
            if devices.backend == _NO_BACKEND:
                return ()
            return tuple(each["name"] for each in _listed(devices, side))
        except miniaudio.MiniaudioError:
            return ()


def find_device(found: Iterable[Mapping[str, Any]], name: str) -> Any:
    """Return what miniaudio knows a device by.

    Args:
        found: Devices as miniaudio lists them.
        name: Part of a name, in any case.

    Returns:
        The identifier of the first that fits; None if none does.
    """
    return next((each["id"] for each in found if name.casefold() in each["name"].casefold()), None)


def _started(
    side: _Side,
    name: str,
    how: Mapping[str, int],
    sound: Generator[Any, Any, None],
    ended: Callable[[], None],
    refusal: type[NoDeviceError],
) -> Any:
    """Open a device and let it run; raise `refusal` if it cannot be opened."""
    with quiet_stderr():
        try:
            import miniaudio
        except ImportError as error:
            raise refusal("it is not installed") from error
        try:
            device = _opened(miniaudio, side, name, how, refusal)
            next(sound)
            device.stop_callback = ended
            device.start(sound)
        except miniaudio.MiniaudioError as error:
            raise refusal(str(error.args[0])) from error
        return device


def _opened(
    miniaudio: Any, side: _Side, name: str, how: Mapping[str, int], refusal: type[NoDeviceError]
) -> Any:
    mark = None
    if name:
        mark = find_device(_listed(miniaudio.Devices(), side), name)
        if mark is None:
            raise refusal(f'there is no {_NOUNS[side]} named "{name}"')
    is_input = side == "input"
    kind = miniaudio.CaptureDevice if is_input else miniaudio.PlaybackDevice
    sample_format = {"input_format" if is_input else "output_format": miniaudio.SampleFormat.SIGNED16}
    device = kind(**sample_format, nchannels=1, device_id=mark, app_name="stepper", **how)
    if device.backend == _NO_BACKEND:
        device.close()
        raise refusal("it knows no sound of this system")
    return device


def _listed(devices: Any, side: _Side) -> Iterable[Mapping[str, Any]]:
    found: Iterable[Mapping[str, Any]]
    found = devices.get_captures() if side == "input" else devices.get_playbacks()
    return found
