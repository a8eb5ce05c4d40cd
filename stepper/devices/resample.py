"""Convert sound to another sample rate, for devices that insist on their own."""

from __future__ import annotations

from stepper.devices.ports import NoOutputError


def resample(pcm: bytes, from_hz: int, to_hz: int) -> bytes:
    """Convert one channel of signed 16-bit sound.

    Args:
        pcm: The sound.
        from_hz: Samples per second it has.
        to_hz: Samples per second it is to have.

    Returns:
        Sound of the same length in time.

    Raises:
        NoOutputError: The rates differ and the package miniaudio, which does the conversion, is not
            installed.
    """
    if from_hz == to_hz or not pcm:
        return pcm
    try:
        import miniaudio
    except ImportError as error:
        raise NoOutputError(f"the device wants {to_hz} samples a second and miniaudio is missing") from error
    kind = miniaudio.SampleFormat.SIGNED16
    return bytes(miniaudio.convert_frames(kind, 1, from_hz, pcm, kind, 1, to_hz))
