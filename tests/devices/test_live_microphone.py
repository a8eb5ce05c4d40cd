from __future__ import annotations

import threading
import time
from pathlib import Path

import pytest

import stepper.devices.live_microphone as live_microphone
from stepper.devices.live_microphone import LiveMicrophone
from stepper.devices.ports import NoInputError
from tests.sine import tone
from tests.waiting import PATIENCE_S, wait_until


@pytest.mark.usefixtures("no_sound")
def test_no_microphone_is_a_sentence() -> None:
    """The session is told why and goes on by keys."""
    with pytest.raises(NoInputError, match="no microphone can be opened"):
        LiveMicrophone()


@pytest.mark.sound
@pytest.mark.usefixtures("room")
def test_a_name_that_is_not_there_is_told_and_the_usual_one_used() -> None:
    """A headset left in the other room costs no evening."""
    microphone = LiveMicrophone("xyzzy")
    try:
        assert microphone.remark == 'The microphone "xyzzy" cannot be opened; the usual one is used.'
        assert len(next(microphone.blocks())) == 1280
    finally:
        microphone.close()


@pytest.mark.sound
def test_a_microphone_that_is_muted_is_told_once_and_when_it_is_heard_again(
    room, monkeypatch: pytest.MonkeyPatch, tmp_path: Path  # type: ignore[no-untyped-def]
) -> None:
    """A system that does not allow the microphone gives noughts without a word; she is told."""
    monkeypatch.setattr(live_microphone, "SILENT_S", 0.5)
    told: list[bool] = []
    microphone = LiveMicrophone(there=lambda here, say: told.append(here))
    blocks = microphone.blocks()
    try:
        while not told:
            next(blocks)
        playing = room.speak(tone(tmp_path / "tone.wav", seconds=0.3), wait=False)
        while len(told) < 2:
            next(blocks)
        playing.wait(PATIENCE_S)
    finally:
        microphone.close()
    assert told == [False, True]


@pytest.mark.sound
def test_a_microphone_that_goes_is_told_once_and_found_again(room) -> None:  # type: ignore[no-untyped-def]
    """The sound server dies and comes back: two sentences, and sound again, with no end between."""
    told: list[tuple[bool, str]] = []
    microphone = LiveMicrophone(there=lambda here, say: told.append((here, say)), reopen_every_s=0.2)
    sizes: list[int] = []

    def listen() -> None:
        for block in microphone.blocks():
            sizes.append(len(block))

    thread = threading.Thread(target=listen, daemon=True)
    thread.start()
    try:
        wait_until(lambda: len(sizes) > 5)
        room.stop()
        wait_until(lambda: bool(told))
        time.sleep(0.6)  # several looks in vain
        room.start()
        wait_until(lambda: len(told) == 2)
        before = len(sizes)
        wait_until(lambda: len(sizes) > before + 5)
    finally:
        microphone.close()
    thread.join(PATIENCE_S)
    assert not thread.is_alive()
    assert told == [
        (False, "The microphone has gone; the session goes on by keys and typed cues."),
        (True, "The microphone is back."),
    ]
    assert 0 in sizes
