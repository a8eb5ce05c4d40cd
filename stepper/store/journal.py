"""Keep what happened while knitting, so that a killed program loses nothing it has answered.

One SQLite file per garment. Entries are only ever added. `append` returns after the disk has them, so whoever
speaks or shows after `append` never tells the knitter what a crash could take back. How much of it is proved
stands in `database`.
"""

from __future__ import annotations

import os
import sqlite3
from collections.abc import Sequence
from contextlib import closing, suppress
from pathlib import Path
from typing import Self

from stepper.errors import SurroundingsError
from stepper.store.database import connect, connect_reading, transaction, use_wal
from stepper.store.failures import damaged, explained
from stepper.store.location import log_paths, unfinished_path
from stepper.store.lock import GarmentLock
from stepper.store.migrations import MIGRATIONS, Migration, applied_version, migrate, refuse_newer
from stepper.store.reader import JournalReader, open_reader
from stepper.store.records import Entry, check_moment

SNAPSHOTS_KEPT = 2
"""Snapshots left after a new one: that one, and one more in case the newest turns out unreadable."""


class Journal(JournalReader):
    """A journal open for one session: it holds the garment's lock until it is closed or the process ends.

    Every method may raise SurroundingsError: the disk is full, the drive is gone. Nothing is half kept then,
    and the call may be made again.
    """

    def __init__(self, path: Path, connection: sqlite3.Connection, lock: GarmentLock) -> None:
        super().__init__(path, connection)
        self._lock = lock

    @classmethod
    def open(cls, path: Path, *, title: str, migrations: Sequence[Migration] = MIGRATIONS) -> Self:
        """Open a garment's journal for a session; make it when there is none, and bring it up to date.

        Args:
            path: The journal.
            title: The garment's title.
            migrations: The forms a journal went through, oldest first.

        Raises:
            SurroundingsError: Another session has it; the file is something else, damaged or from a newer
                program; the folder cannot be written. An existing file is left as it is.
        """
        lock = GarmentLock(path)
        try:
            with explained(path):
                if not path.exists():
                    _create(path, title, migrations)
                connection = _open_existing(path, title, migrations)
        except BaseException:
            lock.release()
            raise
        return cls(path, connection, lock)

    @classmethod
    def read_only(cls, path: Path) -> JournalReader:
        """Open a garment's journal to read it, also while a session has it open. Nothing is ever written.

        Args:
            path: The journal.

        Raises:
            SurroundingsError: There is none yet, or it cannot be read.
        """
        return open_reader(path)

    def append(self, entries: Sequence[Entry]) -> tuple[int, ...]:
        """Keep entries, all of them or none, and return when the disk has them.

        Args:
            entries: What happened, oldest first.

        Returns:
            Their places. Shape: as `entries`. Always: consecutive, starting one after the newest before.
        """
        if not entries:
            return ()
        with explained(self._path), transaction(self._connection):
            first = self.count() + 1
            places = tuple(range(first, first + len(entries)))
            self._connection.executemany(
                "INSERT INTO entry (seq, at, kind, version, body) VALUES (?, ?, ?, ?, ?)",
                [(seq, e.at, e.kind, e.version, e.body) for seq, e in zip(places, entries, strict=True)],
            )
        return places

    def keep_plan(self, project_text: str, fingerprint: str, at: str) -> int:
        """Keep the project text the next entries belong to, unless it is the one that holds already.

        Args:
            project_text: The project file, character by character.
            fingerprint: What the plan made from it is recognised by.
            at: Now. ISO 8601 with the offset from UTC.

        Returns:
            The number of the plan version that holds from the next entry on. Range: 1 and up.

        Raises:
            ValueError: `at` is no such time.
        """
        check_moment(at)
        with explained(self._path), transaction(self._connection):
            latest = self.latest_plan()
            if latest and (latest.project_text, latest.fingerprint) == (project_text, fingerprint):
                return latest.number
            number = latest.number + 1 if latest else 1
            self._connection.execute(
                "INSERT INTO plan (number, from_seq, at, fingerprint, project_text) VALUES (?, ?, ?, ?, ?)",
                (number, self.count() + 1, at, fingerprint, project_text),
            )
        return number

    def keep_snapshot(self, seq: int, body: str, fingerprint: str, codec_version: int) -> None:
        """Keep the state after an entry to save time later; of older ones only the last remains.

        Args:
            seq: Place of the last entry the state contains. Range: 0 to `count()`.
            body: The state, in the caller's own form.
            fingerprint: The plan it belongs to.
            codec_version: Version of the form of `body`.

        Raises:
            ValueError: `seq` is beyond the newest entry or below 0.
        """
        with explained(self._path), transaction(self._connection):
            newest = self.count()
            if not 0 <= seq <= newest:
                raise ValueError(f"seq must be from 0 to {newest} (got {seq!r})")
            self._connection.execute(
                "INSERT INTO snapshot (seq, fingerprint, codec_version, body) VALUES (?, ?, ?, ?)",
                (seq, fingerprint, codec_version, body),
            )
            self._connection.execute(
                "DELETE FROM snapshot WHERE id NOT IN (SELECT id FROM snapshot ORDER BY id DESC LIMIT ?)",
                (SNAPSHOTS_KEPT,),
            )

    def close(self) -> None:
        """Let go of the file and the lock; the second time does nothing."""
        try:
            super().close()
        finally:
            self._lock.release()


def _create(path: Path, title: str, migrations: Sequence[Migration]) -> None:
    """Make a journal that is either whole or not there.

    It is made under another name and then renamed. The lock is held, so nobody else is doing the same.
    """
    left_over = [str(log) for log in log_paths(path) if log.exists() and log.stat().st_size]
    if left_over:
        # A log found beside a journal is played into it, and the last entries may be in there.
        raise SurroundingsError(
            f"{path} is missing, but {', '.join(left_over)} is still there and may hold the last entries. "
            "Put the journal back beside it, or move it away to begin anew."
        )
    unfinished = unfinished_path(path)
    unfinished.unlink(missing_ok=True)
    connection = connect(unfinished, mode="rwc")
    try:
        # Without a log of its own: a half-made file is thrown away, never repaired.
        connection.execute("PRAGMA journal_mode = MEMORY").fetchone()
        migrate(connection, 0, migrations)
        connection.execute("INSERT INTO garment (id, title) VALUES (1, ?)", (title,))
    finally:
        connection.close()
    unfinished.replace(path)
    if os.name == "posix":
        _flush_folder(path.parent)


def _flush_folder(folder: Path) -> None:
    """Have the new name written to the disk as well, not only the file, where the drive can do that."""
    descriptor = os.open(folder, os.O_RDONLY)
    try:
        with suppress(OSError):
            os.fsync(descriptor)
    finally:
        os.close(descriptor)


def _open_existing(path: Path, title: str, migrations: Sequence[Migration]) -> sqlite3.Connection:
    """Open a journal that is there; look first, and touch nothing where it cannot be used."""
    path.open("r+b").close()  # a file that may not be written shows itself here
    with closing(connect_reading(path)) as look:
        version = applied_version(look, path)
        refuse_newer(version, path, migrations)
        (verdict,) = look.execute("PRAGMA quick_check(1)").fetchone()
        if verdict != "ok":
            raise damaged(path)
    connection = connect(path)
    try:
        use_wal(connection)
        migrate(connection, version, migrations)
        connection.execute("UPDATE garment SET title = ?1 WHERE title IS NOT ?1", (title,))
    except BaseException:
        connection.close()
        raise
    return connection
