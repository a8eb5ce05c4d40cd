"""Teach a small network to tell who speaks, from what the recogniser's encoder holds of a sound.

    python -m tests.bench.voice.training.voices PEOPLE TALK MODELS [--pieces 110000] [--seconds 42]

PEOPLE and TALK are folders of packs: people with their names (`collect people`), and lines that films say. Reads
MODELS/encoder.onnx, which gives two early layers besides its states (`laid`), and writes MODELS/voices.onnx. A piece is a word or two of one person, half a second to two, alone or 1 to 22 dB above a film, at any
loudness; each person counts as three, at the pace recorded and an eighth slower and faster. Taught by an additive angular
margin, on one accelerator.
"""

from __future__ import annotations

import argparse
import os
import time
from collections import defaultdict
from multiprocessing import get_context
from pathlib import Path
from typing import Any

import numpy as np
import onnx
import torch
from onnx import TensorProto, helper, numpy_helper
from torch import nn
from torch.nn import functional

from stepper.ears.onnx_session import load_network
from tests.bench.voice.film import loudness, music
from tests.bench.voice.training.laid import EARLIER
from tests.bench.voice.training.packs import RATE_HZ, packed

_WIDE, _FRAMES, _INNER, _NUMBERS = 288, 96, 256, 96
_PACES = (1.0, 0.88, 1.13)
_MARGIN, _SCALE, _BATCH = 0.2, 25.0, 512


class Pieces:
    """Makes pieces of speech and what the encoder holds of them."""

    def __init__(self, people: dict[str, list[np.ndarray]], films: list[np.ndarray], encoder: Path) -> None:
        self.people, self.films, self._encoder = list(people.values()), films, encoder
        self._network: Any = None

    def make(self, job: tuple[int, int]) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """Make so many: layers, how many frames each has, and who speaks."""
        seed, count = job
        source = np.random.default_rng(seed)
        self._network = self._network or load_network(self._encoder, "The encoder", in_steps=False)
        layers = np.zeros((count, _FRAMES, 3 * _WIDE), np.float16)
        lengths, whose = np.zeros(count, np.int64), np.zeros(count, np.int64)
        for at in range(count):
            person, pace = int(source.integers(len(self.people))), int(source.integers(len(_PACES)))
            sound = self._amid(self._said(self.people[person], _PACES[pace], source), source)
            found = self._network.run([*EARLIER.values(), "states"], {"input_values": sound[None]})
            held = np.concatenate(found, axis=2)[0][:_FRAMES]
            layers[at, : len(held)], lengths[at], whose[at] = held, len(held), person * len(_PACES) + pace
        return layers, lengths, whose

    def _said(self, clips: list[np.ndarray], pace: float, source: np.random.Generator) -> np.ndarray:
        parts = list[np.ndarray]()
        for _ in range(1 + int(source.random() < 0.55)):
            clip = clips[int(source.integers(len(clips)))]
            if len(clip) > 24_000:
                start = int(source.integers(len(clip) - 20_000))
                clip = clip[start : start + int(source.integers(9600, 24_000))]
            clip = np.interp(np.arange(int(len(clip) / pace)) * pace, np.arange(len(clip)), clip)
            parts += [np.zeros(int(source.integers(0, 1600)) if parts else 0), clip * (0.1 / loudness(clip))]
        return np.concatenate(parts)[:33_000].astype(np.float32)

    def _amid(self, said: np.ndarray, source: np.random.Generator) -> np.ndarray:
        around = [np.zeros(int(source.integers(1000, 6000)), np.float32) for _ in range(2)]
        sound = np.concatenate([around[0], said, around[1]])
        sound += source.standard_normal(len(sound)).astype(np.float32) * 10 ** source.uniform(-4, -2.5)
        if source.random() >= 0.15:
            film = self.films[int(source.integers(len(self.films)))]
            start = int(source.integers(len(film) - len(sound)))
            sound += film[start : start + len(sound)] * (0.1 * 10 ** (-source.uniform(1, 22) / 20))
        sound = np.clip(sound * 10 ** (source.uniform(-9, 4) / 20), -1, 1)
        return (sound * 32_767).astype(np.int16).astype(np.float32) / 32_768


