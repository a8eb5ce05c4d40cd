"""The one door through which text leaves, and what is closed, full, or of another encoding behind it."""

from __future__ import annotations

import io
import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from stepper.commands.main import main
from stepper.commands.standard_streams import complain, guard_streams, print_document
from stepper.errors import SurroundingsError
from stepper.sitting.folding import write_painted

SWITCHBACK = Path(__file__).parents[1] / "fixtures" / "switchback.yaml"
ENCODINGS = ("cp1252", "cp437", "latin-1", "ascii")


class _Full(io.StringIO):
    """A stream whose disk is full."""

    def write(self, text: str) -> int:
        raise OSError(28, "No space left on device")


def stream(encoding: str) -> io.TextIOWrapper:
    """Return a stream as Python sets it up for a console of some encoding."""
    return io.TextIOWrapper(io.BytesIO(), encoding=encoding, errors="strict")


def written(out: io.TextIOWrapper) -> str:
    """Return what went into it."""
    out.flush()
    assert isinstance(out.buffer, io.BytesIO)
    return out.buffer.getvalue().decode(out.encoding)


@pytest.mark.parametrize("encoding", ENCODINGS)
def test_what_a_console_lacks_is_written_like_it(encoding: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """A console set up decades ago shows a pattern too."""
    out = stream(encoding)
    monkeypatch.setattr(sys, "stdout", out)
    with guard_streams():
        print("120 → 130 sts, “Größe” 片, 3½″ – ✓")
    shown = written(out)
    assert shown.startswith("120 -> 130 sts, ")
    assert "?" in shown
    assert "3" in shown
    if encoding == "ascii":
        assert shown == "120 -> 130 sts, 'Groe' ?, 31/2'' - x\n".replace("Groe", "Gro?e")


@pytest.mark.parametrize("encoding", ENCODINGS)
def test_a_document_means_the_same_on_any_console(encoding: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """A program reads it, so nothing in it may be replaced."""
    out, document = stream(encoding), {"title": "→ “ \x1b[2J \u202e \udcff ½"}
    monkeypatch.setattr(sys, "stdout", out)
    with guard_streams():
        print_document(document)
    assert json.loads(written(out)) == document
    assert "\x1b" not in written(out)


def test_only_our_own_colours_pass(monkeypatch: pytest.MonkeyPatch) -> None:
    """A text that brings escape sequences shows them; what the screen's own painter wrote stays."""
    out = stream("utf-8")
    monkeypatch.setattr(sys, "stdout", out)
    with guard_streams():
        print("a\x1b[31mb", end="\r\n")
        sys.stdout.writelines(["c\x9b", "d"])
        write_painted("\x1b[1mown\x1b[0m\n", sys.stdout)
    assert written(out) == "a\\u001b[31mb\\u000d\nc\\u009bd\x1b[1mown\x1b[0m\n"


def test_a_full_disk_behind_the_output_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    """In a sentence with the reason, and what was kept is safe."""
    monkeypatch.setattr(sys, "stdout", _Full())
    with pytest.raises(SurroundingsError, match="Standard output cannot be written: No space left"), guard_streams():
        print("a")
    monkeypatch.setattr(sys, "stderr", _Full())
    complain("nobody reads this")


def test_without_the_door_painted_lines_are_printed(capsys: pytest.CaptureFixture[str]) -> None:
    """As a command tried alone prints them."""
    write_painted("a\n", sys.stdout)
    assert capsys.readouterr().out == "a\n"


CLOSED = [
    ("plan FILE >/dev/full", 4),
    ("--help >/dev/full", 4),
    ("check missing.yaml 2>/dev/full", 4),
    ("check FILE >&-", 0),
    ("check FILE <&- >&- 2>&-", 0),
    ("knit FILE --plain --mute --deaf <&-", 0),
    ("knit FILE --plain --mute --deaf </dev/null >/dev/full", 4),
    ("start new.yaml <&-", 0),
]


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="this system has no /dev/full")
def test_closed_and_full_streams_end_without_a_fault(tmp_path: Path) -> None:
    """Whatever the shell that starts it left open: never a fault of its own, never a program that hangs."""
    garment = tmp_path / "g.yaml"
    garment.write_bytes(SWITCHBACK.read_bytes())
    found = {}
    for words, _ in CLOSED:
        command = f"{sys.executable} -m stepper {words.replace('FILE', str(garment))}"
        done = subprocess.run(
            ["bash", "-c", command],
            capture_output=True,
            text=True,
            check=False,
            timeout=60,
            cwd=tmp_path,
            env={**os.environ, "PYTHONPATH": str(Path(__file__).parents[2])},
        )
        found[words] = done.returncode
        assert "Traceback" not in done.stderr
        assert "Exception ignored" not in done.stderr
    assert found == dict(CLOSED)


HOSTILE = "\x1b[2J\x1b]0;x\x07\x9b31m\u202e"


@pytest.mark.parametrize(
    "words",
    [
        *(["check", "FILE"], ["plan", "FILE"], ["fit", "FILE"], ["yarn", "FILE"], ["colours", "FILE"]),
        *(["notes", "FILE"], ["where", "FILE"], ["where", "FOLDER"], ["plan", "FILE", "--json"]),
        *(["where", "FILE", "--json"], ["check", "MISSING"], ["wording", HOSTILE], ["knit", "FILE"]),
        *(["voice", "install", f"http://[::1{HOSTILE}"], ["start", "FILE"], ["nonsense" + HOSTILE]),
    ],
    ids=lambda words: " ".join(words).encode("ascii", "replace").decode().replace("\x1b", "ESC"),
)
def test_no_command_passes_an_escape_sequence_on(
    words: list[str], tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """From the title, names of yarns and sections, notes, paths, settings, and what was typed."""
    code = "\\e[2J\\e]0;x\\a\\x9b31m\\u202e"
    text = SWITCHBACK.read_text(encoding="utf-8").replace("title: ", f'title: "{code} ', 1)
    title = next(line for line in text.splitlines() if line.startswith("title: "))
    text = text.replace(title, title.split("#")[0].rstrip() + '"')
    text = text.replace("note: front rib two rounds longer", f'"note: front {code} rib"')
    text = text.replace("name: body", f'name: "body{code}"')
    folder = tmp_path / f"a{HOSTILE}"
    folder.mkdir()
    (folder / "g.yaml").write_text(text, encoding="utf-8")
    settings = tmp_path / "settings.toml"
    settings.write_text(f'[care]\n"rest{code}" = "{code}"\n', encoding="utf-8")
    monkeypatch.setenv("STEPPER_SETTINGS", str(settings))
    monkeypatch.setenv("STEPPER_DATA", str(tmp_path / "data"))
    monkeypatch.setattr(sys, "stdin", io.StringIO(""))
    places = {"FILE": folder / "g.yaml", "FOLDER": folder, "MISSING": folder / "none.yaml"}
    said: Any
    try:
        said = main([str(places.get(word, word)) for word in words])
    except SystemExit as ended:
        said = ended.code
    assert said in (0, 1, 2, 4)
    shown = capsys.readouterr()
    everything = shown.out + shown.err
    assert everything
    assert not [letter for letter in everything if letter in "\x1b\x07\x9b\u202e"]
