from __future__ import annotations

import math
from array import array

import numpy as np
import pytest

from stepper.devices.resample import resample


@pytest.mark.parametrize("to_hz", [16_000, 44_100, 48_000])
def test_a_tone_keeps_its_pitch_length_and_loudness(to_hz: int) -> None:
    """A voice sounds the same through a device that insists on its own rate.

    Source: the discrete Fourier transform of numpy, as an outside judge of pitch.
    """
    tone = array("h", (round(8000 * math.sin(2 * math.pi * 440 * at / 22_050)) for at in range(22_050)))
    out = np.frombuffer(resample(tone.tobytes(), 22_050, to_hz), dtype=np.int16).astype(float)
    assert len(out) == pytest.approx(to_hz, rel=0.002)
    assert np.argmax(np.abs(np.fft.rfft(out))) * to_hz / len(out) == pytest.approx(440, abs=2)
    assert np.std(out) == pytest.approx(8000 / math.sqrt(2), rel=0.03)


def test_sound_at_the_right_rate_is_left_alone() -> None:
    """Nothing is converted without need."""
    assert resample(b"1234", 22_050, 22_050) == b"1234"
    assert resample(b"", 22_050, 48_000) == b""
