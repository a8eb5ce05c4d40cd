"""Write a journal's file: whole or not at all, and never over an existing file."""

from __future__ import annotations

import os
from contextlib import closing, suppress
from pathlib import Path

from stepper.errors import SurroundingsError
from stepper.files import create_private, write_new_private
from stepper.store.database import connect
from stepper.store.history import write_newest
from stepper.store.images import is_empty
from stepper.store.location import free_name, log_paths, unfinished_path
from stepper.store.migrations import migrate
from stepper.store.records import Newest


def put_in_place(path: Path, image: bytes, word: str) -> Path | None:
    """Write a journal under its name; a file of that name is set aside first.

    Args:
        path: The journal; no connection to it is open.
        image: What it is to hold.
        word: What an existing file is called from now on.

    Returns:
        Where that file is now; None if there was none.

    Raises:
        OSError: It cannot be written; what was there is still there.
    """
    unfinished = unfinished_path(path)
    unfinished.unlink(missing_ok=True)
    write_new_private(unfinished, image)
    for log in log_paths(path):  # belongs to the old file, and would be worked into the new one
        if is_empty(log):
            log.unlink(missing_ok=True)
        else:
            log.replace(free_name(log, word))
    aside = free_name(path, word) if path.exists() or path.is_symlink() else None
    if aside is not None:
        try:
            os.link(path, aside, follow_symlinks=False)  # so that there is no moment without a journal
        except (OSError, NotImplementedError):
            path.replace(aside)
    unfinished.replace(path)
    _flush_folder(path.parent)
    return aside


def create_journal(path: Path, title: str) -> None:
    """Make a journal that is either whole or absent.

    It is made under another name and then renamed. The lock is held, so no other session is doing the same.

    Args:
        path: The journal; there is none.
        title: The garment's title.

    Raises:
        OSError, sqlite3.Error, SurroundingsError: It cannot be made.
    """
    wal, rollback = log_paths(path)
    if not is_empty(wal):
        # SQLite works a log beside a journal into it, and that log may hold the last entries.
        raise SurroundingsError(
            f"{path} is missing, but {wal} is still there and may hold the last entries: "
            "put the journal back beside it, or move it away to begin anew."
        )
    if not is_empty(rollback):
        rollback.replace(free_name(rollback, "old"))  # holds only how to undo half a commit
    unfinished = unfinished_path(path)
    unfinished.unlink(missing_ok=True)
    create_private(unfinished).close()  # SQLite gives the files beside it the permissions of this one
    with closing(connect(unfinished)) as connection:
        # Without a rollback journal on disk: a half-made file is thrown away, never repaired.
        connection.execute("PRAGMA journal_mode = MEMORY").fetchone()
        migrate(connection, 0)
        connection.execute("BEGIN IMMEDIATE")
        connection.execute("INSERT INTO garment (id, title) VALUES (1, ?)", (title,))
        (journal, seq, digest, plan, plan_digest) = connection.execute(
            "SELECT journal, seq, digest, plan, plan_digest FROM newest"
        ).fetchone()
        write_newest(
            connection,
            Newest(journal=journal, seq=seq, digest=digest, plan=plan, plan_digest=plan_digest),
        )
        connection.execute("COMMIT")
    unfinished.replace(path)
    _flush_folder(path.parent)


def _flush_folder(folder: Path) -> None:
    """Have the new name written to the disk too, not just the file, if the drive can do that."""
    if os.name != "posix":
        return
    descriptor = os.open(folder, os.O_RDONLY)
    try:
        with suppress(OSError):
            os.fsync(descriptor)
    finally:
        os.close(descriptor)
