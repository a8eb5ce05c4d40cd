"""`stepper colours FILE`."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest
from PIL import Image

from stepper.commands.main import main

SAMPLES = Path(__file__).parents[1] / "fixtures"


@pytest.fixture
def red_and_green(tmp_path: Path) -> Path:
    """Write the pullover in the pair that vanishes."""
    text = (SAMPLES / "switchback.yaml").read_text(encoding="utf-8")
    path = tmp_path / "garment.yaml"
    path.write_text(text.replace("#1f4d3a", "#1e7a34").replace("#c4512d", "#c0392b"), encoding="utf-8")
    return path


@pytest.mark.parametrize(
    ("name", "expected"),
    [
        ("switchback", "Every pair can be told apart"),
        ("hat", "Every pair can be told apart"),
        ("socks", "clover and juniper are hard to tell apart for red-blind"),
        ("mittens", "nothing to compare"),
        ("cardigan", "nothing to compare"),
        ("shawl", "nothing to compare"),
    ],
)
def test_every_sample_is_answered(name: str, expected: str, capsys: pytest.CaptureFixture[str]) -> None:
    """Also the ones without a second yarn, which say so."""
    assert main(["colours", str(SAMPLES / f"{name}.yaml")]) == 0
    assert expected in " ".join(capsys.readouterr().out.split())


def test_piped_there_are_no_codes_but_letters_and_digits(
    red_and_green: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """The chart reads without any colour, and pine and ember are the same digit in grey."""
    assert main(["colours", str(red_and_green)]) == 0
    out = capsys.readouterr().out
    assert "\x1b" not in out
    line = next(line for line in out.splitlines() if re.match(r" \. \. B B A A", line))
    assert re.search(r" 9 9 4 4 4 4 9 9 9 4 4 4 4 9 9", line)
    assert "With ember in #7c0004:" in out


@pytest.mark.parametrize("ending", [".png", ".svg"])
def test_the_picture_is_written(red_and_green: Path, ending: str, capsys: pytest.CaptureFixture[str]) -> None:
    """As a picture that opens, and its place is said."""
    target = red_and_green.with_suffix(ending)
    assert main(["colours", str(red_and_green), "--picture", str(target)]) == 0
    assert f"The picture is in {target}." in capsys.readouterr().out
    if ending == ".png":
        assert Image.open(target).size[0] > 1000
    else:
        assert target.read_text(encoding="utf-8").startswith("<svg")


def test_another_kind_of_picture_or_a_place_that_is_none_is_refused(
    red_and_green: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """With a sentence, as everything the surroundings do not give."""
    assert main(["colours", str(red_and_green), "--picture", "out.gif"]) == 4
    assert "written as .png or .svg" in capsys.readouterr().err
    assert main(["colours", str(red_and_green), "--picture", str(red_and_green / "no" / "out.svg")]) == 4
    assert "cannot be written" in capsys.readouterr().err


def test_the_same_as_one_json_document(red_and_green: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """The pairs and the change, for programs."""
    assert main(["colours", str(red_and_green), "--json"]) == 0
    document = json.loads(capsys.readouterr().out)
    assert document["pairs"][0]["in_grey"] == "vanishes"
    assert document["mend"]["from"] == "#c0392b"
    assert document["mend"]["colour"] == "#7c0004"
