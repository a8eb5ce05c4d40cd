"""Take a journal into memory, as SQLite would read it, without leaving a trace on the disk.

An image is the journal at one moment: reading it holds up no session, and a damaged file can be worked on
without being touched.

A journal must not be read like this in the process that has it open for a session: when a file is closed,
POSIX releases all the locks its process has on it.
"""

from __future__ import annotations

import shutil
import sqlite3
import tempfile
import time
from collections.abc import Sequence
from contextlib import closing, suppress
from pathlib import Path
from typing import Final

from stepper.store.database import connect
from stepper.store.failures import damaged_error, not_a_journal_error
from stepper.store.location import log_paths

_MAGIC: Final = b"SQLite format 3\x00"
HEADER_BYTES: Final = 100
"""Length of the header of an SQLite file."""
_PATIENCE_S: Final = 5.0
_BETWEEN_TRIES_S: Final = 0.0007
_MOST_MISSING_BYTES: Final = 64 << 20
"""How much may be missing at the end of an image that is still padded to its full length: more than years of
evenings take, and no more memory than that where a damaged header claims a gigabyte. Unit: bytes."""


def read_image(path: Path) -> bytes:
    """Return a journal's bytes as they are once SQLite has worked in what lies beside it.

    Args:
        path: The journal; it must exist.

    Raises:
        OSError: It cannot be read.
        sqlite3.Error: The same, said by SQLite; another program is writing and does not end.
    """
    wal, _ = log_paths(path)
    if not is_empty(wal) or _asks_for_wal(path):
        return _worked_in(path, (wal,))
    waiting_ends = time.monotonic() + _PATIENCE_S
    while True:
        try:
            with closing(connect(path, mode="ro", busy_timeout_s=0)) as connection:
                return _serialized(connection)
        except (sqlite3.Error, UnicodeDecodeError) as error:
            code = getattr(error, "sqlite_errorcode", sqlite3.SQLITE_CORRUPT) & 0xFF
            if code not in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED):
                # A killed session's half-done commit lies beside it, or SQLite cannot read it at all.
                return _worked_in(path, log_paths(path))
            if time.monotonic() > waiting_ends:
                raise
        # A commit lasts a millisecond. SQLite's own waiting grows to 100 ms at a time, which may miss every
        # gap.
        time.sleep(_BETWEEN_TRIES_S)


def is_empty(path: Path) -> bool:
    """Return whether a file beside a journal holds nothing: it is missing, empty or invalidated.

    Between two commits the rollback journal begins with a zero, which tells SQLite that it is over (its "File
    Locking And Concurrency", section 4.1: a rollback journal whose header is zeroed is not hot).
    """
    try:
        with path.open("rb") as file:
            return file.read(1) in (b"", b"\x00")
    except OSError:
        return True


def open_image(path: Path, image: bytes) -> sqlite3.Connection:
    """Open an image in memory. It can be written to; the disk is not touched.

    Args:
        path: Where it came from, for the error message.
        image: As from `read_image`.

    Raises:
        NotAJournalError: It is not an SQLite database.
        DamagedError: It is cut off at the very beginning.
    """
    refuse_other_header(path, image[:HEADER_BYTES])
    # Bytes 18 and 19 ask for WAL, which a database in memory cannot have. 16 and 17 are the size of a page,
    # 28 to 31 how many there are; one that is cut off is padded, or else not even its beginning could be read
    # (SQLite file format, section 1.3).
    page = int.from_bytes(image[16:18], "big")
    missing = (65536 if page == 1 else page) * int.from_bytes(image[28:32], "big") - len(image)
    filling = bytes(missing) if 0 < missing <= _MOST_MISSING_BYTES else b""
    connection = sqlite3.connect(":memory:", isolation_level=None, check_same_thread=False)
    connection.deserialize(image[:18] + b"\x01\x01" + image[20:] + filling)
    return connection


def refuse_other_header(path: Path, header: bytes) -> None:
    """Refuse what is not an SQLite database or is cut off at the very beginning.

    Args:
        path: The file, for the error message.
        header: Its first `HEADER_BYTES`.

    Raises:
        NotAJournalError: It is not an SQLite database.
        DamagedError: It is cut off.
    """
    if not header.startswith(_MAGIC[: len(header)]):
        raise not_a_journal_error(path)
    if len(header) < HEADER_BYTES:
        raise damaged_error(path)


def _asks_for_wal(path: Path) -> bool:
    with path.open("rb") as file:
        return file.read(HEADER_BYTES)[18:20] == b"\x02\x02"


def _worked_in(path: Path, beside: Sequence[Path]) -> bytes:
    """Copy a journal and what lies beside it to another place, and let SQLite merge the two if it can."""
    with tempfile.TemporaryDirectory(ignore_cleanup_errors=True) as folder:
        copy = Path(folder) / path.name
        shutil.copyfile(path, copy)
        for each in beside:
            if not is_empty(each):
                shutil.copyfile(each, copy.with_name(each.name))
        with suppress(sqlite3.Error, UnicodeDecodeError), closing(connect(copy)) as connection:
            connection.execute("SELECT count(*) FROM sqlite_master").fetchone()
            return _serialized(connection)
        return copy.read_bytes()


def _serialized(connection: sqlite3.Connection) -> bytes:
    """Return the database's bytes as they are at one moment."""
    connection.execute("BEGIN")
    connection.execute("SELECT count(*) FROM sqlite_master").fetchone()  # takes the read lock
    return connection.serialize()
