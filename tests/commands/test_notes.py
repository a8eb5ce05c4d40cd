"""`stepper notes FILE`."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from stepper.commands.main import main

SWITCHBACK = Path(__file__).parents[1] / "fixtures" / "switchback.yaml"


def test_a_garment_not_begun_has_its_choices_and_says_so(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """The record exists before the first stitch."""
    path = Path(shutil.copy(SWITCHBACK, tmp_path))
    assert main(["notes", str(path)]) == 0
    out = capsys.readouterr().out
    assert out.startswith("# Switchback pullover")
    assert "Nothing has been knitted yet." in out
