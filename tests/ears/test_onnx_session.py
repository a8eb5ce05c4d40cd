from __future__ import annotations

import subprocess
import sys
from gc import collect
from importlib.util import find_spec
from pathlib import Path
from weakref import ref

import numpy as np
import pytest

from stepper.ears.onnx_session import load_encoder, load_network
from stepper.ears.packaged_weights import weights_path
from stepper.errors import SurroundingsError

WEIGHTS = weights_path("sounds.onnx")

pytestmark = pytest.mark.skipif(find_spec("onnxruntime") is None, reason="onnxruntime is not installed")


def test_a_network_keeps_to_one_thread() -> None:
    """As onnxruntime itself tells; it knows what goes in and what comes out."""
    loaded = load_network(WEIGHTS, "The model")
    assert loaded.get_session_options().intra_op_num_threads == 1
    assert [each.name for each in (*loaded.get_inputs(), *loaded.get_outputs())] == ["states", "likely"]


@pytest.mark.skipif(sys.platform != "linux", reason="this reads what Linux tells of a process")
def test_what_runs_the_networks_keeps_no_record_for_its_makers() -> None:
    """The guide says that the ears need no network, so nothing of an evening may go over one.

    Left to itself onnxruntime opens `onnxruntime.db`, what it is to send, as soon as it is imported. Source: seen
    with 1.32; Privacy.md in its wheel names the variable.
    """
    loaded = load_network(WEIGHTS, "The model")
    opened = [line.split()[-1] for line in Path("/proc/self/maps").read_text().splitlines()]
    opened += [str(each.resolve()) for each in Path("/proc/self/fd").iterdir()]
    assert loaded
    assert not [each for each in opened if "onnxruntime.db" in each]


def test_what_is_no_network_is_a_sentence(tmp_path: Path) -> None:
    """No file, and a file of something else; nothing is printed beside it."""
    page = tmp_path / "page.onnx"
    page.write_text("Round 1: knit.", encoding="utf-8")
    for path in (page, tmp_path / "missing.onnx"):
        with pytest.raises(SurroundingsError, match=r"^The model cannot be loaded: "):
            load_network(path, "The model")


def test_the_encoder_multiplies_real_numbers_as_its_file_says() -> None:
    """As the same file without any optimisation, where a weight is its eight bits times its scale.

    Source: DequantizeLinear of the ONNX standard. Left to itself onnxruntime rounds the other factor too.
    """
    runtime = pytest.importorskip("onnxruntime")
    path = weights_path("encoder.onnx")
    options = runtime.SessionOptions()
    options.graph_optimization_level = runtime.GraphOptimizationLevel.ORT_DISABLE_ALL
    options.intra_op_num_threads = 1
    plain = runtime.InferenceSession(str(path), options, providers=["CPUExecutionProvider"])
    sound = {"input_values": np.random.default_rng(1).standard_normal((1, 16_000)).astype(np.float32) / 20}
    expected = plain.run(None, sound)[0]
    in_real_numbers = load_network(path, "The model", in_steps=False).run(None, sound)[0]
    assert np.abs(in_real_numbers - expected).max() < 0.002 * np.abs(expected).max()


_LOADS_THE_DECODER = """
import sys
from gc import collect
import numpy as np
from stepper.ears.bundled.moonshine_model import MoonshineModel
from stepper.ears import onnx_session
from stepper.ears.bundled import moonshine_model

def anonymous_mb():
    lines = open("/proc/self/status").read().splitlines()
    return int(next(line for line in lines if line.startswith("RssAnon")).split()[1]) / 1024

if sys.argv[1] == "repacked":
    load = onnx_session.load_network
    moonshine_model.load_network = lambda path, whose, repacked=True, **how: load(path, whose, **how)
model = MoonshineModel()
held = anonymous_mb()
sound = (np.random.default_rng(1).standard_normal(16_000) * 900).astype(np.int16)
print(held, model.encode(sound.tobytes()).first.tobytes().hex())
"""


@pytest.mark.skipif(find_spec("moonshine_voice") is None, reason="the recogniser is not installed")
@pytest.mark.skipif(sys.platform != "linux", reason="this reads what Linux tells of a process")
def test_the_decoder_holds_its_weights_once_and_says_the_same() -> None:
    """To the last digit of each token's likelihood, since its products are of whole numbers."""
    held, likely = {}, {}
    for how in ("repacked", "once"):
        command = [sys.executable, "-c", _LOADS_THE_DECODER, how]
        said = subprocess.run(command, capture_output=True, text=True, check=True).stdout.split()
        held[how], likely[how] = float(said[0]), said[1]
    assert likely["once"] == likely["repacked"]
    assert held["repacked"] - held["once"] > 1


_TAKES_AND_GIVES = """
import sys
from gc import collect
from stepper.ears.onnx_session import give_memory_back

def rss_mb():
    return int(open("/proc/self/statm").read().split()[1]) * 4096 / 2**20

told = sys.argv[1] == "told" and give_memory_back()
bytearray(30_000_000)  # from now on the C library would keep pieces up to that size on its heap
before, large, small = rss_mb(), [], []
for _ in range(100):
    large.append(bytearray(b"1") * 5_000_000)
    small.append(bytearray(b"1") * 5_000)
large.clear()
print(told, rss_mb() - before)
"""


@pytest.mark.skipif(sys.platform != "linux", reason="this is a setting of the C library of Linux")
def test_what_an_utterance_took_goes_back_to_the_system() -> None:
    """An evening of utterances of all lengths must not add up; what stays between the large pieces is small."""
    kept = {}
    for how in ("told", "untold"):
        said = subprocess.run(
            [sys.executable, "-c", _TAKES_AND_GIVES, how], capture_output=True, text=True, check=True
        ).stdout.split()
        kept[how] = float(said[1])
        if how == "told" and said[0] == "False":
            pytest.skip("another C library than glibc")
    assert kept["told"] < 10
    assert kept["untold"] > 100, "without it the heap keeps them, or this test shows nothing"


def test_the_encoder_is_loaded_once_for_all_that_run_it_and_goes_with_them(tmp_path: Path) -> None:
    """What hears and what knows a voice share 30 MB."""
    path = tmp_path / "encoder.onnx"  # one of its own: other tests may hold the one that all load
    path.write_bytes(weights_path("encoder.onnx").read_bytes())
    one = load_encoder(path, "It")
    assert load_encoder(path, "It") is one
    gone = ref(one)
    del one
    collect()
    assert gone() is None
