from __future__ import annotations

from importlib.util import find_spec
from pathlib import Path

import pytest

from stepper.ears.vosk_model import models_in, try_to_load, why_no_model
from stepper.errors import SurroundingsError

PARTS = ("am/final.mdl", "conf/mfcc.conf", "graph/HCLr.fst", "graph/Gr.fst")


def model(folder: Path, parts: tuple[str, ...] = PARTS) -> Path:
    """Make a folder that looks like a model."""
    for part in parts:
        (folder / part).parent.mkdir(parents=True, exist_ok=True)
        (folder / part).write_bytes(b"not really")
    return folder


def test_a_whole_model_of_either_layout_lacks_nothing(tmp_path: Path) -> None:
    """The newer one with folders, the older one without."""
    assert why_no_model(model(tmp_path / "new")) == ""
    assert why_no_model(model(tmp_path / "old", ("final.mdl", "mfcc.conf", "HCLr.fst", "Gr.fst"))) == ""


def test_what_is_wrong_with_a_folder_is_said(tmp_path: Path) -> None:
    """Not there, a file, something else, a part missing or empty, a graph that takes no grammar."""
    (tmp_path / "file").write_text("")
    (tmp_path / "other").mkdir()
    assert "is no folder" in why_no_model(tmp_path / "nowhere")
    assert "is no folder" in why_no_model(tmp_path / "file")
    assert "is not a Vosk model" in why_no_model(tmp_path / "other")
    half = model(tmp_path / "half")
    (half / "graph" / "Gr.fst").write_bytes(b"")
    assert "graph/Gr.fst missing or empty" in why_no_model(half)
    fixed = model(tmp_path / "fixed", ("am/final.mdl", "conf/mfcc.conf", "graph/HCLG.fst"))
    assert "fixed graph" in why_no_model(fixed)


def test_models_are_listed_from_all_folders_and_nothing_else_is(tmp_path: Path) -> None:
    """By name; what is half installed begins with a dot and is passed over."""
    one, two = model(tmp_path / "a" / "one"), model(tmp_path / "b" / "two")
    model(tmp_path / "a" / ".half")
    (tmp_path / "a" / "notes").mkdir()
    assert models_in(tmp_path / "a", tmp_path / "b", tmp_path / "nowhere", tmp_path / "a") == [one, two]


@pytest.mark.skipif(find_spec("vosk") is None, reason="Vosk is not installed")
def test_a_damaged_model_does_not_load_and_does_not_take_the_program_with_it(tmp_path: Path) -> None:
    """The right names with nonsense inside are found out in a process of their own."""
    with pytest.raises(SurroundingsError, match="damaged or not complete"):
        try_to_load(model(tmp_path / "new"))
