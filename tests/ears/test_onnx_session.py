from __future__ import annotations

from importlib.util import find_spec
from pathlib import Path

import pytest

from stepper.ears.onnx_session import load_network
from stepper.ears.packaged_weights import weights_path
from stepper.errors import SurroundingsError

WEIGHTS = weights_path("sounds.onnx")

pytestmark = pytest.mark.skipif(find_spec("onnxruntime") is None, reason="onnxruntime is not installed")


def test_a_network_keeps_to_one_thread() -> None:
    """As onnxruntime itself tells; it knows what goes in and what comes out."""
    loaded = load_network(WEIGHTS, "The model")
    assert loaded.get_session_options().intra_op_num_threads == 1
    assert [each.name for each in (*loaded.get_inputs(), *loaded.get_outputs())] == ["states", "likely"]


def test_what_is_no_network_is_a_sentence(tmp_path: Path) -> None:
    """No file, and a file of something else; nothing is printed beside it."""
    page = tmp_path / "page.onnx"
    page.write_text("Round 1: knit.", encoding="utf-8")
    for path in (page, tmp_path / "missing.onnx"):
        with pytest.raises(SurroundingsError, match=r"^The model cannot be loaded: "):
            load_network(path, "The model")
