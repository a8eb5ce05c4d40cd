from __future__ import annotations

import os
import signal
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

import pytest

import stepper.mouth.playback as played
from stepper.mouth.open_speaker import engines_to_try, open_speaker
from stepper.mouth.settings import Engine, SpeechSettings
from tests.waiting import PATIENCE_S, wait_until

_LINE = "Knit to two stitches before the marker, knit two together, slip marker."


@pytest.mark.parametrize(
    ("wanted", "platform", "tried"),
    [
        ("auto", "linux", ("espeak", "pyttsx3")),
        ("auto", "darwin", ("pyttsx3", "espeak")),
        ("auto", "win32", ("pyttsx3", "espeak")),
        ("espeak", "win32", ("espeak",)),
        ("pyttsx3", "linux", ("pyttsx3",)),
        ("natural", "linux", ("natural", "espeak", "pyttsx3")),
    ],
)
def test_each_system_has_its_usual_voice(wanted: Engine, platform: str, tried: tuple[Engine, ...]) -> None:
    """macOS and Windows bring good voices of their own; a wish is never overruled."""
    assert engines_to_try(wanted, platform) == tried


@pytest.mark.usefixtures("no_sound")
@pytest.mark.parametrize("engine", ["auto", "espeak"])
def test_without_sound_there_is_one_sentence_and_the_session_goes_on(
    engine: Engine, capfd: pytest.CaptureFixture[str]
) -> None:
    """She reads why nothing is spoken, once, and knits on."""
    speaker, remark = open_speaker(SpeechSettings(engine=engine))
    assert speaker is None
    assert remark is not None
    assert remark.startswith("There is no voice, since no sound device can be opened (")
    assert remark.endswith("; the session goes on in text.")
    assert capfd.readouterr().err == ""


def test_without_a_process_for_the_voice_there_is_one_sentence(monkeypatch: pytest.MonkeyPatch) -> None:
    """What keeps the voice from starting is named."""
    monkeypatch.setattr(sys, "executable", "/nowhere/python")
    speaker, remark = open_speaker(SpeechSettings(engine="espeak"))
    assert speaker is None
    assert remark is not None
    assert "eSpeak NG does not start (its process cannot be started" in remark


def test_who_wants_no_voice_is_told_nothing() -> None:
    """A wish that is followed needs no remark."""
    speaker, remark = open_speaker(SpeechSettings(engine="none"))
    assert speaker is None
    assert remark is None


@pytest.mark.sound
@pytest.mark.usefixtures("room")
def test_where_the_natural_voice_cannot_start_another_speaks_and_that_is_told(tmp_path: Path) -> None:
    """A model she named that is none costs her no speech."""
    bad = tmp_path / "voice.onnx"
    bad.write_bytes(b"no model")
    speaker, remark = open_speaker(SpeechSettings(engine="natural", voice=str(bad)))
    try:
        assert speaker is not None
        assert remark is not None
        assert remark.startswith("The natural voice does not start (")
        assert "; another voice speaks." in remark
    finally:
        speaker.close()


@pytest.mark.sound
@pytest.mark.usefixtures("room")
def test_a_voice_and_a_device_that_are_not_there_are_told_and_replaced(room) -> None:  # type: ignore[no-untyped-def]
    """A setting that cannot be followed costs no speech."""
    speaker, remark = open_speaker(SpeechSettings(engine="espeak", voice="xyzzy", device="plugh"))
    try:
        assert remark == (
            'There is no voice named "xyzzy"; the usual one speaks. '
            'The sound device "plugh" cannot be opened; the usual one is used.'
        )
        with room.record() as recording:
            speaker.say(_LINE)
            recording.wait_for_sound()
    finally:
        speaker.close()


@pytest.mark.sound
def test_a_line_is_heard_and_a_slower_one_takes_longer(room) -> None:  # type: ignore[no-untyped-def]
    """The whole way from a line to the loudspeaker.

    Source: 12 words at 150 words per minute take 4.8 s; at four fifths of that speed, 6 s.
    """
    speaker, _ = open_speaker(SpeechSettings(engine="espeak"))
    try:
        for slower, takes_s in ((False, 4.8), (True, 6.0)):
            for tries_left in range(4, -1, -1):  # a machine that stands still tears a hole into a line and is late to tell
                with room.record() as recording:
                    speaker.say(_LINE, slower=slower)
                    recording.wait_for_sound()
                    assert speaker.wait(PATIENCE_S)
                    quiet_at = time.monotonic()
                    time.sleep(0.3)
                lasted_s = recording.speech_s()
                still_s = recording.loud_at()[-1] - quiet_at
                if (lasted_s == pytest.approx(takes_s, rel=0.1) and still_s < 0.1) or not tries_left:
                    break
            assert lasted_s == pytest.approx(takes_s, rel=0.1)
            assert still_s < 0.1, "it says it is quiet while it can still be heard"
    finally:
        speaker.close()


