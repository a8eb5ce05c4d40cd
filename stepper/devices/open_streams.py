"""Open the one input and the one output stream: PortAudio's if possible, otherwise miniaudio's."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

from stepper.devices.miniaudio_streams import MiniaudioInput, MiniaudioOutput, miniaudio_names
from stepper.devices.played_sound import PlayedSound
from stepper.devices.portaudio_streams import PortAudioInput, PortAudioOutput, portaudio_names
from stepper.devices.ports import (
    Door,
    InputStream,
    NoDeviceError,
    NoInputError,
    NoOutputError,
    OutputStream,
)

_Stream = TypeVar("_Stream")


def open_input(
    device: str = "", deaf: Callable[[], bool] = lambda: False, door: Door | None = None
) -> InputStream:
    """Open a stream from a microphone and let it run.

    Args:
        device: Part of the name of a microphone; empty for the usual one.
        deaf: Whether what comes in now is to be left out.
        door: Decides what of a block is let in; if None, all of it while the ears are open.

    Raises:
        NoInputError: Nothing can be opened; the text names what each library found.
    """
    ways: dict[str, Callable[[], InputStream]] = {
        "PortAudio": lambda: PortAudioInput(device, deaf, door),
        "miniaudio": lambda: MiniaudioInput(device, deaf, door),
    }
    return _first(ways, "no microphone", NoInputError)


def open_output(rate_hz: int, device: str = "", played: PlayedSound | None = None) -> OutputStream:
    """Open a stream to a sound device and let it run.

    Args:
        rate_hz: Samples per second that the voice makes. Range: 8000 to 48000.
        device: Part of the name of a device; empty for the usual one.
        played: Is told what the device takes, if anybody wants to know.

    Raises:
        NoOutputError: Nothing can be opened; the text names what each library found.
    """
    ways: dict[str, Callable[[], OutputStream]] = {
        "PortAudio": lambda: PortAudioOutput(rate_hz, device, played),
        "miniaudio": lambda: MiniaudioOutput(rate_hz, device, played),
    }
    return _first(ways, "no sound device", NoOutputError)


def list_microphones() -> tuple[str, ...]:
    """Return the names of the microphones as `open_input` takes them; none without sound."""
    return portaudio_names("input") or miniaudio_names("input")


def list_loudspeakers() -> tuple[str, ...]:
    """Return the names of the output devices as `open_output` takes them; none without sound."""
    return portaudio_names("output") or miniaudio_names("output")


def _first(ways: dict[str, Callable[[], _Stream]], nothing: str, refusal: type[NoDeviceError]) -> _Stream:
    """Return the stream opened by the first way that works; they are tried in order."""
    reasons = []
    for library, opened in ways.items():
        try:
            return opened()
        except refusal as reason:
            reasons.append(f"{library}: {reason}")
    raise refusal(f"{nothing} can be opened ({'; '.join(reasons)})")
