"""`stepper fit FILE`."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from stepper.commands.main import main

SWITCHBACK = str(Path(__file__).parents[2] / "sample_projects" / "switchback.yaml")


def test_measurements_blends_and_refusals_are_printed(capsys: pytest.CaptureFixture[str]) -> None:
    """The blend of the sample is among those that can be knitted."""
    assert main(["fit", SWITCHBACK]) == 0
    out = capsys.readouterr().out
    assert "(very close)" in out
    assert "size 4, then 2 from Final increase (225 to 246: 21 increases 10 or 11 apart)" in out
    assert "Cannot be knitted:" in out


def test_the_same_as_one_json_document(capsys: pytest.CaptureFixture[str]) -> None:
    """Every pair is either ranked or rejected."""
    assert main(["fit", SWITCHBACK, "--json"]) == 0
    document = json.loads(capsys.readouterr().out)
    assert len(document["blends"]) + len(document["rejected"]) == 96
    assert all(each["why"] for each in document["rejected"])