class Whose(nn.Module):
    """Layers to a vector: two convolutions, and mean and spread over time, each frame weighed."""

    def __init__(self, middle: torch.Tensor, spread: torch.Tensor) -> None:
        super().__init__()
        self.register_buffer("middle", middle)
        self.register_buffer("spread", spread)
        self.first = nn.Conv1d(3 * _WIDE, _INNER, 3, padding=1)
        self.second, self.weigh = nn.Conv1d(_INNER, _INNER, 1), nn.Conv1d(_INNER, _INNER, 1)
        self.even, self.last, self.drop = nn.BatchNorm1d(2 * _INNER), nn.Linear(2 * _INNER, _NUMBERS), nn.Dropout(0.2)

    def forward(self, layers: torch.Tensor, lengths: torch.Tensor) -> torch.Tensor:
        """Return a vector for each piece."""
        layers = ((layers.float() - self.middle) / self.spread).transpose(1, 2)
        there = (torch.arange(layers.shape[2], device=layers.device)[None] < lengths[:, None])[:, None]
        inner = functional.relu(self.second(functional.relu(self.first(self.drop(layers) * there))))
        weights = self.weigh(torch.tanh(inner)).masked_fill(~there, -1e4).softmax(2)
        mean = (inner * weights).sum(2)
        spread = ((inner * inner * weights).sum(2) - mean**2).clamp(min=1e-5).sqrt()
        return functional.normalize(self.last(self.even(torch.cat([mean, spread], 1))), dim=1)


def teach(layers: torch.Tensor, lengths: torch.Tensor, whose: torch.Tensor, seconds: float) -> Whose:
    """Teach for so long that pieces of one speaker lie together."""
    torch.manual_seed(1)
    some = layers[:4000].float()[torch.arange(_FRAMES, device=layers.device)[None] < lengths[:4000, None]]
    network = Whose(some.mean(0), some.std(0) + 1e-4).to(layers.device)
    speakers = nn.Parameter(torch.randn(int(whose.max()) + 1, _NUMBERS, device=layers.device) * 0.05)
    optimiser = torch.optim.AdamW([*network.parameters(), speakers], lr=2e-3, weight_decay=1e-2)
    began, step = time.time(), 0
    while (share := (time.time() - began) / seconds) < 1:
        for group in optimiser.param_groups:
            group["lr"] = 2e-3 * min(1, step / 100 + 0.01) * (0.5 * (1 + np.cos(np.pi * share)) + 0.01)
        some = torch.randint(0, len(layers), (_BATCH,), device=layers.device)
        alike = network(layers[some], lengths[some]) @ functional.normalize(speakers, dim=1).T
        right = whose[some][:, None]
        angle = torch.acos(alike.clamp(-1 + 1e-6, 1 - 1e-6)).gather(1, right)
        alike = alike.scatter(1, right, torch.cos(angle + _MARGIN * min(1, 3 * share)))
        loss = functional.cross_entropy(alike * _SCALE, right[:, 0])
        optimiser.zero_grad()
        loss.backward()
        optimiser.step()
        step += 1
    print(f"{step} steps, loss {loss.item():.2f}", flush=True)
    return network.eval()


