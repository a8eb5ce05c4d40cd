"""Teaches the encoder and a head to hear through films: what goes into `models/`.

    python -m tests.bench.voice.training.teach DATA OUT --minutes 9 [--of 27] [--keep STATE] [--begin MODELS] [--pace 0.6]

The encoder learns to give, of noisy sound, the states that the packaged one gives of the clean sound (mean square
error), so that the decoder goes on understanding them; a head over its states learns the sounds (connectionist temporal
classification). DATA holds packs (see `packs`), enc.npz (see `encoder`), and shards k*.npz and e*.npz of synthetic speech
and t*.npz of other throats, which may still be growing; clips are joined to others (see `joins`), anew each time they are
a tenth more. Families are drawn by share, and within a family a text said by many is drawn less often for each of them.
A clip marked as held is never drawn; on those the share of sounds got wrong is printed.

With --keep the state is kept between sittings; --of is the length of all sittings together, for the learning rate.
With --begin the pupil and its head begin as the networks in that folder, and not as the packaged encoder and a head that
knows nothing; --pace is the share of the learning rate then.
"""

from __future__ import annotations

import argparse
import math
import os
import random
import time
from collections import Counter
from multiprocessing import Pool
from pathlib import Path

import numpy as np
import torch
from torch import nn
from torch.nn import functional

from tests.bench.voice.training.batches import RATE_HZ, Mixer, Store
from tests.bench.voice.training.encoder import Encoder, Head, load
from tests.bench.voice.training.export import read_back
from tests.bench.voice.training.joins import Joiner
from tests.bench.voice.training.packs import Clip, packed

SHARES = {
    "kokoro": 0.08, "espeak": 0.27, "words": 0.14, "throats": 0.06, "joined": 0.31, "phrases": 0.02, "digits": 0.04, "orders": 0.0,
    "reading": 0.08,
}  # fmt: skip
_BATCH, _LEAST, _MOST_S = 192, 3_000, 9.0
_ENCODER_RATE, _HEAD_RATE = 4e-4, 2e-3
_EVERY_S, _GROW_S = 60.0, 110.0
_FILMS, _FILM_S = 240, 40
_HELD = 33
_SHARDS = {"k": "kokoro", "e": "espeak", "t": "throats"}
_JOINED, _CHECKED, _GROWN = 12_000, 150, 1.1


