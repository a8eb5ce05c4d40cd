"""A voice as a vector of 96 numbers: two of one speaker lie near each other, those of two speakers apart.

The recogniser's own encoder has learnt to give of noisy sound what clean sound would give; what its early
layers still hold tells who speaks, through a film as well. A small network makes the vector of it. Source:
`models/ears/README.md`.
"""

from __future__ import annotations

import importlib
from importlib.util import find_spec
from typing import Any, Final

from stepper.ears.onnx_session import load_encoder, load_network
from stepper.ears.packaged_weights import weights_path
from stepper.errors import NotInstalledError

_SHORTEST_SAMPLES: Final = 8000
# Half a second; the states of less are hardly more than its edges.
_LAYERS: Final = ("early", "middle", "states")

Vector = tuple[float, ...]
"""Of length 1."""


class SpeakerEncoder:
    """Turns speech into vectors."""

    def __init__(self) -> None:
        """Load the weights.

        Raises:
            SurroundingsError: What runs them is not installed, or they are damaged.
        """
        if find_spec("onnxruntime") is None or find_spec("numpy") is None:
            raise NotInstalledError("What knows a voice is not installed.", "ears")
        self._encoder = load_encoder(weights_path("encoder.onnx"), "What knows a voice")
        self._network = load_network(weights_path("voices.onnx"), "What knows a voice", in_steps=False)

    def vector(self, sound: bytes) -> Vector:
        """Return the vector of a stretch of speech at the hearing rate; a short one is padded."""
        numpy: Any = importlib.import_module("numpy")
        samples = numpy.frombuffer(sound, numpy.int16).astype(numpy.float32) / 32768
        samples = numpy.pad(samples, (0, max(0, _SHORTEST_SAMPLES - len(samples))))
        layers = self._encoder.run(list(_LAYERS), {"input_values": samples[None]})
        found = self._network.run(None, {"layers": numpy.concatenate(layers, axis=2)})[0][0]
        return tuple(float(each) for each in found)


def likeness(one: Vector, other: Vector) -> float:
    """Return the cosine of the angle between two vectors. Range: -1 to 1."""
    return sum(a * b for a, b in zip(one, other, strict=True))
