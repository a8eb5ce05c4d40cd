from __future__ import annotations

import pytest

from stepper.devices.open_input import microphones, open_input
from stepper.devices.ports import NoInputError


@pytest.mark.usefixtures("no_sound")
def test_without_a_microphone_one_sentence_names_what_each_library_found() -> None:
    """Who has to look for the cause reads both reasons."""
    with pytest.raises(NoInputError, match=r"no microphone can be opened \(PortAudio: .*; miniaudio: .*\)"):
        open_input()
    assert microphones() == ()


@pytest.mark.sound
@pytest.mark.usefixtures("room")
def test_the_usual_microphone_opens_and_gives_blocks_of_40_ms() -> None:
    """40 ms at 16 kHz and 16 bit are 1280 bytes."""
    stream = open_input()
    try:
        assert len(stream.take(5) or b"") == 1280
    finally:
        stream.close()
    assert microphones()
