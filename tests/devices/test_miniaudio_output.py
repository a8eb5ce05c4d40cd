from __future__ import annotations

import pytest

from stepper.devices.miniaudio_output import MiniaudioOutput, miniaudio_devices
from stepper.devices.ports import NoOutputError


@pytest.mark.usefixtures("no_sound")
def test_without_a_device_it_does_not_play_into_nothing(capfd: pytest.CaptureFixture[str]) -> None:
    """The backend that swallows all sound must not pass for a device."""
    with pytest.raises(NoOutputError):
        MiniaudioOutput(22_050)
    assert miniaudio_devices() == ()
    assert capfd.readouterr().err == ""


@pytest.mark.sound
@pytest.mark.usefixtures("room")
def test_devices_are_named_and_taken_by_part_of_their_name() -> None:
    """What the set-up lists is what the settings take; what is not there is refused."""
    names = miniaudio_devices()
    assert names
    MiniaudioOutput(22_050, names[0][:6].upper()).close()
    with pytest.raises(NoOutputError, match="xyzzy"):
        MiniaudioOutput(22_050, "xyzzy")
