"""Where the package's own networks are: trained for it, and kept beside it in `models/ears`."""

from __future__ import annotations

from pathlib import Path
from typing import Final

_ROOM: Final = Path(__file__).parents[1]
_FOLDER: Final = Path("models", "ears")


def weights_path(name: str) -> Path:
    """Return the file of a network.

    Args:
        name: Its name in `models/ears`, such as "encoder.onnx".

    Returns:
        Its place in the installed package, or else in the checkout that the package is run from.
    """
    installed = _ROOM / _FOLDER / name
    return installed if installed.exists() else _ROOM.parent / _FOLDER / name