class Material:
    """The clips, by family."""

    def __init__(self, folder: Path, many: int, seed: int) -> None:
        self.folder, self.many, self.seed, self.shards = folder, many, seed, set[Path]()
        self.joined, self.of = list[Clip](), 0
        self.clips: list[Clip] = packed(folder)
        self.grow()

    def grow(self) -> int:
        """Take in shards that were made meanwhile; return how many."""
        new = [path for path in sorted(self.folder.glob("[ekt]*_*.npz")) if path not in self.shards]
        for path in new:
            with np.load(path) as file:  # each reading of a name reads it anew
                kept = {name: file[name] for name in file.files}
            family = _SHARDS[path.name[0]]
            ends = np.cumsum([0, *kept["n"]])
            ats = np.cumsum([0, *kept["m"]])
            for at, kind in enumerate(kept["kind"]):
                self.clips.append(Clip(
                    sound=kept["sound"][ends[at] : ends[at + 1]], sounds=kept["sounds"][ats[at] : ats[at + 1]].tolist(),
                    kind=str(kind), family=family, text=str(kept["text"][at]), held=family != "throats" and at % _HELD == _HELD - 1,
                ))  # fmt: skip
            self.shards.add(path)
        if len(self.clips) > _GROWN * self.of:
            self.joined, self.of = self._join(), len(self.clips)
        self.speech = [
            each for each in (*self.clips, *self.joined) if each.kind != "noise" and _LEAST < len(each.sound) < _MOST_S * RATE_HZ
        ]
        self.drawn = [at for at, each in enumerate(self.speech) if not each.held]
        self.weights = _weights([self.speech[at] for at in self.drawn])
        return len(new)

    def _join(self) -> list[Clip]:
        """Join clips anew, of those held and of the others each by themselves."""
        learnt = Joiner([each for each in self.clips if not each.held], self.seed + len(self.clips))
        held = Joiner([each for each in self.clips if each.held], 1)
        return [*learnt.made(self.many, False), *held.made(self.many // 50, True)]


def _weights(clips: list[Clip]) -> np.ndarray:
    texts = Counter((each.family, each.text) for each in clips)
    weights = np.array([texts[each.family, each.text] ** -0.5 if each.text else 1.0 for each in clips])
    families = np.array([each.family for each in clips])
    for family in set(families):
        own = families == family
        weights[own] *= SHARES.get(family, 0.0) / weights[own].sum()
    return weights / weights.sum()


def _film(job: tuple[list[np.ndarray], int]) -> np.ndarray:
    """Music, and mostly one voice after another, sometimes three at once."""
    from tests.bench.voice.film import music

    talk, seed = job
    source = np.random.default_rng(seed)
    film = music(_FILM_S, seed) * source.uniform(0, 0.15)
    for _ in range(source.choice((0, 1, 2, 3), p=(0.1, 0.6, 0.15, 0.15))):
        at = source.uniform(0, 0.5)
        while at < _FILM_S - 1:
            speech = talk[source.integers(len(talk))].astype(np.float32)
            speech = speech / (np.abs(speech).max() + 1e-9) * 0.5 * source.uniform(0.4, 1.0)
            start = round(at * RATE_HZ)
            speech = speech[: len(film) - start]
            film[start : start + len(speech)] += speech
            at = max(at + 0.1, at + len(speech) / RATE_HZ + source.choice((-0.3, 0.2, 0.6, 1.2)))
    return (film / (np.abs(film).max() + 1e-9) * 30_000).astype(np.int16)


def films(clips: list[Clip], count: int) -> list[np.ndarray]:
    """Make films of what is talk: sentences of every family."""
    talk = [each.sound for each in clips if each.kind in ("hard", "plain", "reading", "orders") and not each.held]
    source = np.random.default_rng(5)
    jobs = [([talk[at] for at in source.integers(len(talk), size=60)], seed) for seed in range(count)]
    with Pool(os.cpu_count()) as pool:
        return pool.map(_film, jobs)


def _some_of_each(places: list[int], clips: list[Clip]) -> list[int]:
    """Take some clips of each family."""
    found: dict[str, list[int]] = {}
    for at in places:
        found.setdefault(clips[at].family, []).append(at)
    return [at for some in found.values() for at in random.Random(1).sample(some, min(_CHECKED, len(some)))]


def edits(one: np.ndarray, other: list[int]) -> int:
    """Count the sounds to be put in, left out or changed to make one row of the other."""
    row = np.arange(len(other) + 1)
    for each in one:
        step = np.minimum(row + 1, np.concatenate([[row[0] + 1], row[:-1] + (np.array(other) != each)]))
        row = np.minimum.accumulate(step - np.arange(len(row))) + np.arange(len(row))
    return int(row[-1])


class Teacher:
    """The packaged encoder, and the pupil that learns of it."""

    def __init__(self, args: argparse.Namespace, material: Material) -> None:
        self.args, self.material, self.device = args, material, args.device
        self.packaged = load(args.data / "enc.npz").to(self.device).eval()
        self.pupil = load(args.data / "enc.npz").to(self.device).train()
        self.head = Head(args.sounds).to(self.device)
        if args.begin:
            for network, name in ((self.pupil, "encoder"), (self.head, "sounds")):
                weights = read_back(args.begin / f"{name}.onnx")
                network.load_state_dict({each: torch.from_numpy(kept) for each, kept in weights.items()})
        self.films = Store(films(material.clips, args.films), self.device)
        noises = [each.sound for each in material.clips if each.kind == "noise"]
        self.noises = Store(noises, self.device) if noises else None
        self.seed = args.seed
        self.refill()
        self.rate = [
            {"params": list(self.pupil.parameters()), "peak": _ENCODER_RATE * args.pace},
            {"params": list(self.head.parameters()), "peak": _HEAD_RATE * args.pace},
        ]
        self.optimizer = torch.optim.AdamW(self.rate, _ENCODER_RATE, betas=(0.9, 0.98), weight_decay=0.01)
        self.done_s, self.steps, self.spread = 0.0, 0, 0.0
        self.mean = {name: each.clone() for name, each in self._state().items()}
        if args.keep and args.keep.exists():
            self._take_up(torch.load(args.keep, weights_only=False, map_location=self.device))
        else:
            self._first_look()

    def refill(self) -> None:
        """Put all clips there are into the accelerator's memory."""
        self.store = Store([each.sound for each in self.material.speech], self.device)
        self.mixer = Mixer(self.store, self.films, self.noises, self.device, self.seed + len(self.material.speech))
        self.weights = torch.tensor(self.material.weights, device=self.device)
        self.drawn = torch.tensor(self.material.drawn, device=self.device)
        longest = max((len(each.sounds) for each in self.material.speech if each.sounds), default=1)
        said = np.zeros((len(self.material.speech), longest), np.int64)
        many = np.zeros(len(self.material.speech), np.int64)
        for at, each in enumerate(self.material.speech):
            if each.sounds:
                many[at] = len(each.sounds)
                said[at, : many[at]] = np.array(each.sounds) + 1
        self.said, self.many = torch.tensor(said, device=self.device), torch.tensor(many, device=self.device)

    def _state(self) -> dict[str, torch.Tensor]:
        parts = (("enc.", self.pupil), ("head.", self.head))
        return {front + name: each for front, part in parts for name, each in part.state_dict().items()}

    def _first_look(self) -> None:
        with torch.no_grad():
            _, clean, lengths, _ = self.mixer.pairs(self._draw())
            states = self.packaged(clean, lengths)
            self.spread = float(states.var())
            if not self.args.begin:
                self.head.mean.copy_(states.mean((0, 1)))
                self.head.spread.copy_(states.std((0, 1)))
        self.mean = {name: each.clone() for name, each in self._state().items()}

    def _draw(self) -> torch.Tensor:
        """Draw clips of about the same length."""
        some = self.drawn[torch.multinomial(self.weights, 4 * self.args.batch, replacement=True)]
        some = some[self.store.lengths[some].argsort()]
        quarter = int(torch.randint(4, ()))
        return some[quarter * self.args.batch : (quarter + 1) * self.args.batch]

    def step(self, share: float) -> tuple[torch.Tensor, torch.Tensor]:
        """Take one step, so far along all sittings; return both losses."""
        for group in self.optimizer.param_groups:
            warm = min(1.0, (self.steps + 1) / 300)
            group["lr"] = group["peak"] * warm * (0.49 * (1 + math.cos(math.pi * share)) + 0.02)
        numbers = self._draw()
        with torch.no_grad():
            noisy, clean, lengths, _ = self.mixer.pairs(numbers, -3.0 if self.args.deep else 0.0, self.args.loudest)
        frames = self.pupil.frames(lengths)
        with torch.autocast(self.device, torch.bfloat16):
            with torch.no_grad():
                wanted = self.packaged(clean, lengths).float()
            states = self.pupil(noisy, lengths).float()
            there = (torch.arange(states.shape[1], device=self.device)[None] < frames[:, None]).float()[..., None]
            likely = self.head(states, there)
        distance = (((states - wanted) ** 2).mean(2, keepdim=True) * there).sum() / there.sum() / self.spread
        many = self.many[numbers]
        fits = (many > 0) & (2 * many < frames)
        kept = torch.nonzero(fits)[:, 0]
        wrong = torch.zeros((), device=self.device)
        if len(kept):
            wrong = functional.ctc_loss(
                likely[kept].transpose(0, 1), self.said[numbers[kept]], frames[kept], many[kept], zero_infinity=True
            )
        self.optimizer.zero_grad(set_to_none=True)
        (distance + self.args.ctc * wrong).backward()
        nn.utils.clip_grad_norm_([*self.pupil.parameters(), *self.head.parameters()], 2.0)
        self.optimizer.step()
        self.steps += 1
        with torch.no_grad():
            rate, state = max(0.002, 1 / self.steps), self._state()
            for name, each in state.items():
                self.mean[name].lerp_(each, rate)
        return distance.detach(), wrong.detach()

    def save(self) -> None:
        """Write the mean of the last steps, and with --keep all that is needed to go on."""
        self.args.out.mkdir(exist_ok=True, parents=True)
        kept = {name: each.float().cpu().numpy() for name, each in self.mean.items()}
        encoder = {name[4:]: each.astype(np.float16) for name, each in kept.items() if name.startswith("enc.")}
        np.savez(self.args.out / "encoder16.npz", **encoder)
        np.savez(self.args.out / "head.npz", **{name[5:]: each for name, each in kept.items() if name.startswith("head.")})
        if self.args.keep:
            torch.save(
                {"state": self._state(), "mean": self.mean, "optimizer": self.optimizer.state_dict(),
                 "done_s": self.done_s, "steps": self.steps, "spread": self.spread}, self.args.keep,
            )  # fmt: skip

    def _take_up(self, kept) -> None:
        self.pupil.load_state_dict({n[4:]: e for n, e in kept["state"].items() if n.startswith("enc.")})
        self.head.load_state_dict({n[5:]: e for n, e in kept["state"].items() if n.startswith("head.")})
        self.optimizer.load_state_dict(kept["optimizer"])
        self.mean, self.done_s, self.steps, self.spread = (kept[n] for n in ("mean", "done_s", "steps", "spread"))

    @torch.no_grad()
    def check(self) -> None:
        """Print the share of sounds got wrong on held clips, by family and dB, and how far the states moved."""
        encoder, head = Encoder().to(self.device).eval(), Head(self.args.sounds).to(self.device).eval()
        encoder.load_state_dict({n[4:]: e for n, e in self.mean.items() if n.startswith("enc.")})
        head.load_state_dict({n[5:]: e for n, e in self.mean.items() if n.startswith("head.")})
        held = [at for at, each in enumerate(self.material.speech) if each.held and each.sounds]
        for ratio in (40.0, 20.0, 10.0, 5.0, 0.0):
            mixer = Mixer(self.store, self.films, self.noises, self.device, 999)
            bad, of, far = Counter(), Counter(), []
            order = sorted(_some_of_each(held, self.material.speech), key=lambda at: len(self.material.speech[at].sound))
            for start in range(0, len(order), 96):
                part = order[start : start + 96]
                noisy, clean, lengths, _ = mixer.pairs(torch.tensor(part, device=self.device), ratio, plain=True)
                states, wanted = encoder(noisy, lengths), self.packaged(clean, lengths)
                frames = encoder.frames(lengths)
                there = (torch.arange(states.shape[1], device=self.device)[None] < frames[:, None]).float()[..., None]
                far.append(float((((states - wanted) ** 2) * there).sum() / there.sum() / 288 / self.spread))
                best = head(states, there).argmax(2).cpu().numpy()
                for row, at, count in zip(best, part, frames.tolist(), strict=True):
                    clip, row = self.material.speech[at], row[:count]
                    row = row[np.concatenate([[True], row[1:] != row[:-1]])]
                    bad[clip.family] += edits(row[row > 0] - 1, clip.sounds)
                    of[clip.family] += len(clip.sounds)
            shares = ", ".join(f"{family} {bad[family] / of[family]:.3f}" for family in sorted(of))
            print(f"  {ratio:.0f} dB: {shares}; all {sum(bad.values()) / max(1, sum(of.values())):.3f}, moved {np.mean(far):.3f}")


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("data", type=Path)
    parser.add_argument("out", type=Path)
    parser.add_argument("--minutes", type=float, default=9.0)
    parser.add_argument("--of", type=float, default=0.0)
    parser.add_argument("--keep", type=Path)
    parser.add_argument("--batch", type=int, default=_BATCH)
    parser.add_argument("--films", type=int, default=_FILMS)
    parser.add_argument("--ctc", type=float, default=1.0)
    parser.add_argument("--joined", type=int, default=_JOINED, help="how many clips are joined of others")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--deep", action="store_true", help="down to 3 dB below the film")
    parser.add_argument("--loudest", type=float, default=26.0, help="how loud above the film at most; dB")
    parser.add_argument("--sounds", type=int, default=39)
    parser.add_argument("--begin", type=Path, help="go on from the networks in this folder")
    parser.add_argument("--pace", type=float, default=1.0, help="share of the learning rate")
    parser.add_argument("--device", default="cuda" if torch.cuda.is_available() else "cpu")
    args = parser.parse_args()
    torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = True
    began = time.time()
    material = Material(args.data, args.joined, args.seed)
    families = Counter(each.family for each in material.speech)
    hours = sum(len(each.sound) for each in material.speech) / RATE_HZ / 3600
    print(f"{hours:.1f} h: {dict(families)}, held {sum(each.held for each in material.speech)}", flush=True)
    teacher = Teacher(args, material)
    of_s, end_s = (args.of or args.minutes) * 60, args.minutes * 60
    print(f"ready after {time.time() - began:.0f} s; {teacher.steps} steps so far", flush=True)
    began = last = time.time()
    told, near, far, count, grown_s = began, 0.0, 0.0, 0, teacher.done_s
    while time.time() - began < end_s:
        distance, wrong = teacher.step(min(1.0, teacher.done_s / of_s))
        teacher.done_s += time.time() - last
        last = time.time()
        near, far, count = near + distance, far + wrong, count + 1
        if last - told > _EVERY_S:
            told = last
            speed = count * args.batch / _EVERY_S
            print(f"{teacher.done_s / 60:.1f} min, {teacher.steps} steps, {speed:.0f}/s, moved {float(near) / count:.3f}, "
                  f"sounds {float(far) / count:.3f}", flush=True)  # fmt: skip
            near, far, count = 0.0, 0.0, 0
            teacher.save()
            if teacher.done_s - grown_s > _GROW_S:
                grown_s = teacher.done_s
                if material.grow():
                    teacher.refill()
                    print(f"  clips: {len(material.speech)}", flush=True)
            last = time.time()
    teacher.save()
    teacher.check()


if __name__ == "__main__":
    main()
