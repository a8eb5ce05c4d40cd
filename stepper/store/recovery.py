"""Notice when a journal is deleted, moved or exchanged under a running session, and keep what it held."""

from __future__ import annotations

import tempfile
from contextlib import closing, suppress
from dataclasses import field
from pathlib import Path

from stepper.errors import SurroundingsError
from stepper.files import write_new_private
from stepper.records import dataclass
from stepper.store.copies import Copies
from stepper.store.examination import examine
from stepper.store.failures import damaged_error
from stepper.store.history import EntryRow, PlanRow, read_newest
from stepper.store.images import open_image
from stepper.store.location import free_name
from stepper.store.records import Newest
from stepper.store.salvage import ReadableRows, salvage

Signature = tuple[int, ...]
"""What identifies a file: drive, number, length, and time of the last change; empty if there is none."""


@dataclass(slots=True)
class RecentRows:
    """The rows a session has kept, held in memory as well; an evening's take a few hundred kilobytes."""

    entries: list[EntryRow] = field(default_factory=list)
    plans: list[PlanRow] = field(default_factory=list)


def signature(path: Path) -> Signature:
    """Return what identifies the file of this name."""
    try:
        found = path.stat()
    except OSError:
        return ()
    return found.st_dev, found.st_ino, found.st_size, found.st_mtime_ns


def put_back_image(
    path: Path,
    image: bytes,
    recent: RecentRows,
    newest: Newest,
    copies: Copies,
    title: str,
) -> bytes:
    """Return the journal as it must be put back.

    Args:
        path: The journal.
        image: What the open file holds now.
        recent: What the session has kept.
        newest: How far the journal goes.
        copies: Its copies.
        title: The garment's title.

    Raises:
        SurroundingsError: It can no longer be rebuilt.
    """
    with suppress(SurroundingsError), closing(open_image(path, image)) as connection:
        examine(connection, path)
        if read_newest(connection) == newest:
            return image
    findings = ReadableRows()
    findings.know(newest)
    findings.look_through(path, image)
    findings.add(recent.entries, recent.plans)
    salvaged = salvage(path, findings, copies.listed(), title)
    if salvaged is None or salvaged.newest.journal != newest.journal:
        raise damaged_error(path)
    return salvaged.image


def save_elsewhere(path: Path, image: bytes) -> SurroundingsError:
    """Save a journal whose folder is gone to the home folder, and return the error that says so.

    Args:
        path: The journal.
        image: What it holds.
    """
    for folder in (Path.home(), Path(tempfile.gettempdir())) if image else ():
        place = free_name(folder / path.name, "saved")
        with suppress(OSError):
            write_new_private(place, image)
            return SurroundingsError(
                f"The folder of {path} is gone; what was kept lies in {place}: "
                f"put the folder back and that file into it as {path.name}."
            )
    return SurroundingsError(f"The folder of {path} is gone, and what was kept cannot be written elsewhere.")
