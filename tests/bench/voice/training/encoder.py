"""The tiny English encoder and the head over its states, as PyTorch modules.

    python -m tests.bench.voice.training.encoder enc.npz     # the packaged encoder's weights, without their 8 bits

The encoder makes of sound at 16 kHz states of 288 numbers each 24 ms: three convolutions, and six layers of attention
with rotary positions. Its states agree with the packaged one's but for the rounding.
"""

from __future__ import annotations

import argparse
import re
from pathlib import Path

import numpy as np
import torch
from torch import nn
from torch.nn import functional

WIDE, HEADS, DIM, ROTARY = 288, 8, 36, 32
_SPREADS = (1, 2, 4, 1, 1, 2, 4, 1)
_FAR = -1e9


class Layer(nn.Module):
    """Attention and two products, each beside the way."""

    def __init__(self) -> None:
        super().__init__()
        self.input_layernorm = nn.LayerNorm(WIDE, bias=False)
        self.post_attention_layernorm = nn.LayerNorm(WIDE, bias=False)
        self.self_attn = nn.ModuleDict({f"{name}_proj": nn.Linear(WIDE, WIDE, bias=False) for name in "qkvo"})
        self.mlp = nn.ModuleDict({"fc1": nn.Linear(WIDE, 4 * WIDE), "fc2": nn.Linear(4 * WIDE, WIDE)})

    def forward(self, inner, cos, sin, mask):
        batch, time, _ = inner.shape
        normed = self.input_layernorm(inner)
        q, k, v = (
            self.self_attn[f"{name}_proj"](normed).view(batch, time, HEADS, DIM).transpose(1, 2) for name in "qkv"
        )
        found = functional.scaled_dot_product_attention(
            _turned(q, cos, sin), _turned(k, cos, sin), v, attn_mask=mask, scale=1 / 6
        )
        inner = inner + self.self_attn["o_proj"](found.transpose(1, 2).reshape(batch, time, WIDE))
        normed = self.post_attention_layernorm(inner)
        return inner + self.mlp["fc2"](functional.gelu(self.mlp["fc1"](normed)))


def _turned(inner, cos, sin):
    """Turn each pair of numbers by an angle that grows with the place in time."""
    rotary, rest = inner[..., :ROTARY], inner[..., ROTARY:]
    other = torch.stack((-rotary[..., 1::2], rotary[..., ::2]), -1).flatten(-2)
    return torch.cat((rotary * cos + other * sin, rest), -1).to(inner.dtype)


