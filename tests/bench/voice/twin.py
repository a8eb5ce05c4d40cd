"""The bundled recogniser's network with its weights as real numbers: a twin that rounds nothing to 8 bits.

The packaged network rounds what goes into each product of matrices to 256 steps. How such products and the real
numbers in between are computed depends on the processor, and a difference in the last digit of one can put a value
on the next step. The twin has the same weights and none of these steps.

    python -m tests.bench.voice.twin FOLDER      writes the twin to a folder

Needs the packages onnx and onnxruntime; the file format is read with onnxruntime's own reader.
"""

from __future__ import annotations

import argparse
import shutil
import sys
import tempfile
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from stepper.ears.bundled.moonshine_model import packaged_folder

NETWORKS = ("encoder_model.ort", "decoder_model_merged.ort")
_GRAPH = 5
"""Kind of an attribute that holds a graph, in ONNX and in ORT format alike."""


def make_twin(folder: Path) -> Path:
    """Write the twin of the packaged model to a folder and return that."""
    import onnx
    import onnxruntime

    folder.mkdir(parents=True, exist_ok=True)
    shutil.copy(packaged_folder() / "tokenizer.bin", folder)
    for name in NETWORKS:
        model = as_onnx((packaged_folder() / name).read_bytes())
        weights: dict[str, Any] = {}
        _without_steps(model.graph, {}, {}, weights)
        model.graph.initializer.extend(weights.values())  # once, for the graphs inside too
        with tempfile.TemporaryDirectory() as scratch:
            path = Path(scratch) / "twin.onnx"
            onnx.save(model, path)
            options = onnxruntime.SessionOptions()
            options.graph_optimization_level = onnxruntime.GraphOptimizationLevel.ORT_ENABLE_BASIC
            options.optimized_model_filepath = str(folder / name)
            options.log_severity_level = 3
            onnxruntime.InferenceSession(str(path), options, providers=["CPUExecutionProvider"])
    return folder


def _without_steps(graph: Any, known: Mapping[str, Any], outside: Mapping[str, str], weights: dict[str, Any]) -> None:
    """Put a product of real numbers in the place of each product of whole ones, in the graphs inside too.

    Args:
        graph: The network, or a part of it that is run on a condition.
        known: The weights of the graphs around it.
        outside: What is rounded in the graphs around it: the name of the result to that of what it is made of.
        weights: Takes the new weights.
    """
    from onnx import numpy_helper

    known = known | {each.name: numpy_helper.to_array(each) for each in graph.initializer}
    rounded, nodes = dict(outside), []
    for node in graph.node:
        for attribute in node.attribute:
            if attribute.type == _GRAPH:
                _without_steps(attribute.g, known, rounded, weights)
        if node.op_type == "DynamicQuantizeLinear":
            rounded[node.output[0]] = node.input[0]
        if node.op_type in ("DynamicQuantizeMatMul", "MatMulIntegerToFloat"):
            nodes += _product(node, known, rounded, weights)
        else:
            nodes.append(node)
    del graph.node[:]
    graph.node.extend(nodes)


def _product(node: Any, known: Mapping[str, Any], rounded: Mapping[str, str], weights: dict[str, Any]) -> list[Any]:
    """Return the nodes of one product with its bias."""
    from onnx import helper, numpy_helper

    inputs = list(node.input)
    if node.op_type == "DynamicQuantizeMatMul":  # A, B, scale of B, zero of B, bias
        source, b, scale, zero, bias = (*inputs, "", "")[:5]
    else:  # A, B, scale of A, scale of B, zero of A, zero of B, bias
        a, b, _, scale, _, zero, bias = (*inputs, "", "", "")[:7]
        source = rounded[a]
    name = f"{b} as real numbers"
    if name not in weights:
        less = known[zero].astype("float32") if zero else 0.0
        real = (known[b].astype("float32") - less) * known[scale]
        weights[name] = numpy_helper.from_array(real.astype("float32"), name)
    product = f"{node.output[0]} without bias" if bias else node.output[0]
    nodes = [helper.make_node("MatMul", [source, name], [product])]
    return [*nodes, helper.make_node("Add", [product, bias], [node.output[0]])] if bias else nodes


