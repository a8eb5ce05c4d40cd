"""Lets eSpeak NG speak on all cores of a machine, with the package's own library: shards of clips, as of `kokoro`.

    python -m tests.bench.voice.training.many LINES.json DATA [--cores 14] [--seed 1]

LINES.json is of `collect lines`. A hundred clips a second and core; no voice that is measured with.
"""

from __future__ import annotations

import argparse
import ctypes
import json
import os
import random
from multiprocessing import get_context
from pathlib import Path

import numpy as np
from scipy.signal import resample_poly

from tests.bench.voice.voices import RATE_HZ, VOICES, trimmed

_UNLIKE_PEOPLE = ("croak", "whisper", "klatt5", "UniRobot", "robosoft", "Demonic", "Half-Life", "Alien", "Mike",
                  "iven", "announcer", "fast_test", "anikaRobot")  # fmt: skip
_ACCENTS = (*["en-us"] * 4, *["en"] * 3, "en-gb-x-rp", "en-gb-x-gbclan", "en-gb-x-gbcwmd", "en-us-nyc")
_PITCH = 3
_LONGEST_S, _SHORTEST_S = 5.2, 0.25


def work(job: tuple[list[dict], Path, int]) -> int:
    """Speak some rows; return how many were kept."""
    from stepper.mouth.espeak_library import EspeakLibrary, packaged_paths

    rows, path, seed = job
    used = {voice.name.rpartition("+")[2] for voice in VOICES if "+" in voice.name}
    folder = packaged_paths()[1] / "voices" / "!v"
    variants = sorted(
        each.name for each in folder.iterdir() if each.name not in used and not each.name.startswith(_UNLIKE_PEOPLE)
    )
    library, source, made = EspeakLibrary(voice="en-us", volume=1.0), random.Random(seed), []
    same = ctypes.CDLL(str(packaged_paths()[0]))  # loaded already: what the program never asks of it
    for row in rows:
        voice = f"{source.choice(_ACCENTS)}+{source.choice(variants)}"
        if same.espeak_SetVoiceByName(voice.encode()):
            continue
        same.espeak_SetParameter(_PITCH, source.randint(25, 75), 0)
        heard = np.frombuffer(library.speech(row["text"], source.randint(125, 205)), np.int16).astype(np.float64)
        if not heard.any():
            continue
        divisor = np.gcd(library.rate_hz, RATE_HZ)
        sound = trimmed(resample_poly(heard, RATE_HZ // divisor, library.rate_hz // divisor))
        if _SHORTEST_S * RATE_HZ < len(sound) < _LONGEST_S * RATE_HZ:
            made.append((sound, row))
    np.savez(
        path, sound=np.concatenate([sound for sound, _ in made]), n=[len(sound) for sound, _ in made],
        sounds=np.concatenate([row["sounds"] for _, row in made]), m=[len(row["sounds"]) for _, row in made],
        kind=[row["kind"] for _, row in made], text=[row["text"] for _, row in made],
    )  # fmt: skip
    return len(made)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("lines", type=Path)
    parser.add_argument("data", type=Path)
    parser.add_argument("--cores", type=int, default=max(1, (os.cpu_count() or 2) - 2))
    parser.add_argument("--seed", type=int, default=1)
    args = parser.parse_args()
    data, rows = args.data.resolve(), json.loads(args.lines.read_text())
    jobs = [
        (rows[core :: args.cores], data / f"e{args.seed}_{core}.npz", 1000 * args.seed + core) for core in range(args.cores)
    ]
    with get_context("spawn").Pool(args.cores) as pool:  # a process holds one library
        print(sum(pool.imap_unordered(work, jobs)), "clips")


if __name__ == "__main__":
    main()
