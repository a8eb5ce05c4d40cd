from __future__ import annotations

from pathlib import Path

import pytest

from stepper.commands.user_folders import DATA, SETTINGS, Kept, user_folder


@pytest.mark.parametrize(
    ("kept", "platform", "folder"),
    [
        (SETTINGS, "linux", "/h/.config/stepper"),
        (DATA, "linux", "/h/.local/share/stepper"),
        (SETTINGS, "win32", "/h/AppData/Roaming/stepper"),
        (DATA, "win32", "/h/AppData/Local/stepper"),
        (SETTINGS, "darwin", "/h/Library/Application Support/stepper"),
        (DATA, "darwin", "/h/Library/Application Support/stepper"),
    ],
)
def test_each_system_has_its_place(kept: Kept, platform: str, folder: str) -> None:
    """Source: XDG Base Directory Specification 0.8, defaults; the other systems' places are common practice."""
    assert user_folder(kept, {"HOME": "/h"}, platform) == Path(folder)


def test_a_variable_names_another_place() -> None:
    """What the system says about its user's folders is followed."""
    assert user_folder(SETTINGS, {"HOME": "/h", "XDG_CONFIG_HOME": "/c"}, "linux") == Path("/c/stepper")
    assert user_folder(DATA, {"USERPROFILE": "/u", "LOCALAPPDATA": "/l"}, "win32") == Path("/l/stepper")
