"""Open SQLite the way a journal needs it: every commit on the disk before it is answered.

Settings and why:

- autocommit mode of the Python driver, transactions begun by hand with BEGIN IMMEDIATE: what is one unit is
  seen in the code, and a writer finds out at once that it cannot write;
- WAL: a reader never waits for the session, nor the session for a reader;
- synchronous=FULL: in WAL, the weaker NORMAL may lose the last commits when the power fails;
- fullfsync: macOS answers a plain fsync before the data is on the medium. Nothing changes elsewhere.

What the tests prove is that a killed *process* loses nothing that was answered. That the same holds when the
*power* fails rests on SQLite and on drives that do what they are told; no test here shows it.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Generator
from contextlib import contextmanager
from pathlib import Path
from typing import Final
from urllib.parse import quote

from stepper.store.failures import damaged, not_a_journal
from stepper.store.location import log_paths

BUSY_TIMEOUT_S: Final = 1.0
"""How long to wait for another program that holds the file. Unit: seconds."""

_MAGIC: Final = b"SQLite format 3\x00"
_HEADER_BYTES: Final = 100
_COPY_ATTEMPTS: Final = 5


def connect(path: Path, *, mode: str = "rw") -> sqlite3.Connection:
    """Open a database in autocommit mode with the settings above, except WAL.

    The connection may be handed to another thread, though not used by two at the same time.

    Args:
        path: The file.
        mode: "rw" for one that exists, "rwc" to create it, "ro" to read only.

    Raises:
        sqlite3.Error: It cannot be opened.
    """
    place = path.absolute().as_posix()
    # A drive letter needs a slash in front, a network share has its own two (SQLite, "URI Filenames").
    place = quote(place if place.startswith("/") else "/" + place)
    connection = sqlite3.connect(
        f"file://{place}?mode={mode}",
        uri=True,
        isolation_level=None,
        timeout=BUSY_TIMEOUT_S,
        check_same_thread=False,
    )
    connection.execute("PRAGMA synchronous = FULL")
    connection.execute("PRAGMA fullfsync = ON")
    connection.execute("PRAGMA foreign_keys = ON")
    return connection


def use_wal(connection: sqlite3.Connection) -> None:
    """Switch to the write-ahead log.

    A drive that cannot do it (some network drives) keeps the rollback journal: as safe, but a reader may have
    to wait. So the answer is not checked.
    """
    connection.execute("PRAGMA journal_mode = WAL").fetchone()


def connect_reading(path: Path) -> sqlite3.Connection:
    """Open a journal to read it, leaving no trace: nothing is written and no file appears beside it.

    While a session is open (or after it was killed) its log lies beside the journal and SQLite can read both.
    Otherwise SQLite would create a log just to read, so the file is copied into memory instead.

    Args:
        path: The journal; it must exist.

    Raises:
        OSError: It cannot be read.
        sqlite3.Error: The same, said by SQLite.
        SurroundingsError: It is no database.
    """
    for _ in range(_COPY_ATTEMPTS):
        if _has_log(path):
            break
        image = path.read_bytes()
        # A session begun meanwhile writes into the file only from its log. So the copy is good when there
        # is no log even now, and none came and went: then a second copy would differ.
        if not _has_log(path) and path.read_bytes() == image:
            return _connect_image(path, bytearray(image))
    with path.open("rb") as file:
        _refuse_other_header(path, file.read(_HEADER_BYTES))
    return connect(path, mode="ro")


def _has_log(path: Path) -> bool:
    return any(log.exists() for log in log_paths(path))


def _connect_image(path: Path, image: bytearray) -> sqlite3.Connection:
    """Open a copy of a database in memory."""
    _refuse_other_header(path, bytes(image[:_HEADER_BYTES]))
    # Bytes 18 and 19 ask for WAL, which a database in memory cannot have (SQLite file format, section 1.3.3).
    image[18:20] = b"\x01\x01"
    connection = sqlite3.connect(":memory:", isolation_level=None, check_same_thread=False)
    connection.deserialize(bytes(image))
    connection.execute("PRAGMA query_only = ON")
    return connection


def _refuse_other_header(path: Path, header: bytes) -> None:
    """Refuse what is no SQLite database, or cut off at the very beginning."""
    if not header:
        raise damaged(path)
    if not header.startswith(_MAGIC[: len(header)]):
        raise not_a_journal(path)
    if len(header) < _HEADER_BYTES:
        raise damaged(path)


@contextmanager
def transaction(connection: sqlite3.Connection) -> Generator[None]:
    """Make everything done in this block one unit: all of it is kept, or none.

    Args:
        connection: In autocommit mode and not within a transaction.
    """
    connection.execute("BEGIN IMMEDIATE")
    try:
        yield
        connection.execute("COMMIT")
    except BaseException:
        # SQLite rolls back by itself after some errors (disk full), and a rollback that fails as well must
        # not hide what went wrong first.
        if connection.in_transaction:
            try:
                connection.execute("ROLLBACK")
            except sqlite3.Error:
                connection.close()
        raise
