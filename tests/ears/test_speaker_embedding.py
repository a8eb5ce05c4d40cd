from __future__ import annotations

from itertools import combinations

import numpy as np
import pytest

from stepper.devices.resample import resample
from stepper.ears.speaker_embedding import SpeakerEncoder, likeness
from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.settings import SpeechSettings

LINES = ("The kettle is on and the lamp is lit.", "I have all the evening for this yoke.")

FILM = "Nobody told me about the letter, and the train to the old bridge was late again yesterday."


def said(voice: str, line: str) -> bytes:
    """Return a line as a synthetic voice says it, as it is listened to."""
    made = EspeakVoice(SpeechSettings(voice=voice))
    try:
        return resample(made.speech(line, 150), made.rate_hz, 16_000)
    finally:
        made.close()


def test_one_voice_is_more_like_itself_than_like_any_other() -> None:
    """Two lines of one voice lie nearer each other than lines of two: three voices, every pair."""
    encoder = SpeakerEncoder()
    voices = ("en-us", "en-us+f3", "en-gb-x-rp+m7")
    vectors = {(voice, line): encoder.vector(said(voice, line)) for voice in voices for line in LINES}
    own = [likeness(vectors[voice, LINES[0]], vectors[voice, LINES[1]]) for voice in voices]
    others = [likeness(vectors[a, LINES[0]], vectors[b, LINES[1]]) for a, b in combinations(voices, 2)]
    assert min(own) > max(others) + 0.1


def test_a_film_behind_her_hardly_hides_who_speaks() -> None:
    """10 dB above a film she is still more like herself than like who speaks there."""
    encoder, her, other = SpeakerEncoder(), "en-us", "en-us+f3"
    clean, film = (np.frombuffer(said(each, line), np.int16).astype(float) for each, line in ((her, LINES[0]), (other, FILM)))
    film = film[: len(clean)] * np.sqrt((clean**2).mean() / (film**2).mean()) * 10 ** (-10 / 20)
    amid = encoder.vector((clean + film).clip(-32_768, 32_767).astype(np.int16).tobytes())
    like_her, like_other = (likeness(amid, encoder.vector(said(each, LINES[1]))) for each in (her, other))
    assert like_her > like_other + 0.1


@pytest.mark.parametrize("sound", [b"", bytes(2), bytes(64_000)])
def test_whatever_is_heard_has_a_vector_of_length_one(sound: bytes) -> None:
    """Silence, or next to nothing, does not stop the ears."""
    vector = SpeakerEncoder().vector(sound)
    assert likeness(vector, vector) == pytest.approx(1.0, abs=1e-3)
