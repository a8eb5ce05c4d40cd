"""A hands-free, voice-friendly round counter and instruction stepper for hand knitting."""

from __future__ import annotations

import os

__version__ = "0.1.0"

# Later releases of onnxruntime, which runs the ears and the natural voice, send its makers what it is used
# for, and keep a thread, a data base and a mark of this computer for that, unless this stands here before it
# is loaded. Every process of the program begins with this file. Source: Privacy.md in its wheel.
os.environ.setdefault("ORT_DISABLE_TELEMETRY", "1")
