"""A hands-free, voice-friendly round counter and instruction stepper for hand knitting."""

from __future__ import annotations

__version__ = "0.1.0"
