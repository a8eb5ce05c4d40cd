from __future__ import annotations

from collections.abc import Mapping, Sequence
from importlib.util import find_spec
from typing import Any

import numpy as np
import pytest

from stepper.ears.bundled.sliding_encoder import SlidingEncoder
from stepper.ears.gate import CHUNK_S
from stepper.ears.onnx_session import load_encoder
from stepper.ears.packaged_weights import weights_path

pytestmark = pytest.mark.skipif(find_spec("onnxruntime") is None, reason="onnxruntime is not installed")

CHUNK = round(CHUNK_S * 16_000)


class Counting:
    """The encoder, and how much sound it was given in all."""

    def __init__(self) -> None:
        """Load it."""
        self._network = load_encoder(weights_path("encoder.onnx"), "It")
        self.samples = 0

    def get_outputs(self) -> Any:
        """Return what it gives."""
        return self._network.get_outputs()

    def run(self, names: Sequence[str], given: Mapping[str, Any]) -> Any:
        """Run it."""
        self.samples += given["input_values"].shape[1]
        return self._network.run(names, given)

    def afresh(self, pcm: bytes) -> Any:
        """Return what it makes of a stretch of sound by itself."""
        sound = np.frombuffer(pcm, np.int16).astype(np.float32) / 32768
        return self._network.run(["states"], {"input_values": sound[None]})[0]


def sound_of(seconds: float) -> bytes:
    """Return noise that grows and falls, with half a second of silence in its middle."""
    count = round(seconds * 16_000)
    noise = np.random.default_rng(1).standard_normal(count) * 1500 * (1.2 + np.sin(np.arange(count) / 3000))
    noise[count // 2 : count // 2 + 8000] = 0
    return noise.astype(np.int16).tobytes()


WAYS = {
    "windows that slide": [(at * 12, 75 + at * 12) for at in range(6)],
    "windows at any distance": [(0, 75), (13, 88), (26, 101), (38, 113), (38, 113)],
    "a wide window, and a narrow one at its end": [(0, 156), (81, 156), (93, 168), (12, 168)],
    "what the gate cuts out meanwhile": [(0, 75), (20, 70), (12, 87), (20, 90), (24, 99)],
    "what goes on": [(0, 40), (0, 60), (0, 61), (0, 30)],
    "back and forth": [(60, 135), (0, 75), (72, 147), (12, 87)],
}
"""First chunk and the one behind the last of each stretch that is encoded."""


@pytest.mark.parametrize("way", WAYS)
def test_what_is_known_from_before_changes_nothing_that_is_heard(way: str) -> None:
    """The states are those of the stretch alone, to the rounding of sums made in another order."""
    network, sound = Counting(), sound_of(6)
    sliding = SlidingEncoder(network)
    for begin, end in WAYS[way]:
        pcm = sound[begin * CHUNK * 2 : end * CHUNK * 2]
        found, expected = sliding.states(pcm), network.afresh(pcm)
        assert found.shape == expected.shape
        assert np.abs(found - expected).max() < 1e-4


def test_a_window_that_slides_costs_what_is_new_in_it() -> None:
    """Five windows of 2.4 s, 0.4 s behind one another: a quarter of the sound goes through the convolutions."""
    network, sound = Counting(), sound_of(6)
    sliding = SlidingEncoder(network)
    for begin, end in WAYS["windows that slide"]:
        sliding.states(sound[begin * CHUNK * 2 : end * CHUNK * 2])
    assert network.samples < 0.4 * 6 * 75 * CHUNK


def test_silence_is_like_itself_everywhere_and_costs_no_more() -> None:
    """A window of nothing but zeros, as while a microphone is muted, is found in one step."""
    network = Counting()
    sliding = SlidingEncoder(network)
    for _ in range(3):
        assert np.abs(sliding.states(bytes(75 * CHUNK * 2)) - network.afresh(bytes(75 * CHUNK * 2))).max() < 1e-4
    assert network.samples < 1.3 * 75 * CHUNK
