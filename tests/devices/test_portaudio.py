from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from stepper.devices.portaudio import list_configurations, why_not

_TRY = """
from stepper.mouth.open_speaker import open_speaker
from stepper.mouth.settings import SpeechSettings
print(open_speaker(SpeechSettings(engine="espeak"))[1])
"""


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="only Linux has ALSA")
@pytest.mark.parametrize("content", ["", "pcm.!default {{{"])
def test_an_empty_or_broken_configuration_is_one_sentence_and_not_the_end(tmp_path: Path, content: str) -> None:
    """PortAudio aborts on an empty configuration and fails on a broken one; she reads why it is silent."""
    broken = tmp_path / "asound.conf"
    broken.write_text(content)
    done = subprocess.run(
        [sys.executable, "-c", _TRY],
        env={**os.environ, "ALSA_CONFIG_PATH": str(broken), "PULSE_SERVER": f"unix:{tmp_path}/nobody"},
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    assert done.stdout.startswith("There is no voice, since no sound device can be opened (PortAudio: ")
    assert done.stdout.count("\n") == 1


def test_nothing_is_tried_where_only_the_systems_own_configuration_takes_part(tmp_path: Path) -> None:
    """The trial costs a third of a second, so it is left out where it can tell nothing."""
    assert why_not(()) == ""
    if Path("/usr/share/alsa/alsa.conf").exists():
        assert list_configurations({"HOME": str(tmp_path)}) == ()


def test_a_file_of_her_own_or_a_named_one_is_a_reason_to_try(tmp_path: Path) -> None:
    """Whatever she or a program wrote there may be broken, a named file that is missing too."""
    (tmp_path / ".asoundrc").write_text("x")
    assert list_configurations({"HOME": str(tmp_path)})[0][0] == str(tmp_path / ".asoundrc")
    missing = {"ALSA_CONFIG_PATH": str(tmp_path / "none")}
    assert list_configurations(missing) == ((str(tmp_path / "none"), 0, -1),)
