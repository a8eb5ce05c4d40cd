"""Writes what was taught as the two networks that the program runs.

    python -m tests.bench.voice.training.export TAUGHT MODELS      # encoder16.npz and head.npz to .onnx

Weights of the encoder's products are kept in 8 bits, a scale for each row, and become real numbers again as the network
is loaded: no sum is made in 8 bits, so the networks hear the same on every processor. The rest, and the head, are kept
in 16 bits and used in 32.
"""

from __future__ import annotations

import argparse
import io
from pathlib import Path

import numpy as np
import onnx
import torch
from onnx import helper, numpy_helper

from tests.bench.voice.training.encoder import Head, load

_SMALL = 4096
_OPSET = 17


def as_onnx(network: torch.nn.Module, example: torch.Tensor, names: tuple[str, str], time: tuple[str, str]) -> onnx.ModelProto:
    """Trace a network; the second axis of what goes in and comes out may have any length."""
    kept = io.BytesIO()
    torch.onnx.export(
        network, (example,), kept, input_names=[names[0]], output_names=[names[1]], opset_version=_OPSET, dynamo=False,
        dynamic_axes={names[0]: {1: time[0]}, names[1]: {1: time[1]}},
    )  # fmt: skip
    return onnx.load_from_string(kept.getvalue())


def smaller(model: onnx.ModelProto, *, eight_bits: bool) -> None:
    """Keep the weights in fewer bits, with the nodes that make real numbers of them again."""
    nodes, weights = [], []
    for each in model.graph.initializer:
        array = numpy_helper.to_array(each)
        if array.dtype != np.float32 or array.size < _SMALL:
            weights.append(each)
        elif eight_bits and array.ndim >= 2:
            axis = 1 if array.ndim == 2 else 0  # products have their weights as inputs × outputs
            flat = np.moveaxis(array, axis, 0).reshape(array.shape[axis], -1)
            scale = np.maximum(np.abs(flat).max(1), 1e-12) / 127
            shape = [1] * array.ndim
            shape[axis] = -1
            whole = np.clip(np.round(array / scale.reshape(shape)), -127, 127).astype(np.int8)
            kept = (f"{each.name}_8", f"{each.name}_scale", f"{each.name}_zero")
            weights += [
                numpy_helper.from_array(whole, kept[0]), numpy_helper.from_array(scale.astype(np.float32), kept[1]),
                numpy_helper.from_array(np.zeros(len(scale), np.int8), kept[2]),
            ]  # fmt: skip
            nodes.append(helper.make_node("DequantizeLinear", list(kept), [each.name], axis=axis))
        else:
            weights.append(numpy_helper.from_array(array.astype(np.float16), f"{each.name}_16"))
            nodes.append(helper.make_node("Cast", [f"{each.name}_16"], [each.name], to=onnx.TensorProto.FLOAT))
    del model.graph.initializer[:]
    model.graph.initializer.extend(weights)
    rest = list(model.graph.node)
    del model.graph.node[:]
    model.graph.node.extend([*nodes, *rest])


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("taught", type=Path)
    parser.add_argument("models", type=Path)
    args = parser.parse_args()
    encoder, kept = load(args.taught / "encoder16.npz").eval(), np.load(args.taught / "head.npz")
    head = Head(len(kept["o.weight"]) - 1, len(kept["i.weight"])).eval()
    head.load_state_dict({name: torch.from_numpy(kept[name]) for name in kept.files})
    args.models.mkdir(parents=True, exist_ok=True)
    for name, network, example, names, eight in (
        ("encoder", encoder, torch.randn(1, 48_000) * 0.1, ("input_values", "states"), True),
        ("sounds", head, torch.randn(1, 90, 288), ("states", "likely"), False),
    ):
        model = as_onnx(network, example, names, ("samples" if name == "encoder" else "frames", "frames"))
        smaller(model, eight_bits=eight)
        onnx.checker.check_model(model)
        path = args.models / f"{name}.onnx"
        onnx.save(model, path)
        print(f"{path}: {path.stat().st_size / 1e6:.1f} MB")


if __name__ == "__main__":
    main()
