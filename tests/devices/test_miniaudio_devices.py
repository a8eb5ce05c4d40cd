from __future__ import annotations

import pytest

from stepper.devices.miniaudio_devices import named, names

FOUND = [
    {"id": 1, "name": "Desk speaker"},
    {"id": 2, "name": "Blue headset"},
    {"id": 3, "name": "Red headset"},
]


def test_a_device_is_found_by_any_part_of_its_name() -> None:
    """In any case; of several the first, and nothing where there is none."""
    assert named(FOUND, "HEADSET") == 2
    assert named(FOUND, "red") == 3
    assert named(FOUND, "xyzzy") is None


@pytest.mark.usefixtures("no_sound")
def test_without_sound_none_are_named(capfd: pytest.CaptureFixture[str]) -> None:
    """What miniaudio falls back to without sound is no device, and it says nothing of its own."""
    assert names(lambda devices: devices.get_playbacks()) == ()
    assert capfd.readouterr().err == ""


@pytest.mark.sound
@pytest.mark.usefixtures("room")
def test_with_sound_those_asked_for_are_named() -> None:
    """Loudspeakers and microphones are two lists."""
    assert names(lambda devices: devices.get_playbacks())
    assert names(lambda devices: devices.get_captures())
