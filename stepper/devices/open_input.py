"""Open the one microphone stream: PortAudio's when it can, miniaudio's when not."""

from __future__ import annotations

from collections.abc import Callable

from stepper.devices.miniaudio_input import MiniaudioInput, miniaudio_microphones
from stepper.devices.portaudio_input import PortAudioInput, portaudio_microphones
from stepper.devices.ports import InputStream, NoInputError

_KINDS: tuple[tuple[str, Callable[[str, Callable[[], bool]], InputStream]], ...] = (
    ("PortAudio", PortAudioInput),
    ("miniaudio", MiniaudioInput),
)
"""In the order in which they are tried."""


def open_input(device: str = "", deaf: Callable[[], bool] = lambda: False) -> InputStream:
    """Open a stream from a microphone and let it run.

    Args:
        device: Part of the name of a microphone; empty for the usual one.
        deaf: Whether what comes in now is to be left out.

    Raises:
        NoInputError: Nothing can be opened; the text names what each library found.
    """
    reasons = []
    for name, kind in _KINDS:
        try:
            return kind(device, deaf)
        except NoInputError as reason:
            reasons.append(f"{name}: {reason}")
    raise NoInputError(f"no microphone can be opened ({'; '.join(reasons)})")


def microphones() -> tuple[str, ...]:
    """Name the microphones as `open_input` takes them; none without sound."""
    return portaudio_microphones() or miniaudio_microphones()
