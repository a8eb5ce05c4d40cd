from __future__ import annotations

import wave
from array import array
from pathlib import Path

import pytest

from stepper.devices.wav_microphone import WavMicrophone
from stepper.ears.gate import Gate
from stepper.ears.listen import measure_level_db
from stepper.errors import SurroundingsError

BEFORE = 5120
"""Samples of silence in front of a recording: 0.32 s."""
SECOND = 32_000
"""Bytes of a second at 16 kHz, one channel, 16 bit: 16,000 samples of 2 bytes."""


def written(path: Path, *, rate: int, channels: int, width: int, frames: bytes) -> Path:
    """Write a WAV file."""
    with wave.open(str(path), "wb") as file:
        file.setnchannels(channels)
        file.setsampwidth(width)
        file.setframerate(rate)
        file.writeframes(frames)
    return path


@pytest.mark.parametrize("rate", [8_000, 16_000, 22_050, 48_000])
@pytest.mark.parametrize("channels", [1, 2])
@pytest.mark.parametrize("width", [1, 2, 3])
def test_any_rate_and_width_lasts_as_long_as_it_did(
    tmp_path: Path, rate: int, channels: int, width: int
) -> None:
    """Two seconds of sound stay two seconds, with 0.32 s of silence before and one after them."""
    path = written(
        tmp_path / "a.wav",
        rate=rate,
        channels=channels,
        width=width,
        frames=bytes(2 * rate * channels * width),
    )
    heard = b"".join(WavMicrophone(path).blocks())
    assert len(heard) == pytest.approx(3.32 * SECOND, abs=2_000)


def test_both_channels_are_heard_at_their_mean(tmp_path: Path) -> None:
    """1000 on the left and 3000 on the right are 2000: the arithmetic mean."""
    path = written(
        tmp_path / "a.wav", rate=16_000, channels=2, width=2, frames=array("h", [1000, 3000] * 1600).tobytes()
    )
    heard = array("h", b"".join(WavMicrophone(path).blocks()))
    assert set(heard[BEFORE : BEFORE + 1600]) == {2000}


def test_the_upper_bits_of_24_are_kept(tmp_path: Path) -> None:
    """0x123456 keeps 0x1234."""
    path = written(
        tmp_path / "a.wav", rate=16_000, channels=1, width=3, frames=bytes([0x56, 0x34, 0x12]) * 1600
    )
    heard = array("h", b"".join(WavMicrophone(path).blocks()))
    assert set(heard[BEFORE : BEFORE + 1600]) == {0x1234}


def test_a_recording_that_begins_and_ends_with_speech_is_one_utterance(tmp_path: Path) -> None:
    """A second of it from the first sample to the last, through the gate, is cut out whole."""
    loud = array("h", [9000, -9000] * 8000).tobytes()
    path = written(tmp_path / "a.wav", rate=16_000, channels=1, width=2, frames=loud)
    sound, gate = b"".join(WavMicrophone(path).blocks()), Gate()
    chunks = [sound[at : at + 1024] for at in range(0, len(sound) - 1023, 1024)]
    found = [gate.take(chunk, speech=any(chunk), level_db=measure_level_db(chunk)) for chunk in chunks]
    (utterance,) = filter(None, found)
    assert len(loud) <= len(utterance) <= len(loud) + SECOND // 2


@pytest.mark.parametrize("content", [b"", b"no sound at all", b"RIFF\x00\x00\x00\x00WAVE"])
def test_what_is_no_wav_file_is_refused_in_a_sentence(tmp_path: Path, content: bytes) -> None:
    """Bad input is named, not a traceback."""
    path = tmp_path / "bad.wav"
    path.write_bytes(content)
    with pytest.raises(SurroundingsError, match="cannot be heard"):
        WavMicrophone(path)


def test_a_missing_file_is_refused_in_a_sentence(tmp_path: Path) -> None:
    """A path to nothing is named too."""
    with pytest.raises(SurroundingsError, match="cannot be heard"):
        WavMicrophone(tmp_path / "none.wav")
