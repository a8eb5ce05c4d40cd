from __future__ import annotations

import numpy as np
import pytest

from stepper.ears.echo import EchoCanceller, can_cancel_echo
from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.settings import SpeechSettings

pytestmark = pytest.mark.skipif(not can_cancel_echo(), reason="the canceller is an extra: pip install '.[ears]'")

LINES = (
    "Round eleven: knit two, purl two, twenty five times.",
    "Change to four millimetre needles and knit to the marker.",
    "Count now: one hundred and ninety expected.",
)
_BLOCK_S = 0.04


@pytest.fixture(scope="module")
def spoken() -> tuple[np.ndarray, int]:
    """What the program says, at the voice's own rate."""
    voice = EspeakVoice(SpeechSettings())
    try:
        pause = b"\0\0" * voice.rate_hz
        return np.frombuffer(pause.join(voice.speech(line, 150) for line in LINES), np.int16), voice.rate_hz
    finally:
        voice.close()


def in_the_room(spoken: tuple[np.ndarray, int]) -> np.ndarray:
    """Return what a microphone hears of it: 60 ms later, 6 dB softer, with a quarter of a second of echoes."""
    from scipy.signal import fftconvolve

    source = np.random.default_rng(5)
    sound, rate_hz = spoken
    at = np.arange(round(len(sound) / rate_hz * 16_000)) * rate_hz / 16_000
    heard = np.interp(at, np.arange(len(sound)), sound.astype(float))
    response = source.standard_normal(4000) * 10 ** (-3 * np.arange(4000) / 4000) * 0.25
    response[0] = 1
    echo = fftconvolve(heard, response / np.sqrt((response**2).sum()))[: len(heard)] / 2
    return np.concatenate([np.zeros(960), echo])[: len(heard)] + source.standard_normal(len(heard)) * 5


def cleaned(near: np.ndarray, spoken: tuple[np.ndarray, int]) -> np.ndarray:
    """Let the canceller work block by block, as it does behind a microphone."""
    canceller, (far, rate_hz) = EchoCanceller(), spoken
    size, far_size = round(_BLOCK_S * 16_000), round(_BLOCK_S * rate_hz)
    heard = np.clip(near, -32_768, 32_767).astype(np.int16)
    found = []
    for number in range(len(heard) // size - 1):
        block = heard[number * size : (number + 1) * size].tobytes()
        found.append(canceller.clean(block, far[number * far_size : (number + 1) * far_size].tobytes(), rate_hz))
        assert len(found[-1]) == len(block)
    return np.frombuffer(b"".join(found), np.int16).astype(float)


def power_db(sound: np.ndarray) -> float:
    """Return the mean power. Unit: dB."""
    return float(10 * np.log10(np.mean(sound**2) + 1e-9))


def test_of_the_programs_own_voice_next_to_nothing_is_left(spoken: tuple[np.ndarray, int]) -> None:
    """Otherwise it would interrupt itself; its voice is at 22,050 samples a second and the ears are at 16,000."""
    near = in_the_room(spoken)
    left = cleaned(near, spoken)
    later = slice(16_000, len(left))  # the first second is for finding the echo
    assert power_db(left[later]) < power_db(near[later]) - 20


def test_what_she_says_meanwhile_is_left(spoken: tuple[np.ndarray, int]) -> None:
    """The canceller knows only what the loudspeaker gave; another voice is none of that."""
    voice = EspeakVoice(SpeechSettings(voice="en-us+f3"))
    try:
        own = np.frombuffer(voice.speech("stepper, where are we now", 150), np.int16).astype(float)
    finally:
        voice.close()
    near = in_the_room(spoken)
    begins = round(2.2 * 16_000)
    hers = np.interp(np.arange(round(len(own) * 16_000 / 22_050)) * 22_050 / 16_000, np.arange(len(own)), own)
    both = near.copy()
    both[begins : begins + len(hers)] += hers
    where = slice(begins, begins + len(hers))
    assert power_db(cleaned(both, spoken)[where]) > power_db(cleaned(near, spoken)[where]) + 15
