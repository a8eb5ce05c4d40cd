from __future__ import annotations

import re
import wave
from array import array
from pathlib import Path

import numpy as np
import pytest

from stepper.devices.resample import at_rate
from stepper.mouth.ports import NoVoiceError
from stepper.mouth.render import render
from stepper.mouth.settings import SpeechSettings
from tests.ears.hearing import NUDGES, nudged

_LINE = "Knit to two stitches before the marker, knit two together, slip marker."


@pytest.mark.parametrize("engine", ["auto", "espeak", "pyttsx3"])
def test_a_file_holds_the_line(tmp_path: Path, engine: str) -> None:
    """The file lasts as long as is said, and holds speech at a healthy level.

    Source: 12 words at 150 words per minute take 4.8 s.
    """
    path = tmp_path / "line.wav"
    seconds = render(_LINE, path, SpeechSettings(engine=engine))  # type: ignore[arg-type]
    with wave.open(str(path)) as file:
        assert (file.getnchannels(), file.getsampwidth(), file.getframerate()) == (1, 2, 22_050)
        samples = np.frombuffer(file.readframes(file.getnframes()), dtype=np.int16).astype(float)
    assert len(samples) / 22_050 == pytest.approx(seconds)
    assert seconds == pytest.approx(4.8, rel=0.12)
    assert 1000 < np.sqrt(np.mean(samples**2)) < 12_000


def test_a_long_text_loses_nothing(tmp_path: Path) -> None:
    """Twenty lines take about twenty times as long as one."""
    one = render(_LINE, tmp_path / "one.wav", SpeechSettings())
    assert 19 * one < render(" ".join([_LINE] * 20), tmp_path / "many.wav", SpeechSettings()) < 23 * one


@pytest.mark.parametrize("engine", ["auto", "pyttsx3"])
def test_nothing_to_say_is_an_empty_file(tmp_path: Path, engine: str) -> None:
    """An empty line still gives a file that can be opened."""
    path = tmp_path / "empty.wav"
    assert render(" ", path, SpeechSettings(engine=engine)) == 0  # type: ignore[arg-type]
    with wave.open(str(path)) as file:
        assert file.getnframes() == 0


def test_without_an_engine_there_is_no_file(tmp_path: Path) -> None:
    """Who wants no voice gets a reason, not a silent file."""
    with pytest.raises(NoVoiceError):
        render(_LINE, tmp_path / "none.wav", SpeechSettings(engine="none"))
    assert not list(tmp_path.iterdir())


def test_a_place_that_cannot_be_written_is_an_error(tmp_path: Path) -> None:
    """The caller is told when there is no file."""
    with pytest.raises(FileNotFoundError):
        render(_LINE, tmp_path / "no" / "folder.wav", SpeechSettings())


def test_a_recogniser_understands_numbers_and_words(tmp_path: Path) -> None:
    """What is said can be understood, numbers above all: these each time, and of all words two in
    three (four in five where it was measured).

    Source: the English model in the wheel of moonshine-voice 0.1.0, which stands in for a person's ear.
    """
    moonshine = pytest.importorskip("moonshine_voice", reason="moonshine-voice 0.1.0 is not installed")
    transcriber = pytest.importorskip("moonshine_voice.transcriber").Transcriber(
        moonshine.get_model_path("tiny-en"), moonshine.ModelArch.TINY, options={"vad_threshold": "0"}
    )

    def heard(line: str, seed: int) -> list[str]:
        path = tmp_path / "line.wav"
        render(line, path, SpeechSettings())
        with wave.open(str(path)) as file:
            pcm = bytes(16_000) + at_rate(file.readframes(file.getnframes()), 22_050, 16_000) + bytes(16_000)
        samples = [value / 32_768 for value in array("h", nudged(pcm, seed))]
        text = " ".join(line.text for line in transcriber.transcribe_without_streaming(samples, 16_000).lines)
        return re.findall(r"[a-z]+|\d+", text.lower())

    lines = {
        "You should have 246 stitches.": "246",
        "Repeat to the end of the round.": "end",
        "Slip the marker and purl 17.": "17",
        "Knit 2 together, then knit 36.": "36",
    }
    said, understood = 0, 0
    for line, above_all in lines.items():
        wanted = re.findall(r"[a-z]+|\d+", line.lower())
        for seed in NUDGES:
            words = heard(line, seed)
            assert above_all in words
            said += len(wanted)
            understood += sum(word in words for word in wanted)
    assert understood > 2 / 3 * said
