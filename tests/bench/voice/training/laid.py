"""Lay the encoder's weights so that it is all plain products: the same numbers in another order.

    python -m tests.bench.voice.training.laid MODELS       # MODELS/encoder.onnx as it was traced; `export` does it by itself

Traced, a convolution goes through every stretch of sound once more to put its windows side by side, and a turn by an
angle takes every second number out and puts it back, in ten steps. Here

- the numbers of a moment stand side by side, so that a window is a few rows behind one another and a convolution is a
  product of those with its weights: three moments to a row, each product's second half moved on by one row;
- the norm over all moments, which is one number taken away and one that all are divided by, is worked into the weights
  behind it: the product is made of what has not been normed yet;
- the first numbers of all pairs that are turned stand before the second ones, in `q` and `k` alike, so that both are
  turned at once and each score stays the sum it was;
- `q`, `k` and `v` are one product;
- what the first two convolutions make of a stretch of sound can be taken out (`rows`) and given again (`known`) with
  the sound that follows it, from the first moment on of which nothing is known: windows that slide over a film share
  most of theirs.

Each weight keeps its 8 bits and its scale, so it is the same real number once it is loaded; sums are made in another
order, and the states differ by no more than they do between two optimisations of one file.
"""

from __future__ import annotations

import argparse
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import numpy as np
import onnx
from onnx import TensorProto, helper, numpy_helper

_WIDE, _HEADS, _DIM, _ROTARY, _LAYERS, _FULL = 288, 8, 36, 32, 6, 576
_LEAST = 1e-5
_BASE = 10_000.0
_ROOT, _SMALL_ENOUGH = 2**0.5, 6**-0.5
KNOWN, ROWS = "known", "rows"
"""What is known of a sound from before, moment by moment of the second convolution, and what is known with it: its
products before the norm, and the sum and the sum of squares of the three moments of the first that begin with it."""
EARLIER = {0: "early", 2: "middle"}
"""Layers whose states are given as well: what knows a voice goes by them."""
_ALL = 2**62

_Weight = tuple[np.ndarray, np.ndarray]
"""In 8 bits, inputs × outputs, and the scale of each output."""


def order() -> np.ndarray:
    """Return where each number of `q` and `k` stood before: of each head the first of all pairs, the second of all, the
    rest."""
    head = np.concatenate([np.arange(0, _ROTARY, 2), np.arange(1, _ROTARY, 2), np.arange(_ROTARY, _DIM)])
    return np.concatenate([each * _DIM + head for each in range(_HEADS)])


def is_laid(graph: Any) -> bool:
    """Return whether a network is an encoder that was laid."""
    return any(each.name == "conv2.first_8" for each in graph.initializer)


