from __future__ import annotations

import json
import shutil
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

import pytest

from stepper.mouth import worker_protocol
from stepper.mouth.system_voice_worker import matching_voice
from stepper.mouth.worker import Worker, WorkerGoneError


@dataclass
class _Installed:
    """A voice as a system lists it."""

    id: str
    name: str
    languages: list[str]


HANS = _Installed("com.x.voice.hans", "Hans", ["de_DE"])
ALMA = _Installed("com.x.voice.alma", "Alma", ["en_GB"])
BETH = _Installed("TOKENS\\BETH_11", "Beth - English (United States)", ["en-US"])
MUTE = _Installed("voice.mute", "Mute", [])
ALL = [HANS, ALMA, BETH, MUTE]


@pytest.mark.parametrize(
    ("wanted", "current", "found"),
    [
        ("alma", HANS.id, ALMA.id),
        ("tokens\\beth", HANS.id, BETH.id),
        ("xyzzy", HANS.id, None),
        ("", HANS.id, ALMA.id),
        ("", BETH.id, None),
        ("", MUTE.id, None),
        ("", None, None),
    ],
)
def test_a_named_voice_is_found_and_otherwise_an_english_one(
    wanted: str, current: str | None, found: str | None
) -> None:
    """Instructions are English: a system that speaks German takes an English voice when it has one."""
    assert matching_voice(ALL, wanted, current) == found


def test_a_system_without_an_english_voice_keeps_its_own() -> None:
    """An accent is better than silence."""
    assert matching_voice([HANS], "", HANS.id) is None


@pytest.mark.sound
@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="the packaged library is for Linux")
@pytest.mark.skipif(shutil.which("aplay") is None, reason="the program aplay, which it plays through, is missing")
def test_it_says_one_line_and_ends(room, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    """One process serves one line, with the library that a package brings along."""
    worker = Worker("stepper.mouth.system_voice_worker", {"voice": "", "volume": 1.0, "folder": str(tmp_path)})
    question = {"text": "Round one.", "words_per_minute": 150}
    try:
        assert worker.started() == {"voice_is_known": True}
        with room.record() as recording:
            assert worker.ask(question, 20) == (worker_protocol.DONE, b"")
            recording.wait_for_sound()
        with pytest.raises(WorkerGoneError):
            worker.ask(question, 20)
    finally:
        worker.close()


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="the packaged library is for Linux")
def test_when_the_program_goes_its_files_go_too(tmp_path: Path) -> None:
    """A process that waits for a line that never comes clears up and ends."""
    folder = tmp_path / "files"
    folder.mkdir()
    (folder / "half-said.wav").write_bytes(b"RIFF")
    options = json.dumps({"voice": "", "volume": 1.0, "folder": str(folder)})
    command = [sys.executable, "-m", "stepper.mouth.system_voice_worker", options]
    done = subprocess.run(command, input=b"", capture_output=True, timeout=60)
    assert done.returncode == 0
    assert not folder.exists()
