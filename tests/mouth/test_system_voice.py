from __future__ import annotations

import os
import signal
import tempfile
import time
from array import array
from collections.abc import Callable
from pathlib import Path
from threading import Event, Thread

import pytest

from stepper.devices.open_streams import open_output
from stepper.devices.ports import NoOutputError, OutputStream
from stepper.mouth.ports import NoVoiceError
from stepper.mouth.settings import SpeechSettings
from stepper.mouth.system_voice import SystemVoiceMouth
from stepper.mouth.tones import TONE_RATE_HZ
from tests.waiting import PATIENCE_S, wait_until

_LINE = "Knit to two stitches before the marker, knit two together, slip marker."

pytestmark = pytest.mark.sound


@pytest.fixture
def mouth(room, monkeypatch: pytest.MonkeyPatch, tmp_path: Path):  # type: ignore[no-untyped-def]
    """The system's own voice in the room, with its temporary files where they can be counted."""
    monkeypatch.setattr(tempfile, "tempdir", str(tmp_path))
    try:
        made = SystemVoiceMouth(SpeechSettings())
    except NoVoiceError as reason:
        pytest.skip(str(reason))
    yield made
    made.close()
    assert list(tmp_path.iterdir()) == [], "temporary files are left behind"


def test_a_line_is_heard_at_its_length(room, mouth: SystemVoiceMouth) -> None:  # type: ignore[no-untyped-def]
    """It comes back when the line is over, and the line was heard.

    Source: 12 words at 150 words per minute take 4.8 s.
    """
    with room.record() as recording:
        mouth.utter(_LINE, 150, Event())
        time.sleep(0.2)
    assert recording.speech_s() == pytest.approx(4.8, rel=0.15)


def test_tones_sound_beside_the_voice_and_need_no_voice(  # type: ignore[no-untyped-def]
    room, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """Through an output of their own, at their own loudness; where none opens there are none, and lines go on."""
    monkeypatch.setattr(tempfile, "tempdir", str(tmp_path))
    loud = array("h", [9000, -9000] * (TONE_RATE_HZ // 4)).tobytes()
    try:
        made = SystemVoiceMouth(SpeechSettings(), lambda: open_output(TONE_RATE_HZ))
    except NoVoiceError as reason:
        pytest.skip(str(reason))
    with room.record() as recording:
        made.chime(loud, TONE_RATE_HZ)
        recording.wait_for_sound()
    made.close()
    made.chime(loud, TONE_RATE_HZ)

    def none() -> OutputStream:
        raise NoOutputError("nothing is there")

    mute = SystemVoiceMouth(SpeechSettings(), none)
    mute.chime(loud, TONE_RATE_HZ)
    with room.record() as recording:
        mute.utter("Round one.", 150, Event())
        recording.wait_for_sound()
    mute.close()


def test_hushing_ends_player_and_process_and_the_next_line_is_heard(  # type: ignore[no-untyped-def]
    room, mouth: SystemVoiceMouth, is_running: Callable[[int], bool]
) -> None:
    """Silence is at once, and costs the next line nothing."""
    cut = Event()
    line = Thread(target=mouth.utter, args=(_LINE, 150, cut))
    with room.record() as recording:
        line.start()
        recording.wait_for_sound()
        time.sleep(0.3)
        process_id = mouth.process_id
        assert process_id is not None
        hushed_at = time.monotonic()
        cut.set()
        mouth.hush()
        line.join(PATIENCE_S)
        assert time.monotonic() - hushed_at < 0.3
        time.sleep(0.5)
        assert recording.loud_at()[-1] - hushed_at < 0.2
        assert not is_running(process_id)
        mouth.utter("Round one.", 150, Event())
        recording.wait_for_sound(after=hushed_at + 0.5)


def test_a_process_that_dies_is_replaced_and_the_line_said_again(mouth: SystemVoiceMouth) -> None:
    """One death costs a moment; two over the same line stop the voice, with a reason."""
    reasons: list[str] = []

    def say() -> None:
        try:
            mouth.utter(_LINE, 150, Event())
        except NoVoiceError as reason:
            reasons.append(str(reason))

    line = Thread(target=say)
    line.start()
    first = _next_process(mouth, None)
    os.killpg(first, signal.SIGKILL)
    second = _next_process(mouth, first)
    assert second != first
    os.killpg(second, signal.SIGKILL)
    line.join(PATIENCE_S)
    assert reasons == ["its process ended twice over the same line"]


def _next_process(mouth: SystemVoiceMouth, before: int | None) -> int:
    wait_until(lambda: mouth.process_id not in {None, before})
    process_id = mouth.process_id
    assert process_id is not None
    time.sleep(0.2)
    return process_id


@pytest.mark.usefixtures("no_sound")
def test_a_line_that_nobody_can_have_heard_is_told() -> None:
    """Without a device its player ends at once and says nothing; the user must not take that for speech."""
    try:
        mouth = SystemVoiceMouth(SpeechSettings())
    except NoVoiceError as reason:
        pytest.skip(str(reason))
    with pytest.raises(NoVoiceError, match="plays no sound"):
        mouth.utter(_LINE, 150, Event())
    mouth.close()
