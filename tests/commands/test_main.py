"""The command line: exit codes, help, and the one place that prints failures."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from stepper.commands.main import COMMANDS, main

SWITCHBACK = Path(__file__).parents[1] / "fixtures" / "switchback.yaml"


def test_every_command_has_help(capsys: pytest.CaptureFixture[str]) -> None:
    """And its module can be loaded."""
    for name in COMMANDS:
        with pytest.raises(SystemExit) as ended:
            main([name, "--help"])
        assert ended.value.code == 0
        assert "usage: stepper" in capsys.readouterr().out


@pytest.mark.parametrize("words", [["nonsense"], ["plan"], ["--nonsense"]])
def test_a_wrong_command_line_ends_with_two(words: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    """As argparse does."""
    with pytest.raises(SystemExit) as ended:
        main(words)
    assert ended.value.code == 2
    capsys.readouterr()


def test_no_command_shows_the_help(capsys: pytest.CaptureFixture[str]) -> None:
    """And says which there are."""
    assert main([]) == 2
    assert "knit" in capsys.readouterr().out


def test_help_loads_nothing_heavy() -> None:
    """The help must come at once: no grammar, no screen, no sound."""
    code = (
        "import sys\nfrom stepper.commands.main import main\n"
        "try:\n    main(['--help'])\nexcept SystemExit:\n    pass\n"
        "heavy = {'yaml', 'lark', 'rich', 'prompt_toolkit', 'numpy', 'sounddevice', 'sqlite3', 'pyttsx3'}\n"
        "print('LOADED', sorted(heavy & set(sys.modules)))"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.splitlines()[-1] == "LOADED []"


def test_a_closed_pipe_is_no_fault() -> None:
    """`stepper plan … | head -1` ends quietly."""
    command = f"{sys.executable} -m stepper plan {SWITCHBACK} --json | head -c 10"
    done = subprocess.run(["bash", "-c", command], capture_output=True, text=True, check=False)
    assert done.stderr == ""
