"""Writes what was taught as the two networks that the program runs.

    python -m tests.bench.voice.training.export TAUGHT [TAUGHT ...] MODELS     # encoder16.npz and head.npz to .onnx

Of several trainings that began with the same weights the mean is written; with --shares, one number for each, a mean that is so weighed. `read_back` takes the weights out again, for a training that goes on from them;
with --back they are written as a training writes them, so that the mean can be taken of what was before as well:

    python -m tests.bench.voice.training.export --back MODELS TAUGHT

Weights of the encoder's products are kept in 8 bits, a scale for each row, and become real numbers again as the network
is loaded: no sum is made in 8 bits, so the networks hear the same on every processor. The rest, and the head, are kept
in 16 bits and used in 32.
"""

from __future__ import annotations

import argparse
import io
import re
from collections.abc import Sequence
from pathlib import Path

import numpy as np
import onnx
import torch
from onnx import helper, numpy_helper

from tests.bench.voice.training.encoder import Encoder, Head
from tests.bench.voice.training.laid import is_laid, laid, taught

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


def read_back(path: Path) -> dict[str, np.ndarray]:
    """Return the weights of a network that `smaller` wrote, by the names they have in PyTorch, as real numbers.

    Args:
        path: The .onnx file.
    """
    graph = onnx.load(path).graph
    if is_laid(graph):
        return taught(graph)
    kept = {each.name: numpy_helper.to_array(each) for each in graph.initializer}
    found = {name: each for name, each in kept.items() if not name.endswith(("_8", "_16", "_scale", "_zero"))}
    for node in graph.node:
        if node.op_type == "DequantizeLinear":
            whole, scale, _ = (kept[name] for name in node.input)
            shape = [1] * whole.ndim
            shape[next(each.i for each in node.attribute if each.name == "axis")] = -1
            found[node.output[0]] = whole.astype(np.float32) * scale.reshape(shape)
        elif node.op_type == "Cast" and node.input[0] in kept:
            found[node.output[0]] = kept[node.input[0]].astype(np.float32)
        elif node.op_type == "MatMul" and node.input[1] in found:
            place = node.output[0].removeprefix("/").rpartition("/")[0].replace("/", ".")
            place = re.sub(r"(?=[qkvo]_proj$)", "self_attn.", re.sub(r"(?=fc[12]$)", "mlp.", place))
            found[f"{place}.weight"] = found.pop(node.input[1]).T.copy()
        elif node.op_type in ("Mul", "Add") and "/groupnorm/" in node.output[0] and node.input[1] in found:
            part = "weight" if node.op_type == "Mul" else "bias"
            found[f"groupnorm.{part}"] = found.pop(node.input[1]).reshape(-1)
    return {name: each.astype(np.float32) for name, each in found.items()}


def mean(paths: Sequence[Path], shares: Sequence[float] | None = None) -> dict[str, torch.Tensor]:
    """Return the mean of the weights in some files, by name.

    Args:
        paths: The files.
        shares: How much of each; None for as much of each.
    """
    files = [np.load(path) for path in paths]
    return {
        name: torch.from_numpy(np.average([each[name].astype(np.float32) for each in files], axis=0, weights=shares).astype(np.float32))
        for name in files[0].files
    }


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("taught", type=Path, nargs="+")
    parser.add_argument("models", type=Path)
    parser.add_argument("--back", action="store_true", help="the other way round: .onnx to what was taught")
    parser.add_argument("--shares", type=float, nargs="+", help="how much of each of them; as much of each unless given")
    args = parser.parse_args()
    if args.back:
        args.models.mkdir(parents=True, exist_ok=True)
        for name, file in (("encoder", "encoder16"), ("sounds", "head")):
            np.savez(args.models / f"{file}.npz", **read_back(args.taught[0] / f"{name}.onnx"))
        return
    kept = mean([each / "head.npz" for each in args.taught], args.shares)
    encoder, head = Encoder().eval(), Head(len(kept["o.weight"]) - 1, len(kept["i.weight"])).eval()
    head.load_state_dict(kept)
    encoder.load_state_dict(mean([each / "encoder16.npz" for each in args.taught], args.shares))
    args.models.mkdir(parents=True, exist_ok=True)
    for name, network, example, names, eight in (
        ("encoder", encoder, torch.randn(1, 48_000) * 0.1, ("input_values", "states"), True),
        ("sounds", head, torch.randn(1, 90, 288), ("states", "likely"), False),
    ):
        model = as_onnx(network, example, names, ("samples" if name == "encoder" else "frames", "frames"))
        smaller(model, eight_bits=eight)
        model = laid(model) if name == "encoder" else model
        onnx.checker.check_model(model)
        path = args.models / f"{name}.onnx"
        onnx.save(model, path)
        print(f"{path}: {path.stat().st_size / 1e6:.1f} MB")


if __name__ == "__main__":
    main()
