"""A small model that tells which sounds an utterance holds, frame by frame; its weights are packaged.

Eight gated convolutions over the states of the bundled recogniser's encoder, which has run by then anyway.
`models/ears` has its weights, and says how and on whom they were trained.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

from stepper.ears.onnx_session import load_network
from stepper.ears.packaged_weights import weights_path

WEIGHTS = weights_path("sounds.onnx")
"""The weights that come with the package."""


FRAME_S = 0.024
"""Length of what each row of `SoundModel.likely` tells about. Unit: s."""


class SoundModel:
    """Estimates how likely each sound is in each frame."""

    def __init__(self, weights: Path | None = None) -> None:
        """Load the model.

        Args:
            weights: Its file; None for the packaged one.

        Raises:
            SurroundingsError: onnxruntime is not installed, or the weights are damaged.
        """
        self._network = load_network(weights or WEIGHTS, "The recogniser's model of sounds")

    def likely(self, states: Any) -> Any:
        """Return the natural log-probability of each sound in each frame.

        Args:
            states: What the encoder made of an utterance: 1 × frames × 288.

        Returns:
            Frames of 24 ms × columns; column 0 is no sound, and column n + 1 the sound number n of
            `pronouncing.SOUNDS`. Each row adds up to 1.
        """
        return self._network.run(None, {"states": states})[0][0]
