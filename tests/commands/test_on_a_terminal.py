"""What commands print on a terminal: no wider than it is, no word broken, and the same words as in a file."""

from __future__ import annotations

import fcntl
import json
import os
import pty
import re
import struct
import termios
from pathlib import Path
from tempfile import TemporaryFile
from threading import Thread

import pytest

from stepper.screen.drawing.rows import text_width
from tests.commands.garments import CUFF, ROOT, environment, garment, stepper
from tests.commands.warm import WarmProcess

SAMPLES = ROOT / "sample_projects"
_PAINT = re.compile(r"\x1b\[[0-9;?]*[A-Za-z]")
_WIPED = re.compile(r"(?:\r[^\r\n]*)*\r +\r")
"""What a slow machine says while it works, and is blank again at the end."""


def on_terminal(words: list[str], columns: int) -> str:
    """Run a command in a pseudo-terminal of that width and return what it shows, colours taken off."""
    ours, its = pty.openpty()
    fcntl.ioctl(its, termios.TIOCSWINSZ, struct.pack("HHHH", 40, columns, 0, 0))
    shown: list[bytes] = []
    environ = {**environment(), "COLUMNS": str(columns), "TERM": "xterm-256color"}
    with os.fdopen(its, "wb", buffering=0) as terminal, TemporaryFile() as nothing:
        process = WarmProcess(words, nothing, terminal, terminal, environ)
    reader = Thread(target=_read_all, args=(ours, shown), daemon=True)
    reader.start()
    process.wait(timeout=60)
    reader.join(10)
    os.close(ours)
    return _WIPED.sub("", _PAINT.sub("", b"".join(shown).decode()).replace("\r\n", "\n"))


def _read_all(ours: int, shown: list[bytes]) -> None:
    while True:
        try:
            some = os.read(ours, 65_536)
        except OSError:  # the terminal is closed
            return
        if not some:
            return
        shown.append(some)


def wide(shown: str, columns: int) -> list[str]:
    """List the lines that do not fit, but for a single word that is longer than a line."""
    lines = [each for line in shown.split("\n") for each in line.split("\r")]
    return [line for line in lines if text_width(line) > columns and len(line.split()) > 1]


@pytest.fixture(scope="module")
def cuff(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a small garment whose lines are long: names, a chart, a yarn that does not last."""
    folder = tmp_path_factory.mktemp("wide")
    return garment(folder, CUFF.replace("{name: chalk}", '{name: chalk, colour: "#eee8dd"}'))


@pytest.mark.parametrize("columns", [60, 80])
@pytest.mark.parametrize("command", ["check", "plan", "yarn", "fit", "notes", "where"])
def test_a_report_fits_the_terminal_and_keeps_every_word(command: str, columns: int, cuff: Path) -> None:
    """A terminal breaks a long line in the middle of a word: half a stitch is read as another."""
    path = str(SAMPLES / "hat.yaml") if command in ("plan", "yarn") else str(cuff)
    shown = on_terminal([command, path], columns)

    assert wide(shown, columns) == []
    assert shown.split() == stepper(command, path).stdout.split()


@pytest.mark.parametrize(
    ("columns", "words"),
    [
        (80, "colours sample_projects/mittens.yaml"),
        (60, "colours sample_projects/pullover.yaml"),
        (60, "where sample_projects"),
        *[
            (columns, words)
            for columns in (60, 80)
            for words in (
                "spread 204 to 240",
                "wording",
                "settings",
                "knti",
                "check no-such-file-anywhere-in-this-folder.yaml",
                "plan --help",
            )
        ],
    ],
)
def test_nothing_else_is_wider_than_the_terminal(
    columns: int, words: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Charts side by side, settings, help and complaints."""
    monkeypatch.chdir(ROOT)
    shown = on_terminal(words.split(), columns)
    assert shown.strip()
    assert wide(shown, columns) == []


@pytest.mark.parametrize("columns", [60, 80])
def test_a_problem_fits_with_its_excerpt(columns: int, tmp_path: Path) -> None:
    """The caret stands under the place, on the same row of the terminal."""
    bad = garment(tmp_path, CUFF.replace("Knit until", "Knit, remembering the wool from the market, and knti until"))
    shown = on_terminal(["check", str(bad)], columns)
    assert "error:" in shown
    assert wide(shown, columns) == []
    lines = shown.split("\n")
    caret = next(at for at, line in enumerate(lines) if set(line.strip()) <= set("|^ ") and "^" in line)
    assert " | " in lines[caret - 1]
    assert lines[caret].rindex("^") < len(lines[caret - 1])


def test_a_line_of_a_session_is_broken_between_words(tmp_path: Path) -> None:
    """What is said in the plain session, too; a screen reader reads a line at a time."""
    shown = on_terminal(["knit", str(garment(tmp_path)), "--plain", "--mute"], 60)
    assert "Starting: 17 rounds in all." in shown
    assert wide(shown, 60) == []


@pytest.mark.parametrize(
    "words",
    [["check", "--json"], ["plan", "--json"], ["fit", "--json"], ["yarn", "--json"], ["colours", "--json"], ["where", "--json"]],
    ids=" ".join,
)
def test_every_document_says_its_format(words: list[str], cuff: Path) -> None:
    """A program that reads one can tell when it has changed."""
    command, *options = words
    assert json.loads(stepper(command, cuff, *options).stdout)["format"] >= 1


def test_the_list_of_a_folder_says_its_format(cuff: Path) -> None:
    """Once, for the whole document."""
    document = json.loads(stepper("where", cuff.parent, "--json").stdout)
    assert document["format"] == 1
    assert "format" not in document["garments"][0]
