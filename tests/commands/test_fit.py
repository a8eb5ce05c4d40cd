"""`stepper fit FILE`."""

from __future__ import annotations

import json
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

from stepper.commands import fit
from stepper.commands.main import main
from stepper.plan.blend import Blend, blends
from stepper.project.model import Project
from stepper.sitting.project_file import PrintedSizes, load_sizes


@pytest.fixture(scope="module", autouse=True)
def _each_file_is_worked_once() -> Iterator[None]:
    """Work the garment and its blends once for all that is printed of it: that takes most of the time."""
    tried: dict[int, tuple[Blend, ...]] = {}

    @cache
    def load(path: Path, text: str) -> PrintedSizes:
        sized = load_sizes(path)
        tried[id(sized.project)] = tuple(blends(sized.project, sized.readings))
        return sized

    def known(project: Project, readings: object) -> tuple[Blend, ...]:
        return tried[id(project)]

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(fit, "load_sizes", lambda path: load(path, path.read_text(encoding="utf-8")))
        patch.setattr(fit, "blends", known)
        yield


SWITCHBACK = str(Path(__file__).parents[1] / "fixtures" / "switchback.yaml")


def test_measurements_blends_and_refusals_are_printed(capsys: pytest.CaptureFixture[str]) -> None:
    """The blend of the sample is among those that can be knitted."""
    assert main(["fit", SWITCHBACK]) == 0
    out = " ".join(capsys.readouterr().out.split())  # the page is wrapped to its width
    assert "(stretched)" in out
    assert "size 4, then 2 from Final increase (225 to 246: 21 increases 10 or 11 apart)" in out
    assert "Cannot be knitted:" in out


def test_the_page_keeps_to_80_columns_and_ten_choices(capsys: pytest.CaptureFixture[str]) -> None:
    """The present choice is marked among them; nothing is lost, as --all tells the rest."""
    assert main(["fit", SWITCHBACK]) == 0
    rows = capsys.readouterr().out.splitlines()
    assert all(len(row) <= 80 for row in rows)
    start = next(place for place, row in enumerate(rows) if row.lstrip().startswith("size  "))
    end = next(place for place, row in enumerate(rows) if row.endswith("more: --all lists them."))
    assert end - start - 1 == 10
    assert sum(row.startswith(">") for row in rows[start:end]) == 1


def test_all_tells_every_choice_in_full(capsys: pytest.CaptureFixture[str]) -> None:
    """Ninety choices, each with what it changes, and every refusal with its reason."""
    assert main(["fit", SWITCHBACK, "--all"]) == 0
    out = capsys.readouterr().out
    assert out.count("compared with now:") == 90 - 1  # the present one changes nothing
    assert "--all" not in out


def test_what_is_assumed_or_from_a_table_is_marked(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Her bust alone: the arm is the table's, with a star and its source, and the order is by the bust."""
    text = Path(SWITCHBACK).read_text(encoding="utf-8")
    file = tmp_path / "garment.yaml"
    text = text.replace("  upper_arm: 28 cm\n", "", 1).replace("  neck: 36 cm\n", "", 1)
    file.write_text(text, encoding="utf-8")
    assert main(["fit", str(file)]) == 0
    out = capsys.readouterr().out
    assert "27 cm*" in out  # 10.25 and 11 in, the middle 10.625 in, 26.99 cm (check-values 1.4, from memory)
    assert "Craft Yarn Council" in out
    assert "(bust +7.6 cm assumed)" in out


def test_the_same_as_one_json_document(capsys: pytest.CaptureFixture[str]) -> None:
    """Every pair is either ranked or rejected."""
    assert main(["fit", SWITCHBACK, "--json"]) == 0
    document = json.loads(capsys.readouterr().out)
    assert len(document["blends"]) + len(document["rejected"]) == 96
    assert all(each["why"] for each in document["rejected"])


def test_the_yoke_is_drawn_as_svg_and_as_png(tmp_path: Path) -> None:
    """Both files are what their names say."""
    assert main(["fit", SWITCHBACK, "--picture", str(tmp_path / "yoke.svg")]) == 0
    assert (tmp_path / "yoke.svg").read_text(encoding="utf-8").startswith("<svg ")
    assert main(["fit", SWITCHBACK, "--picture", str(tmp_path / "yoke.png")]) == 0
    assert (tmp_path / "yoke.png").read_bytes().startswith(b"\x89PNG")


def test_a_picture_that_cannot_be_is_told_plainly(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Another kind of file is a wrong command line; a hat has no yoke; a folder that is not there."""
    with pytest.raises(SystemExit) as ended:
        main(["fit", SWITCHBACK, "--picture", "yoke.gif"])
    assert ended.value.code == 2
    hat = SWITCHBACK.replace("switchback", "hat")
    assert main(["fit", hat, "--picture", str(tmp_path / "yoke.svg")]) == 1
    assert "no yoke" in capsys.readouterr().err
    assert main(["fit", SWITCHBACK, "--picture", str(tmp_path / "not" / "there.svg")]) == 4


def test_a_blend_that_no_arithmetic_carries_is_told_and_the_others_are_shown(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """The knitter who asked for it is the one who needs to see what works."""
    text = Path(SWITCHBACK).read_text(encoding="utf-8")
    file = tmp_path / "garment.yaml"
    file.write_text(
        text.replace("size: 4\n", "size: 6\n", 1).replace("size: 2}", "size: 1}"), encoding="utf-8"
    )
    assert main(["fit", str(file)]) == 0
    out = capsys.readouterr().out
    assert "it cannot be knitted" in out
    assert "255" in out
    assert "228" in out
    assert "The nearest that can be knitted: size 6, then 1 from " in out
    assert "size 6 alone" in out
    assert "Can be knitted, nearest first" in out


@pytest.mark.parametrize("sample", sorted(Path(SWITCHBACK).parent.glob("*.yaml")), ids=lambda path: path.stem)
def test_every_sample_is_measured_and_its_sizes_ranked(
    sample: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Hat, mittens, socks, cardigan, shawl and pullover: each has lengths, and every size of it can be knitted."""
    assert main(["fit", str(sample), "--json"]) == 0
    document = json.loads(capsys.readouterr().out)
    assert document["trouble"] is None
    assert any(line["name"].endswith("length") for line in document["lines"])
    assert all(line["needles_mm"] > 0 for line in document["lines"])
    alone = [blend for blend in document["blends"] if blend["from"] is None]
    assert len(alone) == len({blend["size"] for blend in alone}) >= 1
