"""Lets other people say people's single words: another throat, another pitch, another pace of each, by WORLD.

    python -m tests.bench.voice.training.throats DATA [--cores 14] [--seed 1]

Few people say a digit on record, and each of them has one throat. DATA holds packs of `collect people` and of `joins`; shards
t*.npz are put beside them, in the form of `many`. Of a digit and of the rare words there are several others, of words that
hundreds of people say one; of clips that are held, none.
"""

from __future__ import annotations

import argparse
import os
from multiprocessing import get_context
from pathlib import Path

import numpy as np

from tests.bench.voice.training.joins import DIGITS
from tests.bench.voice.training.packs import Clip, packed

_MANY, _ONE = 6, ("yes", "no", "stop", "go")
_RARE = (*DIGITS, "forward", "backward")


def others(clips: list[Clip]) -> list[Clip]:
    """List the clips that others are made of, each as often as there are to be."""
    said = [each for each in clips if each.family in ("words", "digits") and each.sounds and not each.held]
    rare = [each for each in said if set(each.text.split()) <= set(_RARE)]
    return [*(rare * _MANY), *(each for each in said if each.text in _ONE)]


def work(job: tuple[list[Clip], Path, int]) -> int:
    """Make another speaker of each clip; return how many were made."""
    from tests.bench.voice.training.speakers import another

    clips, path, seed = job
    source, made = np.random.default_rng(seed), []
    for clip in clips:
        sound = another(clip.sound, source)
        if np.isfinite(sound).all() and np.abs(sound).max() > 1_000:
            made.append((sound, clip))
    scratch = path.with_name("." + path.name)
    np.savez(
        scratch, sound=np.concatenate([sound for sound, _ in made]), n=[len(sound) for sound, _ in made],
        sounds=np.concatenate([clip.sounds for _, clip in made]), m=[len(clip.sounds or ()) for _, clip in made],
        kind=[clip.kind for _, clip in made], text=[clip.text for _, clip in made],
    )  # fmt: skip
    scratch.rename(path)
    return len(made)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("data", type=Path)
    parser.add_argument("--cores", type=int, default=max(1, (os.cpu_count() or 2) - 2))
    parser.add_argument("--seed", type=int, default=1)
    args = parser.parse_args()
    clips = others(packed(args.data))
    jobs = [(clips[core :: args.cores], args.data / f"t{args.seed}_{core}.npz", 1000 * args.seed + core) for core in range(args.cores)]
    with get_context("spawn").Pool(args.cores) as pool:
        print(sum(pool.imap_unordered(work, jobs)), "clips")


if __name__ == "__main__":
    main()
