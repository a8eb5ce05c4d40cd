from __future__ import annotations

import hashlib
import math
import re
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from stepper.ears.packaged_weights import weights_path

MODELS = Path(__file__).parents[2] / "models" / "ears"
CARD = (MODELS / "README.md").read_text(encoding="utf-8")


@pytest.mark.parametrize("name", ["encoder.onnx", "sounds.onnx", "voices.onnx"])
def test_the_weights_are_those_that_were_measured(name: str) -> None:
    """The figures of the card are of files with this checksum, and of no others."""
    content = weights_path(name).read_bytes()
    assert hashlib.sha256(content).hexdigest() in CARD
    assert weights_path(name).parts[-3:] == ("models", "ears", name)


def test_all_weights_together_are_small() -> None:
    """Sixteen megabytes, as everybody who installs the program downloads them."""
    assert sum(path.stat().st_size for path in MODELS.glob("*.onnx")) <= 16_000_000


def test_every_source_that_wants_to_be_named_is_named() -> None:
    """Each licence that asks for attribution stands beside who is to be named; share-alike sources are left out."""
    for source in ("Speech Commands", "LibriSpeech", "ESC-10", "Kokoro", "Moonshine"):
        assert source in CARD
    table = re.findall(r"^\|.*\|$", CARD.partition("## Learnt from")[2].partition("\n## ")[0], re.M)
    assert len(table) > 10
    assert not any("SA" in row for row in table)


def _by_definition(held: dict[str, Any], sound: Any) -> Any:
    """Work the encoder out in 64 bits, each step as it is defined.

    Source: of the steps and their sizes, the encoder of Moonshine (Jeffries and others, 2024); of the angles, rotary
    position embedding (Su and others, 2021), pairs of neighbours, 32 of 36 numbers.
    """

    def convolved(inner: Any, name: str, step: int) -> Any:
        weight = held[f"{name}.weight"]
        starts = range(0, inner.shape[1] - weight.shape[2] + 1, step)
        windows = np.stack([inner[:, start : start + weight.shape[2]].ravel() for start in starts])
        bias = held.get(f"{name}.bias", np.zeros(len(weight)))
        return weight.reshape(len(weight), -1) @ windows.T + bias[:, None]

    def gelu(inner: Any) -> Any:
        return inner * (1 + np.vectorize(math.erf)(inner / math.sqrt(2))) / 2

    def normed(inner: Any, weight: Any, axis: int | None = -1) -> Any:
        keep = axis is not None
        return (inner - inner.mean(axis, keepdims=keep)) / np.sqrt(inner.var(axis, keepdims=keep) + 1e-5) * weight

    def turned(inner: Any) -> Any:
        angles = np.arange(len(inner))[:, None] * 10_000.0 ** -(np.arange(16) / 16)
        pairs = (inner[:, :, :32:2] + 1j * inner[:, :, 1:32:2]) * np.exp(1j * angles)[:, None]
        both = np.stack([pairs.real, pairs.imag], -1).reshape(len(inner), 8, 32)
        return np.concatenate([both, inner[:, :, 32:]], 2)

    bent = np.tanh(convolved(sound[None], "conv1", 64))
    bent = normed(bent, held["groupnorm.weight"][:, None], None) + held["groupnorm.bias"][:, None]
    state = gelu(convolved(gelu(convolved(bent, "conv2", 3)), "conv3", 2)).T
    for place in (f"layers.{layer}" for layer in range(6)):
        inner = normed(state, held[f"{place}.input_layernorm.weight"])
        parts = [inner @ held[f"{place}.self_attn.{each}_proj.weight"].T for each in "qkv"]
        query, key, value = (each.reshape(-1, 8, 36) for each in parts)
        scores = np.einsum("thd,shd->hts", turned(query), turned(key)) / 6
        shares = np.exp(scores - scores.max(-1, keepdims=True))
        found = np.einsum("hts,shd->thd", shares / shares.sum(-1, keepdims=True), value).reshape(-1, 288)
        state = state + found @ held[f"{place}.self_attn.o_proj.weight"].T
        inner = normed(state, held[f"{place}.post_attention_layernorm.weight"])
        inner = gelu(inner @ held[f"{place}.mlp.fc1.weight"].T + held[f"{place}.mlp.fc1.bias"])
        state = state + inner @ held[f"{place}.mlp.fc2.weight"].T + held[f"{place}.mlp.fc2.bias"]
    return normed(state, held["layer_norm.weight"])


def test_the_encoder_makes_of_a_sound_what_its_weights_say() -> None:
    """Its weights are laid so that it is quickly worked out; what it hears is what was taught.

    However a sound ends: in the middle of a window of any of its three convolutions, or a sample before one.
    """
    onnx = pytest.importorskip("onnx")
    pytest.importorskip("onnxruntime")
    from stepper.ears.onnx_session import load_encoder
    from tests.bench.voice.training.laid import taught

    path = weights_path("encoder.onnx")
    held = {name: each.astype(np.float64) for name, each in taught(onnx.load(path).graph).items()}
    encoder = load_encoder(path, "It")
    for samples in (1_983 + 63, *range(1_983 + 64, 1_983 + 7 * 64, 64)):
        sound = np.random.default_rng(samples).standard_normal(samples).astype(np.float32) / 20
        (states,) = encoder.run(["states"], {"input_values": sound[None]})
        expected = _by_definition(held, sound)
        assert states[0].shape == expected.shape
        assert np.abs(states[0] - expected).max() < 1e-4, samples
