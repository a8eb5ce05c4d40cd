"""Open SQLite the way a journal needs it: every commit on the disk before it is answered.

Settings and why:

- autocommit mode of the Python driver, transactions begun by hand with BEGIN IMMEDIATE: the code shows what
  forms one unit, and a writer finds out at once if it cannot write;
- a rollback journal rather than a write-ahead log: after each commit the one file holds everything, so that a
  copy of it alone is worth something. Measured (DEVELOPERS.md, "Durability"), a commit takes 1 ms longer;
- journal_mode=PERSIST: the rollback journal is invalidated in place, neither deleted nor emptied. No commit
  depends on a change to the folder reaching the disk (with DELETE that needs synchronous=EXTRA and takes
  longer), nor on the file growing again (with TRUNCATE a commit takes a third longer);
- synchronous=FULL: the file is on the disk before the rollback journal is invalidated, and so is the
  invalidation before the commit returns;
- the right to write is held from one commit to the next (`hold_write_right`), by SQLite's own lock on the
  file: other programs can read it but not write to it, even if the lock file beside the journal was deleted;
- fullfsync: macOS answers a plain fsync before the data is on the medium. Nothing changes elsewhere.

What the tests prove is that a killed *process* loses nothing that was answered. That the same holds when the
*power* fails depends on SQLite and on drives that do what they are told; no test here shows it.
"""

from __future__ import annotations

import os
import sqlite3
from collections.abc import Generator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import Final
from urllib.parse import quote

BUSY_TIMEOUT_S: Final = 1.0
"""How long to wait for another program that holds the file. Unit: seconds."""
ROOM_KEPT_BYTES: Final = 128 << 10
"""How large the rollback journal may stay between commits. A cue takes 12 to 20 KiB; the extra that a long
project text took is given back. Unit: bytes."""


def connect(path: Path, *, mode: str = "rw", busy_timeout_s: float = BUSY_TIMEOUT_S) -> sqlite3.Connection:
    """Open a database in autocommit mode with the settings above, except the journal mode.

    The connection may be handed to another thread, though not used by two at the same time.

    Args:
        path: The file.
        mode: "rw" for one that exists, "rwc" to create it, "ro" to read only.
        busy_timeout_s: How long to wait for another program that holds the file. Unit: seconds.

    Raises:
        sqlite3.Error: It cannot be opened.
    """
    place = path.absolute().as_posix()
    # A drive letter needs a slash in front, a network share has its own two (SQLite, "URI Filenames").
    place = quote(os.fsencode(place if place.startswith("/") else "/" + place))
    connection = sqlite3.connect(
        f"file://{place}?mode={mode}",
        uri=True,
        isolation_level=None,
        timeout=busy_timeout_s,
        check_same_thread=False,
    )
    try:
        connection.execute("PRAGMA synchronous = FULL")
        connection.execute("PRAGMA fullfsync = ON")
        connection.execute("PRAGMA foreign_keys = ON")
    except sqlite3.Error:
        connection.close()
        raise
    except UnicodeDecodeError as error:  # in SQLite's own message, which quotes what it cannot read
        connection.close()
        raise sqlite3.DatabaseError("the tables cannot be read") from error
    return connection


def keep_all_in_one_file(connection: sqlite3.Connection) -> bool:
    """Have each commit end in the journal's own file; a log of its own (WAL) is worked into it.

    Returns:
        Whether that is so now; False if another program has the log open.

    Raises:
        sqlite3.Error: Another program has the file open.
    """
    connection.execute(f"PRAGMA journal_size_limit = {ROOM_KEPT_BYTES}").fetchone()
    (mode,) = connection.execute("PRAGMA journal_mode = PERSIST").fetchone()
    return mode in ("persist", "memory")


def leave_nothing_beside(connection: sqlite3.Connection) -> None:
    """Remove the rollback journal; left behind, it is harmless but untidy."""
    with suppress(sqlite3.Error):
        connection.execute("PRAGMA journal_mode = DELETE").fetchone()


@contextmanager
def transaction(connection: sqlite3.Connection) -> Generator[None]:
    """Make everything done in this block one unit: all of it is kept or none of it.

    Args:
        connection: In autocommit mode and not within a transaction.
    """
    connection.execute("BEGIN IMMEDIATE")
    with _committed(connection):
        yield


@contextmanager
def _committed(connection: sqlite3.Connection) -> Generator[None]:
    """Commit what was begun if this block ends well; otherwise roll it back."""
    try:
        yield
        connection.execute("COMMIT")
    except BaseException:
        # SQLite rolls back by itself after some errors (disk full), and if our rollback then fails, that must
        # not hide what went wrong first.
        if connection.in_transaction:
            try:
                connection.execute("ROLLBACK")
            except sqlite3.Error:
                connection.close()
        raise


@contextmanager
def hold_write_right(connection: sqlite3.Connection) -> Generator[None]:
    """Make this block one unit, as `transaction` does, and keep the right to write after it.

    Args:
        connection: In autocommit mode, with or without the right to write already held.
    """
    if not connection.in_transaction:
        connection.execute("BEGIN IMMEDIATE")
    try:
        with _committed(connection):
            yield
    finally:
        # What was kept is kept: if the right cannot be held any longer, the next attempt shows it.
        with suppress(sqlite3.Error):
            connection.execute("BEGIN IMMEDIATE")
