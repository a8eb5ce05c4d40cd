"""What tests of hearing share: sound to hear, the same sound by a hair different, and the networks that hear it.

The bundled network rounds to 8 bits, and what it makes of a sound at an edge differs between processors. A
nudge, one sample changed by one step of 32,768, moves what it makes of a sound as far as leaving out all rounding
does; `python -m tests.bench.voice.processors` measures both. So a test of hearing asks for the same of a sound, of
its nudges, and of the network's twin that rounds nothing.
"""

from __future__ import annotations

import random
from array import array
from functools import cache
from importlib.util import find_spec
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest

from stepper.devices.wav_microphone import WavMicrophone
from stepper.ears.bundled.moonshine_model import MoonshineModel
from stepper.mouth.settings import SpeechSettings
from tests.bench.voice.twin import make_twin
from tests.speech import render

NUDGES = range(4)
"""Seeds; the first leaves the sound as it is."""
NETWORKS = ("packaged", "twin")
needs_recogniser = pytest.mark.skipif(
    find_spec("moonshine_voice") is None, reason="the recogniser is not installed"
)


def sound(text: str, folder: Path, voice: str = "") -> bytes:
    """Let a synthetic voice say a text."""
    render(text, folder / "a.wav", SpeechSettings(engine="espeak", voice=voice))
    return b"".join(WavMicrophone(folder / "a.wav").blocks())


def nudged(pcm: bytes, seed: int) -> bytes:
    """Change one sample, drawn at random, by one step; none for the seed 0."""
    samples = array("h", pcm)
    if seed and samples:
        at = random.Random(seed).randrange(len(samples))
        samples[at] += 1 if samples[at] < 32_767 else -1
    return samples.tobytes()


def nudges(pcm: bytes) -> list[bytes]:
    """List a sound and what is by a hair different from it."""
    return [nudged(pcm, seed) for seed in NUDGES]


@cache
def model(network: str) -> MoonshineModel:
    """Load one of the networks; the twin is made at the first call, and skips the test where it cannot be."""
    if network == "packaged":
        return MoonshineModel()
    pytest.importorskip("onnx", reason="the package onnx, which the network's twin is made with, is missing")
    with TemporaryDirectory() as folder:
        return MoonshineModel(make_twin(Path(folder)))
