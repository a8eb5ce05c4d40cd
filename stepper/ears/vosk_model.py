"""A Vosk model on the disk: what its folder must hold, and whether it loads.

Source: the folder's layout is that of Vosk's own documentation of its models, in its newer and older form.
"""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path
from typing import Final

from stepper.errors import NotInstalledError, SurroundingsError

_LAYOUTS: Final = (
    ("am/final.mdl", "conf/mfcc.conf", "graph/HCLr.fst", "graph/Gr.fst"),
    ("final.mdl", "mfcc.conf", "HCLr.fst", "Gr.fst"),
)
_FIXED: Final = ("graph/HCLG.fst", "HCLG.fst")
_TRIAL_TIMEOUT_S: Final = 120.0
_TRIAL: Final = "import sys, vosk; vosk.SetLogLevel(-1); vosk.KaldiRecognizer(vosk.Model(sys.argv[1]), 16000)"


def why_no_model(folder: Path) -> str:
    """Return what a folder lacks to be a model; empty if nothing is missing.

    Args:
        folder: The folder.
    """
    if not folder.is_dir():
        return f"{folder} is no folder."
    if any(_whole(folder, layout) for layout in _LAYOUTS):
        return ""
    if any((folder / name).is_file() for name in _FIXED):
        return f"{folder} holds a model with a fixed graph, which cannot be told what to listen for."
    newer = [name for name in _LAYOUTS[0] if not _has(folder, name)]
    if len(newer) < len(_LAYOUTS[0]):
        return f"{folder} is not a whole Vosk model: {', '.join(newer)} missing or empty."
    return f"{folder} is not a Vosk model: it has no {_LAYOUTS[0][0]}."


def try_to_load(folder: Path) -> None:
    """Load a model in a process of its own, since a damaged one may take the process with it.

    Raises:
        SurroundingsError: It does not load, or Vosk is not installed.
    """
    command = [sys.executable, "-c", _TRIAL, str(folder)]
    try:
        done = subprocess.run(command, capture_output=True, timeout=_TRIAL_TIMEOUT_S, check=False)
    except (OSError, subprocess.TimeoutExpired) as error:
        raise SurroundingsError(f"The model in {folder} could not be tried: {error}") from error
    if b"No module named 'vosk'" in done.stderr:
        raise NotInstalledError("Vosk is not installed.", "vosk")
    if done.returncode != 0:
        raise SurroundingsError(f"The model in {folder} does not load: it is damaged or not complete.")


def models_in(*folders: Path) -> list[Path]:
    """List the models in some folders, by name; the folders themselves may be missing."""
    found = [
        inner
        for folder in folders
        if folder.is_dir()
        for inner in sorted(folder.iterdir())
        if not inner.name.startswith(".") and inner.is_dir() and not why_no_model(inner)
    ]
    return list(dict.fromkeys(found))


def _whole(folder: Path, layout: tuple[str, ...]) -> bool:
    return all(_has(folder, name) for name in layout)


def _has(folder: Path, name: str) -> bool:
    return (folder / name).is_file() and (folder / name).stat().st_size > 0
