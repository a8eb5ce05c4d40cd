"""Open the one output stream: PortAudio's when it can, miniaudio's when not."""

from __future__ import annotations

from collections.abc import Callable

from stepper.devices.miniaudio_output import MiniaudioOutput, miniaudio_devices
from stepper.devices.portaudio_output import PortAudioOutput, portaudio_devices
from stepper.devices.ports import NoOutputError, OutputStream

_KINDS: tuple[tuple[str, Callable[[int, str], OutputStream]], ...] = (
    ("PortAudio", PortAudioOutput),
    ("miniaudio", MiniaudioOutput),
)
"""In the order in which they are tried."""


def open_output(rate_hz: int, device: str = "") -> OutputStream:
    """Open a stream to a sound device and let it run.

    Args:
        rate_hz: Samples per second that the voice makes. Range: 8000 to 48000.
        device: Part of the name of a device; empty for the usual one.

    Raises:
        NoOutputError: Nothing can be opened; the text names what each library found.
    """
    reasons = []
    for name, kind in _KINDS:
        try:
            return kind(rate_hz, device)
        except NoOutputError as reason:
            reasons.append(f"{name}: {reason}")
    raise NoOutputError(f"no sound device can be opened ({'; '.join(reasons)})")


def output_devices() -> tuple[str, ...]:
    """Name the devices that sound can go out through, as `open_output` takes them; none without sound."""
    return portaudio_devices() or miniaudio_devices()
