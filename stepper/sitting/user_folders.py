"""The knitter's own folders and files: settings, recognisers' models, the print of her voice."""

from __future__ import annotations

import os
from pathlib import Path

from platformdirs import PlatformDirs

_PROGRAM = "stepper"


def settings_folder() -> Path:
    """Return the program's own folder for settings."""
    return Path(PlatformDirs(_PROGRAM, appauthor=False, roaming=True).user_config_dir)


def data_folder() -> Path:
    """Return the program's own folder for data that is neither settings nor knitting.

    The variable `STEPPER_DATA` names another folder than the system's usual one.
    """
    named = os.environ.get("STEPPER_DATA")
    return Path(named) if named else Path(PlatformDirs(_PROGRAM, appauthor=False).user_data_dir)


def models_folder() -> Path:
    """Return the folder in which recognisers' models are installed."""
    return data_folder() / "models"


def model_folders() -> tuple[Path, ...]:
    """Return the folders to search for models: first the current one's, then the data folder's."""
    return Path("models"), models_folder()


def voice_path() -> Path:
    """Return the path of the file with the print of her voice."""
    return data_folder() / "voice.json"
