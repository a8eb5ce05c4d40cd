"""`stepper settle`: what a page left open, told or asked."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from stepper.commands.main import main
from tests.project.samples import project

WORK = """
    Cast on 40 sts.
    # LOOK (row 3 of the text).
    Note: Twirl them for 2 rows. 44 sts.
    Bind off.
"""


def written(tmp_path: Path, work: str) -> Path:
    """Write a file with these lines, of one size."""
    path = tmp_path / "hat.yaml"
    path.write_text(project(work, sizes="one", size="one"), encoding="utf-8")
    return path


def test_what_is_open_is_one_document(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """With what would be proposed; nothing is asked and nothing written."""
    path = written(tmp_path, WORK)
    before = path.read_bytes()
    assert main(["settle", str(path), "--json"]) == 1
    told = json.loads(capsys.readouterr().out)
    assert told["format"] == 1
    (left,) = told["open"]
    assert (left["kind"], left["text"]) == ("row", "Twirl them for 2 rows. 44 sts.")
    assert (left["proposed"]["rows"], left["proposed"]["before"]) == ("2", 40)
    assert left["proposed"]["changes"] == []
    assert path.read_bytes() == before
    path = written(tmp_path, WORK.replace("Twirl them for 2 rows. 44 sts.", "Knit 2 rows (as on my drawing)."))
    main(["settle", str(path), "--json"])
    (left,) = json.loads(capsys.readouterr().out)["open"]
    assert left["proposed"]["changes"] == [
        {"kind": "struck", "words": "as on my drawing", "instead": "", "read": "Knit 2 rows."}
    ]


def test_nothing_open_is_said_as_one_document_too(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """And ends well."""
    assert main(["settle", str(written(tmp_path, "Cast on 40 sts.\nBind off.\n")), "--json"]) == 0
    assert json.loads(capsys.readouterr().out)["open"] == []


def test_without_a_terminal_it_tells_what_check_tells(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Nobody is there to answer; the marks are problems."""
    path = written(tmp_path, WORK)
    assert main(["settle", str(path)]) == 1
    settled = capsys.readouterr()
    assert main(["check", str(path)]) == 1
    assert capsys.readouterr() == settled
    assert "row 3 of the text is not read" in settled.out + settled.err


def test_a_file_that_is_not_there_is_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """As every command tells it."""
    assert main(["settle", str(tmp_path / "none.yaml"), "--json"]) != 0
    assert "none.yaml" in capsys.readouterr().err
