"""Where recognisers' models lie: in `models/` of the folder she works in, and in her data folder."""

from __future__ import annotations

import os
import sys
from collections.abc import Mapping
from pathlib import Path

from stepper.commands.user_folders import DATA, user_folder


def data_folder(environment: Mapping[str, str], platform: str) -> Path:
    """Give the place of what the program keeps for her that is neither settings nor knitting.

    Args:
        environment: The variables of the process; `STEPPER_DATA` names another folder.
        platform: The system, as Python names it.
    """
    named = environment.get("STEPPER_DATA")
    if named:
        return Path(named)
    return user_folder(DATA, environment, platform)


def models_folder() -> Path:
    """Give the folder that models are installed in."""
    return data_folder(os.environ, sys.platform) / "models"


def model_folders() -> tuple[Path, ...]:
    """Give the folders that models are looked for in, in that order."""
    return Path("models"), models_folder()
