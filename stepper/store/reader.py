"""Read a journal: entries in order, the plans, the newest snapshot. Writes nothing.

Each entry and each snapshot is checked against its checksum as it is read.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from pathlib import Path
from types import TracebackType
from typing import Final, Self

from stepper.errors import SurroundingsError
from stepper.store.copies import Copies
from stepper.store.digests import entry_digest, snapshot_digest
from stepper.store.failures import damaged_error, explain_failures
from stepper.store.history import ENTRY_COLUMNS, PLAN_COLUMNS, BrokenHistoryError, digest_at
from stepper.store.opening import open_for_reading
from stepper.store.records import PlanVersion, Snapshot, StoredEntry

_AT_ONCE: Final = 1000
"""Number of entries fetched at a time, so that a reader who stops half-way leaves no read transaction
open."""


class JournalReader:
    """A journal that can be read. It may be handed to another thread but not used by two at once.

    Every method may raise SurroundingsError if the disk does not deliver what was asked for.
    """

    def __init__(self, path: Path, connection: sqlite3.Connection, name: str, remark: str = "") -> None:
        """Take over a connection.

        Args:
            path: The journal's file.
            connection: Open on it, or on an image of it.
            name: The journal's own name, with which its checksums begin.
            remark: What was found not to be as it should be.
        """
        self._path = path
        self._connection = connection
        self._name = name
        self._remarks = [remark] if remark else []

    @property
    def path(self) -> Path:
        """The journal's file."""
        return self._path

    def take_remarks(self) -> tuple[str, ...]:
        """Return what is not as it should be, one sentence each, and only once: the knitter must be told."""
        remarks, self._remarks = tuple(self._remarks), []
        return remarks

    @property
    def title(self) -> str:
        """The garment's title, as it was when a session last opened the journal."""
        with explain_failures(self._path):
            (title,) = self._connection.execute("SELECT title FROM garment").fetchone()
        return str(title)

    def entries(self, after: int = 0) -> Iterator[StoredEntry]:
        """Yield the entries in the order they were kept.

        Args:
            after: Place of the last entry not wanted. Range: 0 and up.

        Raises:
            SurroundingsError: An entry is not what was kept; those yielded before it are.

        Always: each `seq` is one more than the one before it.
        """
        if after >= self.count():
            return
        digest = self._digest_at(after)
        while True:
            with explain_failures(self._path):
                rows = self._connection.execute(
                    f"SELECT {ENTRY_COLUMNS} FROM entry WHERE seq > ? ORDER BY seq LIMIT ?",
                    (after, _AT_ONCE),
                ).fetchall()
            for row in rows:
                digest = entry_digest(digest, *row[:5])
                if digest != row[5]:
                    raise damaged_error(self._path)
                yield _entry(row)
            if len(rows) < _AT_ONCE:
                return
            after = rows[-1][0]

    def count(self) -> int:
        """Return how many entries there are, which is also the place of the newest. Range: 0 and up."""
        with explain_failures(self._path):
            (newest,) = self._connection.execute("SELECT coalesce(max(seq), 0) FROM entry").fetchone()
        return int(newest)

    def plan_versions(self) -> tuple[PlanVersion, ...]:
        """Return every project text under which the garment was knitted, oldest first."""
        with explain_failures(self._path):
            rows = self._connection.execute(f"SELECT {PLAN_COLUMNS} FROM plan ORDER BY number").fetchall()
        return tuple(_plan(row) for row in rows)

    def latest_plan(self) -> PlanVersion | None:
        """Return the project text in force now, or None if none has been kept yet."""
        with explain_failures(self._path):
            row = self._connection.execute(
                f"SELECT {PLAN_COLUMNS} FROM plan ORDER BY number DESC LIMIT 1"
            ).fetchone()
        return None if row is None else _plan(row)

    def latest_snapshot(self, fingerprint: str, codec_version: int) -> Snapshot | None:
        """Return the newest snapshot that fits this plan and this form, or None.

        Args:
            fingerprint: The plan in use.
            codec_version: The form the caller can read.
        """
        with explain_failures(self._path):
            rows = self._connection.execute(
                "SELECT seq, fingerprint, codec_version, body, digest FROM snapshot "
                "WHERE fingerprint = ? AND codec_version = ? ORDER BY seq DESC, id DESC",
                (fingerprint, codec_version),
            ).fetchall()
        for *fields, digest in rows:
            if fields[0] <= self.count() and snapshot_digest(self._digest_at(fields[0]), *fields) == digest:
                return Snapshot(seq=fields[0], fingerprint=fields[1], codec_version=fields[2], body=fields[3])
        return None

    def _digest_at(self, seq: int) -> bytes:
        """Return the checksum the entry after `seq` is chained to."""
        with explain_failures(self._path):
            try:
                return digest_at(self._connection, self._name, seq)
            except BrokenHistoryError as error:
                raise damaged_error(self._path) from error

    def close(self) -> None:
        """Close the file. A second call does nothing."""
        self._connection.close()

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.close()


def open_reader(path: Path) -> JournalReader:
    """Open a journal to read it, whether or not a session has it open.

    Args:
        path: The journal.

    Raises:
        SurroundingsError: There is none, or it cannot be read.
    """
    if not journal_exists(path):
        raise SurroundingsError(f"There is no journal {path} yet: nothing of this garment has been knitted.")
    with explain_failures(path):
        opened = open_for_reading(path)
    return JournalReader(path, opened.connection, opened.newest.journal, opened.remark)


def journal_exists(path: Path) -> bool:
    """Return whether a garment has been begun: its journal or copies of it exist.

    Args:
        path: The journal.
    """
    return path.exists() or bool(Copies(path).listed())


def _entry(row: tuple[int, str, str, int, str, bytes]) -> StoredEntry:
    return StoredEntry(seq=row[0], at=row[1], kind=row[2], version=row[3], body=row[4])


def _plan(row: tuple[int, int, str, str, str, bytes]) -> PlanVersion:
    return PlanVersion(number=row[0], from_seq=row[1], at=row[2], fingerprint=row[3], project_text=row[4])
