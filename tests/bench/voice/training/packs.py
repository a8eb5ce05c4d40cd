"""Clips put together for another machine: one Opus file with where each clip is, or a folder of recordings.

A pack is NAME.pack.json beside NAME.opus, or beside a folder. Each row: at and n (or file), kind, family, text, held, and
the sounds as numbers of `SOUNDS`, none where nobody knows what is said.
"""

from __future__ import annotations

import json
import os
import subprocess
import wave
from dataclasses import dataclass
from math import gcd
from multiprocessing import Pool
from pathlib import Path
from typing import Any

import numpy as np

RATE_HZ = 16_000
_GAP = 1600
_PIECE_S = 300


@dataclass(frozen=True, slots=True, kw_only=True)
class Clip:
    """One stretch of sound: 16 kHz, signed 16-bit."""

    sound: np.ndarray
    sounds: list[int] | None
    kind: str
    family: str
    text: str
    held: bool
    by: str = ""
    """Who says it, where that matters."""


def pack(folder: Path, name: str, clips: list[tuple[np.ndarray, dict[str, Any]]], rate: str = "14k") -> None:
    """Write clips into one Opus file."""
    parts, rows, at = [], [], 0
    for sound, row in clips:
        parts += [sound, np.zeros(_GAP, np.int16)]
        rows.append({**row, "at": at, "n": len(sound)})
        at += len(sound) + _GAP
    path = folder / f"{name}.wav"
    with wave.open(str(path), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(RATE_HZ)
        file.writeframes(np.concatenate(parts).tobytes())
    command = ["ffmpeg", "-y", "-v", "error", "-i", str(path), "-c:a", "libopus", "-b:a", rate, "-application", "voip", "-compression_level", "3"]
    subprocess.run([*command, str(folder / f"{name}.opus")], check=True)
    path.unlink()
    (folder / f"{name}.pack.json").write_text(json.dumps({"opus": f"{name}.opus", "clips": rows}))


def packed(folder: Path) -> list[Clip]:
    """Read every pack of a folder."""
    found = []
    for path in sorted(folder.glob("*.pack.json")):
        rows = json.loads(path.read_text())
        if "opus" in rows:
            whole = _decoded(folder / rows["opus"])
            sounds = [whole[row["at"] : row["at"] + row["n"]] for row in rows["clips"]]
        else:
            with Pool(os.cpu_count()) as pool:
                sounds = pool.map(recording, [folder / rows["folder"] / row["file"] for row in rows["clips"]], 64)
        found += [
            Clip(
                sound=part, sounds=row["sounds"], kind=row["kind"], family=row["family"], text=row["text"],
                held=row["held"], by=row.get("by", ""),
            )
            for row, sound in zip(rows["clips"], sounds, strict=True)
            for part in _parts(sound, row)
        ]  # fmt: skip
    return found


def _parts(sound: np.ndarray, row: dict[str, Any]) -> list[np.ndarray]:
    """Cut what is long and has no text into stretches of some seconds."""
    if row["sounds"] is not None or row["kind"] == "noise":
        return [sound]
    return [sound[at : at + 4 * RATE_HZ] for at in range(0, max(1, len(sound) - 2 * RATE_HZ), 4 * RATE_HZ)]


def _at_rate(sound: np.ndarray, rate: int) -> np.ndarray:
    from scipy.signal import resample_poly

    if rate != RATE_HZ:
        divisor = gcd(rate, RATE_HZ)
        sound = resample_poly(sound, RATE_HZ // divisor, rate // divisor)
    return (np.clip(sound, -1, 1) * 32_767).astype(np.int16)


def recording(path: Path) -> np.ndarray:
    """Read a recording at 16 kHz, signed 16-bit."""
    import soundfile

    with soundfile.SoundFile(path) as file:
        parts, rate = [np.zeros((0, file.channels), np.float32)], file.samplerate
        try:
            while len(part := file.read(rate, dtype="float32", always_2d=True)):
                parts.append(part)
        except soundfile.LibsndfileError:  # the last page of some files; what came before it is there
            pass
    return _at_rate(np.concatenate(parts).mean(1), rate)


def _piece(job: tuple[Path, int, int]) -> np.ndarray:
    import soundfile

    path, start, end = job
    with soundfile.SoundFile(path) as file:
        rate = file.samplerate
        before = min(start, rate // 10)
        file.seek(start - before)
        sound = _at_rate(file.read(end - start + before + rate // 10, dtype="float32"), rate)
    first = before * RATE_HZ // rate
    return sound[first : first + (end - start) * RATE_HZ // rate]


def _decoded(path: Path) -> np.ndarray:
    import soundfile

    with soundfile.SoundFile(path) as file:
        step, frames = file.samplerate * _PIECE_S, file.frames
    with Pool(os.cpu_count()) as pool:
        return np.concatenate(pool.map(_piece, [(path, at, min(frames, at + step)) for at in range(0, frames, step)]))
