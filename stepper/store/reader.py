"""Read a journal: entries in order, the plans, the newest snapshot. Writes nothing."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from pathlib import Path
from types import TracebackType
from typing import Final, Self

from stepper.errors import SurroundingsError
from stepper.store.database import connect_reading
from stepper.store.failures import explained
from stepper.store.migrations import MIGRATIONS, applied_version, refuse_newer
from stepper.store.records import PlanVersion, Snapshot, StoredEntry

_ENTRY_COLUMNS: Final = "seq, at, kind, body, version"
_PLAN_COLUMNS: Final = "number, from_seq, at, fingerprint, project_text"
_AT_ONCE: Final = 1000
"""Entries fetched in one go, so that nobody who stops half-way leaves a read transaction open."""


class JournalReader:
    """A journal that can be read. It may be handed to another thread, though not used by two at once.

    Every method may raise SurroundingsError when the disk does not give what was asked for.
    """

    def __init__(self, path: Path, connection: sqlite3.Connection) -> None:
        self._path = path
        self._connection = connection

    @property
    def path(self) -> Path:
        """The journal's file."""
        return self._path

    @property
    def title(self) -> str:
        """The garment's title, as it was when a session last opened the journal."""
        with explained(self._path):
            row = self._connection.execute("SELECT title FROM garment").fetchone()
        return str(row[0])

    def entries(self, after: int = 0) -> Iterator[StoredEntry]:
        """Yield the entries in the order they were kept.

        Args:
            after: Place of the last entry not wanted. Range: 0 and up.

        Always: each `seq` is one more than that before it.
        """
        while True:
            with explained(self._path):
                rows = self._connection.execute(
                    f"SELECT {_ENTRY_COLUMNS} FROM entry WHERE seq > ? ORDER BY seq LIMIT ?",
                    (after, _AT_ONCE),
                ).fetchall()
            for row in rows:
                yield _entry(row)
            if len(rows) < _AT_ONCE:
                return
            after = rows[-1][0]

    def last(self) -> StoredEntry | None:
        """Return the newest entry, or None when nothing has been kept yet."""
        with explained(self._path):
            row = self._connection.execute(
                f"SELECT {_ENTRY_COLUMNS} FROM entry ORDER BY seq DESC LIMIT 1"
            ).fetchone()
        return None if row is None else _entry(row)

    def count(self) -> int:
        """Return how many entries there are, which is also the place of the newest. Range: 0 and up."""
        with explained(self._path):
            return int(self._connection.execute("SELECT coalesce(max(seq), 0) FROM entry").fetchone()[0])

    def plan_versions(self) -> tuple[PlanVersion, ...]:
        """Return every project text under which the garment was knitted, oldest first."""
        with explained(self._path):
            rows = self._connection.execute(f"SELECT {_PLAN_COLUMNS} FROM plan ORDER BY number").fetchall()
        return tuple(_plan(row) for row in rows)

    def latest_plan(self) -> PlanVersion | None:
        """Return the project text that holds now, or None when none has been kept yet."""
        with explained(self._path):
            row = self._connection.execute(
                f"SELECT {_PLAN_COLUMNS} FROM plan ORDER BY number DESC LIMIT 1"
            ).fetchone()
        return None if row is None else _plan(row)

    def latest_snapshot(self, fingerprint: str, codec_version: int) -> Snapshot | None:
        """Return the newest snapshot that fits this plan and this form, or None.

        Args:
            fingerprint: The plan in use.
            codec_version: The form the caller can read.
        """
        with explained(self._path):
            row = self._connection.execute(
                "SELECT seq, fingerprint, codec_version, body FROM snapshot "
                "WHERE fingerprint = ? AND codec_version = ? ORDER BY seq DESC, id DESC LIMIT 1",
                (fingerprint, codec_version),
            ).fetchone()
        if row is None:
            return None
        return Snapshot(seq=row[0], fingerprint=row[1], codec_version=row[2], body=row[3])

    def close(self) -> None:
        """Let go of the file; the second time does nothing."""
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
    if not path.exists():
        raise SurroundingsError(f"There is no journal {path} yet: nothing of this garment has been knitted.")
    with explained(path):
        connection = connect_reading(path)
        try:
            version = applied_version(connection, path)
            refuse_newer(version, path)
            if version < MIGRATIONS[-1].version:
                raise SurroundingsError(
                    f"{path} was written by an older version of this program. "
                    "Open the garment once for knitting, which brings the journal up to date."
                )
        except BaseException:
            connection.close()
            raise
    return JournalReader(path, connection)


def _entry(row: tuple[int, str, str, str, int]) -> StoredEntry:
    return StoredEntry(seq=row[0], at=row[1], kind=row[2], body=row[3], version=row[4])


def _plan(row: tuple[int, int, str, str, str]) -> PlanVersion:
    return PlanVersion(number=row[0], from_seq=row[1], at=row[2], fingerprint=row[3], project_text=row[4])
