from __future__ import annotations

import subprocess
import sys
import time
from pathlib import Path

import pytest

from stepper.sitting.live_ears import LiveEars, why_not_installed
from stepper.sitting.preferences import Preferences
from stepper.sitting.project_file import load_project
from tests.commands.garments import environment, garment

NOWHERE = {"PULSE_SERVER": "unix:/nowhere/at/all", "XDG_RUNTIME_DIR": "/nowhere"}
"""Surroundings without a sound server."""

pytestmark = pytest.mark.skipif(
    Path("/dev/snd").exists(), reason="this machine has a sound card, which cannot be hidden from a process"
)


@pytest.mark.skipif(bool(why_not_installed()), reason="the ears are an extra: pip install '.[ears]'")
def test_without_a_microphone_it_is_said_once_and_the_session_goes_on_by_typed_cues(tmp_path: Path) -> None:
    """No microphone is one clear sentence; every typed cue is answered as ever."""
    with subprocess.Popen(
        [sys.executable, "-m", "stepper", "knit", str(garment(tmp_path)), "--plain", "--mute", "--listen"],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        env={**environment(), **NOWHERE},
    ) as process:
        assert process.stdin is not None
        assert process.stderr is not None
        said = process.stderr.readline()
        out, more = process.communicate("next step\n", timeout=60)
    assert said.startswith("Nothing is heard, since no microphone can be opened (PortAudio: ")
    assert said.endswith("; the session goes on by keys and typed cues.\n")
    assert more == ""
    assert "Join in the round. Round 2" in out
    assert process.returncode == 0


def test_ears_that_cannot_open_tell_why_and_close_without_waiting(tmp_path: Path) -> None:
    """The reason comes once, from the thread that tried; closing afterwards is quick."""
    told: list[tuple[bool, str]] = []
    ears = LiveEars(
        load_project(garment(tmp_path)).plan,
        None,
        Preferences(),
        hear=lambda text, score: None,
        tell=lambda is_open, sentence: told.append((is_open, sentence)),
    )
    ends_at = time.monotonic() + 30
    while not told and time.monotonic() < ends_at:
        time.sleep(0.02)
    began = time.monotonic()
    ears.close()
    assert time.monotonic() - began < 2
    ((is_open, sentence),) = told
    assert not is_open
    assert "Nothing is heard, since" in sentence
