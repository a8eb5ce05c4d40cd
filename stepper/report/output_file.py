"""Write what a command makes to a file: as a whole, or a drawing of the kind that the file's name says."""

from __future__ import annotations

from pathlib import Path
from typing import Final

from stepper.errors import SurroundingsError
from stepper.report.drawing.png import write_png
from stepper.report.drawing.shapes import Drawing, write_svg

PICTURE_ENDINGS: Final = (".svg", ".png")
"""Allowed endings of a picture's name, in lower case."""


def write_picture(path: Path, drawing: Drawing) -> None:
    """Write a drawing.

    Args:
        path: Its name ends with one of `PICTURE_ENDINGS`, in either case.
        drawing: What to write.

    Raises:
        SurroundingsError: The file cannot be written.
    """
    data = write_svg(drawing).encode() if path.suffix.lower() == ".svg" else write_png(drawing)
    try:
        path.write_bytes(data)
    except OSError as error:
        raise SurroundingsError(f"{path} cannot be written: {error.strerror or error}.") from error


def replace_file(path: Path, content: bytes) -> None:
    """Write a file; an existing one is replaced as a whole, so that a full disk leaves the old one.

    Raises:
        SurroundingsError: The file cannot be written.
    """
    beside = path.with_name(path.name + "-new")
    try:
        beside.write_bytes(content)
        beside.replace(path)
    except OSError as error:
        beside.unlink(missing_ok=True)
        raise SurroundingsError(f"{path} cannot be written: {error.strerror}.") from error
