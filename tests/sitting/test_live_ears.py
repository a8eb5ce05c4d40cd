from __future__ import annotations

import subprocess
import sys
import threading
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path

import pytest

import stepper.sitting.live_ears as live_ears
from stepper.devices.played_sound import PlayedSound
from stepper.devices.ports import NoInputError
from stepper.ears.interrupting import HELD_BACK
from stepper.ears.ports import Heard
from stepper.ears.settings import HearingSettings
from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.open_speaker import open_speaker
from stepper.mouth.settings import SpeechSettings
from stepper.sitting.ear_watch import HANGS_AFTER_S, EarWatch
from stepper.sitting.live_ears import LiveEars, can_interrupt, why_not_installed
from stepper.sitting.preferences import Preferences
from stepper.sitting.project_file import load_project
from stepper.sitting.user_folders import voice_path
from tests.commands.garments import environment, garment
from tests.evening import written
from tests.sound_room import Room
from tests.waiting import PATIENCE_S, least_of, wait_until

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
    wait_until(lambda: bool(told))

    def closed_s() -> float:
        began = time.monotonic()
        ears.close()
        return time.monotonic() - began

    assert least_of(closed_s, 2) < 2
    ((is_open, sentence),) = told
    assert not is_open
    assert "Nothing is heard, since" in sentence