def taught(graph: Any) -> dict[str, np.ndarray]:
    """Return the weights of an encoder that was laid, by the names they have in PyTorch, as real numbers."""
    kept = {each.name: numpy_helper.to_array(each) for each in graph.initializer}
    real = {
        node.output[0]: kept[node.input[0]].astype(np.float32) * kept[node.input[1]]
        for node in graph.node
        if node.op_type == "DequantizeLinear"
    }
    found = {name: each.reshape(-1) for name, each in kept.items() if name.endswith((".weight", ".bias"))}
    found["conv1.weight"] = _as_convolution(real["conv1"][:-1], 1)
    for name, wide in (("conv2", _WIDE), ("conv3", _FULL)):
        first, last = real[f"{name}.first"], real[f"{name}.last"]
        parts = np.split(first, first.shape[1] // last.shape[1], axis=1)
        found[f"{name}.weight"] = _as_convolution(np.concatenate([*parts, last]), wide)
    for layer in range(_LAYERS):
        place = f"layers.{layer}"
        for name, each in zip("qkv", np.split(real[f"{place}.qkv"], 3, axis=1), strict=True):
            turned = name != "v"
            found[f"{place}.self_attn.{name}_proj.weight"] = (each[:, np.argsort(order())] if turned else each).T.copy()
        for inner, outer in (("o_proj", "self_attn.o_proj"), ("fc1", "mlp.fc1"), ("fc2", "mlp.fc2")):
            found[f"{place}.{outer}.weight"] = real[f"{place}.{inner}"].T.copy()
    return found


def _as_convolution(product: np.ndarray, inputs: int) -> np.ndarray:
    """Return weights of moments × inputs, outputs as a convolution has them: outputs × inputs × moments."""
    return product.reshape(-1, inputs, product.shape[1]).transpose(2, 1, 0).copy()


def laid(model: onnx.ModelProto) -> onnx.ModelProto:
    """Return the network with its weights laid; it gives its early layers, too.

    Args:
        model: The encoder as `export` writes it.
    """
    whole, real = _taken(model.graph)
    return _Laying(whole, real).model()


def _taken(graph: Any) -> tuple[dict[str, _Weight], dict[str, np.ndarray]]:
    """Return the weights in 8 bits, and those that are real numbers, by the names they have in PyTorch, but for the
    part of the layer."""
    kept = {each.name: numpy_helper.to_array(each) for each in graph.initializer}
    whole, real = {}, {name: each for name, each in kept.items() if name.endswith((".weight", ".bias"))}
    for node in graph.node:
        place = node.name.removeprefix("/").rpartition("/")[0].replace("/", ".")
        if node.op_type == "Conv":
            flat = kept[f"{node.input[1]}_8"].transpose(2, 1, 0)
            whole[place] = flat.reshape(-1, flat.shape[2]), kept[f"{node.input[1]}_scale"]
        elif node.op_type == "MatMul" and f"{node.input[1]}_8" in kept:
            whole[place] = kept[f"{node.input[1]}_8"], kept[f"{node.input[1]}_scale"]
        elif node.op_type in ("Mul", "Add") and place == "groupnorm":
            real[f"groupnorm.{'weight' if node.op_type == 'Mul' else 'bias'}"] = kept[node.input[1]].reshape(-1)
    return whole, real


class _Laying:
    """Writes the network down, node by node; each method returns the name of what it makes."""

    def __init__(self, whole: Mapping[str, _Weight], real: Mapping[str, np.ndarray]) -> None:
        self._whole, self._real = whole, real
        self._nodes: list[Any] = []
        self._kept: dict[str, np.ndarray] = {}

    def model(self) -> onnx.ModelProto:
        self._keep(KNOWN, np.zeros((1, 0, _FULL + 2), np.float32))  # nothing, unless it is given
        state, count = self._convolutions()
        cos, sin = self._angles(count)
        for layer in range(_LAYERS):
            state = self._layer(f"layers.{layer}", state, cos, sin)
            if layer in EARLIER:
                self._put("Identity", state, made=EARLIER[layer])
        self._normed(state, "layer_norm.weight", made="states")
        graph = helper.make_graph(
            self._nodes,
            "encoder",
            [
                helper.make_tensor_value_info("input_values", TensorProto.FLOAT, [1, "samples"]),
                helper.make_tensor_value_info(KNOWN, TensorProto.FLOAT, [1, "known", _FULL + 2]),
            ],
            [
                helper.make_tensor_value_info(name, TensorProto.FLOAT, [1, time, wide])
                for name, time, wide in (
                    *((name, "frames", _WIDE) for name in ("states", *EARLIER.values())),
                    (ROWS, "rows", _FULL + 2),
                )
            ],
            [numpy_helper.from_array(np.ascontiguousarray(each), name) for name, each in self._kept.items()],
        )
        model = helper.make_model(graph, opset_imports=[helper.make_opsetid("", 17)])
        model.ir_version = 8
        onnx.checker.check_model(model)
        return model

    def _put(self, kind: str, *given: str, made: str = "", **how: Any) -> str:
        made = made or f"{kind.lower()}_{len(self._nodes)}"
        self._nodes.append(helper.make_node(kind, list(given), [made], name=f"to {made}", **how))
        return made

    def _parted(self, given: str, sizes: list[int], axis: int) -> list[str]:
        names = [f"part_{len(self._nodes)}_{at}" for at in range(len(sizes))]
        self._nodes.append(helper.make_node("Split", [given, self._whole_numbers(*sizes)], names, axis=axis))
        return names

    def _whole_numbers(self, *numbers: int) -> str:
        return self._keep(f"numbers {numbers}", np.array(numbers, np.int64))

    def _number(self, number: float) -> str:
        return self._keep(f"number {number:.9g}", np.array(number, np.float32))

    def _keep(self, name: str, array: np.ndarray) -> str:
        self._kept[name] = array
        return name

    def _own(self, name: str, *shape: int) -> str:
        array = self._real[name]
        return self._keep(name, array.reshape(shape) if shape else array)

    def _weight(self, name: str, weight: _Weight) -> str:
        parts = (f"{name}_8", f"{name}_scale", f"{name}_zero")
        for part, array in zip(parts, (*weight, np.zeros(len(weight[1]), np.int8)), strict=True):
            self._keep(part, array)
        return self._put("DequantizeLinear", *parts, made=name, axis=1)

    def _rows(self, given: str, first: str, last: str, axis: str) -> str:
        return self._put("Slice", given, first, last, axis)

    def _times(self, count: str, by: int, more: int) -> str:
        return self._put("Add", self._put("Mul", count, self._whole_numbers(by)), self._whole_numbers(more))

    def _gelu(self, given: str) -> str:
        part = self._put("Erf", self._put("Div", given, self._number(_ROOT)))  # so that it is known for what it is
        return self._put("Mul", self._put("Mul", given, self._put("Add", part, self._number(1))), self._number(0.5))

    def _normed(self, given: str, weight: str, made: str = "") -> str:
        nothing = self._keep("nothing", np.zeros(_WIDE, np.float32))
        how = {"axis": -1, "epsilon": _LEAST}
        return self._put("LayerNormalization", given, self._own(weight), nothing, made=made, **how)

    def _convolutions(self) -> tuple[str, str]:
        """Return what the layers begin with, and of how many moments.

        Windows: 127 samples every 64, 7 of those every 3, 3 of those every 2. `count` windows of the last need 6 more
        rows of the first for each, and 12 in all with those that only fill the last row of three and of two.
        """
        one, both = self._whole_numbers(1), self._whole_numbers(1, 2)
        samples = self._put("Gather", self._put("Shape", "input_values"), one)
        known = self._put("Gather", self._put("Shape", KNOWN), one)
        own = self._put("Div", self._put("Sub", samples, self._whole_numbers(63)), self._whole_numbers(64))
        rows = self._put("Add", own, self._put("Mul", known, self._whole_numbers(3)))
        count = self._put("Div", self._put("Sub", rows, self._whole_numbers(7)), self._whole_numbers(6))
        missing = self._put("Sub", self._times(count, 6, 12), rows)
        sound = self._put("Pad", "input_values", self._whole_numbers(0, 0, 0, 1))
        sound = self._rows(sound, self._whole_numbers(0), self._times(own, 64, 64), one)
        sound = self._put("Reshape", sound, self._whole_numbers(1, -1, 64))
        beside = self._rows(sound, one, self._whole_numbers(_ALL), one)
        sound = self._put("Concat", self._rows(sound, self._whole_numbers(0), own, one), beside, axis=2)
        # Rows of nothing, which stay nothing: they count in no sum.
        before = self._put("Concat", self._whole_numbers(0, 0, 0, 0), missing, self._whole_numbers(0), axis=0)
        first, scale = self._whole["conv1"]
        first = np.concatenate([first, np.zeros((1, _WIDE), np.int8)])
        bent = self._put("Tanh", self._put("MatMul", self._put("Pad", sound, before), self._weight("conv1", (first, scale))))
        second = self._second(bent, rows, self._put("Sub", self._times(count, 2, 2), known), both)
        pairs = self._put("Reshape", self._gelu(second), self._whole_numbers(1, -1, 2 * _FULL))
        weight, scale = self._whole["conv3"]
        early = self._weight("conv3.first", (weight[: 2 * _FULL], scale))
        late = self._weight("conv3.last", (weight[2 * _FULL :], scale))
        behind = self._rows(pairs, self._whole_numbers(1, 0), self._whole_numbers(_ALL, _FULL), both)
        third = self._put(
            "Add",
            self._put("MatMul", self._rows(pairs, self._whole_numbers(0), count, one), early),
            self._put("MatMul", behind, late),
        )
        return self._gelu(self._put("Add", third, self._own("conv3.bias"))), count

    def _second(self, bent: str, rows: str, count: str, both: str) -> str:
        """Return the second convolution of what has been normed over all its moments, those known before among them.

        Args:
            bent: The first convolution, of what is not known before.
            rows: How many moments that has, with those before.
            count: How many moments of the second are to be made.
            both: The two axes behind the first.
        """
        weight, scale = self._whole["conv2"]
        three = 3 * _WIDE
        first = np.concatenate([weight[:three], weight[three : 2 * three]], axis=1), np.concatenate([scale, scale])
        early, late = self._weight("conv2.first", first), self._weight("conv2.last", (weight[2 * three :], scale))
        stretch, shift = self._own("groupnorm.weight", _WIDE, 1), self._own("groupnorm.bias", 1, _WIDE)
        early_own = self._put("Mul", early, self._put("Concat", *[stretch] * 3, axis=0))
        late_own = self._put("Mul", late, stretch)
        three_moments = self._put("Reshape", bent, self._whole_numbers(1, -1, three))
        halves = self._put("MatMul", three_moments, early_own)
        until = self._put("Concat", count, self._whole_numbers(_FULL), axis=0)
        behind = self._put("Concat", self._times(count, 1, 1), self._whole_numbers(2 * _FULL), axis=0)
        last = self._rows(three_moments, self._whole_numbers(2, 0), self._whole_numbers(_ALL, _WIDE), both)
        made = self._put(
            "Add",
            self._rows(halves, self._whole_numbers(0, 0), until, both),
            self._rows(halves, self._whole_numbers(1, _FULL), behind, both),
        )
        made = self._put("Add", made, self._put("MatMul", last, late_own))
        sums = [self._put("ReduceSum", three_moments, self._whole_numbers(2)), self._put("ReduceSumSquare", three_moments, axes=[2])]
        sums = [self._rows(each, self._whole_numbers(0), count, self._whole_numbers(1)) for each in sums]
        made = self._put("Concat", KNOWN, self._put("Concat", made, *sums, axis=2), axis=1, made=ROWS)
        return self._divided(bent, made, rows, self._sides(early, late, early_own, late_own, shift))

    def _divided(self, bent: str, made: str, rows: str, sides: tuple[str, str]) -> str:
        """Return products of what is not normed as they would be of what is."""
        size = self._put("Cast", self._put("Mul", rows, self._whole_numbers(_WIDE)), to=TensorProto.FLOAT)
        _, known_sum, known_square = self._parted(KNOWN, [_FULL, 1, 1], 2)
        mean, square = (
            self._put("Div", self._put("Add", self._put(kind, bent, keepdims=1), self._put("ReduceSum", known, keepdims=1)), size)
            for kind, known in (("ReduceSum", known_sum), ("ReduceSumSquare", known_square))
        )
        spread = self._put("Sub", square, self._put("Mul", mean, mean))
        spread = self._put("Sqrt", self._put("Add", spread, self._number(_LEAST)))
        products, _, _ = self._parted(made, [_FULL, 1, 1], 2)
        taken, added = sides
        products = self._put("Div", self._put("Sub", products, self._put("Mul", mean, taken)), spread)
        return self._put("Add", products, added)

    def _sides(self, early: str, late: str, early_own: str, late_own: str, shift: str) -> tuple[str, str]:
        """Return what each product has of a number that all it is made of have in common, and what is added to it."""
        ones = [self._keep(f"ones {wide}", np.ones((1, wide), np.float32)) for wide in (3 * _WIDE, _WIDE)]
        shifts = [self._put("Concat", *[shift] * 3, axis=1), shift]
        taken = self._summed([self._put("MatMul", *each) for each in zip(ones, (early_own, late_own), strict=True)])
        added = self._summed([self._put("MatMul", *each) for each in zip(shifts, (early, late), strict=True)])
        return taken, self._put("Add", added, self._own("conv2.bias"))

    def _summed(self, parts: list[str]) -> str:
        """Return what two products that were made at once, and a third, are together."""
        one, two = self._parted(parts[0], [_FULL, _FULL], 1)
        return self._put("Add", self._put("Add", one, two), parts[1])

    def _angles(self, count: str) -> tuple[str, str]:
        """Return the cosine and the sine of each pair's angle at each moment."""
        numbers = [self._keep(f"the number {each}", np.array(each, np.int64)) for each in (0, 1)]
        moments = self._put("Range", numbers[0], self._put("Squeeze", count), numbers[1])
        moments = self._put("Unsqueeze", self._put("Cast", moments, to=TensorProto.FLOAT), self._whole_numbers(1))
        paces = (_BASE ** -(np.arange(_ROTARY // 2) / (_ROTARY // 2))).astype(np.float32)
        angles = self._put("Mul", moments, self._keep("paces", paces))
        cos, sin = (self._put("Unsqueeze", self._put(each, angles), self._whole_numbers(0, 1)) for each in ("Cos", "Sin"))
        return cos, sin

    def _layer(self, place: str, state: str, cos: str, sin: str) -> str:
        normed = self._normed(state, f"{place}.input_layernorm.weight")
        heads = self._put("MatMul", normed, self._weight(f"{place}.qkv", self._asked(place)))
        heads = self._put("Reshape", heads, self._whole_numbers(1, -1, 3 * _HEADS, _DIM))
        heads = self._put("Transpose", heads, perm=[0, 2, 1, 3])
        both, value = self._parted(heads, [2 * _HEADS, _HEADS], 1)
        one, other, rest = self._parted(both, [_ROTARY // 2, _ROTARY // 2, _DIM - _ROTARY], 3)
        turned = self._put(
            "Concat",
            self._put("Sub", self._put("Mul", one, cos), self._put("Mul", other, sin)),
            self._put("Add", self._put("Mul", other, cos), self._put("Mul", one, sin)),
            rest,
            axis=3,
        )
        query, key = self._parted(turned, [_HEADS, _HEADS], 1)
        key = self._put("Mul", self._put("Transpose", key, perm=[0, 1, 3, 2]), self._number(_SMALL_ENOUGH))
        scores = self._put("MatMul", self._put("Mul", query, self._number(_SMALL_ENOUGH)), key)
        found = self._put("MatMul", self._put("Softmax", scores, axis=-1), value)
        found = self._put("Reshape", self._put("Transpose", found, perm=[0, 2, 1, 3]), self._whole_numbers(1, -1, _WIDE))
        state = self._put("Add", state, self._product(place, "o_proj", found))
        normed = self._normed(state, f"{place}.post_attention_layernorm.weight")
        inner = self._product(place, "fc1", normed)
        inner = self._gelu(self._put("Add", self._own(f"{place}.mlp.fc1.bias"), inner))
        outer = self._product(place, "fc2", inner)
        return self._put("Add", state, self._put("Add", self._own(f"{place}.mlp.fc2.bias"), outer))

    def _product(self, place: str, name: str, given: str) -> str:
        return self._put("MatMul", given, self._weight(f"{place}.{name}", self._whole[f"{place}.{name}"]))

    def _asked(self, place: str) -> _Weight:
        """Return the weights of `q`, `k` and `v` side by side."""
        (query, query_scale), (key, key_scale), (value, value_scale) = (self._whole[f"{place}.{each}_proj"] for each in "qkv")
        at = order()
        return (
            np.concatenate([query[:, at], key[:, at], value], axis=1),
            np.concatenate([query_scale[at], key_scale[at], value_scale]),
        )


def main() -> None:
    """Lay the weights of the encoder in a folder."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("models", type=Path)
    path = parser.parse_args().models / "encoder.onnx"
    onnx.save(laid(onnx.load(path)), path)
    print(f"{path}: {path.stat().st_size / 1e6:.1f} MB")


if __name__ == "__main__":
    main()
