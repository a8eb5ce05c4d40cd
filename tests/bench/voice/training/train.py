"""Trains the model of sounds and writes it for onnxruntime.

    python -m tests.bench.voice.training.train MIXED.npz [MIXED.npz ...] sounds.onnx --minutes 90 [--from FILE.pt]

Beside the ONNX file the weights are kept as FILE.pt, to go on from. A 25th of the clips is kept apart; the share of
their sounds that is got wrong is printed every five minutes, by loudness above the film.

Source: connectionist temporal classification (Graves, Fernández, Gomez and Schmidhuber, 2006); gated convolutions
(Dauphin, Fan, Auli and Grangier, 2017); the average of the weights as they change (Polyak and Juditsky, 1992).
"""

from __future__ import annotations

import argparse
import time
from dataclasses import dataclass
from pathlib import Path

import numpy as np
import torch
from torch import nn
from torch.nn import functional

from stepper.mouth.pronunciation import SOUNDS

WIDE, STATES, BLOCKS, REACH, SPREADS = 208, 288, 8, 7, (1, 2, 4, 1)
_BATCH, _PEAK = 32, 2e-3


class Block(nn.Module):
    """A gated convolution, each channel over time and then all channels together, beside what came in."""

    def __init__(self, spread: int) -> None:
        super().__init__()
        self.dw = nn.Conv1d(WIDE, WIDE, REACH, padding=spread * (REACH // 2), dilation=spread, groups=WIDE)
        self.n, self.p1, self.p2 = nn.LayerNorm(WIDE), nn.Linear(WIDE, 2 * WIDE), nn.Linear(WIDE, WIDE)
        self.dr = nn.Dropout(0.12)

    def forward(self, inner: torch.Tensor, there: torch.Tensor) -> torch.Tensor:
        over_time = self.dw((self.n(inner) * there).transpose(1, 2)).transpose(1, 2)
        return inner + self.dr(self.p2(functional.silu(functional.glu(self.p1(over_time), 2))))


class Net(nn.Module):
    """From the encoder's states to the log-probability of each sound in each frame."""

    def __init__(self, mean: torch.Tensor, spread: torch.Tensor) -> None:
        super().__init__()
        self.i, self.o = nn.Linear(STATES, WIDE), nn.Linear(WIDE, len(SOUNDS) + 1)
        self.b = nn.ModuleList(Block(SPREADS[number % len(SPREADS)]) for number in range(BLOCKS))
        self.n = nn.LayerNorm(WIDE)
        self.register_buffer("mean", mean)
        self.register_buffer("spread", spread)

    def forward(self, states: torch.Tensor, there: torch.Tensor | None = None) -> torch.Tensor:
        there = torch.ones_like(states[:, :, :1]) if there is None else there
        inner = self.i((states - self.mean) / self.spread * there)
        for block in self.b:
            inner = block(inner, there)
        return functional.log_softmax(self.o(self.n(inner)), 2)


@dataclass
class Utterances:
    """What `mixing` kept."""

    states: list[np.ndarray]
    labels: list[np.ndarray]
    ratios: np.ndarray
    sources: np.ndarray

    @classmethod
    def read(cls, paths: list[Path]) -> Utterances:
        found = cls([], [], np.zeros(0), np.zeros(0, int))
        for path in paths:
            file = np.load(path)
            found.states += np.split(file["states"], np.cumsum(file["frames"])[:-1])
            found.labels += np.split(file["labels"], np.cumsum(file["sounds"])[:-1])
            found.ratios = np.concatenate([found.ratios, file["ratios"]])
            found.sources = np.concatenate([found.sources, file["sources"]])
        return found


class Trainer:
    """Goes over the utterances again and again."""

    def __init__(self, utterances: Utterances, net: Net) -> None:
        self.all, self.net = utterances, net
        self.average = {name: value.clone() for name, value in net.state_dict().items()}
        self.source = np.random.default_rng(1)
        apart = utterances.sources % 25 == 0
        self.taught, self.apart = np.nonzero(~apart)[0], np.nonzero(apart)[0][:600]

    def batch(self, numbers: np.ndarray, hide: bool) -> tuple[torch.Tensor, ...]:
        """Give states, which of them are there, frames, labels and their number; hide some while teaching."""
        found = [torch.from_numpy(self.all.states[number].astype(np.float32)) for number in numbers]
        frames = torch.tensor([len(each) for each in found])
        states = nn.utils.rnn.pad_sequence(found, batch_first=True)
        there = (torch.arange(states.shape[1])[None] < frames[:, None]).float()[:, :, None]
        if hide:
            for row, length in enumerate(frames.tolist()):
                for _ in range(self.source.integers(3)):
                    at = self.source.integers(max(1, length - 6))
                    states[row, at : at + self.source.integers(1, 6)] = self.net.mean
            kept = torch.rand(len(found), 1, states.shape[2]) > 0.08
            states = torch.where(kept, states, self.net.mean)
        labels = [self.all.labels[number] for number in numbers]
        flat = torch.from_numpy(np.concatenate(labels).astype(np.int64))
        return states, there, frames, flat, torch.tensor([len(each) for each in labels])

    def teach(self, minutes: float) -> None:
        """Teach for so long, at a pace that rises quickly and falls like a cosine."""
        steps = torch.optim.AdamW(self.net.parameters(), _PEAK, weight_decay=0.01, betas=(0.9, 0.98))
        began, count, told = time.time(), 0, 0
        while True:
            for numbers in self._batches():
                done = (time.time() - began) / 60 / minutes
                if done >= 1:
                    return
                for group in steps.param_groups:
                    group["lr"] = _PEAK * min(1, (count + 1) / 200) * (0.49 * (1 + np.cos(np.pi * done)) + 0.02)
                states, there, frames, labels, sounds = self.batch(numbers, hide=True)
                likely = self.net(states, there).transpose(0, 1)
                loss = functional.ctc_loss(likely, labels, frames, sounds, zero_infinity=True)
                steps.zero_grad()
                loss.backward()
                nn.utils.clip_grad_norm_(self.net.parameters(), 5.0)
                steps.step()
                count += 1
                for name, value in self.net.state_dict().items():
                    self.average[name].lerp_(value, max(0.01, 1 / count) if count < 100 else 0.01)
                if done * minutes >= told:
                    told += 5
                    print(f"{done * minutes:.0f} min, {count} batches: {self.wrong()}", flush=True)

    def _batches(self) -> list[np.ndarray]:
        """Draw batches of utterances about as long as each other."""
        order, found = self.source.permutation(self.taught), []
        for some in np.array_split(order, max(1, len(order) // 1024)):
            by_length = np.array(sorted(some, key=lambda number: len(self.all.states[number])))
            found += np.array_split(by_length, max(1, len(by_length) // _BATCH))
        return [found[at] for at in self.source.permutation(len(found))]

    def wrong(self) -> str:
        """Tell the share of sounds got wrong in what is kept apart, with the average of the weights."""
        net = Net(self.net.mean, self.net.spread)
        net.load_state_dict(self.average)
        net.eval()
        bad: dict[str, list[int]] = {}
        for numbers in np.array_split(self.apart, max(1, len(self.apart) // _BATCH)):
            with torch.no_grad():
                states, there, frames, _, _ = self.batch(numbers, hide=False)
                best = net(states, there).argmax(2).numpy()
            for row, number in enumerate(numbers):
                way = best[row, : frames[row]]
                heard = way[np.concatenate([[True], way[1:] != way[:-1]])]
                ratio = self.all.ratios[number]
                name = "30 dB" if ratio >= 30 else "15 dB" if ratio > 15 else "8 dB" if ratio > 8 else "less"
                row_of = bad.setdefault(name, [0, 0])
                row_of[0] += edits(heard[heard > 0], self.all.labels[number])
                row_of[1] += len(self.all.labels[number])
        return ", ".join(f"{name} {count / of:.3f}" for name, (count, of) in sorted(bad.items()))


def edits(one: np.ndarray, other: np.ndarray) -> int:
    """Count the least changes that make one row the other (Levenshtein)."""
    row = np.arange(len(other) + 1)
    for each in one:
        further = np.minimum(row + 1, np.concatenate([[row[0] + 1], row[:-1] + (other != each)]))
        row = np.minimum.accumulate(further - np.arange(len(row))) + np.arange(len(row))
    return int(row[-1])


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("mixed", type=Path, nargs="+")
    parser.add_argument("out", type=Path)
    parser.add_argument("--minutes", type=float, default=90)
    parser.add_argument("--from", dest="earlier", type=Path, help="weights to go on from")
    args = parser.parse_args()
    torch.manual_seed(1)
    torch.set_num_threads(1)
    utterances = Utterances.read(args.mixed)
    some = np.concatenate(utterances.states[:500]).astype(np.float32)
    net = Net(torch.from_numpy(some.mean(0)), torch.from_numpy(some.std(0)))
    if args.earlier:
        net.load_state_dict(torch.load(args.earlier, weights_only=True))
    trainer = Trainer(utterances, net)
    trainer.teach(args.minutes)
    print(trainer.wrong())
    torch.save(trainer.average, args.out.with_suffix(".pt"))
    net.load_state_dict(trainer.average)
    net.eval()
    torch.onnx.export(
        net, (torch.randn(1, 90, STATES),), str(args.out), input_names=["states"], output_names=["likely"],
        dynamic_axes={"states": {1: "frames"}, "likely": {1: "frames"}}, opset_version=17, dynamo=False,
    )  # fmt: skip


if __name__ == "__main__":
    main()
