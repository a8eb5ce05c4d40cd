from __future__ import annotations

import os
import signal
from collections.abc import Callable, Iterator

import pytest

from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.pieces import LONGEST_PIECE
from stepper.mouth.ports import NoVoiceError
from stepper.mouth.settings import SpeechSettings

_LINE = "Knit to two stitches before the marker, knit two together, slip marker."


@pytest.fixture
def voice() -> Iterator[EspeakVoice]:
    """A voice in a process of its own."""
    made = EspeakVoice(SpeechSettings())
    yield made
    made.close()


def test_the_same_line_sounds_the_same_after_its_process_was_killed(voice: EspeakVoice) -> None:
    """The death of the worker costs nothing that is heard."""
    before = voice.speech(_LINE, 150)
    for _ in range(3):
        os.kill(voice.process_id, signal.SIGKILL)
        assert abs(len(voice.speech(_LINE, 150)) - len(before)) < 0.02 * len(before)


def test_a_voice_that_cannot_be_restarted_stops_with_a_reason(voice: EspeakVoice) -> None:
    """After closing, a line is refused rather than a new process started."""
    voice.close()
    with pytest.raises(NoVoiceError, match="it is closed"):
        voice.speech(_LINE, 150)


def test_closing_ends_the_process(voice: EspeakVoice, is_running: Callable[[int], bool]) -> None:
    """No worker is left when the session ends."""
    process_id = voice.process_id
    assert is_running(process_id)
    voice.close()
    assert not is_running(process_id)


def test_the_longest_piece_is_made_many_times_faster_than_it_is_said(voice: EspeakVoice) -> None:
    """A whole piece is made before any of it is heard, so making it must take no time to speak of."""
    pcm = voice.speech(("knit two together " * 20)[:LONGEST_PIECE], 150)
    assert len(pcm) / 2 / voice.rate_hz > 10


def test_volume_is_loudness() -> None:
    """At a quarter of the volume the loudest sample is well below half as loud; at none there is no sound."""

    def peak(volume: float) -> int:
        voice = EspeakVoice(SpeechSettings(volume=volume))
        try:
            return max(map(abs, memoryview(voice.speech(_LINE, 150)).cast("h")))
        finally:
            voice.close()

    full = peak(1.0)
    assert 3000 < full <= 32_767
    assert peak(0.25) < full / 2
    assert peak(0.0) == 0
