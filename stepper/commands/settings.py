"""`stepper settings`: your own settings, where they are written, and an editor with them."""

from __future__ import annotations

import argparse
import os
import shlex
import shutil
import subprocess
import sys
from collections.abc import Iterator, Mapping
from pathlib import Path

from stepper.errors import SurroundingsError
from stepper.sitting.folding import print_folded
from stepper.sitting.preferences import Preferences, read_preferences, settings_path
from stepper.sitting.settings_page import settings_lines

EXAMPLES = (
    ("stepper settings", "where the file is, and every setting with what it does"),
    ("stepper settings --open", "open it in your editor; a first file is written for you"),
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument(
        "--open", action="store_true", help="open the file in an editor; write a first one if need be"
    )


def run(args: argparse.Namespace) -> int:
    """Print the settings, or open their file.

    Returns:
        Exit code.

    Raises:
        SurroundingsError: The file cannot be written, or no editor can be opened.
    """
    path = settings_path()
    if args.open:
        _begin(path)
        print_folded([f"Opening {path}."])
        open_in_editor(path, os.environ, sys.platform)
        print_folded(read_preferences(path).remarks)
        return 0
    print_folded(_told(path))
    return 0


def _told(path: Path) -> Iterator[str]:
    mine = read_preferences(path)
    yield f"Your settings: {path}"
    if not path.exists():
        yield "There is no such file yet; stepper settings --open writes one."
    yield from mine.remarks
    yield ""
    yield from settings_lines(mine)


def _begin(path: Path) -> None:
    """Write a first file in which nothing is set."""
    if path.exists():
        return
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        with path.open("x", encoding="utf-8") as stream:
            stream.write("".join(f"{line}\n" for line in settings_lines(Preferences())))
    except OSError as error:
        raise SurroundingsError(f"{path} cannot be written: {error.strerror or error}.") from error


def open_in_editor(path: Path, environ: Mapping[str, str], platform: str) -> None:
    """Open a text file, in the editor of the environment or else as the system does.

    Args:
        path: The file.
        environ: The environment, for `VISUAL` and `EDITOR`.
        platform: The system, as Python names it.

    Raises:
        SurroundingsError: There is no editor, or it does not start.
    """
    command = editor_command(environ, platform)
    if not command:
        raise SurroundingsError(
            f"No editor is known here. Open {path} yourself, or set EDITOR to the name of one."
        )
    try:
        done = subprocess.run([*command, str(path)], check=False)
    except OSError as error:
        raise SurroundingsError(f"{command[0]} does not start: {error.strerror or error}.") from error
    if done.returncode != 0:
        raise SurroundingsError(f"{command[0]} ended with {done.returncode}. The file is {path}.")


def editor_command(environ: Mapping[str, str], platform: str) -> list[str]:
    """Return the command that opens a text file; empty if none is known."""
    named = environ.get("VISUAL") or environ.get("EDITOR")
    if named:
        return [named] if shutil.which(named) else shlex.split(named, posix=platform != "win32")
    if platform == "darwin":
        return ["open", "-W", "-t"]
    if platform == "win32":
        return ["notepad"]
    shown = environ.get("DISPLAY") or environ.get("WAYLAND_DISPLAY")
    for name in (*(("xdg-open",) if shown else ()), "nano", "vi"):
        if shutil.which(name):
            return [name]
    return []
