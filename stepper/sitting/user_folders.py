"""The knitter's own folders and files: settings, recognisers' models, what is kept of her voice."""

from __future__ import annotations

import os
from pathlib import Path

from platformdirs import PlatformDirs

_PROGRAM = "stepper"


def settings_folder() -> Path:
    """Return the program's own folder for settings."""
    return Path(PlatformDirs(_PROGRAM, appauthor=False, roaming=True).user_config_dir)


def data_folder() -> Path:
    """Return the program's own folder for what it keeps that is neither settings nor knitting.

    The variable `STEPPER_DATA` names another folder than the system's usual one.
    """
    named = os.environ.get("STEPPER_DATA")
    return Path(named) if named else Path(PlatformDirs(_PROGRAM, appauthor=False).user_data_dir)


def models_folder() -> Path:
    """Return the folder that models of recognisers are installed in."""
    return data_folder() / "models"


def model_folders() -> tuple[Path, ...]:
    """Return the folders that models are looked for in: where she works first, then her data folder."""
    return Path("models"), models_folder()


def voice_path() -> Path:
    """Return the file that holds what is kept of her voice."""
    return data_folder() / "voice.json"
