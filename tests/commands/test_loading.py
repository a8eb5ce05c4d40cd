from __future__ import annotations

from pathlib import Path

import pytest

from stepper.commands.loading import load
from stepper.craft.even.manners import Manner
from stepper.errors import SurroundingsError
from tests.commands.garments import garment


def test_a_file_is_loaded_in_the_manner_asked_for(tmp_path: Path) -> None:
    """As every command has it."""
    path = garment(tmp_path)
    assert load(path).plan.title == "Cuff"
    assert load(path, spacing=Manner.RUNS, lasting=True).plan.spacing is Manner.RUNS


def test_a_file_that_is_missing_is_named_with_the_one_that_was_meant(tmp_path: Path) -> None:
    """One slip of a finger is not a reason to list a folder."""
    garment(tmp_path)
    with pytest.raises(SurroundingsError, match=r'cufff.yaml. Did you mean ".*cuff.yaml"'):
        load(tmp_path / "cufff.yaml")