def write(network: Whose, path: Path) -> None:
    """Write the network for one piece at a time, its weights in 8 bits with a scale for each row."""
    state = {name: each.detach().cpu().numpy() for name, each in network.state_dict().items()}
    gain = state["even.weight"] / np.sqrt(state["even.running_var"] + 1e-5)
    shift = state["even.bias"] - state["even.running_mean"] * gain
    weights = {name: state[f"{name}.weight"] for name in ("first", "second", "weigh")}
    weights["last"] = state["last.weight"] * gain[None]
    kept = {name: state[name] for name in ("middle", "spread")}
    kept |= {f"{name}_0": state[f"{name}.bias"] for name in ("first", "second", "weigh")}
    kept["last_0"] = state["last.bias"] + state["last.weight"] @ shift
    kept |= {"least": np.array([1e-5], np.float32), "time": np.array([2], np.int64)}
    nodes = []
    for name, each in weights.items():
        scale = (np.abs(each.reshape(len(each), -1)).max(1) / 127 + 1e-12).astype(np.float32)
        rounded = np.round(each / scale.reshape(-1, *[1] * (each.ndim - 1))).astype(np.int8)
        kept |= {f"{name}_q": rounded, f"{name}_s": scale, f"{name}_z": np.zeros(len(each), np.int8)}
        nodes.append(helper.make_node("DequantizeLinear", [f"{name}_{part}" for part in "qsz"], [name], axis=0))

    def add(kind: str, given: str, made: str, **how: Any) -> None:
        nodes.append(helper.make_node(kind, given.split(), [made], **how))

    add("Sub", "layers middle", "centred")
    add("Div", "centred spread", "even")
    add("Transpose", "even", "turned", perm=[0, 2, 1])
    add("Conv", "turned first first_0", "one", pads=[1, 1], kernel_shape=[3])
    add("Relu", "one", "two")
    add("Conv", "two second second_0", "three", kernel_shape=[1])
    add("Relu", "three", "inner")
    add("Tanh", "inner", "bent")
    add("Conv", "bent weigh weigh_0", "heavy", kernel_shape=[1])
    add("Softmax", "heavy", "weights", axis=2)
    add("Mul", "inner weights", "weighed")
    add("ReduceSum", "weighed time", "mean", keepdims=0)
    add("Mul", "inner weighed", "squares")
    add("ReduceSum", "squares time", "square", keepdims=0)
    add("Mul", "mean mean", "of_mean")
    add("Sub", "square of_mean", "difference")
    add("Max", "difference least", "variance")
    add("Sqrt", "variance", "deviation")
    add("Concat", "mean deviation", "both", axis=1)
    add("Gemm", "both last last_0", "long", transB=1)
    add("LpNormalization", "long", "vector", axis=1, p=2)
    graph = helper.make_graph(
        nodes,
        "voices",
        [helper.make_tensor_value_info("layers", TensorProto.FLOAT, [1, "frames", 3 * _WIDE])],
        [helper.make_tensor_value_info("vector", TensorProto.FLOAT, [1, _NUMBERS])],
        [numpy_helper.from_array(np.ascontiguousarray(each), name) for name, each in kept.items()],
    )
    model = helper.make_model(graph, opset_imports=[helper.make_opsetid("", 17)])
    model.ir_version = 8
    onnx.checker.check_model(model)
    onnx.save(model, path)


def strung(lines: list[np.ndarray], seconds: float, seed: int) -> np.ndarray:
    """Let one line follow another over music, as loud as all films here."""
    source, sound, at = np.random.default_rng(seed), music(seconds, seed) * 0.06, 0.3
    while at < seconds - 1:
        line = lines[int(source.integers(len(lines)))]
        start = round(at * RATE_HZ)
        end = min(len(sound), start + len(line))
        sound[start:end] += line[: end - start] * (0.5 / max(1e-6, np.abs(line).max()) * source.uniform(0.5, 1))
        at += len(line) / RATE_HZ + source.choice((-0.3, 0.2, 0.6, 1.5))
    return (sound / loudness(sound)).astype(np.float32)


_pieces: list[Pieces] = []


def _make(job: tuple[int, int]) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    return _pieces[0].make(job)


def main() -> None:
    """Make the pieces, teach, and write the network."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("people", type=Path)
    parser.add_argument("talk", type=Path)
    parser.add_argument("models", type=Path)
    parser.add_argument("--pieces", type=int, default=110_000)
    parser.add_argument("--seconds", type=float, default=42, help="of teaching")
    args = parser.parse_args()
    people = defaultdict[str, list[np.ndarray]](list)
    for clip in packed(args.people):
        if clip.by and clip.kind != "noise" and len(clip.sound) > 4000:
            people[clip.by].append(clip.sound.astype(np.float32) / 32_768)
    lines = [clip.sound.astype(np.float32) / 32_768 for clip in packed(args.talk) if not clip.held]
    read_out = [clip[: 4 * RATE_HZ] for clips in people.values() for clip in clips if len(clip) > 30_000]
    films = [strung(lines, 240, seed) for seed in range(3)]
    films += [strung(read_out, 240, 50 + seed) for seed in range(9 if read_out else 0)]
    _pieces.append(Pieces(people, films, args.models / "encoder.onnx"))
    jobs = [(seed, 250) for seed in range(args.pieces // 250)]
    with get_context("fork").Pool(os.cpu_count()) as pool:
        made = list(pool.imap(_make, jobs))
    layers, lengths, whose = (torch.from_numpy(np.concatenate(each)).cuda() for each in zip(*made, strict=True))
    write(teach(layers, lengths, whose, args.seconds), args.models / "voices.onnx")


if __name__ == "__main__":
    main()
