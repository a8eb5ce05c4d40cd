"""Lets Kokoro speak on all cores of a machine: shards of clips, in the folder that `teach` looks into.

    python -m tests.bench.voice.training.kokoro MODEL.onnx TOKENS.json DATA --minutes 9 [--cores 14] [--from 0]

TOKENS.json is of `collect tokens`, the styles beside it. Styles are mixed two by two, as in `speakers`.
"""

from __future__ import annotations

import argparse
import json
import os
import random
import time
from multiprocessing import Process
from pathlib import Path

import numpy as np

_EACH = 60
_STEP = 4
"""Of the styles, one for each number of tokens, every so many are kept (`collect tokens`)."""
_LONGEST, _SHORTEST = 5.2, 0.25


def work(args: argparse.Namespace, core: int, rows: list[dict], until: float) -> None:
    """Speak every so many rows, on one core."""
    import onnxruntime
    from scipy.signal import resample_poly

    options = onnxruntime.SessionOptions()
    options.intra_op_num_threads = options.inter_op_num_threads = 1
    session = onnxruntime.InferenceSession(str(args.model), options, providers=["CPUExecutionProvider"])
    kept = np.load(args.tokens.with_suffix(".npz"))
    styles = {name: kept[name].astype(np.float32) for name in kept.files}
    english = sorted(name for name in styles if name[0] in "ab")
    foreign = sorted(name for name in styles if name[0] not in "ab")
    source, made, shard = random.Random(core * 1000 + args.start), [], 0
    for number in range(args.start + core, len(rows), args.cores):
        if time.time() > until:
            break
        row = rows[number]
        if not 2 <= len(row["tokens"]) < 150:
            continue
        one = source.choice([name for name in english if (name[0] == "b") == row["british"]])
        others, share = source.choices(
            (([one], 0.0), (english, source.uniform(0.3, 0.7)), (foreign, source.uniform(0.25, 0.65))), (45, 35, 20)
        )[0]
        style = styles[one] * (1 - share) + styles[source.choice(others)] * share
        given = {
            "tokens": np.array([[0, *row["tokens"], 0]], np.int64), "style": style[min(len(row["tokens"]) - 1, 159) // _STEP][None],
            "speed": np.array([source.uniform(0.82, 1.25)], np.float32),
        }  # fmt: skip
        sound = resample_poly(np.asarray(session.run(None, given)[0]).ravel().astype(np.float64), 2, 3)
        frames = np.abs(sound[: len(sound) // 160 * 160]).reshape(-1, 160).max(1)
        loud = np.nonzero(frames > frames.max() / 100)[0]
        sound = sound[loud[0] * 160 : (loud[-1] + 1) * 160]
        if _SHORTEST * 16_000 < len(sound) < _LONGEST * 16_000:
            made.append(((sound / np.abs(sound).max() * 16_384).astype(np.int16), row))
        if len(made) == _EACH:
            _keep(args.data / f"k{args.start}_{core}_{shard}.npz", made)
            made, shard = [], shard + 1
    if made:
        _keep(args.data / f"k{args.start}_{core}_{shard}.npz", made)


def _keep(path: Path, made: list) -> None:
    scratch = path.with_name("." + path.name)
    np.savez(
        scratch, sound=np.concatenate([sound for sound, _ in made]), n=[len(sound) for sound, _ in made],
        sounds=np.concatenate([row["sounds"] for _, row in made]), m=[len(row["sounds"]) for _, row in made],
        kind=[row["kind"] for _, row in made], text=[row["text"] for _, row in made],
    )  # fmt: skip
    scratch.rename(path)


def main() -> None:
    os.environ["OMP_NUM_THREADS"] = "1"
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("model", type=Path)
    parser.add_argument("tokens", type=Path)
    parser.add_argument("data", type=Path)
    parser.add_argument("--minutes", type=float, default=9.0)
    parser.add_argument("--cores", type=int, default=max(1, (os.cpu_count() or 2) - 2))
    parser.add_argument("--from", dest="start", type=int, default=0)
    args = parser.parse_args()
    rows, until = json.loads(args.tokens.read_text()), time.time() + args.minutes * 60
    workers = [Process(target=work, args=(args, core, rows, until)) for core in range(args.cores)]
    for worker in workers:
        worker.start()
    for worker in workers:
        worker.join()
    counts = [len(np.load(path)["n"]) for path in args.data.glob("k*.npz")]
    print(f"{sum(counts)} clips of {len(rows)} texts")


if __name__ == "__main__":
    main()
