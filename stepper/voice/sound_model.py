"""A small model that tells which sounds an utterance holds, frame by frame; its weights are packaged.

Eight gated convolutions over the states of the bundled recogniser's encoder, which has run by then anyway.
`sounds.onnx` was trained by `tests/bench/voice/training` with connectionist temporal classification on
synthetic speech alone: eSpeak NG, a diphone voice of Festival, mixtures of the styles of Kokoro (Apache 2.0)
and what an analysis and synthesis makes of them, near and far, in quiet, music and talk. No recording of a
person is in it, and no voice that `tests/bench/voice` measures with.
"""

from __future__ import annotations

import importlib
from pathlib import Path
from typing import Any

from stepper.errors import SurroundingsError

FRAME_S = 0.024
"""What one frame stands for. Unit: seconds."""

_WEIGHTS = Path(__file__).parent / "sounds.onnx"


class SoundModel:
    """Tells how likely each sound is in each frame."""

    def __init__(self) -> None:
        """Load the model.

        Raises:
            SurroundingsError: onnxruntime is not installed, or the weights are damaged.
        """
        try:
            runtime: Any = importlib.import_module("onnxruntime")
            options = runtime.SessionOptions()
            options.intra_op_num_threads = 1
            options.enable_cpu_mem_arena = False
            self._session = runtime.InferenceSession(str(_WEIGHTS), options)
        except Exception as error:  # onnxruntime raises its own kinds, which derive from nothing narrower
            raise SurroundingsError(f"The recogniser's model of sounds cannot be loaded: {error}") from error

    def likely(self, states: Any) -> Any:
        """Give the natural log-probability of each sound in each frame.

        Args:
            states: What the encoder made of an utterance: 1 × frames × 288.

        Returns:
            Frames × columns; column 0 is no sound, and column n + 1 the sound number n of
            `pronouncing.SOUNDS`. Each row adds up to 1.
        """
        return self._session.run(None, {"states": states})[0][0]
