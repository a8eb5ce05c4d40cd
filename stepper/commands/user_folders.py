"""Where a system keeps what belongs to its user: one rule for settings and for data."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Final


@dataclass(frozen=True, slots=True, kw_only=True)
class Kept:
    """A kind of thing that is kept, and where the systems want it."""

    windows: str
    """Variable that names the folder on Windows."""
    windows_folder: str
    """The folder in `AppData` where it is not set."""
    others: str
    """Variable of the XDG Base Directory Specification that names it elsewhere."""
    others_folder: str
    """The folder in the home where that is not set."""


SETTINGS: Final = Kept(
    windows="APPDATA", windows_folder="Roaming", others="XDG_CONFIG_HOME", others_folder=".config"
)
DATA: Final = Kept(
    windows="LOCALAPPDATA", windows_folder="Local", others="XDG_DATA_HOME", others_folder=".local/share"
)


def user_folder(kept: Kept, environment: Mapping[str, str], platform: str) -> Path:
    """Give the program's own folder for a kind of thing.

    Args:
        kept: What is kept.
        environment: The variables of the process.
        platform: The system, as Python names it.
    """
    home = Path(environment.get("HOME") or environment.get("USERPROFILE") or ".")
    if platform == "win32":
        folder = Path(environment.get(kept.windows) or home / "AppData" / kept.windows_folder)
    elif platform == "darwin":
        folder = home / "Library" / "Application Support"
    else:
        folder = Path(environment.get(kept.others) or home / kept.others_folder)
    return folder / "stepper"