def as_onnx(content: bytes) -> Any:
    """Read a network in ORT format as one of ONNX."""
    import onnx
    import onnxruntime.tools

    sys.path.insert(0, str(Path(onnxruntime.tools.__file__).parent / "ort_format_model"))
    from ort_flatbuffers_py.fbs.InferenceSession import InferenceSession

    read = InferenceSession.GetRootAsInferenceSession(bytearray(content), 0).Model()
    opsets = [read.OpsetImport(at) for at in range(read.OpsetImportLength())]
    wanted = {"", "com.microsoft"}
    return onnx.helper.make_model(
        _graph(read.Graph(), "whole"),
        opset_imports=[
            onnx.helper.make_opsetid(_text(each.Domain()), each.Version())
            for each in opsets
            if _text(each.Domain()) in wanted
        ],
        ir_version=read.IrVersion(),
    )


def _graph(read: Any, name: str) -> Any:
    from onnx import helper

    kinds = {_text(each.Name()): each for each in _all(read, "NodeArgs")}
    ends = [[_text(getattr(read, side)(at)) for at in range(getattr(read, f"{side}Length")())] for side in ("Inputs", "Outputs")]
    weights = [_tensor(each) for each in _all(read, "Initializers")]
    held = {each.name for each in weights}
    inputs = [_value(kinds[each]) for each in ends[0] if each not in held]
    outputs = [_value(kinds[each]) for each in ends[1]]
    order = sorted(_all(read, "Nodes"), key=lambda node: node.Index())
    return helper.make_graph([_node(each) for each in _in_order(order)], name, inputs, outputs, weights)


def _in_order(nodes: list[Any]) -> list[Any]:
    """Put each node behind those whose output it takes."""
    made = {_text(node.Outputs(at)): number for number, node in enumerate(nodes) for at in range(node.OutputsLength())}
    done: dict[int, None] = {}

    def visit(number: int) -> None:
        if number in done:
            return
        node = nodes[number]
        taken = [node.Inputs(at) for at in range(node.InputsLength())]
        taken += [node.ImplicitInputs(at) for at in range(node.ImplicitInputsLength())]
        for each in taken:
            if _text(each) in made:
                visit(made[_text(each)])
        done[number] = None

    for number in range(len(nodes)):
        visit(number)
    return [nodes[number] for number in done]


def _node(read: Any) -> Any:
    from onnx import helper

    inputs, outputs = ([_text(each) for each in _all(read, side)] for side in ("Inputs", "Outputs"))
    node = helper.make_node(_text(read.OpType()), inputs, outputs, _text(read.Name()), domain=_text(read.Domain()))
    node.attribute.extend(_attribute(each) for each in _all(read, "Attributes"))
    return node


def _attribute(read: Any) -> Any:
    from onnx import AttributeProto

    made = AttributeProto(name=_text(read.Name()), type=read.Type())
    match read.Type():
        case 1:
            made.f = read.F()
        case 2:
            made.i = read.I()
        case 3:
            made.s = read.S()
        case 4:
            made.t.CopyFrom(_tensor(read.T()))
        case 5:
            made.g.CopyFrom(_graph(read.G(), made.name))
        case 6:
            made.floats.extend(_all(read, "Floats"))
        case 7:
            made.ints.extend(_all(read, "Ints"))
        case 8:
            made.strings.extend(_all(read, "Strings"))
        case other:
            raise ValueError(f"attribute {made.name} is of kind {other}, which is not known here")
    return made


def _tensor(read: Any) -> Any:
    from onnx import TensorProto

    made = TensorProto(name=_text(read.Name()), data_type=read.DataType(), dims=list(_all(read, "Dims")))
    if read.StringDataLength():
        raise ValueError(f"{made.name} holds text, which is not known here")
    made.raw_data = read.RawDataAsNumpy().tobytes() if read.RawDataLength() else b""
    return made


def _value(read: Any) -> Any:
    from onnx import helper
    from ort_flatbuffers_py.fbs.TensorTypeAndShape import TensorTypeAndShape

    table = read.Type().Value()
    kind = TensorTypeAndShape()
    kind.Init(table.Bytes, table.Pos)
    return helper.make_tensor_value_info(_text(read.Name()), kind.ElemType(), None)


def _all(read: Any, what: str) -> list[Any]:
    return [getattr(read, what)(at) for at in range(getattr(read, f"{what}Length")())]


def _text(read: bytes | None) -> str:
    return (read or b"").decode()


def main() -> None:
    """Write the twin."""
    parser = argparse.ArgumentParser(description="Write the twin of the packaged network.")
    parser.add_argument("folder", type=Path)
    print(make_twin(parser.parse_args().folder))


if __name__ == "__main__":
    main()
