"""Name a file that is not there, and the one in its folder that was probably meant."""

from __future__ import annotations

import difflib
from collections.abc import Sequence
from pathlib import Path

from stepper.project.spelling import near

PROJECT_ENDINGS = (".yaml", ".yml")
"""Suffix of a project file's name, in upper or lower case."""


def name_missing(path: Path) -> str:
    """Return sentences that say that a file is missing and which one is near by name, if any is.

    Args:
        path: The file as it was named. Only its folder is read.
    """
    try:
        there = sorted(each.name for each in path.parent.iterdir() if each.is_file())
    except OSError:
        return f"There is no file {path}, nor a folder {path.parent}."
    meant = nearest_name(path.name, there)
    said = f"There is no file {path}."
    return f'{said} Did you mean "{path.with_name(meant)}"?' if meant else said


def nearest_name(name: str, there: Sequence[str]) -> str:
    """Return the file that a name probably means; empty if none is near.

    Args:
        name: What was typed.
        there: The names of the files of the folder.
    """
    for ending in PROJECT_ENDINGS:  # the ending was left off, or is the other one
        for candidate in (name + ending, str(Path(name).with_suffix(ending)) if Path(name).suffix else ""):
            if candidate in there:
                return candidate
    alike = [each for each in there if Path(each).suffix.lower() == (Path(name).suffix.lower() or ".yaml")]
    by_stem = {Path(each).stem: each for each in alike}
    close = near(Path(name).stem, tuple(by_stem))
    if close:
        return by_stem[close[0][1]]
    likely = difflib.get_close_matches(
        Path(name).stem.lower(), [each.lower() for each in by_stem], n=1, cutoff=0.75
    )
    return next((file for stem, file in by_stem.items() if likely and stem.lower() == likely[0]), "")


def name_folder(path: Path) -> str:
    """Return a sentence that says that a folder was named for a project file, and which are in it."""
    try:
        there = sorted(each for each in path.iterdir() if each.suffix.lower() in PROJECT_ENDINGS)
    except OSError:
        there = []
    names = ", ".join(str(each) for each in there[:6]) + (" and others" if len(there) > 6 else "")
    return f"{path} is a folder; name the project file in it" + (f": {names}." if names else ".")