def test_a_sitting_does_not_end_while_the_microphone_is_being_opened(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A process that ends in the middle of that is ended by the sound library's own threads, with a crash."""
    steps: list[str] = []
    begun, go_on = threading.Event(), threading.Event()

    def open_slowly(*_: object, **__: object) -> None:
        begun.set()
        go_on.wait(PATIENCE_S)
        steps.append("opened")
        raise NoInputError("none is there")

    monkeypatch.setattr("stepper.devices.live_microphone.open_input", open_slowly)
    ears = LiveEars(
        load_project(garment(tmp_path)).plan,
        None,
        Preferences(),
        hear=lambda text, score: None,
        tell=lambda is_open, sentence: steps.append("told"),
    )
    assert begun.wait(PATIENCE_S)
    threading.Timer(0.1, go_on.set).start()
    ears.close()
    assert steps == ["opened"], "and what was opened too late is not told of"


class _Failing:
    """A recogniser that fails, or hangs, over the stretches of sound it is told to."""

    def __init__(self, *does: str) -> None:
        self._does, self.closed, self.go_on = list(does), False, threading.Event()

    def recognise(self, segment: bytes) -> Heard | None:
        does = self._does.pop(0) if self._does else "fail"
        if does == "fail":
            raise RuntimeError("the network is broken")
        if does == "hang":
            self.go_on.wait(PATIENCE_S)
        return Heard(text="next step", score=1.0)

    def close(self) -> None:
        self.closed = True


def _sitting_ears(
    recogniser: _Failing, monkeypatch: pytest.MonkeyPatch, folder: Path, hangs_after_s: float = HANGS_AFTER_S
) -> tuple[LiveEars, list[str], list[tuple[bool, str]]]:
    """Open ears on the room's microphone with a recogniser of the test's."""
    heard: list[str] = []
    told: list[tuple[bool, str]] = []
    monkeypatch.setattr(live_ears, "load_recogniser", lambda *_: recogniser)
    monkeypatch.setattr(live_ears, "EarWatch", partial(EarWatch, hangs_after_s=hangs_after_s))
    ears = LiveEars(
        load_project(garment(folder)).plan,
        None,
        Preferences(),
        hear=lambda text, score: heard.append(text),
        tell=lambda is_open, sentence: told.append((is_open, sentence)),
    )
    wait_until(lambda: bool(told))
    return ears, heard, told


@pytest.mark.sound
@pytest.mark.skipif(bool(why_not_installed()), reason="the ears are an extra: pip install '.[ears]'")
def test_a_recogniser_that_fails_once_is_told_and_hears_the_next_cue(
    room: Room, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """One stretch of sound costs a word said again, not the ears of the evening; three in a row end them."""
    ears, heard, told = _sitting_ears(_Failing("fail", "hear"), monkeypatch, tmp_path)
    try:
        _say_until(lambda: not told[-1][0], room, tmp_path)
    finally:
        ears.close()
    assert heard == ["next step"]
    stumbled = (True, "The ears stumbled (RuntimeError: the network is broken): please say it again.")
    assert told[1:] == [
        *(stumbled,) * 3,
        (False, "The ears have a fault (RuntimeError: the network is broken)."),
    ]


@pytest.mark.sound
@pytest.mark.skipif(bool(why_not_installed()), reason="the ears are an extra: pip install '.[ears]'")
def test_a_voice_that_was_enrolled_by_other_numbers_does_not_make_the_ears_deaf(
    room: Room, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """As after an update: it is told how to enrol anew, and everybody is heard meanwhile."""
    monkeypatch.setenv("STEPPER_DATA", str(tmp_path / "data"))
    voice_path().parent.mkdir(parents=True, exist_ok=True)
    voice_path().write_text('{"threshold": 0.7, "vector": [0.6, 0.8]}')
    ears, heard, told = _sitting_ears(_Failing(*("hear",) * MOST_SAID), monkeypatch, tmp_path)
    try:
        assert told[0][0]
        assert "stepper voice enrol" in told[0][1]
        assert told[0][1].endswith("Until then no voice is known.")
        _say_until(lambda: bool(heard), room, tmp_path)
    finally:
        ears.close()
    assert heard[0] == "next step"


@pytest.mark.sound
@pytest.mark.skipif(bool(why_not_installed()), reason="the ears are an extra: pip install '.[ears]'")
def test_a_recogniser_that_hangs_is_told_and_again_when_it_goes_on(
    room: Room, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """She goes on by keys meanwhile, and the sitting ends without waiting for it."""
    recogniser = _Failing("hang", *("hear",) * MOST_SAID)
    ears, heard, told = _sitting_ears(recogniser, monkeypatch, tmp_path, 0.4)
    try:
        _say_until(lambda: len(told) == 2, room, tmp_path)
        assert told[1] == (False, "The ears do not come back; the session goes on by keys and typed cues.")
        recogniser.go_on.set()
        wait_until(lambda: len(told) == 3)
        assert told[2] == (True, "The ears go on.")
        assert heard[0] == "next step"
    finally:
        ears.close()


_LINE = "Round eleven: knit two, purl two, twenty five times. Then change to four millimetre needles and go on."


@pytest.mark.sound
@pytest.mark.skipif(not can_interrupt(HearingSettings(interrupt=True)), reason="the ears are an extra: pip install '.[ears]'")
def test_she_stops_it_by_speaking_and_is_heard(
    room: Room, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """The loudspeaker is heard by the microphone as loud as it speaks. How often it stops for nothing is counted by
    `tests.bench.spoken_over`: on a machine that others share, a device that is late leaves its own voice in."""
    room.control("load-module", "module-loopback", "source=spk.monitor", "sink=micfeed", "latency_msec=20")
    played, heard, told = PlayedSound(), [], []
    speaker, _ = open_speaker(SpeechSettings(engine="espeak"), played=played)
    monkeypatch.setattr(live_ears, "load_recogniser", lambda *_: _Failing(*("hear",) * MOST_SAID))
    ears = LiveEars(
        load_project(garment(tmp_path)).plan,
        speaker,
        Preferences(hearing=HearingSettings(interrupt=True)),
        hear=lambda text, score: heard.append(text),
        tell=lambda is_open, sentence: told.append(sentence),
        played=played,
    )
    try:
        wait_until(lambda: bool(told))
        for _ in range(4):  # it gets to know the room
            speaker.say(_LINE)
            wait_until(lambda: not speaker.speaking)
            speaker.silence()
        heard.clear()
        was_paused = []
        speaker.say(_LINE)

        def is_heard() -> bool:
            was_paused.append(speaker.paused)
            if not speaker.speaking and not speaker.paused:
                speaker.say(_LINE)
            return bool(heard) and any(was_paused)

        _say_until(is_heard, room, tmp_path)
        assert heard[0] == "next step"
    finally:
        ears.close()
        speaker.close()
    assert told[0] == "Listening."
    assert HELD_BACK in told


MOST_SAID = 15
"""Times that a cue is said; on a busy machine a stretch of sound may be torn and pass unheard."""


def _say_until(come: Callable[[], bool], room: Room, folder: Path) -> None:
    """Say a cue again and again until something has come of it."""
    voice = EspeakVoice(SpeechSettings(engine="espeak"))
    try:
        path = folder / "cue.wav"
        written(path, voice.speech("next step", 150) + bytes(2 * voice.rate_hz), voice.rate_hz)
    finally:
        voice.close()
    for _ in range(MOST_SAID):
        room.speak(path)
        if come():
            return
    raise AssertionError("nothing came of it")
