from __future__ import annotations

import math
import struct
import wave
from array import array
from pathlib import Path

import numpy as np
import pytest
import scipy

from stepper.devices.wav_file import WavFile, WavFormatError

TONE = np.sin(np.arange(4000) / 7) * 0.5


def heard(path: Path) -> array[int]:
    """Read a file in odd pieces."""
    file = WavFile(path)
    samples: array[int] = array("h")
    while piece := file.read_mono(777):
        samples += piece
    file.close()
    return samples


@pytest.mark.parametrize("kind", ["uint8", "int16", "int32", "float32", "float64"])
def test_every_kind_of_sample_is_read_as_scipy_wrote_it(kind: str, tmp_path: Path) -> None:
    """The same tone within two steps of 8 bits; stereo is the mean of its channels."""
    scale = {"uint8": 127, "int16": 32_767, "int32": 2_147_483_647}.get(kind, 1)
    sound = TONE * scale + (128 if kind == "uint8" else 0)
    scipy.io.wavfile.write(tmp_path / "mono.wav", 22_050, sound.astype(kind))
    scipy.io.wavfile.write(tmp_path / "stereo.wav", 22_050, np.stack([sound, sound], 1).astype(kind))
    for name in ("mono.wav", "stereo.wav"):
        samples = np.array(heard(tmp_path / name)) / 32_767
        assert len(samples) == len(TONE)
        assert np.abs(samples - TONE).max() < 0.016


def test_the_longer_header_is_read_as_the_shorter(tmp_path: Path) -> None:
    """Most programs write 24 bits so: format tag 0xFFFE, the kind of sample in the sub-format."""
    samples = b"".join(int(value * 8_388_607).to_bytes(3, "little", signed=True) for value in TONE)
    with wave.open(str(tmp_path / "short.wav"), "wb") as made:
        made.setnchannels(1)
        made.setsampwidth(3)
        made.setframerate(44_100)
        made.writeframes(samples)
    guid = struct.pack("<H", 1) + bytes.fromhex("000000001000800000aa00389b71")
    form = struct.pack("<HHIIHHHHI", 0xFFFE, 1, 44_100, 132_300, 3, 24, 22, 24, 4) + guid
    chunks = b"fmt " + struct.pack("<I", len(form)) + form + b"odd " + struct.pack("<I", 3) + b"abc\0"
    chunks += b"data" + struct.pack("<I", len(samples)) + samples
    riff = b"RIFF" + struct.pack("<I", len(chunks) + 4) + b"WAVE" + chunks
    (tmp_path / "long.wav").write_bytes(riff)
    assert heard(tmp_path / "long.wav") == heard(tmp_path / "short.wav")
    assert len(heard(tmp_path / "long.wav")) == len(TONE)


def test_what_is_beyond_the_range_is_clipped_and_what_is_no_number_is_silence(tmp_path: Path) -> None:
    """Floating point may hold anything."""
    scipy.io.wavfile.write(tmp_path / "a.wav", 16_000, np.array([9.0, -9.0, math.nan, math.inf], np.float32))
    assert list(heard(tmp_path / "a.wav")) == [32_767, -32_768, 0, 32_767]


def test_a_file_that_was_cut_off_is_read_as_far_as_it_goes(tmp_path: Path) -> None:
    """A recorder that was killed leaves such files; half a sample is left out."""
    scipy.io.wavfile.write(tmp_path / "a.wav", 16_000, (TONE * 32_767).astype(np.int16))
    whole = (tmp_path / "a.wav").read_bytes()
    (tmp_path / "cut.wav").write_bytes(whole[:1045])
    assert heard(tmp_path / "cut.wav") == heard(tmp_path / "a.wav")[:500]


@pytest.mark.parametrize(
    ("content", "sentence"),
    [
        (b"", "within its header"),
        (b"hello, this is no sound", "no RIFF WAVE header"),
        (b"RIFF\0\0\0\0WAVEdata\0\0\0\0", "before its format"),
        (b"RIFF\0\0\0\0WAVEfmt \x04\0\0\0abcd", "cut off"),
        (
            b"RIFF\0\0\0\0WAVEfmt \x10\0\0\0" + struct.pack("<HHIIHH", 85, 1, 16_000, 0, 0, 0),
            "not known here",
        ),
        (b"RIFF\0\0\0\0WAVEfmt \x10\0\0\0" + struct.pack("<HHIIHH", 1, 0, 16_000, 0, 0, 16), "0 channels"),
        (b"RIFF\0\0\0\0WAVEfmt \x10\0\0\0" + struct.pack("<HHIIHH", 1, 1, 0, 0, 0, 16), "at 0 samples"),
    ],
)
def test_what_is_no_such_file_is_refused_with_a_reason(content: bytes, sentence: str, tmp_path: Path) -> None:
    """Nothing, a text, chunks in the wrong order, a compressed format, no channel, no rate."""
    (tmp_path / "a.wav").write_bytes(content)
    with pytest.raises(WavFormatError, match=sentence):
        WavFile(tmp_path / "a.wav")
