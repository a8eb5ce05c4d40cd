"""`stepper completion`: words on the tab key."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from stepper.commands.completion import SHELLS
from stepper.commands.main import COMMANDS, main
from tests.commands.garments import ROOT

pytest.importorskip("argcomplete", reason="argcomplete, which the program brings with it, is not installed")


def completed(line: str, folder: Path) -> list[str]:
    """Ask as a shell does when the tab key is pressed behind a line, and return what it is offered."""
    answer = folder.parent / "answer"
    answer.touch()
    asked = {
        "_ARGCOMPLETE": "1",
        "_ARGCOMPLETE_IFS": "\n",
        "_ARGCOMPLETE_STDOUT_FILENAME": str(answer),
        "COMP_LINE": line,
        "COMP_POINT": str(len(line)),
        "COMP_TYPE": "9",
    }
    environ = {**os.environ, **asked, "PYTHONPATH": str(ROOT), "PYTHONUTF8": "1"}
    subprocess.run([sys.executable, "-m", "stepper"], env=environ, cwd=folder, check=False, timeout=60)
    return [word.strip() for word in answer.read_text(encoding="utf-8").split("\n") if word.strip()]


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """Return a folder with two files."""
    folder = tmp_path / "wool"
    folder.mkdir()
    for name in ("hat.yaml", "hat.txt"):
        (folder / name).touch()
    return folder


def test_commands_options_and_files_are_completed(folder: Path) -> None:
    """What a word can become after the words before it; of files the project files, where a garment is wanted."""
    assert completed("stepper wh", folder) == ["where"]
    assert "--manner" in completed("stepper plan --m", folder)
    assert completed("stepper plan --manner s", folder) == ["sayable"]
    assert completed("stepper knit ha", folder) == ["hat.yaml"]
    assert set(completed("stepper voice ", folder)) >= {"try", "enrol", "install"}


@pytest.mark.parametrize("shell", list(SHELLS))
def test_every_shell_gets_its_script(shell: str, capsys: pytest.CaptureFixture[str]) -> None:
    """And the help of the command has the line that puts it in place."""
    assert main(["completion", shell]) == 0
    assert "stepper" in capsys.readouterr().out


@pytest.mark.skipif(shutil.which("bash") is None, reason="bash is not installed")
def test_bash_completes_a_command_with_it(folder: Path, tmp_path: Path) -> None:
    """The real shell calls the function it was given."""
    bin_ = tmp_path / "bin"
    bin_.mkdir()
    program = bin_ / "stepper"
    program.write_text(f'#!/bin/sh\nexec "{sys.executable}" -m stepper "$@"\n', encoding="utf-8")
    program.chmod(0o755)
    script = (
        'eval "$(stepper completion bash)"\n'
        'COMP_LINE="stepper spr"; COMP_POINT=11; COMP_TYPE=9; COMP_WORDS=(stepper spr); COMP_CWORD=1\n'
        '_python_argcomplete stepper; printf "%s" "${COMPREPLY[*]}"'
    )
    environ = {**os.environ, "PATH": f"{bin_}:{os.environ['PATH']}", "PYTHONPATH": str(ROOT)}
    done = subprocess.run(
        ["bash", "-c", script], env=environ, cwd=folder, capture_output=True, text=True, timeout=60, check=True
    )
    assert done.stdout.strip() == "spread"
    assert "spread" in COMMANDS
