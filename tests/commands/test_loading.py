from __future__ import annotations

from pathlib import Path

import pytest

from stepper.commands.loading import load, tell_how_far, tell_what_keeps
from stepper.craft.even.manners import Manner
from stepper.errors import SurroundingsError
from tests.commands.garments import garment
from tests.project.samples import begun_from_page


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


def test_of_a_page_that_cannot_be_begun_it_is_said_what_keeps_it_and_what_to_type(tmp_path: Path) -> None:
    """The first thing alone; its rows keep nothing from being begun, not even the first."""
    path = tmp_path / "hat.yaml"
    text = begun_from_page("# LOOK (row 9 of the text).\nNote: Twirl it on.\nKnit 2 rows.", sizes="one", size="one")
    path.write_text(text, encoding="utf-8")
    assert tell_what_keeps(path) == ""
    assert "The first row, in line 20, is not read, and you are asked about it first" in tell_how_far(path, 1)
    path.write_text(text.replace("size: one}", "size: one}  # LOOK: which size do you knit?"), encoding="utf-8")
    told = tell_what_keeps(path)
    assert told.startswith("hat.yaml cannot be begun yet, for line ")
    assert "which size do you knit?" in told
    assert told.endswith(f"Then: stepper knit {path}")
