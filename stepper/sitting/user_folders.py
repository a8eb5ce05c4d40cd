"""Where a system keeps what belongs to its user."""

from __future__ import annotations

from pathlib import Path

from platformdirs import PlatformDirs

_PROGRAM = "stepper"


def settings_folder() -> Path:
    """Return the program's own folder for settings."""
    return Path(PlatformDirs(_PROGRAM, appauthor=False, roaming=True).user_config_dir)


def data_folder() -> Path:
    """Return the program's own folder for what it keeps that is neither settings nor knitting."""
    return Path(PlatformDirs(_PROGRAM, appauthor=False).user_data_dir)
