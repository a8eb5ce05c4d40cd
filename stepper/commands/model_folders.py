"""Where recognisers' models lie: in `models/` of the folder she works in, and in her data folder."""

from __future__ import annotations

import os
import sys
from collections.abc import Mapping
from pathlib import Path


def data_folder(environment: Mapping[str, str], platform: str) -> Path:
    """Give the place of what the program keeps for her that is neither settings nor knitting.

    Args:
        environment: The variables of the process; `STEPPER_DATA` names another folder.
        platform: The system, as Python names it.
    """
    named = environment.get("STEPPER_DATA")
    if named:
        return Path(named)
    home = Path(environment.get("HOME") or environment.get("USERPROFILE") or ".")
    if platform == "win32":
        folder = Path(environment.get("LOCALAPPDATA") or home / "AppData" / "Local")
    elif platform == "darwin":
        folder = home / "Library" / "Application Support"
    else:
        folder = Path(environment.get("XDG_DATA_HOME") or home / ".local" / "share")
    return folder / "stepper"


def models_folder() -> Path:
    """Give the folder that models are installed in."""
    return data_folder(os.environ, sys.platform) / "models"


def model_folders() -> tuple[Path, ...]:
    """Give the folders that models are looked for in, in that order."""
    return Path("models"), models_folder()
