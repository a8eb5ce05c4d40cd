"""`stepper start`: what it writes, and what it never touches."""

from __future__ import annotations

import io
import subprocess
import sys
from pathlib import Path

import pytest

from stepper.commands.main import main

PAGES = Path(__file__).parents[1] / "project" / "printed"


def test_a_script_can_answer_it(tmp_path: Path) -> None:
    """Questions come on standard output, a line of standard input answers each."""
    path = tmp_path / "hat.yaml"
    answers = "Bracken hat\ncm\nS (M, L)\nQ\nL\noat\n3.75\n22\n30\nbrim\n96 (104, 112)\nround\n"
    done = subprocess.run(
        [sys.executable, "-m", "stepper", "start", str(path)],
        input=answers,
        text=True,
        capture_output=True,
        check=False,
    )
    assert (done.returncode, done.stderr) == (0, "")
    assert "The sizes are S, M, L." in done.stdout
    text = path.read_text(encoding="utf-8")
    assert "title: Bracken hat" in text
    assert "size: L" in text
    assert "Cast on 96 (104, 112) sts." in text
    assert main(["check", str(path)]) == 0


def test_the_end_of_the_input_takes_the_defaults(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """No answer at all still gives a file to fill in."""
    monkeypatch.setattr(sys, "stdin", io.StringIO(""))
    path = tmp_path / "a.yaml"
    assert main(["start", str(path)]) == 0
    assert main(["check", str(path)]) == 0


def test_a_file_that_is_there_is_never_touched(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Her own file is worth more than ours."""
    path = tmp_path / "a.yaml"
    path.write_text("mine", encoding="utf-8")
    for words in (["start", str(path)], ["start", str(path), "--paste", str(PAGES / "us_hat.txt")]):
        assert main(words) == 4
        assert "was not touched" in capsys.readouterr().err
    assert path.read_text(encoding="utf-8") == "mine"


def test_a_pasted_page_is_summed_up(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """How much was understood, where to look, and what it comes to."""
    path = tmp_path / "hat.yaml"
    assert main(["start", str(path), "--paste", str(PAGES / "us_hat.txt")]) == 0
    shown = capsys.readouterr().out
    assert "11 lines of the pattern, 1 left as notes." in shown
    assert "marked LOOK" in shown
    assert "What is read comes to 37 rounds. It can be knitted from once no LOOK stands in it" in shown


def test_a_page_that_does_not_come_out_says_why(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """The file is written all the same: the knitter mends it there."""
    page, path = tmp_path / "page.txt", tmp_path / "a.yaml"
    page.write_text("BODY\nCast on 40 sts. 44 sts.\n", encoding="utf-8")
    assert main(["start", str(path), "--paste", str(page)]) == 0
    shown = capsys.readouterr().out
    assert "It cannot be knitted to its end yet:" in shown
    assert "prints 44 stitches" in shown
    assert "Nothing was changed" not in shown  # the file was written
    assert f"then: stepper check {path}" in shown
    assert path.exists()


def test_the_text_may_come_from_standard_input(tmp_path: Path) -> None:
    """Copied and piped, without a file between."""
    path = tmp_path / "a.yaml"
    done = subprocess.run(
        [sys.executable, "-m", "stepper", "start", str(path), "--paste", "-"],
        input=(PAGES / "flat_scarf.txt").read_bytes(), capture_output=True, check=False,
    )  # fmt: skip
    assert (done.returncode, done.stderr) == (0, b"")
    assert b"What is read comes to 50 rounds." in done.stdout


def test_a_row_that_is_not_read_is_never_called_sound(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """The counts may come right without it, and she would knit past it. Taking the mark away is her word that
    the row may stay a note; a page read whole needs no such word."""
    page, path = tmp_path / "page.txt", tmp_path / "a.yaml"
    read = "Sizes: S\nYarn: wool, 100 m per 50 g\nGauge: 20 sts and 28 rnds to 10 cm\nBODY\nCast on 40 sts. Join.\n"
    unread = "Now knit the twirl that you love, all the way round.\n"
    page.write_text(f"{read}{unread}Knit 4 rnds.\nBind off.\n", encoding="utf-8")
    assert main(["start", str(path), "--paste", str(page)]) == 0
    assert "once no LOOK stands in it" in capsys.readouterr().out
    for command in ("check", "plan", "fit"):
        assert main([command, str(path)]) == 1
        shown = capsys.readouterr()
        assert "is not read, so not knitted" in shown.err
        assert "is sound" not in shown.out
    rows = path.read_text(encoding="utf-8").splitlines(keepends=True)
    path.write_text("".join(row for row in rows if "# LOOK" not in row), encoding="utf-8")
    assert main(["check", str(path)]) == 0
    assert "is sound: 6 rounds" in capsys.readouterr().out
    whole = tmp_path / "b.yaml"
    page.write_text(f"{read}Knit 4 rnds.\nBind off.\n", encoding="utf-8")
    assert main(["start", str(whole), "--paste", str(page)]) == 0
    assert "It is sound as it stands: 6 rounds." in capsys.readouterr().out


@pytest.mark.parametrize(
    ("raw", "code"),
    [
        (b"", 1),
        (b" \n\n", 1),
        ("Größe S – M".encode("cp1252"), 0),
        ("Body\nKnit.".encode("utf-16"), 0),
        (b"\0\1\2" * 9, 0),
    ],
)
def test_any_bytes_are_taken_or_refused_with_a_sentence(
    raw: bytes, code: int, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Pages come in more than one encoding."""
    page, path = tmp_path / "page.txt", tmp_path / "a.yaml"
    page.write_bytes(raw)
    assert main(["start", str(path), "--paste", str(page)]) == code
    assert "Traceback" not in capsys.readouterr().err
    assert path.exists() == (code == 0)


def test_what_cannot_be_read_or_written_is_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """A missing text, a folder that is not there, a text too large."""
    assert main(["start", str(tmp_path / "a.yaml"), "--paste", str(tmp_path / "none.txt")]) == 4
    assert main(["start", str(tmp_path / "no" / "a.yaml"), "--paste", str(PAGES / "us_hat.txt")]) == 4
    large = tmp_path / "large.txt"
    large.write_text("Knit.\n" * 200_000, encoding="utf-8")
    assert main(["start", str(tmp_path / "a.yaml"), "--paste", str(large)]) == 1
    assert capsys.readouterr().err.count("\n") == 3


def test_a_pattern_bought_as_pdf_is_taken_page_by_page(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """The pages' text becomes the file, and a page that is a picture is told."""
    printed = Path(__file__).parents[1] / "project" / "pdf" / "running_heads.pdf"
    target = tmp_path / "cowl.yaml"

    assert main(["start", str(target), "--paste", str(printed)]) == 0

    assert "*K3, p3; rep from * to end. Work for 4 cm." in target.read_text(encoding="utf-8")
    assert capsys.readouterr().out.startswith("Page 3 is a picture only and cannot be read here.")
