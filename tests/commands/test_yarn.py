"""`stepper yarn FILE`."""

from __future__ import annotations

import json
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from stepper.commands.main import main
from stepper.report.leftovers import FILE_NAME, read_leftovers

SAMPLES = Path(__file__).parents[1] / "fixtures"


@pytest.mark.parametrize("path", sorted(SAMPLES.glob("*.yaml")), ids=lambda path: path.stem)
def test_every_sample_has_its_yarn_told(path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """In rounds and in rows, plain, stranded, ribbed and laced."""
    assert main(["yarn", str(path)]) == 0
    out = capsys.readouterr().out
    assert "in all" in out
    assert "It lasts" in out


def test_the_same_as_one_json_document(capsys: pytest.CaptureFixture[str]) -> None:
    """Every yarn with its sections and its buying."""
    assert main(["yarn", str(SAMPLES / "switchback.yaml"), "--json"]) == 0
    document = json.loads(capsys.readouterr().out)
    assert [each["key"] for each in document["yarns"]] == ["MC", "A", "B"]
    assert document["yarns"][0]["buying"][0]["grams"] == 50


def test_a_weighing_of_a_sitting_foretells_the_shortage(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Half of the yarn the sample needs is bought; one weighing in the body tells where it ends."""
    path = tmp_path / "garment.yaml"
    text = (SAMPLES / "switchback.yaml").read_text(encoding="utf-8")
    path.write_text(text.replace("bought: 6", "bought: 3"), encoding="utf-8")
    cues = "next\n" * 100 + "chalk weighs sixty grams\nthat is all for tonight\n"
    command = [sys.executable, "-m", "stepper", "knit", str(path), "--plain", "--mute"]
    subprocess.run(command, input=cues, text=True, check=True, capture_output=True)
    assert main(["yarn", str(path)]) == 0
    out = " ".join(capsys.readouterr().out.split())
    assert "Weighed: " in out
    assert "It does not last: it likely runs out in " in out


def test_what_is_left_is_kept_and_found_for_the_next_garment(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """One file beside the projects, read again by every garment of the folder."""
    first = Path(shutil.copy(SAMPLES / "switchback.yaml", tmp_path))
    hat = (SAMPLES / "hat.yaml").read_text(encoding="utf-8")
    hat = hat.replace("honey", "ember").replace("metres: 160}, bought: 1", "metres: 175}, bought: 1")
    second = tmp_path / "hat.yaml"
    second.write_text(hat, encoding="utf-8")
    assert main(["yarn", str(first), "--keep"]) == 0
    assert main(["yarn", str(first), "--keep", "--json"]) == 0
    entries, problems = read_leftovers((tmp_path / FILE_NAME).read_text(encoding="utf-8"))
    assert problems == ()
    assert [each.yarn for each in entries] == ["chalk", "pine", "ember"]
    capsys.readouterr()
    assert main(["yarn", str(second)]) == 0
    assert "of ember are left from Switchback pullover: enough." in capsys.readouterr().out


def test_a_spoilt_file_of_leftovers_is_told_and_not_overwritten(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Her own words in it are worth more than a new entry."""
    path = Path(shutil.copy(SAMPLES / "hat.yaml", tmp_path))
    (tmp_path / FILE_NAME).write_text("left:\n  - yarn: ember\n", encoding="utf-8")
    assert main(["yarn", str(path), "--keep"]) == 1
    assert "has no `from`" in capsys.readouterr().err
    assert (tmp_path / FILE_NAME).read_text(encoding="utf-8") == "left:\n  - yarn: ember\n"