class Encoder(nn.Module):
    """Sound to states."""

    def __init__(self) -> None:
        super().__init__()
        self.conv1 = nn.Conv1d(1, WIDE, 127, 64, bias=False)
        self.groupnorm = nn.GroupNorm(1, WIDE)
        self.conv2, self.conv3 = nn.Conv1d(WIDE, 2 * WIDE, 7, 3), nn.Conv1d(2 * WIDE, WIDE, 3, 2)
        self.layers = nn.ModuleList(Layer() for _ in range(6))
        self.layer_norm = nn.LayerNorm(WIDE, bias=False)
        self.register_buffer("freq", 10000.0 ** (-torch.arange(0, ROTARY, 2).float() / ROTARY), persistent=False)

    @staticmethod
    def frames(samples):
        """Return how many states so many samples give."""
        return (((samples - 127) // 64 + 1 - 7) // 3 + 1 - 3) // 2 + 1

    def forward(self, sound, lengths=None):
        """Make states of sound.

        Args:
            sound: Batch × samples, -1 to 1.
            lengths: How many samples of each are there; None for all.
        """
        x = torch.tanh(self.conv1(sound[:, None]))
        x = self.groupnorm(x) if lengths is None else self._normed(x, lengths)
        x = functional.gelu(self.conv3(functional.gelu(self.conv2(x)))).transpose(1, 2)
        angle = torch.arange(x.shape[1], device=x.device).float()[:, None] * self.freq[None]
        cos, sin = (torch.stack((each, each), -1).flatten(-2) for each in (angle.cos(), angle.sin()))
        mask = None
        if lengths is not None:
            there = torch.arange(x.shape[1], device=x.device)[None] < self.frames(lengths)[:, None]
            mask = torch.zeros_like(there, dtype=x.dtype).masked_fill(~there, _FAR)[:, None, None]
        for layer in self.layers:
            x = layer(x, cos, sin, mask)
        return self.layer_norm(x)

    def _normed(self, x, lengths):
        """Bring the sounds to a common level by what is there alone."""
        count = (lengths - 127) // 64 + 1
        there = (torch.arange(x.shape[2], device=x.device)[None] < count[:, None])[:, None]
        x = x.float()
        of = there.sum(2, keepdim=True) * WIDE
        mean = (x * there).sum((1, 2), keepdim=True) / of
        spread = (((x - mean) * there) ** 2).sum((1, 2), keepdim=True) / of
        return (x - mean) / (spread + 1e-5).sqrt() * self.groupnorm.weight[:, None] + self.groupnorm.bias[:, None]


class _Block(nn.Module):
    def __init__(self, wide: int, spread: int) -> None:
        super().__init__()
        self.dw = nn.Conv1d(wide, wide, 7, padding=spread * 3, dilation=spread, groups=wide)
        self.n, self.p1, self.p2 = nn.LayerNorm(wide), nn.Linear(wide, 2 * wide), nn.Linear(wide, wide)
        self.dr = nn.Dropout(0.1)

    def forward(self, inner, there):
        over_time = self.dw((self.n(inner) * there).transpose(1, 2)).transpose(1, 2)
        return inner + self.dr(self.p2(functional.silu(functional.glu(self.p1(over_time), 2))))


class Head(nn.Module):
    """States to the log-probability of each sound in each frame; column 0 is none."""

    def __init__(self, sounds: int, wide: int = 208) -> None:
        super().__init__()
        self.i, self.o, self.n = nn.Linear(WIDE, wide), nn.Linear(wide, sounds + 1), nn.LayerNorm(wide)
        self.b = nn.ModuleList(_Block(wide, spread) for spread in _SPREADS)
        self.register_buffer("mean", torch.zeros(WIDE))
        self.register_buffer("spread", torch.ones(WIDE))

    def forward(self, states, there=None):
        there = torch.ones_like(states[:, :, :1]) if there is None else there
        inner = self.i((states - self.mean) / self.spread * there)
        for block in self.b:
            inner = block(inner, there)
        return functional.log_softmax(self.o(self.n(inner)).float(), 2)


def load(path: Path) -> Encoder:
    """Load an encoder from a file of its weights."""
    encoder, kept = Encoder(), np.load(path)
    encoder.load_state_dict({name: torch.from_numpy(kept[name].astype(np.float32)) for name in kept.files})
    return encoder


def packaged_weights(path: Path) -> dict[str, np.ndarray]:
    """Read the packaged encoder's weights out of its .ort file, each 8-bit one as the real number it stands for."""
    from onnx import numpy_helper

    from tests.bench.voice.twin import as_onnx

    graph = as_onnx(path.read_bytes()).graph
    known = {each.name: numpy_helper.to_array(each) for each in graph.initializer}
    found = {
        name.replace("_add_tensor", ""): each
        for name, each in known.items()
        if re.match(r"(conv|layers|layer_norm|groupnorm)", name)
    }
    for node in graph.node:
        if node.op_type in ("MatMulIntegerToFloat", "DynamicQuantizeMatMul"):
            b, scale, zero = (node.input[at] for at in ((1, 3, 5) if node.op_type[0] == "M" else (1, 2, 3)))
            place = re.match(r"/?(layers\.\d+/(?:self_attn|mlp)/\w+)/", node.output[0])
            real = (known[b].astype(np.float32) - float(known[zero])) * float(known[scale])
            found[place[1].replace("/", ".") + ".weight"] = real.T.copy()
        if node.op_type in ("Mul", "Add") and "/groupnorm/" in node.output[0] and node.input[1] in known:
            which = "weight" if node.op_type == "Mul" else "bias"
            found[f"groupnorm.{which}"] = known[node.input[1]].reshape(-1)
    return found


def main() -> None:
    from stepper.ears.bundled.moonshine_model import packaged_folder

    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("out", type=Path)
    np.savez(parser.parse_args().out, **packaged_weights(packaged_folder() / "encoder_model.ort"))


if __name__ == "__main__":
    main()
