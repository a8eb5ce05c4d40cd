from __future__ import annotations

import json
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from stepper.mouth.espeak_library import packaged_paths

_LINE = "Knit to two stitches before the marker, knit two together, slip marker."

_SPEAK = """
import json, sys
from stepper.mouth.espeak_library import EspeakLibrary
voice, text, speeds = json.loads(sys.argv[1])
library = EspeakLibrary(voice=voice, volume=1.0)
seconds = [len(library.speech(text, speed)) / 2 / library.rate_hz for speed in speeds]
print(json.dumps([library.voice_is_known, library.rate_hz, seconds]))
"""


def _speak(voice: str, text: str, *speeds: int) -> tuple[bool, int, list[float]]:
    """Run the library in a process of its own, where it belongs."""
    command = [sys.executable, "-c", _SPEAK, json.dumps([voice, text, speeds])]
    done = subprocess.run(command, capture_output=True, text=True, timeout=60)
    assert done.returncode == 0, done.stderr
    known, rate_hz, seconds = json.loads(done.stdout)
    return known, rate_hz, seconds


def test_twelve_words_take_the_time_they_should() -> None:
    """The speed in words a minute is what it says.

    Source: words / (words per minute): 12 at 150 take 4.8 s, at 180 take 4.0 s.
    Within a tenth, since words differ.
    """
    _, rate_hz, (usual_s, fast_s) = _speak("", _LINE, 150, 180)
    assert rate_hz == 22_050
    assert usual_s == pytest.approx(4.8, rel=0.1)
    assert fast_s == pytest.approx(4.0, rel=0.1)


@pytest.mark.parametrize("text", ["½ × 3 – “é” ﬁ 🐑", "a\0b", "\ud800 knit", "編む", "<voice>&amp;[[knit]]"])
def test_any_writing_can_be_said(text: str) -> None:
    """A pattern with unusual signs does not stop the voice."""
    assert _speak("", text, 150)[2][0] > 0.05


@pytest.mark.parametrize(
    ("voice", "known"),
    [("", True), ("en", True), ("en-us", True), ("en-gb", True), ("xyzzy", False), ("naïve", False)],
)
def test_a_voice_that_is_not_there_is_told_and_replaced(voice: str, known: bool) -> None:
    """A misspelt voice costs no speech, and the user can be told."""
    was_known, _, (seconds,) = _speak(voice, "Round one.", 150)
    assert was_known is known
    assert 0.4 < seconds < 2


def test_a_very_long_data_path_does_no_harm(tmp_path: Path) -> None:
    """The library refuses a path of more than 160 bytes; a program installed deep down still speaks."""
    deep = tmp_path.joinpath(*["a-rather-long-folder-name"] * 8, "espeakng_loader")
    shutil.copytree(packaged_paths()[0].parent, deep)
    assert len(str(deep)) > 195
    code = f"import sys; sys.path.insert(0, {str(deep.parent)!r})\n" + _SPEAK
    command = [sys.executable, "-c", code, json.dumps(["", "Round one.", [150]])]
    done = subprocess.run(command, capture_output=True, text=True, timeout=60)
    assert done.returncode == 0, done.stderr
    assert json.loads(done.stdout)[2][0] > 0.4


def test_a_package_without_its_data_is_a_plain_reason(tmp_path: Path) -> None:
    """A broken installation is named, rather than ending in a crash of the library."""
    broken = tmp_path / "espeakng_loader"
    shutil.copytree(packaged_paths()[0].parent, broken)
    shutil.rmtree(broken / "espeak-ng-data")
    (broken / "espeak-ng-data").mkdir()
    code = (
        f"import sys; sys.path.insert(0, {str(tmp_path)!r})\n"
        "from stepper.mouth.espeak_library import EspeakLibrary\n"
        "from stepper.mouth.ports import NoVoiceError\n"
        "try: EspeakLibrary(voice='', volume=1.0)\nexcept NoVoiceError as reason: print(reason)"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=60)
    assert done.stdout.startswith("its data cannot be read from"), done.stderr
