from __future__ import annotations

from pathlib import Path

import pytest
from platformdirs import PlatformDirs, windows
from platformdirs.macos import MacOS
from platformdirs.unix import Unix
from platformdirs.windows import Windows

from stepper.sitting import user_folders

WINDOWS = {"CSIDL_APPDATA": "/h/AppData/Roaming", "CSIDL_LOCAL_APPDATA": "/h/AppData/Local"}
"""What Windows answers when it is asked for a folder."""


@pytest.mark.parametrize(
    ("system", "environment", "settings", "data"),
    [
        (Unix, {}, "/h/.config/stepper", "/h/.local/share/stepper"),
        (Unix, {"XDG_CONFIG_HOME": "/c", "XDG_DATA_HOME": "/d"}, "/c/stepper", "/d/stepper"),
        (MacOS, {}, "/h/Library/Application Support/stepper", "/h/Library/Application Support/stepper"),
        (Windows, {}, "/h/AppData/Roaming/stepper", "/h/AppData/Local/stepper"),
    ],
)
def test_each_system_has_its_place(
    system: type, environment: dict[str, str], settings: str, data: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What is there already is found again.

    Source: XDG Base Directory Specification 0.8, defaults; the other systems' places are common practice.
    """
    for name in ("XDG_CONFIG_HOME", "XDG_DATA_HOME", "STEPPER_DATA"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setattr(windows, "get_win_folder", WINDOWS.__getitem__)
    for name, value in {"HOME": "/h", **environment}.items():
        monkeypatch.setenv(name, value)
    monkeypatch.setattr(user_folders, "PlatformDirs", system)
    assert user_folders.settings_folder() == Path(settings)
    assert user_folders.data_folder() == Path(data)


def test_data_lies_in_the_folder_of_the_system_or_where_she_says(monkeypatch: pytest.MonkeyPatch) -> None:
    """A variable of ours goes before; models are looked for where she works first."""
    monkeypatch.delenv("STEPPER_DATA", raising=False)
    usual = user_folders.data_folder()
    assert usual == Path(PlatformDirs("stepper", appauthor=False).user_data_dir)
    monkeypatch.setenv("STEPPER_DATA", "/d")
    assert user_folders.data_folder() == Path("/d") != usual
    assert user_folders.model_folders() == (Path("models"), Path("/d/models"))
