"""Load a neural network into onnxruntime, on one thread: the program must not take both cores from a film.

What a network works on is given back to the system when it is done: the heap of the C library would keep it,
in pieces too small for the next utterance, and grow. Over the first 120 s of 62 cues above a film the ears
then take 199 MB at most where they took 225, and hear the same to the last digit.
"""

from __future__ import annotations

import ctypes
import importlib
import sys
from pathlib import Path
from typing import Any
from weakref import WeakValueDictionary

from stepper.errors import SurroundingsError

_ERRORS_ONLY = 3
_NOT_REPACKED = "session.disable_prepacking"
_NOT_IN_STEPS = "session.disable_quant_qdq"
"""Names of the settings. Source: onnxruntime_session_options_config_keys.h of onnxruntime."""
_MMAP_THRESHOLD, _TRIM_THRESHOLD = -3, -1
"""Names of the settings of `mallopt` in the C library of Linux, from its malloc.h."""
_LARGE_BYTES, _SPARE_BYTES = 4 << 20, 32 << 20
# From 1 MB on the most is the same, and what the system takes to give and take pieces is twice as much, 1.7 %
# of a core; from 16 MB on the most is 245 MB.

_encoders: WeakValueDictionary[Path, Any] = WeakValueDictionary()


def load_network(path: Path, whose: str, *, repacked: bool = True, in_steps: bool = True) -> Any:
    """Load a network.

    Args:
        path: Its file.
        whose: What to call it in the sentence if it cannot be loaded.
        repacked: Whether its weights are kept a second time as they are multiplied fastest.
        in_steps: Whether weights that are stored in 8 bits may be multiplied so, by numbers that are rounded
            to 8 bits too; else they become real numbers here, once.

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
        if not repacked:
            options.add_session_config_entry(_NOT_REPACKED, "1")
        if not in_steps:
            options.add_session_config_entry(_NOT_IN_STEPS, "1")
        give_memory_back()
        return runtime.InferenceSession(str(path), options, providers=["CPUExecutionProvider"])
    except Exception as error:  # onnxruntime raises its own kinds, which derive from nothing narrower
        raise SurroundingsError(f"{whose} cannot be loaded: {error}") from error


def load_encoder(path: Path, whose: str) -> Any:
    """Load the network that takes sound in, or return it where it is loaded already: both what hears and what
    knows a voice run it, and it takes 30 MB.

    Args:
        path: Its file.
        whose: As in `load_network`.

    Returns:
        An `onnxruntime.InferenceSession`; it goes with the last object that holds it.

    Raises:
        SurroundingsError: As in `load_network`.
    """
    loaded = _encoders.get(path)
    if loaded is None:
        # Left to itself onnxruntime rounds to 8 bits what goes into its products, which differs between
        # processors, and takes 28 ms for 2.4 s of sound where it takes 21 so, with 18 MB less.
        loaded = _encoders[path] = load_network(path, whose, in_steps=False)
    return loaded


def give_memory_back() -> bool:
    """Have large pieces of memory come from the system and go back to it, not onto the heap.

    Returns:
        Whether the C library of this system could be told so.
    """
    if sys.platform != "linux":
        return False
    try:
        mallopt = ctypes.CDLL(None).mallopt
    except (OSError, AttributeError):  # another C library
        return False
    return bool(mallopt(_MMAP_THRESHOLD, _LARGE_BYTES)) and bool(mallopt(_TRIM_THRESHOLD, _SPARE_BYTES))
