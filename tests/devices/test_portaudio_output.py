from __future__ import annotations

import subprocess
import sys

import pytest

from stepper.devices.portaudio_output import PortAudioOutput, portaudio_devices
from stepper.devices.ports import NoOutputError


@pytest.mark.usefixtures("no_sound")
def test_without_a_device_there_is_a_plain_reason(capfd: pytest.CaptureFixture[str]) -> None:
    """Whether PortAudio is missing or finds nothing, it is one error, and nothing tears the screen."""
    with pytest.raises(NoOutputError):
        PortAudioOutput(22_050)
    assert capfd.readouterr().err == ""


@pytest.mark.sound
@pytest.mark.usefixtures("room")
def test_devices_are_named_and_taken_by_part_of_their_name(request: pytest.FixtureRequest) -> None:
    """What the set-up lists is what the settings take; what is not there is refused."""
    _need_portaudio()
    assert any("pulse" in name for name in portaudio_devices())
    PortAudioOutput(22_050, "pulse").close()
    with pytest.raises(NoOutputError, match="No output device matching 'xyzzy'"):
        PortAudioOutput(22_050, "xyzzy")


@pytest.mark.sound
@pytest.mark.usefixtures("room")
def test_a_stream_that_ends_by_itself_is_lost_and_one_that_is_closed_is_not() -> None:
    """Only a device that goes is worth telling."""
    _need_portaudio()
    closed, ended = PortAudioOutput(22_050), PortAudioOutput(22_050)
    closed.close()
    assert not closed.lost
    ended._stream.abort()
    assert ended.lost
    ended.close()


def test_loading_the_room_loads_no_sound_library() -> None:
    """The program starts fast, and its help works where no sound can."""
    code = (
        "import sys, stepper.mouth.open_speaker, stepper.mouth.render, stepper.mouth.fakes\n"
        "print([name for name in ('sounddevice', 'miniaudio', 'pyttsx3', 'numpy', 'espeakng_loader') "
        "if name in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=60)
    assert done.stdout.strip() == "[]", done.stderr


def _need_portaudio() -> None:
    try:
        import sounddevice  # noqa: F401 - only whether it loads
    except OSError:
        pytest.skip("PortAudio is not installed (package libportaudio2)")
