"""A command in a process made by fork is the command in a process of its own."""

from __future__ import annotations

import signal
import subprocess
import sys
from pathlib import Path

import pytest

from tests.commands.garments import Sitting, environment, garment, stepper


@pytest.mark.parametrize("words", [("--version",), ("check", "no.yaml"), ("knit",), ("nothing of the kind",), ("spread", "204 to 240")])
def test_a_warm_process_answers_as_a_cold_one(words: tuple[str, ...], tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Streams, exit code and folder are its own; else tests of commands would prove nothing of the program."""
    monkeypatch.chdir(tmp_path)
    cold = subprocess.run(
        [sys.executable, "-m", "stepper", *words], capture_output=True, text=True, encoding="utf-8", env=environment(), check=False
    )
    warm = stepper(*words)

    assert (warm.returncode, warm.stdout, warm.stderr) == (cold.returncode, cold.stdout, cold.stderr)


def test_what_ended_a_warm_process_is_known(tmp_path: Path) -> None:
    """Killed, or interrupted and ended by itself."""
    path = garment(tmp_path)
    assert Sitting(path).kill() == -signal.SIGKILL
    assert Sitting(path).kill(signal.SIGINT) == 130


def test_surroundings_are_those_in_which_it_is_called(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """And not those of the process it was made from."""
    folder = tmp_path / "settings"
    folder.mkdir()
    (folder / "stepper").mkdir()
    path = garment(tmp_path)
    plain = stepper("knit", path, "--plain", "--mute", typed="tickle\n").stdout
    (folder / "stepper" / "settings.toml").write_text('[cues]\n"tickle" = "next step"\n', encoding="utf-8")
    monkeypatch.setenv("XDG_CONFIG_HOME", str(folder))

    assert "Not understood" in plain
    assert plain != stepper("knit", path, "--plain", "--mute", typed="tickle\n").stdout