@pytest.mark.sound
def test_silence_is_heard_at_once_and_the_next_line_too(room) -> None:  # type: ignore[no-untyped-def]
    """A key silences the room within a fifth of a second, and what is said next is heard whole."""
    speaker, _ = open_speaker(SpeechSettings(engine="espeak"))
    try:
        with room.record() as recording:
            speaker.say(_LINE)
            speaker.say(_LINE)
            recording.wait_for_sound()
            time.sleep(0.5)
            asked_at = time.monotonic()
            speaker.silence()
            time.sleep(0.8)
            assert recording.loud_at()[-1] - asked_at < 0.2
            said_at = time.monotonic()
            speaker.say("Round two.")
            assert recording.wait_for_sound(after=said_at) - said_at < 0.4
    finally:
        speaker.close()


@pytest.mark.sound
def test_a_worker_that_is_killed_costs_nothing_that_is_heard(room) -> None:  # type: ignore[no-untyped-def]
    """The line after a crash of the voice is spoken, and nobody is bothered with it."""
    told: list[str] = []
    before = _children()
    speaker, _ = open_speaker(SpeechSettings(engine="espeak"), told.append)
    (worker,) = _children() - before
    try:
        with room.record() as recording:
            speaker.say("Round one.")
            assert speaker.wait(PATIENCE_S)
            os.kill(worker, signal.SIGKILL)
            said_at = time.monotonic()
            speaker.say(_LINE)
            recording.wait_for_sound(after=said_at)
            assert speaker.wait(PATIENCE_S)
    finally:
        speaker.close()
    assert told == []


@pytest.mark.sound
def test_the_sound_server_may_die_and_come_back(room, monkeypatch: pytest.MonkeyPatch) -> None:  # type: ignore[no-untyped-def]
    """A headset that goes is told once; when it is back, so is the voice. Nothing raises or hangs."""
    monkeypatch.setattr(played, "STALLED_S", 1.0)
    monkeypatch.setattr(played, "REOPEN_EVERY_S", 0.1)
    told: list[str] = []
    speaker, _ = open_speaker(SpeechSettings(engine="espeak"), told.append)
    try:
        speaker.say(_LINE)
        time.sleep(0.5)
        room.stop()
        assert speaker.wait(PATIENCE_S)
        for _ in range(3):
            speaker.say("Round two.")
            assert speaker.wait(PATIENCE_S)
        assert told == ["The sound device has gone; the session goes on in text until it is back."]
        room.start()
        time.sleep(0.2)
        with room.record() as recording:
            speaker.say(_LINE)
            recording.wait_for_sound()
        assert len(told) == 1
    finally:
        if room.control("info", check=False) != 0:
            room.start()
        began = time.monotonic()
        speaker.close()
    assert time.monotonic() - began < 4


@pytest.mark.sound
@pytest.mark.parametrize("engine", ["espeak", "pyttsx3"])
@pytest.mark.parametrize("ending", ["the end of the program", "being killed"])
def test_no_process_or_file_outlives_the_program(  # type: ignore[no-untyped-def]
    room, tmp_path: Path, is_running: Callable[[int], bool], engine: Engine, ending: str
) -> None:
    """A program that ends in the middle of a line, without closing, takes its voice with it."""
    code = (
        "import subprocess, time\nfrom stepper.mouth.open_speaker import open_speaker\n"
        "from stepper.mouth.settings import SpeechSettings\n"
        f"speaker, remark = open_speaker(SpeechSettings(engine={engine!r}))\n"
        f"if speaker is not None:\n    speaker.say({_LINE!r})\ntime.sleep(1)\n"
        "import os\nprint(remark or subprocess.run(['pgrep', '-P', str(os.getpid())], capture_output=True,"
        " text=True).stdout.replace('\\n', ' '), flush=True)\n"
    )
    code += "time.sleep(60)" if ending == "being killed" else ""
    environment = {**os.environ, "TMPDIR": str(tmp_path)}
    command = [sys.executable, "-c", code]
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True, env=environment) as program:
        assert program.stdout is not None
        line = program.stdout.readline()
        if ending == "being killed":
            program.kill()
        program.wait(PATIENCE_S)
    workers = [int(word) for word in line.split() if word.isdigit()]
    if not workers:
        pytest.skip(line)
    wait_until(
        lambda: not any(map(is_running, workers)) and not list(tmp_path.iterdir()),
        f"something in {tmp_path} or one of the processes {workers} is left behind",
    )


def _children() -> set[int]:
    """Return the processes that this one has started and that still run, by their numbers."""
    found = subprocess.run(["pgrep", "-P", str(os.getpid())], capture_output=True, text=True, check=False)
    return {int(number) for number in found.stdout.split()}
