from __future__ import annotations

import importlib
import subprocess
import sys
from array import array
from itertools import pairwise
from pathlib import Path
from types import ModuleType

import pytest

from stepper.devices.miniaudio_streams import MiniaudioInput
from stepper.devices.portaudio_streams import PortAudioInput, PortAudioOutput, portaudio_names
from stepper.devices.ports import InputStream, NoInputError, NoOutputError
from tests.sine import TONE_HZ, tone
from tests.waiting import PATIENCE_S


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
    assert any("pulse" in name for name in portaudio_names("output"))
    PortAudioOutput(22_050, "pulse").close()
    with pytest.raises(NoOutputError, match="No output device matching 'xyzzy'"):
        PortAudioOutput(22_050, "xyzzy")


@pytest.mark.sound
@pytest.mark.usefixtures("room")
def test_a_stream_that_ends_by_itself_is_lost_and_one_that_is_closed_is_not(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Only a device that goes is worth telling."""
    sounddevice, made = _need_portaudio(), []

    class Remembered(sounddevice.RawOutputStream):  # type: ignore[misc,name-defined]
        def __init__(self, *args: object, **settings: object) -> None:
            super().__init__(*args, **settings)
            made.append(self)

    monkeypatch.setattr(sounddevice, "RawOutputStream", Remembered)
    closed, ended = PortAudioOutput(22_050), PortAudioOutput(22_050)
    closed.close()
    assert not closed.lost
    made[1].abort()
    assert ended.lost
    ended.close()


def test_loading_the_room_loads_no_sound_library() -> None:
    """The program starts fast, and its help works where no sound can."""
    code = (
        "import sys, stepper.mouth.open_speaker, stepper.mouth.fakes\n"
        "print([name for name in ('sounddevice', 'miniaudio', 'pyttsx3', 'numpy', 'espeakng_loader') "
        "if name in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=60)
    assert done.stdout.strip() == "[]", done.stderr


def _need_portaudio() -> ModuleType:
    """Return the library that speaks to PortAudio."""
    try:
        return importlib.import_module("sounddevice")
    except OSError:
        pytest.skip("PortAudio is not installed (package libportaudio2)")


def taken(stream: InputStream, seconds: float) -> bytes:
    """Take so much sound from a stream."""
    sound = b""
    while len(sound) < seconds * 32_000:
        block = stream.take(PATIENCE_S)
        assert block is not None, "the microphone gives nothing"
        sound += block
    return sound


def loud_crossings(sound: bytes) -> tuple[float, int]:
    """Return how long it is loud, and how often it crosses nought upwards meanwhile. Unit: s."""
    samples = array("h", sound)
    loud = [at for at, value in enumerate(samples) if abs(value) > 3000]
    if not loud:
        return 0.0, 0
    middle = samples[loud[0] : loud[-1]]
    ups = sum(before < 0 <= after for before, after in pairwise(middle))
    return len(middle) / 16_000, ups


@pytest.mark.sound
def test_what_is_played_into_the_microphone_comes_in_at_its_pitch(room, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    """Half a second of 500 Hz at 48 kHz is half a second of 500 Hz at 16 kHz, whichever library listens."""
    streams = [PortAudioInput(), MiniaudioInput()]
    try:
        for stream in streams:
            taken(stream, 0.2)
        room.speak(tone(tmp_path / "tone.wav", seconds=0.5))
        heard = [loud_crossings(taken(stream, 1.5)) for stream in streams]
    finally:
        for stream in streams:
            stream.close()
    for seconds, ups in heard:
        assert seconds == pytest.approx(0.5, abs=0.1)
        assert ups / seconds == pytest.approx(TONE_HZ, rel=0.05)


@pytest.mark.sound
@pytest.mark.usefixtures("room")
def test_a_microphone_is_taken_by_part_of_its_name_and_one_that_is_not_there_refused() -> None:
    """What the set-up lists is what the settings take."""
    assert any("pulse" in name for name in portaudio_names("input"))
    PortAudioInput("pulse").close()
    with pytest.raises(NoInputError, match="xyzzy"):
        PortAudioInput("xyzzy")


@pytest.mark.usefixtures("no_sound")
def test_without_a_microphone_there_is_a_plain_reason(capfd: pytest.CaptureFixture[str]) -> None:
    """One error, and nothing tears the screen."""
    with pytest.raises(NoInputError):
        PortAudioInput()
    assert capfd.readouterr().err == ""
