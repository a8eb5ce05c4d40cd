"""Load a neural network into onnxruntime, on one thread: the program must not take both cores from a film."""

from __future__ import annotations

import importlib
from pathlib import Path
from typing import Any

from stepper.errors import SurroundingsError

_ERRORS_ONLY = 3


def load_network(path: Path, whose: str) -> Any:
    """Load a network.

    Args:
        path: Its file.
        whose: What to call it in the sentence if it cannot be loaded.

    Returns:
        An `onnxruntime.InferenceSession`.

    Raises:
        SurroundingsError: onnxruntime is not installed, or the file is missing or damaged.
    """
    try:
        runtime: Any = importlib.import_module("onnxruntime")
        options = runtime.SessionOptions()
        options.intra_op_num_threads = 1
        options.enable_cpu_mem_arena = False  # an arena never gives back what the longest utterance took
        options.log_severity_level = _ERRORS_ONLY
        return runtime.InferenceSession(str(path), options, providers=["CPUExecutionProvider"])
    except Exception as error:  # onnxruntime raises its own kinds, which derive from nothing narrower
        raise SurroundingsError(f"{whose} cannot be loaded: {error}") from error
