from __future__ import annotations

import pytest

from stepper.devices.miniaudio_input import MiniaudioInput, miniaudio_microphones
from stepper.devices.ports import NoInputError


@pytest.mark.usefixtures("no_sound")
def test_without_sound_the_device_that_hears_nothing_is_not_taken(capfd: pytest.CaptureFixture[str]) -> None:
    """miniaudio would listen to nothing for ever without a word; that is no microphone."""
    with pytest.raises(NoInputError):
        MiniaudioInput()
    assert miniaudio_microphones() == ()
    assert capfd.readouterr().err == ""


@pytest.mark.sound
@pytest.mark.usefixtures("room")
def test_a_microphone_is_taken_by_part_of_its_name() -> None:
    """What is listed can be opened by any part of its name, in any case; what is not there is refused."""
    name = next(each for each in miniaudio_microphones())
    MiniaudioInput(name[1:].upper()).close()
    with pytest.raises(NoInputError, match='no microphone named "xyzzy"'):
        MiniaudioInput("xyzzy")
