from __future__ import annotations

import pytest

from stepper.devices.miniaudio_streams import MiniaudioInput, MiniaudioOutput, find_device, miniaudio_names
from stepper.devices.ports import NoInputError, NoOutputError


@pytest.mark.usefixtures("no_sound")
def test_without_a_device_it_does_not_play_into_nothing(capfd: pytest.CaptureFixture[str]) -> None:
    """The backend that swallows all sound must not pass for a device."""
    with pytest.raises(NoOutputError):
        MiniaudioOutput(22_050)
    assert miniaudio_names("output") == ()
    assert capfd.readouterr().err == ""


@pytest.mark.sound
@pytest.mark.usefixtures("room")
def test_devices_are_named_and_taken_by_part_of_their_name() -> None:
    """What the set-up lists is what the settings take; what is not there is refused."""
    names = miniaudio_names("output")
    assert names
    MiniaudioOutput(22_050, names[0][:6].upper()).close()
    with pytest.raises(NoOutputError, match="xyzzy"):
        MiniaudioOutput(22_050, "xyzzy")


@pytest.mark.usefixtures("no_sound")
def test_without_sound_the_device_that_hears_nothing_is_not_taken(capfd: pytest.CaptureFixture[str]) -> None:
    """miniaudio would listen to nothing for ever without a word; that is no microphone."""
    with pytest.raises(NoInputError):
        MiniaudioInput()
    assert miniaudio_names("input") == ()
    assert capfd.readouterr().err == ""


@pytest.mark.sound
@pytest.mark.usefixtures("room")
def test_a_microphone_is_taken_by_part_of_its_name() -> None:
    """What is listed can be opened by any part of its name, in any case; what is not there is refused."""
    name = next(each for each in miniaudio_names("input"))
    MiniaudioInput(name[1:].upper()).close()
    with pytest.raises(NoInputError, match='no microphone named "xyzzy"'):
        MiniaudioInput("xyzzy")


FOUND = [
    {"id": 1, "name": "Desk speaker"},
    {"id": 2, "name": "Blue headset"},
    {"id": 3, "name": "Red headset"},
]


def test_a_device_is_found_by_any_part_of_its_name() -> None:
    """In any case; of several the first, and nothing where there is none."""
    assert find_device(FOUND, "HEADSET") == 2
    assert find_device(FOUND, "red") == 3
    assert find_device(FOUND, "xyzzy") is None


@pytest.mark.usefixtures("no_sound")
def test_without_sound_none_are_named(capfd: pytest.CaptureFixture[str]) -> None:
    """What miniaudio falls back to without sound is no device, and it says nothing of its own."""
    assert miniaudio_names("output") == ()
    assert capfd.readouterr().err == ""


@pytest.mark.sound
@pytest.mark.usefixtures("room")
def test_with_sound_those_asked_for_are_named() -> None:
    """Loudspeakers and microphones are two lists."""
    assert miniaudio_names("output")
    assert miniaudio_names("input")
