"""The sound of a film: people talking, music behind them, at any loudness below the voice."""

from __future__ import annotations

import random
from collections.abc import Sequence

import numpy as np

from tests.bench.voice.material import Clip, read
from tests.bench.voice.voices import RATE_HZ


def film(talk: Sequence[Clip], seconds: float, seed: int) -> np.ndarray:
    """Let voices talk one after another over music; float, the talk's loudest at about 0.5."""
    source = random.Random(seed)
    sound = music(seconds, seed) * 0.06
    at = source.uniform(0, 0.5)
    while at < seconds - 1:
        piece = read(source.choice(talk)).astype(np.float32) / 32_768
        start = round(at * RATE_HZ)
        end = min(len(sound), start + len(piece))
        sound[start:end] += piece[: end - start] * source.uniform(0.5, 1.0)
        at += len(piece) / RATE_HZ + source.choice((-0.3, 0.2, 0.6, 1.5))
    return sound


def babble(talk: Sequence[Clip], seconds: float, seed: int) -> np.ndarray:
    """Let four talk at once."""
    return sum(film(talk, seconds, 4 * seed + each) for each in range(4)) / 2


def music(seconds: float, seed: int) -> np.ndarray:
    """Play chords of decaying tones with a few overtones; peak about 1."""
    source = random.Random(seed)
    count = round(seconds * RATE_HZ)
    sound = np.zeros(count, np.float32)
    at = 0.0
    while at < seconds:
        lasts = source.choice((0.4, 0.8, 1.6))
        time = np.arange(min(count - round(at * RATE_HZ), round(lasts * RATE_HZ * 1.5))) / RATE_HZ
        root = 110 * 2 ** (source.randrange(24) / 12)
        for step in source.choice(((0, 4, 7), (0, 3, 7), (0, 5, 9))):
            for overtone in (1, 2, 3):
                tone = np.sin(2 * np.pi * root * 2 ** (step / 12) * overtone * time) / overtone
                sound[round(at * RATE_HZ) : round(at * RATE_HZ) + len(time)] += tone * np.exp(-time / lasts)
        at += lasts
    return sound / max(1e-9, np.abs(sound).max())


def loudness(sound: np.ndarray) -> float:
    """Give the root mean square of the louder half of the 20 ms pieces."""
    pieces = sound[: len(sound) // 320 * 320].reshape(-1, 320)
    power = np.sort((pieces.astype(np.float64) ** 2).mean(1))
    return float(np.sqrt(power[len(power) // 2 :].mean())) + 1e-9


def mixed(speech: np.ndarray, behind: np.ndarray, ratio_db: float | None) -> np.ndarray:
    """Put a sound behind speech, so many dB softer; without a ratio, the hiss of a quiet room.

    Args:
        speech: Signed 16-bit; where it is silent only the other sound is heard.
        behind: Any scale; at least as long.
        ratio_db: None for clean.
    """
    clean = speech.astype(np.float32) / 32_768
    heard = clean[np.abs(clean) > 0] if np.any(speech) else clean
    level = loudness(heard) if len(heard) > 640 else 0.05
    if ratio_db is None:
        behind = np.random.default_rng(0).standard_normal(len(speech)).astype(np.float32)
        ratio_db = 50.0
    behind = behind[: len(speech)]
    mix = clean + behind * (level / loudness(behind)) * 10 ** (-ratio_db / 20)
    return (np.clip(mix / max(1.0, np.abs(mix).max()), -1, 1) * 32_767).astype(np.int16)
