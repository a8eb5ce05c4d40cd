"""Where recognisers' models lie: in `models/` of the folder she works in, and in her data folder."""

from __future__ import annotations

import os
from pathlib import Path

from stepper.sitting import user_folders


def data_folder() -> Path:
    """Return the place of what the program keeps for her that is neither settings nor knitting.

    The variable `STEPPER_DATA` names another folder than the system's usual one.
    """
    named = os.environ.get("STEPPER_DATA")
    return Path(named) if named else user_folders.data_folder()


def models_folder() -> Path:
    """Return the folder that models are installed in."""
    return data_folder() / "models"


def model_folders() -> tuple[Path, ...]:
    """Return the folders that models are looked for in, in that order."""
    return Path("models"), models_folder()


def voice_path() -> Path:
    """Return the place of what is kept of her voice."""
    return data_folder() / "voice.json"
