"""Bring a journal to the present version, one migration at a time.

A migration's changes and the row that records it are one transaction: after a failure or a kill half-way the
file is what it was, and the next opening tries again.
"""

from __future__ import annotations

import secrets
import sqlite3
from collections.abc import Callable, Iterator, Sequence
from datetime import datetime
from pathlib import Path

from stepper.errors import SurroundingsError
from stepper.records import dataclass
from stepper.store.database import transaction
from stepper.store.digests import chain_seed, entry_digest, plan_digest, snapshot_digest
from stepper.store.failures import damaged_error, not_a_journal_error
from stepper.store.history import ENTRY_COLUMNS, PLAN_COLUMNS, digest_at, write_newest
from stepper.store.records import Newest
from stepper.store.schema import APPLICATION_ID, MAKE_ROOM, PUT_UP_AGAIN, VERSION_1, VERSION_2


@dataclass(frozen=True, slots=True, kw_only=True)
class Migration:
    """One step from a version of the journal's form to the next."""

    version: int
    """The version it leads to. Range: 1 and up, without gaps."""
    name: str
    """What it does, in a few words."""
    apply: Callable[[sqlite3.Connection], None]
    """Makes the change inside the transaction already begun: no COMMIT, no `executescript`, which commits."""


def _create(connection: sqlite3.Connection) -> None:
    """Make the tables of version 1."""
    for statement in VERSION_1:
        connection.execute(statement)


def _add_checksums(connection: sqlite3.Connection) -> None:
    """Give every row its checksum, and the journal a name and the mark of its newest entry."""
    for statement in (*MAKE_ROOM, *VERSION_2):
        connection.execute(statement)
    journal = secrets.token_hex(16)
    last = plan_last = chain_seed(journal)
    seq = number = 0

    def entries() -> Iterator[tuple[object, ...]]:
        nonlocal last, seq
        rows = connection.execute("SELECT seq, at, kind, version, body FROM old_entry ORDER BY seq")
        for row in rows:
            seq, last = row[0], entry_digest(last, *row)
            yield (*row, last)

    def plans() -> Iterator[tuple[object, ...]]:
        nonlocal plan_last, number
        rows = connection.execute(
            "SELECT number, from_seq, at, fingerprint, project_text FROM old_plan ORDER BY number"
        )
        for row in rows:
            number, plan_last = row[0], plan_digest(plan_last, *row)
            yield (*row, plan_last)

    connection.executemany(f"INSERT INTO entry ({ENTRY_COLUMNS}) VALUES (?, ?, ?, ?, ?, ?)", entries())
    connection.executemany(f"INSERT INTO plan ({PLAN_COLUMNS}) VALUES (?, ?, ?, ?, ?, ?)", plans())
    for row in connection.execute(
        "SELECT id, seq, fingerprint, codec_version, body FROM old_snapshot ORDER BY id"
    ).fetchall():
        if 0 <= row[1] <= seq:
            entry = digest_at(connection, journal, row[1])
            connection.execute(
                "INSERT INTO snapshot (id, seq, fingerprint, codec_version, body, digest) "
                "VALUES (?, ?, ?, ?, ?, ?)",
                (*row, snapshot_digest(entry, *row[1:])),
            )
    for statement in PUT_UP_AGAIN:
        connection.execute(statement)
    write_newest(
        connection, Newest(journal=journal, seq=seq, digest=last, plan=number, plan_digest=plan_last)
    )


MIGRATIONS: tuple[Migration, ...] = (
    Migration(version=1, name="the first form", apply=_create),
    Migration(version=2, name="a checksum on each row", apply=_add_checksums),
)
"""Every migration there has ever been, oldest first."""


def applied_version(connection: sqlite3.Connection, path: Path) -> int:
    """Return the version a journal has. Reads only.

    Args:
        connection: Open on the journal.
        path: The journal, for the error message.

    Returns:
        The version; 1 and up.

    Raises:
        SurroundingsError: The file is some other database, or a journal without its tables.
    """
    (application_id,) = connection.execute("PRAGMA application_id").fetchone()
    if application_id != APPLICATION_ID:
        raise not_a_journal_error(path)
    tables = {name for (name,) in connection.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}
    if "migration" not in tables:
        raise damaged_error(path)
    (version,) = connection.execute("SELECT max(version) FROM migration").fetchone()
    if version is None:
        raise damaged_error(path)
    return int(version)


def refuse_newer(version: int, path: Path) -> None:
    """Refuse a journal from a later version of the program, whose tables may mean something else.

    Args:
        version: The version the journal has.
        path: The journal, for the error message.

    Raises:
        SurroundingsError: The journal is newer than the newest migration.
    """
    known = MIGRATIONS[-1].version
    if version > known:
        raise SurroundingsError(
            f"{path} was written by a newer version of this program (its form is {version}, this one knows "
            f"{known}). Update the program; the journal was left as it is."
        )


def migrate(
    connection: sqlite3.Connection, version: int, migrations: Sequence[Migration] | None = None
) -> None:
    """Apply what is pending, oldest first.

    Args:
        connection: Open for writing.
        version: The version the journal has; 0 for an empty database.
        migrations: Numbered from 1 without gaps; all that are known if None.

    Raises:
        ValueError: The migrations are not numbered 1, 2, 3 …
    """
    migrations = MIGRATIONS if migrations is None else migrations
    if [migration.version for migration in migrations] != list(range(1, len(migrations) + 1)):
        raise ValueError(f"migrations must be numbered from 1 without gaps (got {migrations!r})")
    for migration in migrations[version:]:
        with transaction(connection):
            migration.apply(connection)
            if not connection.in_transaction:
                raise AssertionError(f"migration {migration.version} ended the transaction it was given")
            connection.execute(
                "INSERT INTO migration (version, name, applied_at) VALUES (?, ?, ?)",
                (
                    migration.version,
                    migration.name,
                    datetime.now().astimezone().isoformat(timespec="seconds"),
                ),
            )
